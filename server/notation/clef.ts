import type { Instrument } from "../music/instruments/instrument.ts";
import { type Note, staffStep } from "../music/notes/note.ts";

export type ClefName = "treble" | "bass" | "alto" | "tenor";

/** A clef at the beginning of a staff. */
export interface Clef {
  readonly name: ClefName;
  /** The figure at the clef: an 8 above or below it. */
  readonly mark?: "8va" | "8vb";
  /** The staff step (see `staffStep`) of the written note on the bottom line. */
  readonly bottomLine: number;
}

/** E4, G2, F3, D3: the notes on the bottom line, as staff steps. */
export const BOTTOM_LINE: Readonly<Record<ClefName, number>> = {
  treble: staffStep({ letter: "E", alter: 0, octave: 4 }),
  bass: staffStep({ letter: "G", alter: 0, octave: 2 }),
  alto: staffStep({ letter: "F", alter: 0, octave: 3 }),
  tenor: staffStep({ letter: "D", alter: 0, octave: 3 }),
};

/** The clefs of an instrument, from the lowest up; the first is its usual one. */
const TREBLE = ["treble"] as const;
const BASS = ["bass"] as const;
const BASS_AND_ABOVE = ["bass", "tenor", "treble"] as const;
const BASS_OR_TREBLE = ["bass", "treble"] as const;
const ALTO_AND_ABOVE = ["alto", "treble"] as const;

/**
 * Instruments that are not in treble clef alone. Common practice, no source; test/reference/instrument-ranges.json has
 * the clefs of some, as `clef`.
 */
const CLEFS: Readonly<Record<string, readonly ClefName[]>> = {
  "bass recorder": BASS,
  "great bass recorder": BASS,
  "contrabass recorder": BASS,
  bassoon: BASS_AND_ABOVE,
  contrabassoon: BASS,
  "bass crumhorn": BASS,
  "great bass crumhorn": BASS,
  "tenor crumhorn": BASS_OR_TREBLE,
  "baritone horn": BASS,
  euphonium: BASS_AND_ABOVE,
  trombone: BASS_AND_ABOVE,
  "bass trombone": BASS,
  tuba: BASS,
  viola: ALTO_AND_ABOVE,
  cello: BASS_AND_ABOVE,
  "double bass": BASS_AND_ABOVE,
  "bass guitar": BASS,
  "tenor viol": ALTO_AND_ABOVE,
  "bass viol": ["bass", "alto", "treble"],
  lute: BASS_OR_TREBLE,
  "baritone voice": BASS,
  "bass voice": BASS,
};

/** An octave figure at the clef, and by how many octaves the engine's notes stand below that staff's. */
interface Marked {
  readonly mark: NonNullable<Clef["mark"]>;
  readonly lower: number;
}

/**
 * Whose clef has an octave figure. Recorders that sound an octave above their notes here are marked so (the garklein
 * sounds two, and is left without, as its parts mostly are); a tenor voice and
 * a guitar are read an octave above the note that sounds. The voice's range stands here with the notes that sound, the
 * others' with those that are written. Common practice, no source.
 */
const MARKED: Readonly<Record<string, Marked>> = {
  "sopranino recorder": { mark: "8va", lower: 0 },
  "soprano recorder": { mark: "8va", lower: 0 },
  "bass recorder": { mark: "8va", lower: 0 },
  "great bass recorder": { mark: "8va", lower: 0 },
  guitar: { mark: "8vb", lower: 0 },
  "tenor voice": { mark: "8vb", lower: 1 },
};

/**
 * The clef that an exercise is written in for an instrument: the lowest of the instrument's clefs in which its middle
 * note is not above the staff. Keyboards, harps and instruments that a journal declared take bass or treble clef by the
 * notes alone; without an instrument it is treble unless most lie far below it.
 */
export function clefFor(instrument: Pick<Instrument, "id" | "family"> | undefined, notes: readonly Note[]): Clef {
  const marked = instrument && MARKED[instrument.id];
  const middle = medianStep(notes) + 7 * (marked?.lower ?? 0);
  const name = clefByNotes(clefsOf(instrument), middle, instrument !== undefined && byNotes(instrument));
  const bottomLine = BOTTOM_LINE[name] - 7 * (marked?.lower ?? 0);
  return marked && (name === "treble" || name === "bass")
    ? { name, mark: marked.mark, bottomLine }
    : { name, bottomLine };
}

function byNotes({ family }: Pick<Instrument, "family">): boolean {
  return family === "keyboard" || family === "declared" || family === "percussion";
}

function clefsOf(instrument: Pick<Instrument, "id" | "family"> | undefined): readonly ClefName[] {
  if (!instrument) return BASS_OR_TREBLE;
  const own = CLEFS[instrument.id];
  if (own) return own;
  return byNotes(instrument) || instrument.id === "harp" ? BASS_OR_TREBLE : TREBLE;
}

/** Places above the bottom line up to which the middle note of an exercise may lie: the first space above the staff. */
const HIGHEST_MIDDLE = 9;

/** Where the notes alone decide, middle C is treble's. */
const MIDDLE_C = staffStep({ letter: "C", alter: 0, octave: 4 });

function clefByNotes(clefs: readonly ClefName[], middle: number, byNotesAlone: boolean): ClefName {
  if (byNotesAlone) return middle >= MIDDLE_C ? "treble" : "bass";
  return clefs.find((name) => middle - BOTTOM_LINE[name] <= HIGHEST_MIDDLE) ?? clefs.at(-1)!;
}

function medianStep(notes: readonly Note[]): number {
  const steps = notes.map(staffStep).sort((a, b) => a - b);
  return steps[Math.floor(steps.length / 2)] ?? MIDDLE_C + 7;
}
