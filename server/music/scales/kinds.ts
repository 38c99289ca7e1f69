import { type Degree, degreesIn } from "../notes/degree.ts";
import type { ScaleKind } from "./kind.ts";

const MAJOR: readonly Degree[] = degreesIn("1 2 3 4 5 6 7");

const MINOR: readonly Degree[] = degreesIn("1 2 b3 4 5 b6 b7");

/** Going up; the jazz minor comes down in the same notes. */
const MELODIC: readonly Degree[] = degreesIn("1 2 b3 4 5 6 7");

const HALF_WHOLE: readonly Degree[] = degreesIn("1 b2 b3 3 #4 5 6 b7");

/** `half-whole diminished`, `octatonic half-whole`; also with the word `scale` between. */
function octatonicNames(name: string, ...others: readonly string[]): readonly string[] {
  const families = ["octatonic", "diminished"];
  const whole = families.flatMap((family) => [`${name} ${family}`, `${family} ${name}`, `${family} scale ${name}`]);
  return [name, ...whole, ...others];
}

/** Every scale that needs no declaration. The formulas are common practice; test/reference holds them spelled out. */
export const KINDS: readonly ScaleKind[] = [
  {
    id: "major",
    names: ["major"],
    degrees: MAJOR,
    family: "seven",
    signature: { own: 0, parallel: 0 },
    sentence:
      "The major scale: whole tones, with semitones from its third to its fourth and from its seventh to its eighth degree.",
  },
  {
    id: "natural minor",
    names: ["natural minor", "minor natural", "minor"],
    degrees: MINOR,
    family: "seven",
    signature: { own: -3, parallel: -3 },
    sentence:
      "The natural minor scale: the notes of its key signature and no other, with a whole tone below the tonic.",
  },
  {
    id: "harmonic minor",
    names: ["harmonic minor", "minor harmonic"],
    degrees: degreesIn("1 2 b3 4 5 b6 7"),
    family: "seven",
    signature: { own: -3, parallel: -3 },
    sentence:
      "The harmonic minor scale: natural minor with the seventh raised, so that three semitones lie below the leading note.",
  },
  {
    id: "melodic minor",
    names: ["melodic minor", "minor melodic"],
    degrees: MELODIC,
    falling: MINOR,
    family: "seven",
    signature: { own: -3, parallel: -3 },
    sentence:
      "The melodic minor scale: the sixth and seventh are raised on the way up, and natural again on the way down.",
  },
  {
    id: "jazz minor",
    names: ["jazz minor", "jazz melodic minor", "melodic jazz minor"],
    degrees: MELODIC,
    family: "seven",
    signature: { own: -3, parallel: -3 },
    sentence: "The jazz minor scale: the rising melodic minor, in the same notes on the way down.",
  },
  {
    id: "ionian",
    names: ["ionian"],
    degrees: MAJOR,
    family: "seven",
    signature: { own: 0, parallel: 0 },
    sentence: "The ionian mode: the same notes as the major scale.",
  },
  {
    id: "dorian",
    names: ["dorian"],
    degrees: degreesIn("1 2 b3 4 5 6 b7"),
    family: "seven",
    signature: { own: -2, parallel: -3 },
    sentence: "The dorian mode: natural minor with a major sixth.",
  },
  {
    id: "phrygian",
    names: ["phrygian"],
    degrees: degreesIn("1 b2 b3 4 5 b6 b7"),
    family: "seven",
    signature: { own: -4, parallel: -3 },
    sentence: "The phrygian mode: natural minor with a semitone above the tonic.",
  },
  {
    id: "lydian",
    names: ["lydian"],
    degrees: degreesIn("1 2 3 #4 5 6 7"),
    family: "seven",
    signature: { own: 1, parallel: 0 },
    sentence: "The lydian mode: major with a raised fourth.",
  },
  {
    id: "mixolydian",
    names: ["mixolydian"],
    degrees: degreesIn("1 2 3 4 5 6 b7"),
    family: "seven",
    signature: { own: -1, parallel: 0 },
    sentence: "The mixolydian mode: major with a lowered seventh.",
  },
  {
    id: "aeolian",
    names: ["aeolian"],
    degrees: MINOR,
    family: "seven",
    signature: { own: -3, parallel: -3 },
    sentence: "The aeolian mode: the same notes as the natural minor scale.",
  },
  {
    id: "locrian",
    names: ["locrian"],
    degrees: degreesIn("1 b2 b3 4 b5 b6 b7"),
    family: "seven",
    signature: { own: -5, parallel: -3 },
    sentence: "The locrian mode: natural minor with a lowered second and a lowered fifth.",
  },
  {
    id: "major pentatonic",
    names: ["major pentatonic", "pentatonic major"],
    degrees: degreesIn("1 2 3 5 6"),
    family: "pentatonic",
    signature: { own: 0, parallel: 0 },
    sentence: "The major pentatonic scale: major without its fourth and seventh, so without a semitone.",
  },
  {
    id: "minor pentatonic",
    names: ["minor pentatonic", "pentatonic minor"],
    degrees: degreesIn("1 b3 4 5 b7"),
    family: "pentatonic",
    signature: { own: -3, parallel: -3 },
    sentence: "The minor pentatonic scale: natural minor without its second and sixth, so without a semitone.",
  },
  {
    id: "blues",
    names: ["blues", "minor blues"],
    degrees: degreesIn("1 b3 4 #4 5 b7"),
    falling: degreesIn("1 b3 4 b5 5 b7"),
    family: "blues",
    signature: { own: -3, parallel: -3 },
    otherSignatures: { none: true },
    sentence:
      "The blues scale: minor pentatonic with one more note between its fourth and fifth, written as a raised fourth going up and a lowered fifth going down.",
  },
  {
    id: "major blues",
    names: ["major blues"],
    degrees: degreesIn("1 2 b3 3 5 6"),
    family: "blues",
    signature: { own: 0, parallel: 0 },
    otherSignatures: { none: true },
    sentence: "The major blues scale: major pentatonic with a lowered third beside the major one.",
  },
  {
    id: "whole-tone",
    names: ["whole-tone", "whole tone"],
    degrees: degreesIn("1 2 3 #4 #5 #6"),
    family: "whole-tone",
    signature: null,
    sentence: "The whole-tone scale: six whole tones to the octave, one of them written as a diminished third.",
  },
  {
    id: "half-whole",
    names: octatonicNames("half-whole", "semitone-tone", "half-step whole-step"),
    degrees: HALF_WHOLE,
    family: "octatonic",
    signature: null,
    sentence: "The half-whole octatonic scale: semitone and whole tone by turns, the semitone first.",
  },
  {
    id: "whole-half",
    names: octatonicNames("whole-half", "tone-semitone", "whole-step half-step"),
    degrees: degreesIn("1 2 b3 4 b5 b6 6 7"),
    family: "octatonic",
    signature: null,
    sentence: "The whole-half octatonic scale: whole tone and semitone by turns, the whole tone first.",
  },
  {
    id: "octatonic",
    names: ["octatonic"],
    degrees: HALF_WHOLE,
    family: "octatonic",
    signature: null,
    sentence:
      "The octatonic scale: semitones and whole tones by turns; read here with the semitone first (half-whole), and the other order (whole-half) is as right.",
  },
  {
    id: "chromatic",
    names: ["chromatic"],
    degrees: degreesIn("1 #1 2 #2 3 4 #4 5 #5 6 #6 7"),
    falling: degreesIn("1 b2 2 b3 3 4 b5 5 b6 6 b7 7"),
    family: "chromatic",
    signature: null,
    sentence: "The chromatic scale: all twelve semitones, notes raised going up and lowered going down.",
  },
  {
    id: "harmonic major",
    names: ["harmonic major", "major harmonic"],
    degrees: degreesIn("1 2 3 4 5 b6 7"),
    family: "seven",
    signature: { own: 0, parallel: 0 },
    otherSignatures: { none: true },
    sentence:
      "The harmonic major scale: major with its sixth lowered, so that three semitones lie below the leading note.",
  },
  {
    id: "double harmonic",
    names: ["double harmonic", "double harmonic major"],
    degrees: degreesIn("1 b2 3 4 5 b6 7"),
    family: "seven",
    signature: { own: 0, parallel: 0 },
    otherSignatures: { none: true },
    sentence: "The double harmonic scale: major with its second and sixth lowered, three semitones above each of them.",
  },
  {
    id: "lydian dominant",
    names: ["lydian dominant", "lydian flat seven", "lydian b7"],
    degrees: degreesIn("1 2 3 #4 5 6 b7"),
    family: "seven",
    signature: { own: 0, parallel: 0 },
    otherSignatures: { none: true },
    sentence:
      "The lydian dominant scale: major with a raised fourth and a lowered seventh, the fourth mode of the jazz minor.",
  },
  {
    id: "phrygian dominant",
    names: ["phrygian dominant", "phrygian major"],
    degrees: degreesIn("1 b2 3 4 5 b6 b7"),
    family: "seven",
    signature: { own: -3, parallel: -3 },
    otherSignatures: { none: true, parent: { fifths: -4, mode: "minor" } },
    sentence: "The phrygian dominant scale: phrygian with a major third, the harmonic minor begun on its fifth degree.",
  },
  {
    id: "hungarian minor",
    names: ["hungarian minor", "double harmonic minor"],
    degrees: degreesIn("1 2 b3 #4 5 b6 7"),
    family: "seven",
    signature: { own: -3, parallel: -3 },
    otherSignatures: { none: true },
    sentence: "The Hungarian minor scale: harmonic minor with its fourth raised, three semitones above the third.",
  },
  {
    id: "altered",
    names: ["altered", "altered dominant", "super locrian", "superlocrian"],
    degrees: degreesIn("1 b2 #2 3 #4 b6 b7"),
    family: "jazz",
    signature: null,
    otherSignatures: { none: true, parent: { fifths: -8, mode: "minor" } },
    sentence:
      "The altered scale: root, third and seventh of a dominant chord, and its fifth and ninth both lowered and raised; the jazz minor begun on its seventh degree.",
  },
  {
    id: "bebop dominant",
    names: ["bebop dominant", "dominant bebop"],
    degrees: degreesIn("1 2 3 4 5 6 b7 7"),
    family: "jazz",
    signature: { own: -1, parallel: 0 },
    otherSignatures: { none: true },
    sentence: "The bebop dominant scale: mixolydian with the major seventh between its seventh and the octave.",
  },
  {
    id: "bebop major",
    names: ["bebop major", "major bebop"],
    degrees: degreesIn("1 2 3 4 5 #5 6 7"),
    falling: degreesIn("1 2 3 4 5 b6 6 7"),
    family: "jazz",
    signature: { own: 0, parallel: 0 },
    otherSignatures: { none: true },
    sentence:
      "The bebop major scale: major with one more note between its fifth and sixth, written raised going up and lowered going down.",
  },
];

/** The kind with this id, exactly as typed in `KINDS`. */
export function kindById(id: string): ScaleKind | undefined {
  return KINDS.find((kind) => kind.id === id);
}
