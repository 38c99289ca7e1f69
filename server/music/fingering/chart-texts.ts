/** The charts of test/reference/recorder-fingerings.json, by the letters that it has for them. */
export const chartTexts = {
  D: "Dolmetsch Online",
  C: "the CTAN recorder-fingering charts",
  R: "the Recorder Home Page",
  B: "a blog's chart",
};
