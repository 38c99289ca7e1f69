import { type NoteName, pitchClass } from "../notes/note.ts";
import type { ScaleKind } from "./kind.ts";
import { scaleNames } from "./scale.ts";

/** The few sets of notes that a symmetrical scale or chord can have: on other tonics the same ones come again. */
export interface Collection {
  readonly name: "whole-tone" | "octatonic" | "diminished seventh";
  /** From 1, the one with C first. */
  readonly number: number;
  /** How many there are. */
  readonly of: number;
  /** 0 is C, 11 is B; rising. */
  readonly pitchClasses: readonly number[];
  /** Notes that no other of them has together, as they are written here. */
  readonly with: readonly NoteName[];
  /** The other tonics on which the same kind has the same notes, as they are written here. */
  readonly sameFrom: readonly NoteName[];
}

interface Symmetry {
  readonly name: Collection["name"];
  /** Semitones after which it comes again. */
  readonly period: number;
  /** For each collection, pitch classes that none of the others has together. */
  readonly marks: readonly (readonly number[])[];
}

const SYMMETRIES: Readonly<Record<string, Symmetry>> = {
  "whole-tone": { name: "whole-tone", period: 2, marks: [[0], [1]] },
  octatonic: {
    name: "octatonic",
    period: 3,
    marks: [
      [0, 1],
      [1, 2],
      [0, 2],
    ],
  },
  "diminished seventh": { name: "diminished seventh", period: 3, marks: [[0], [1], [2]] },
};

/** Which of the two whole-tone or three octatonic collections a scale is; null for any other. */
export function collectionOfScale(tonic: NoteName, kind: ScaleKind): Collection | null {
  const symmetry = SYMMETRIES[kind.family];
  return symmetry ? collectionOf(scaleNames(tonic, kind, "up"), symmetry) : null;
}

/** Which of the three diminished sevenths has these notes, from its root upward. */
export function diminishedSeventh(names: readonly NoteName[]): Collection {
  return collectionOf(names, SYMMETRIES["diminished seventh"]!);
}

function collectionOf(names: readonly NoteName[], { name, period, marks }: Symmetry): Collection {
  const own = new Map(names.map((each) => [pitchClass(each), each]));
  const at = marks.findIndex((pitches) => pitches.every((pitch) => own.has(pitch)));
  const tonic = pitchClass(names[0]!);
  return {
    name,
    number: at + 1,
    of: marks.length,
    pitchClasses: [...own.keys()].sort((a, b) => a - b),
    with: marks[at]!.map((pitch) => own.get(pitch)!),
    sameFrom: names.slice(1).filter((each) => (pitchClass(each) - tonic) % period === 0),
  };
}
