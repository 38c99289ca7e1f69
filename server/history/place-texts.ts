/** How a place in a piece is called, of which records keep a noun in English with what was written behind it. */
export const placeTexts = {
  /** `bars 17-32`, `page 4`, `letter C to end`. */
  place: (noun: string, which: string) => `${noun} ${which}`,
  movement: (which: string) => `mvt ${which}`,
  fromTheTop: "from the top",
};
