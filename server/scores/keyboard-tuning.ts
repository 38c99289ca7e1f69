import type { Degree } from "../music/notes/degree.ts";
import { modulo, type NoteName, pitchClass } from "../music/notes/note.ts";
import { centsFromEqual, hertzOfKey, type Tuning } from "../music/tuning/temperament.ts";

/** MIDI numbers of the keys. */
const KEYS = Array.from({ length: 128 }, (_, key) => key);
const MIDDLE_C = 60;

/** A scale that does not keep to the twelve keys. */
export interface ScaleOnKeys {
  /** As it sounds. */
  readonly tonic: NoteName;
  /** From the tonic up, without the octave. */
  readonly degrees: readonly Degree[];
}

/** Hertz of the keys 0 to 127 in a tuning. */
export function keysInHertz({ a, temperament }: Tuning): readonly number[] {
  const cents = centsFromEqual(temperament);
  return KEYS.map((key) => hertzOfKey(key, cents[key % 12]!, a));
}

/** By how many cents the keys C to B are off equal temperament at A = 440 Hz. */
export function keysInCents({ a, temperament }: Tuning): readonly number[] {
  const pitch = 1200 * Math.log2(a / 440);
  return centsFromEqual(temperament).map((cents) => cents + pitch);
}

/** Which keys a scale is played on: those nearest to its notes, or one after the other. */
type KeysOfScale = "nearest" | "in turn";

/**
 * Nearest where each note has a key of its own; else, as for more than twelve notes, each note in turn has the next key
 * from the tonic nearest to middle C.
 */
function keysOfScale(degrees: readonly Degree[]): KeysOfScale {
  const nearest = new Set(degrees.map(({ semitones }) => semitones));
  return nearest.size === degrees.length ? "nearest" : "in turn";
}

/** Hertz of the keys 0 to 127, of which those of the scale have its notes, and the others stay in the tuning. */
export function scaleInHertz({ tonic, degrees }: ScaleOnKeys, tuning: Tuning): readonly number[] {
  const plain = keysInHertz(tuning);
  const first = pitchClass(tonic);
  if (keysOfScale(degrees) === "nearest") {
    const cents = new Map(degrees.map((degree) => [degree.semitones, centsOf(degree)]));
    return plain.map((hertz, key) => {
      const above = modulo(key - first, 12);
      const own = cents.get(above);
      return own === undefined ? hertz : moved(tonicBelow(plain, key - above), own);
    });
  }
  const start = MIDDLE_C + modulo(first - MIDDLE_C + 6, 12) - 6;
  return KEYS.map((key) => {
    const octaves = Math.floor((key - start) / degrees.length);
    return moved(plain[start]!, centsOf(degrees[modulo(key - start, degrees.length)]!) + 1200 * octaves);
  });
}

/**
 * By how many cents the keys C to B are off equal temperament at A = 440 Hz; undefined where two notes of the scale
 * would share a key.
 */
export function scaleInCents({ tonic, degrees }: ScaleOnKeys, tuning: Tuning): readonly number[] | undefined {
  if (keysOfScale(degrees) === "in turn") return undefined;
  const cents = [...keysInCents(tuning)];
  const first = pitchClass(tonic);
  const ofTonic = cents[first]!;
  for (const degree of degrees)
    cents[(first + degree.semitones) % 12] = ofTonic + centsOf(degree) - 100 * degree.semitones;
  return cents;
}

/** Of a key that may lie below the keyboard. */
function tonicBelow(plain: readonly number[], key: number): number {
  return plain[key] ?? plain[key + 12]! / 2;
}

function moved(hertz: number, cents: number): number {
  return hertz * 2 ** (cents / 1200);
}

function centsOf({ semitones, cents = 100 * semitones }: Degree): number {
  return cents;
}
