import type { Clef } from "./clef.ts";
import type { StaffNote } from "./staff.ts";
import { staffTexts } from "./staff-texts.ts";

/** What a staff shows, for those who do not see it. */
export function staffInWords({
  clef,
  fifths,
  way,
  notes,
}: {
  readonly clef: Clef;
  readonly fifths: number;
  readonly way?: string;
  readonly notes: readonly Pick<StaffNote, "name" | "mark">[];
}): string {
  const head = staffTexts.head(clef.name, clef.mark, fifths, way);
  return `${head}. ${notes.map(noteInWords).join(" ")}.`;
}

function noteInWords({ name, mark }: Pick<StaffNote, "name" | "mark">): string {
  return mark === undefined ? name : staffTexts.markedNote(name, mark);
}
