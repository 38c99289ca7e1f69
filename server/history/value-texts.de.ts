import type { valueTexts as english } from "./value-texts.ts";

const VALUES: Readonly<Record<string, string>> = {
  wholes: "Ganze",
  halves: "Halbe",
  quarters: "Viertel",
  "quarter triplets": "Vierteltriolen",
  "8ths": "Achtel",
  triplets: "Triolen",
  "16ths": "Sechzehntel",
  quintuplets: "Quintolen",
  sextuplets: "Sextolen",
  septuplets: "Septolen",
  "32nds": "Zweiunddreißigstel",
  whole: "Ganze",
  half: "Halbe",
  quarter: "Viertel",
  "8th": "Achtel",
  "16th": "Sechzehntel",
  "32nd": "Zweiunddreißigstel",
};

export const valueTexts: typeof english = {
  value: (word) => {
    const undotted = word.replace(/^dotted /, "");
    const value = VALUES[undotted] ?? undotted;
    return undotted === word ? value : `punktierte ${value}`;
  },
  at: (value, tempo) => `${value} bei ${tempo}`,
  atTempo: (tempo) => `bei ${tempo}`,
};
