import { type Degree, degreesIn } from "../notes/degree.ts";

export interface ChordKind {
  readonly id: string;
  /** All ways to say it in English, without the root and without `arpeggio`; the first is the one to show. */
  readonly names: readonly string[];
  /** What names it only before a further word, as in `minor 7 arpeggio`: alone it is a minor key and a number. */
  readonly shortNames?: readonly string[];
  /** From the root upward, within the octave. */
  readonly degrees: readonly Degree[];
  /**
   * What to add to the root's place on the line of fifths for the signature of the key that an arpeggio is played in.
   * Null for the chords that divide the octave evenly: they belong to no one key.
   */
  readonly signature: number | null;
  /** Likewise of the minor key that has the chord on its raised seventh degree, where the chord has no one key. */
  readonly leadingTo?: number;
  readonly sentence: string;
}

/** The chords of format.md. Intervals and keys are common practice; test/reference holds them spelled out. */
export const CHORDS: readonly ChordKind[] = [
  {
    id: "major",
    names: ["major"],
    degrees: degreesIn("1 3 5"),
    signature: 0,
    sentence: "The major triad: a major third and a perfect fifth above the root.",
  },
  {
    id: "minor",
    names: ["minor"],
    degrees: degreesIn("1 b3 5"),
    signature: -3,
    sentence: "The minor triad: a minor third and a perfect fifth above the root.",
  },
  {
    id: "augmented",
    names: ["augmented", "aug"],
    degrees: degreesIn("1 3 #5"),
    signature: null,
    sentence:
      "The augmented triad: two major thirds, which divide the octave evenly, so that it belongs to no one key.",
  },
  {
    id: "diminished",
    names: ["diminished", "dim"],
    degrees: degreesIn("1 b3 b5"),
    signature: -5,
    sentence:
      "The diminished triad: two minor thirds, the chord on the leading note of the major key a semitone above.",
  },
  {
    id: "dominant seventh",
    names: ["dominant seventh", "dominant 7th", "dominant 7", "dom seventh", "dom 7th", "dom 7"],
    degrees: degreesIn("1 3 5 b7"),
    signature: -1,
    sentence:
      "The dominant seventh: a major triad with a minor seventh, the chord on the fifth degree of the key a fifth below.",
  },
  {
    id: "major seventh",
    names: ["major seventh", "major 7th"],
    shortNames: ["major 7", "maj 7", "maj 7th"],
    degrees: degreesIn("1 3 5 7"),
    signature: 0,
    sentence: "The major seventh: a major triad with a major seventh.",
  },
  {
    id: "minor seventh",
    names: ["minor seventh", "minor 7th"],
    shortNames: ["minor 7", "min 7", "min 7th"],
    degrees: degreesIn("1 b3 5 b7"),
    signature: -3,
    sentence: "The minor seventh: a minor triad with a minor seventh.",
  },
  {
    id: "half-diminished seventh",
    names: [
      "half-diminished seventh",
      "half-diminished 7th",
      "half-diminished",
      "minor seventh flat five",
      "minor 7th flat 5",
      "minor 7 flat 5",
      "minor 7 flat five",
    ],
    shortNames: ["half-diminished 7"],
    degrees: degreesIn("1 b3 b5 b7"),
    signature: -5,
    sentence:
      "The half-diminished seventh: a diminished triad with a minor seventh, the seventh on the leading note of the major key a semitone above.",
  },
  {
    id: "diminished seventh",
    names: [
      "diminished seventh",
      "diminished 7th",
      "diminished 7",
      "dim seventh",
      "dim 7th",
      "dim 7",
      "fully diminished seventh",
      "fully diminished 7th",
      "fully diminished",
    ],
    degrees: degreesIn("1 b3 b5 bb7"),
    signature: null,
    leadingTo: -8,
    sentence:
      "The diminished seventh: three minor thirds, which divide the octave evenly, so that it belongs to no one key; it leads to the minor key a semitone above its root.",
  },
];
