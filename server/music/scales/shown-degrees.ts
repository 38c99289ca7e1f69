import { type Degree, degreesIn } from "../notes/degree.ts";
import { LETTERS, letterIndex, modulo, type NoteName, pitchClass, sameName, transposed } from "../notes/note.ts";

/** What the keys of the octave are called, C first, where white keys are natural and black ones sharps, or flats. */
const BY_SHARPS = "C C# D D# E F F# G G# A A# B".split(" ").map(keyNamed);
const BY_FLATS = "C Db D Eb E F Gb G Ab A Bb B".split(" ").map(keyNamed);

function keyNamed(text: string): NoteName {
  const alter = { "#": 1, b: -1 }[text[1] ?? ""] ?? 0;
  return { letter: LETTERS[letterIndex(text[0] as NoteName["letter"])]!, alter };
}

/** How far a name lies above a tonic within the octave, by letters; in semitones it is given. */
function degreeAbove(tonic: NoteName, name: NoteName, semitones: number): Degree {
  const letters = modulo(letterIndex(name.letter) - letterIndex(tonic.letter), 7);
  const step = [letters, letters - 7, letters + 7].find((steps) =>
    sameName(transposed(tonic, { steps, semitones }), name),
  );
  return { step: step ?? letters, semitones };
}

/**
 * The chromatic scale as method books for winds print it: white keys natural, black keys sharps going up and flats
 * coming down; the tonic alone keeps its name, be it what it may. Low to high. Common practice, no source.
 */
export function plainChromatic(tonic: NoteName, direction: "up" | "down"): Degree[] {
  const names = direction === "up" ? BY_SHARPS : BY_FLATS;
  return names.map((_, semitones) => {
    if (semitones === 0) return { step: 0, semitones };
    return degreeAbove(tonic, names[modulo(pitchClass(tonic) + semitones, 12)]!, semitones);
  });
}

/** The whole-tone scale with its diminished third after each of its notes, the last first. */
const WHOLE_TONE: readonly (readonly Degree[])[] = [
  degreesIn("1 2 3 #4 #5 #6"),
  degreesIn("1 2 3 #4 #5 b7"),
  degreesIn("1 2 3 #4 b6 b7"),
  degreesIn("1 2 3 b5 b6 b7"),
  degreesIn("1 2 b4 b5 b6 b7"),
  degreesIn("1 bb3 b4 b5 b6 b7"),
];

/** Double accidentals weigh most, then white keys with an accidental. */
function unreadable(names: readonly NoteName[]): number {
  const white = names.filter((name) => Math.abs(name.alter) === 1 && BY_SHARPS[pitchClass(name)]!.alter === 0);
  return 100 * names.filter(({ alter }) => Math.abs(alter) > 1).length + white.length;
}

/**
 * A whole-tone scale with its diminished third where the fewest double accidentals result: below the octave if there
 * are none then; else, of places with as few, where no white key needs an accidental. Common practice, no source.
 */
export function shownWholeTone(tonic: NoteName): readonly Degree[] {
  const names = (degrees: readonly Degree[]): NoteName[] =>
    degrees.map(({ step, semitones }) => transposed(tonic, { steps: step, semitones }));
  const burden = WHOLE_TONE.map((degrees) => unreadable(names(degrees)));
  if (burden[0]! < 100) return WHOLE_TONE[0]!;
  return WHOLE_TONE[burden.indexOf(Math.min(...burden))]!;
}
