import type { chartTexts as english } from "./chart-texts.ts";

export const chartTexts: typeof english = {
  D: "Dolmetsch Online",
  C: "die Grifftabellen von CTAN",
  R: "die Recorder Home Page",
  B: "die Grifftabelle eines Blogs",
};
