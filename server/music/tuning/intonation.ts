import { chordById } from "../chords/chord.ts";
import { areInCents, type Degree } from "../notes/degree.ts";
import { type Interval, modulo, type NoteName, pitchClass, transposed } from "../notes/note.ts";
import type { WhatToPlay } from "../patterns/notes-to-play.ts";
import { degreesOf } from "../scales/scale.ts";
import { centsFromEqual, type FromPure, PURE, type Temperament } from "./temperament.ts";

/** How the thirds and the fifths between the notes of a scale or chord stand, from its lowest degree upward. */
export interface Intonation {
  readonly thirds: readonly FromPure[];
  readonly fifths: readonly FromPure[];
}

const THIRDS: readonly (Interval & { readonly pure: number })[] = [
  { steps: 2, semitones: 4, pure: PURE.majorThird },
  { steps: 2, semitones: 3, pure: PURE.minorThird },
];
const FIFTHS = [{ steps: 4, semitones: 7, pure: PURE.fifth }];

/**
 * Every major and minor third and every perfect fifth between two notes of a scale (in its rising or its falling form)
 * or a chord, as it is written, and by how many cents it sounds wider than pure. Undefined where the notes do not keep
 * to the twelve keys.
 *
 * @param sounding how far the instrument sounds from what is written: the keys that sound are what is tempered
 */
export function intonationOf(
  subject: WhatToPlay["subject"],
  temperament: Temperament,
  sounding: Interval = { steps: 0, semitones: 0 },
): Intonation | undefined {
  const forms = formsOf(subject);
  if (areInCents(forms.flat())) return undefined;
  const tonic = subject.type === "scale" ? subject.tonic : subject.root;
  const keys = centsFromEqual(temperament);
  const fromEqual = (name: NoteName): number => keys[pitchClass(transposed(name, sounding))]!;
  const among = (intervals: typeof THIRDS): FromPure[] =>
    pairsIn(forms, intervals).map(({ low, high, pure, semitones }) => {
      const lower = onTonic(tonic, low);
      const upper = onTonic(tonic, high);
      return { lower, upper, cents: 100 * semitones - pure + fromEqual(upper) - fromEqual(lower) };
    });
  return { thirds: among(THIRDS), fifths: among(FIFTHS) };
}

function formsOf(subject: WhatToPlay["subject"]): readonly (readonly Degree[])[] {
  if (subject.type === "chord") return [chordById(subject.chord)?.degrees ?? []];
  const { kind } = subject;
  return kind.falling ? [degreesOf(kind, "up"), degreesOf(kind, "down")] : [degreesOf(kind, "up")];
}

function onTonic({ letter, alter }: NoteName, { step, semitones }: Degree): NoteName {
  return transposed({ letter, alter }, { steps: step, semitones });
}

interface Pair {
  readonly low: Degree;
  readonly high: Degree;
  readonly semitones: number;
  readonly pure: number;
}

/** The intervals of these sizes within each form, over the octave too; what both forms have stands once. */
function pairsIn(forms: readonly (readonly Degree[])[], intervals: typeof THIRDS): Pair[] {
  const found = new Map<string, Pair>();
  for (const degrees of forms)
    for (const low of degrees)
      for (const high of degrees) {
        const interval = intervals.find(
          ({ steps, semitones }) =>
            modulo(high.step - low.step, 7) === steps && modulo(high.semitones - low.semitones, 12) === semitones,
        );
        const key = `${low.step} ${low.semitones} ${high.step} ${high.semitones}`;
        if (interval && !found.has(key)) found.set(key, { low, high, ...interval });
      }
  return [...found.values()].sort((a, b) => a.low.semitones - b.low.semitones);
}
