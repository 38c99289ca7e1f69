const NUMBERS = ["no", "one", "two", "three", "four", "five", "six", "seven"];

/** How key signatures are said; flats where negative. What is written into a journal is `describeFifths`. */
export const signatureTexts = {
  /** `2 sharps`, `1 flat`, `no accidentals`. */
  accidentals: (fifths: number) => `${fifths === 0 ? "no" : Math.abs(fifths)} ${signs(fifths)}`,
  /** The same with the number in words, up to seven: `one flat`. */
  accidentalsInWords: (fifths: number) => `${NUMBERS[Math.abs(fifths)] ?? Math.abs(fifths)} ${signs(fifths)}`,
  /** What something is written with: `with 2 sharps`. */
  withAccidentals: (fifths: number) => `with ${fifths === 0 ? "no" : Math.abs(fifths)} ${signs(fifths)}`,
};

function signs(fifths: number): string {
  if (fifths === 0) return "accidentals";
  return `${fifths > 0 ? "sharp" : "flat"}${Math.abs(fifths) === 1 ? "" : "s"}`;
}
