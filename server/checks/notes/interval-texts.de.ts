import type { intervalTexts as english } from "./interval-texts.ts";

/** In the accusative: `liegt einen Halbton über`, `umfasst einen Halbton`. */
export const intervalTexts: typeof english = {
  chordInterval: (letters, semitones) => CHORD_INTERVALS[`${letters} ${semitones}`],
  semitones: (count) => ["", "einen Halbton", "einen Ganzton", "drei Halbtöne"][count] ?? `${count} Halbtöne`,
};

const CHORD_INTERVALS: Readonly<Record<string, string>> = {
  "2 3": "eine kleine Terz",
  "2 4": "eine große Terz",
  "4 6": "eine verminderte Quinte",
  "4 7": "eine reine Quinte",
  "4 8": "eine übermäßige Quinte",
  "6 9": "eine verminderte Septime",
  "6 10": "eine kleine Septime",
  "6 11": "eine große Septime",
};
