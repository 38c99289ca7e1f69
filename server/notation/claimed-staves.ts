import { type Note, type NoteName, sameName, staffStep } from "../music/notes/note.ts";
import { noteText } from "../music/notes/note-names.ts";
import type { WhatToPlay } from "../music/patterns/notes-to-play.ts";
import { clefFor } from "./clef.ts";
import { degreeInWords, type StaffSetting, staffWith } from "./exercise-staff.ts";
import type { Staff, StaffNote } from "./staff.ts";
import { staffTexts } from "./staff-texts.ts";

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
  const { expected, title, instrument } = asked;
  const notes = expected.map(({ note }) => note);
  const setting = { ...asked, clef: clefFor(instrument, notes) };
  return [
    labelled(writtenNotes(asked), { ...setting, title }, staffTexts.asWritten),
    labelled(rightNotes(asked), { ...setting, title }, staffTexts.asItShouldBe),
  ];
}

function labelled(placed: readonly Placed[], setting: StaffSetting, label: string): Staff {
  return { ...staffWith(placed, { ...setting, title: staffTexts.titleOf(setting.title, label) }), label };
}

function rightNotes(asked: ClaimAsked): readonly Placed[] {
  const { expected, steps, typed, subject } = asked;
  const stepAt = new Map(steps.flatMap((step) => (step.type === "extra" ? [] : [[step.expected, step] as const])));
  return expected.map(({ note, degree }, i): Placed => {
    const step = stepAt.get(i);
    const placed = { note, degree: degreeInWords(subject, degree), figure: 0 };
    if (step?.type === "missing") return { ...placed, mark: staffTexts.leftOut };
    return step?.type === "wrong"
      ? { ...placed, mark: staffTexts.here(told(asked, note, typed[step.typed]!)) }
      : placed;
  });
}

function writtenNotes(asked: ClaimAsked): readonly Placed[] {
  const { typed, expected, steps, subject } = asked;
  const placed: Placed[] = [];
  for (const { type, typed: at, expected: meant } of steps) {
    if (type === "missing") continue;
    const name = typed[at]!;
    if (type === "extra") {
      const note = octaveNear(name, (placed.at(-1) ?? expected[0]!).note);
      placed.push({ note, degree: staffTexts.noDegree, figure: 0, mark: staffTexts.oneTooMany });
      continue;
    }
    const right = expected[meant]!;
    const note = octaveNear(name, right.note);
    const mark = type === "wrong" ? { mark: staffTexts.written(told(asked, note, right.note)) } : {};
    placed.push({ note, degree: degreeInWords(subject, right.degree), figure: 0, ...mark });
  }
  return placed;
}

/** The name of a note; with its octave where the other one has the same name. */
function told({ names }: ClaimAsked, note: Note, other: NoteName): string {
  return sameName(note, other) ? noteText(note, names) : names.name(note);
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
