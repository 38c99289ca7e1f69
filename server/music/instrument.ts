import { type Interval, midi, type Note, transposed } from "./note.ts";

export interface Instrument {
  readonly id: string;
  /** All ways to say it; the first is the one to show. */
  readonly names: readonly string[];
  readonly family: "recorder" | "woodwind" | "brass" | "string" | "declared";
  /** The lowest and the highest note, as written for the instrument. */
  readonly low: Note;
  readonly high: Note;
  /** From a written note to the one that sounds: a soprano recorder sounds an octave higher, {7, 12}. */
  readonly sounding: Interval;
  /** Why an end of the range is not to be taken as firm. */
  readonly soft?: string;
  /** Of a recorder; baroque where nothing is said. */
  readonly fingering?: FingeringSystem;
  /** Written notes that want a half hole, where the player declared them. */
  readonly halfHoles?: readonly Note[];
}

/** The two in which recorders are sold. Baroque is also called English. */
export type FingeringSystem = "baroque" | "german";

/** The part of an instrument that its range is. */
export type Range = Pick<Instrument, "low" | "high">;

/**
 * The instruments that need no declaration, with the ranges of test/reference/instrument-ranges.json. There recorders
 * stand with the notes that sound (`full`); here they are lowered by `written_lower_by`, so that both ends are as written.
 * The others have `professional_written`. Top notes depend on player and instrument.
 */
export const INSTRUMENTS: readonly Instrument[] = [
  {
    id: "garklein recorder",
    names: ["garklein recorder", "garklein"],
    family: "recorder",
    low: { letter: "C", alter: 0, octave: 4 },
    high: { letter: "C", alter: 0, octave: 6 },
    sounding: { steps: 14, semitones: 24 },
  },
  {
    id: "sopranino recorder",
    names: ["sopranino recorder", "sopranino"],
    family: "recorder",
    low: { letter: "F", alter: 0, octave: 4 },
    high: { letter: "G", alter: 0, octave: 6 },
    sounding: { steps: 7, semitones: 12 },
  },
  {
    id: "soprano recorder",
    names: ["soprano recorder", "descant recorder"],
    family: "recorder",
    low: { letter: "C", alter: 0, octave: 4 },
    high: { letter: "D", alter: 0, octave: 6 },
    sounding: { steps: 7, semitones: 12 },
  },
  {
    id: "alto recorder",
    names: ["alto recorder", "treble recorder"],
    family: "recorder",
    low: { letter: "F", alter: 0, octave: 4 },
    high: { letter: "G", alter: 0, octave: 6 },
    sounding: { steps: 0, semitones: 0 },
  },
  {
    id: "alto recorder in G",
    names: ["alto recorder in G", "treble recorder in G", "G alto recorder", "G alto"],
    family: "recorder",
    low: { letter: "G", alter: 0, octave: 4 },
    high: { letter: "A", alter: 0, octave: 6 },
    sounding: { steps: 0, semitones: 0 },
    soft: "worked out from the alto recorder, a tone up",
  },
  {
    id: "voice flute",
    names: ["voice flute", "tenor recorder in D"],
    family: "recorder",
    low: { letter: "D", alter: 0, octave: 4 },
    high: { letter: "E", alter: 0, octave: 6 },
    sounding: { steps: 0, semitones: 0 },
    soft: "the top note is from memory",
  },
  {
    id: "tenor recorder",
    names: ["tenor recorder"],
    family: "recorder",
    low: { letter: "C", alter: 0, octave: 4 },
    high: { letter: "D", alter: 0, octave: 6 },
    sounding: { steps: 0, semitones: 0 },
  },
  {
    id: "bass recorder",
    names: ["bass recorder", "basset recorder"],
    family: "recorder",
    low: { letter: "F", alter: 0, octave: 2 },
    high: { letter: "F", alter: 0, octave: 4 },
    sounding: { steps: 7, semitones: 12 },
  },
  {
    id: "great bass recorder",
    names: ["great bass recorder", "great bass"],
    family: "recorder",
    low: { letter: "C", alter: 0, octave: 2 },
    high: { letter: "C", alter: 0, octave: 4 },
    sounding: { steps: 7, semitones: 12 },
    soft: "read here as written an octave below its sound; some parts are at pitch",
  },
  {
    id: "contrabass recorder",
    names: ["contrabass recorder"],
    family: "recorder",
    low: { letter: "F", alter: 0, octave: 2 },
    high: { letter: "F", alter: 0, octave: 4 },
    sounding: { steps: 0, semitones: 0 },
    soft: "read here as written at pitch; some parts are written an octave lower",
  },
  {
    id: "flute",
    names: ["flute"],
    family: "woodwind",
    low: { letter: "B", alter: 0, octave: 3 },
    high: { letter: "D", alter: 0, octave: 7 },
    sounding: { steps: 0, semitones: 0 },
  },
  {
    id: "oboe",
    names: ["oboe"],
    family: "woodwind",
    low: { letter: "B", alter: -1, octave: 3 },
    high: { letter: "C", alter: 0, octave: 7 },
    sounding: { steps: 0, semitones: 0 },
    soft: "many players stop at G6 (from memory)",
  },
  {
    id: "clarinet in Bb",
    names: ["clarinet in Bb", "Bb clarinet", "clarinet"],
    family: "woodwind",
    low: { letter: "E", alter: 0, octave: 3 },
    high: { letter: "C", alter: 0, octave: 7 },
    sounding: { steps: -1, semitones: -2 },
  },
  {
    id: "clarinet in A",
    names: ["clarinet in A", "A clarinet"],
    family: "woodwind",
    low: { letter: "E", alter: 0, octave: 3 },
    high: { letter: "C", alter: 0, octave: 7 },
    sounding: { steps: -2, semitones: -3 },
    soft: "worked out from the clarinet in B flat, which is fingered alike",
  },
  {
    id: "bassoon",
    names: ["bassoon"],
    family: "woodwind",
    low: { letter: "B", alter: -1, octave: 1 },
    high: { letter: "E", alter: 0, octave: 5 },
    sounding: { steps: 0, semitones: 0 },
  },
  {
    id: "soprano saxophone",
    names: ["soprano saxophone", "soprano sax"],
    family: "woodwind",
    low: { letter: "B", alter: -1, octave: 3 },
    high: { letter: "C", alter: 0, octave: 7 },
    sounding: { steps: -1, semitones: -2 },
    soft: "above F#6 is altissimo (from memory)",
  },
  {
    id: "alto saxophone",
    names: ["alto saxophone", "alto sax"],
    family: "woodwind",
    low: { letter: "B", alter: -1, octave: 3 },
    high: { letter: "C", alter: 0, octave: 7 },
    sounding: { steps: -5, semitones: -9 },
    soft: "above F#6 is altissimo (from memory)",
  },
  {
    id: "tenor saxophone",
    names: ["tenor saxophone", "tenor sax"],
    family: "woodwind",
    low: { letter: "B", alter: -1, octave: 3 },
    high: { letter: "C", alter: 0, octave: 7 },
    sounding: { steps: -8, semitones: -14 },
    soft: "above F#6 is altissimo (from memory)",
  },
  {
    id: "baritone saxophone",
    names: ["baritone saxophone", "baritone sax"],
    family: "woodwind",
    low: { letter: "A", alter: 0, octave: 3 },
    high: { letter: "C", alter: 0, octave: 7 },
    sounding: { steps: -12, semitones: -21 },
    soft: "above F#6 is altissimo (from memory)",
  },
  {
    id: "violin",
    names: ["violin"],
    family: "string",
    low: { letter: "G", alter: 0, octave: 3 },
    high: { letter: "G", alter: 0, octave: 7 },
    sounding: { steps: 0, semitones: 0 },
  },
  {
    id: "viola",
    names: ["viola"],
    family: "string",
    low: { letter: "C", alter: 0, octave: 3 },
    high: { letter: "A", alter: 0, octave: 6 },
    sounding: { steps: 0, semitones: 0 },
  },
  {
    id: "cello",
    names: ["cello", "violoncello"],
    family: "string",
    low: { letter: "C", alter: 0, octave: 2 },
    high: { letter: "F", alter: 1, octave: 6 },
    sounding: { steps: 0, semitones: 0 },
  },
  {
    id: "trumpet in Bb",
    names: ["trumpet in Bb", "Bb trumpet", "trumpet"],
    family: "brass",
    low: { letter: "F", alter: 1, octave: 3 },
    high: { letter: "E", alter: -1, octave: 6 },
    sounding: { steps: -1, semitones: -2 },
  },
  {
    id: "horn in F",
    names: ["horn in F", "F horn", "French horn", "horn"],
    family: "brass",
    low: { letter: "D", alter: 0, octave: 2 },
    high: { letter: "C", alter: 0, octave: 6 },
    sounding: { steps: -4, semitones: -7 },
  },
];

export function instrumentById(id: string): Instrument | undefined {
  return INSTRUMENTS.find((instrument) => instrument.id === id);
}

/** Whether a written note lies between the lowest and the highest one of the instrument. */
export function isInRange(range: Range, note: Note): boolean {
  return midi(range.low) <= midi(note) && midi(note) <= midi(range.high);
}

/** The note that sounds when `written` is played. */
export function soundingNote({ sounding }: Pick<Instrument, "sounding">, written: Note): Note {
  return transposed(written, sounding);
}
