import { chordById } from "../music/chords/chord.ts";
import { fingeringOf, printFingering } from "../music/fingering/fingering.ts";
import type { Instrument } from "../music/instruments/instrument.ts";
import { areInCents } from "../music/notes/degree.ts";
import { modulo, type Note, staffStep } from "../music/notes/note.ts";
import type { NoteNames } from "../music/notes/note-names.ts";
import type { NoteValue } from "../music/notes/note-value.ts";
import { figureLengths } from "../music/patterns/figures.ts";
import { type NotesToPlay, notesToPlay, type WhatToPlay } from "../music/patterns/notes-to-play.ts";
import { isDrawn } from "../music/patterns/pattern.ts";
import { degreesOf } from "../music/scales/scale.ts";
import { shownAccidentals } from "./accidentals.ts";
import { drawnArticulation } from "./articulation.ts";
import { type Clef, clefFor } from "./clef.ts";
import { writtenRhythm } from "./rhythm-values.ts";
import type { Staff, StaffFingering, StaffNote, StaffValue } from "./staff.ts";
import { staffTexts } from "./staff-texts.ts";
import { staffInWords } from "./staff-words.ts";

/** An exercise, and how it is to be shown. */
export interface ExerciseAsked {
  /** Its name: `D melodic minor, thirds`. */
  readonly title: string;
  /** How it is played, in the player's words: `8ths, slurred`. */
  readonly way?: string;
  readonly input: WhatToPlay;
  readonly instrument?: Instrument;
  readonly names: NoteNames;
  readonly noteValue?: NoteValue;
  /** As the conditions of an attempt have it: `slur 2+1+1`. */
  readonly articulation?: string;
  /** Likewise: `dotted`, `LSS`. */
  readonly rhythm?: string;
  /** Whether each note has its fingering, where one is known. */
  readonly fingerings?: boolean;
}

/** A staff, or why there is none, as a sentence. */
export type StaffReading =
  | { readonly ok: true; readonly staff: Staff }
  | { readonly ok: false; readonly reason: string };

/** Longer exercises are not drawn: nobody reads twenty lines of one figure. */
export const MOST_NOTES = 256;

const NOTHING: StaffReading = { ok: false, reason: staffTexts.nothingFits };
const IN_CENTS: StaffReading = { ok: false, reason: staffTexts.inCents };
const TOO_LONG: StaffReading = { ok: false, reason: staffTexts.tooLong(MOST_NOTES) };
const BEYOND_DOUBLE: StaffReading = { ok: false, reason: staffTexts.beyondDouble };

/** An exercise on a staff, in the clef of the instrument. */
export function exerciseStaff(asked: ExerciseAsked): StaffReading {
  const { input } = asked;
  if (input.subject.type === "scale" && areInCents(input.subject.kind.degrees)) return IN_CENTS;
  const played = notesToPlay(input);
  const { notes } = played;
  if (notes.length === 0) return NOTHING;
  if (notes.length > MOST_NOTES) return TOO_LONG;
  if (notes.some(({ alter }) => Math.abs(alter) > 2)) return BEYOND_DOUBLE;
  return { ok: true, staff: staffOf(asked, played) };
}

function staffOf(asked: ExerciseAsked, played: NotesToPlay): Staff {
  const { input } = asked;
  const { notes } = played;
  const figures = figuresOf(input, played);
  const degrees = played.degrees.map((degree) => degreeInWords(input.subject, degree));
  const articulation = drawnArticulation(asked.articulation, fallingOf(input, notes.length));
  const placed = notes.map((note, i) => ({ note, degree: degrees[i]!, figure: figures[i]! }));
  return {
    ...staffWith(placed, {
      ...asked,
      clef: clefFor(asked.instrument, notes),
      fifths: drawnFifths(played.signature?.fifths),
    }),
    ...articulation,
  };
}

/** What a staff is written in. */
export interface StaffSetting
  extends Pick<ExerciseAsked, "title" | "way" | "names" | "noteValue" | "rhythm" | "instrument" | "fingerings"> {
  readonly clef: Clef;
  readonly fifths: number;
}

/** Notes on a staff, without an articulation. */
export function staffWith(
  placed: readonly Pick<StaffNote, "note" | "degree" | "figure" | "mark">[],
  setting: StaffSetting,
): Staff {
  const { title, way, names, clef, fifths } = setting;
  const value = valueShown(setting.noteValue);
  const { values, beams } = writtenRhythm(
    value,
    setting.rhythm,
    placed.map(({ figure }) => figure),
  );
  const accidentals = shownAccidentals(
    placed.map(({ note }) => note),
    fifths,
  );
  const notes = placed.map(
    (each, i): StaffNote => ({
      ...each,
      step: staffStep(each.note) - clef.bottomLine,
      accidental: accidentals[i]!,
      value: values[i]!,
      name: names.name(each.note),
      ...fingeringAt(setting, each.note),
    }),
  );
  const text = staffInWords({ clef, fifths, way, notes });
  return { title, text, clef, fifths, value, notes, beams, slurs: [], signs: [] };
}

/** A signature beyond seven accidentals is not written: each note has its own. */
export function drawnFifths(fifths: number | undefined): number {
  return fifths === undefined || Math.abs(fifths) > 7 ? 0 : fifths;
}

/** `third degree`; of a chord `third note`. */
export function degreeInWords(subject: WhatToPlay["subject"], degree: number): string {
  const size =
    subject.type === "scale" ? degreesOf(subject.kind, "up").length : chordById(subject.chord)!.degrees.length;
  const place = modulo(degree - 1, size) + 1;
  return subject.type === "scale" ? staffTexts.degree(place) : staffTexts.chordNote(place);
}

function fingeringAt(
  { fingerings, instrument }: Pick<ExerciseAsked, "fingerings" | "instrument">,
  note: Note,
): { readonly fingering?: StaffFingering } {
  const found = fingerings && instrument ? fingeringOf(instrument, note) : undefined;
  return found?.known ? { fingering: { holes: found.fingering, text: printFingering(found.fingering) } } : {};
}

/** Which figure of the pattern each note belongs to. */
function figuresOf(
  { subject, pattern, variant, direction = "up and down" }: WhatToPlay,
  { notes }: NotesToPlay,
): number[] {
  const named = pattern ?? (subject.type === "chord" && subject.broken ? "threes" : "straight");
  if (named === "straight" || isDrawn(named)) return notes.map(() => 0);
  const inForm = direction === "up" || direction === "down" ? notes.length : notes.length / 2;
  const lengths = figureLengths(named, variant, inForm);
  return notes.map((_, i) => 1000 * Math.floor(i / inForm) + figureAt(lengths, i % inForm));
}

/** The figure that the note at an index of a form is in; the last length stands for all that follow. */
function figureAt(lengths: readonly number[], index: number): number {
  let before = 0;
  for (const [figure, length] of lengths.entries()) {
    if (index < before + length) return figure;
    before += length;
  }
  return lengths.length + Math.floor((index - before) / lengths.at(-1)!);
}

/** Of each note whether it is in the half that goes down; a note on which both turn goes up. */
function fallingOf({ direction = "up and down" }: WhatToPlay, count: number): boolean[] {
  const turn = Math.ceil(count / 2);
  return Array.from({ length: count }, (_, i) => {
    if (direction === "up" || direction === "down") return direction === "down";
    return direction === "down and up" ? i < turn : i >= turn;
  });
}

/** One note a beat where nothing else is said, as a tempo without a note value is read. */
const QUARTERS: StaffValue = { base: 4, dots: 0 };

const BASES: readonly StaffValue["base"][] = [1, 2, 4, 8, 16, 32];

function valueShown(value: NoteValue | undefined): StaffValue {
  if (!value) return QUARTERS;
  const found = BASES.flatMap((base): StaffValue[] => [
    { base, dots: 0 },
    { base, dots: 1 },
    ...(base >= 4 ? [{ base, dots: 0, tuplet: base === 16 ? 6 : 3 } as const] : []),
  ]).find((each) => lengthOf(each) === value.numerator / value.denominator);
  return found ?? QUARTERS;
}

/** In whole notes. */
function lengthOf({ base, dots, tuplet }: StaffValue): number {
  return ((dots ? 3 : 2) * (tuplet ? 2 : 3)) / (6 * base);
}
