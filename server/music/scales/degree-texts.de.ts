import type { degreeTexts as english } from "./degree-texts.ts";

export const degreeTexts: typeof english = {
  ordinal,
  takes: (degree, name) => `Die ${ordinal(degree)} Stufe hat den Stammton ${name}`,
  isDegreeOf: (note, change, degree, key, name) => {
    const changed = change === "raised" ? "erhöhte " : change === "lowered" ? "erniedrigte " : "";
    return `Der ${ordinal(note)} Ton ist die ${changed}${ordinal(degree)} Stufe von ${key} und hat den Stammton ${name}`;
  },
};

const ORDINALS = [
  "erste",
  "zweite",
  "dritte",
  "vierte",
  "fünfte",
  "sechste",
  "siebte",
  "achte",
  "neunte",
  "zehnte",
  "elfte",
  "zwölfte",
];

function ordinal(place: number): string {
  return ORDINALS[place - 1] ?? `${place}.`;
}
