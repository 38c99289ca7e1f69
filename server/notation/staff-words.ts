import { describeFifths } from "../music/scales/signature.ts";
import type { Clef } from "./clef.ts";
import type { StaffNote } from "./staff.ts";

const MARKS: Readonly<Record<NonNullable<Clef["mark"]>, string>> = {
  "8va": " with an 8 above",
  "8vb": " with an 8 below",
};

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
  const signature = fifths === 0 ? "no signature" : describeFifths(fifths);
  const head = [`${clef.name} clef${clef.mark ? MARKS[clef.mark] : ""}`, signature, ...(way ? [way] : [])].join(", ");
  return `${head[0]!.toUpperCase()}${head.slice(1)}. ${notes.map(noteInWords).join(" ")}.`;
}

function noteInWords({ name, mark }: Pick<StaffNote, "name" | "mark">): string {
  return mark === undefined ? name : `${name} (${mark})`;
}
