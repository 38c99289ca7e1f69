import { type Note, type NoteName, staffStep } from "../music/notes/note.ts";
import type { WhatToPlay } from "../music/patterns/notes-to-play.ts";
import { clefFor } from "./clef.ts";
import { degreeInWords, type StaffSetting, staffWith } from "./exercise-staff.ts";
import type { Staff, StaffNote } from "./staff.ts";

/** A list of notes that somebody wrote, beside the notes that it should be. */
export interface ClaimAsked extends Omit<StaffSetting, "clef"> {
  readonly subject: WhatToPlay["subject"];
  /** As typed; octaves where they are known. */
  readonly typed: readonly (NoteName & { readonly octave?: number })[];
  readonly expected: readonly { readonly note: Note; readonly degree: number }[];
  /** How both lists go together, in order; indices into `typed` and `expected`. */
  readonly steps: readonly ClaimStep[];
}

export interface ClaimStep {
  /**
   * `right` may be spelled otherwise; of an `extra` note `expected` is what it stands before, of a `missing` one
   * `typed`.
   */
  readonly type: "right" | "wrong" | "extra" | "missing";
  readonly typed: number;
  readonly expected: number;
}

type Placed = Pick<StaffNote, "note" | "degree" | "figure" | "mark">;

/** Two staves: the notes as they are written, and as they should be; where they differ both are marked. */
export function claimedStaves(asked: ClaimAsked): readonly [written: Staff, right: Staff] {
  const { expected, steps, names, subject, title } = asked;
  const setting = {
    ...asked,
    clef: clefFor(
      asked.instrument,
      expected.map(({ note }) => note),
    ),
  };
  const wrong = new Map(
    steps.flatMap(({ type, typed, expected: at }) => (type === "wrong" ? [[at, typed] as const] : [])),
  );
  const missing = new Set(steps.flatMap(({ type, expected: at }) => (type === "missing" ? [at] : [])));
  const right = expected.map(({ note, degree }, i): Placed => {
    const mark = wrong.has(i) ? `here ${names.name(note)}` : missing.has(i) ? "left out" : undefined;
    return { note, degree: degreeInWords(subject, degree), figure: 0, ...(mark && { mark }) };
  });
  return [
    { ...staffWith(writtenNotes(asked), { ...setting, title: `${title}, as written` }), label: "as written" },
    { ...staffWith(right, { ...setting, title: `${title}, as it should be` }), label: "as it should be" },
  ];
}

function writtenNotes({ typed, expected, steps, subject, names }: ClaimAsked): readonly Placed[] {
  const placed: Placed[] = [];
  for (const step of steps) {
    if (step.type === "missing") continue;
    const name = typed[step.typed]!;
    const stands = step.type === "extra" ? placed.at(-1)?.note : expected[step.expected]?.note;
    const note = octaveNear(name, stands ?? expected[0]!.note);
    const mark =
      step.type === "extra" ? "one too many" : step.type === "wrong" ? `written ${names.name(name)}` : undefined;
    const degree = step.type === "extra" ? "no degree" : degreeInWords(subject, expected[step.expected]!.degree);
    placed.push({ note, degree, figure: 0, ...(mark && { mark }) });
  }
  return placed;
}

/** A name in the octave that it has, or in which it lies nearest to a note on the staff. */
function octaveNear({ letter, alter, octave }: NoteName & { readonly octave?: number }, near: Note): Note {
  if (octave !== undefined) return { letter, alter, octave };
  const [first, ...others] = [near.octave, near.octave - 1, near.octave + 1].map((each) => ({
    letter,
    alter,
    octave: each,
  }));
  const distance = (note: Note): number => Math.abs(staffStep(note) - staffStep(near));
  return others.reduce((best, other) => (distance(other) < distance(best) ? other : best), first!);
}
