import type { Staff, Stretch } from "./staff.ts";

/** Groups with a figure above them; the last may have fewer notes. Empty where the notes are no tuplets. */
export function tupletsOf({ notes, value: { tuplet } }: Pick<Staff, "notes" | "value">): readonly Stretch[] {
  if (!tuplet) return [];
  return Array.from({ length: Math.ceil(notes.length / tuplet) }, (_, i) => ({
    from: i * tuplet,
    to: Math.min(notes.length, (i + 1) * tuplet) - 1,
  }));
}
