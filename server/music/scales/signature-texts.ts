/** How key signatures are said. What is written into a journal is `describeFifths`. */
export const signatureTexts = {
  /** `2 sharps`, `1 flat`, `no accidentals`; flats where negative. */
  accidentals: (fifths: number): string => {
    if (fifths === 0) return "no accidentals";
    const number = Math.abs(fifths);
    return `${number} ${fifths > 0 ? "sharp" : "flat"}${number === 1 ? "" : "s"}`;
  },
};
