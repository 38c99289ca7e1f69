import type { theoryTexts as english } from "./theory-texts.ts";

const COLLECTIONS = {
  "whole-tone": "Ganztonleiter",
  octatonic: "oktatonische Tonleiter",
  "diminished seventh": "verminderter Septakkord",
} as const;

export const theoryTexts: typeof english = {
  hidden: "Töne: verborgen, bis du sie ausschreiben lässt",
  noSignature: "keine Vorzeichen",
  quarterTones: ", auf den nächsten Viertelton",
  risingAndFalling: (rising, falling) => `${rising}, abwärts ${falling}`,
  notes: (further, row) => `Töne${further}: ${row}`,
  notesUp: (further, row) => `Töne aufwärts${further}: ${row}`,
  down: (row) => `Abwärts: ${row}`,
  signature: (own, others) =>
    `Vorzeichen: ${own}${others.length > 0 ? `; auch ${others.join(" oder ")} geschrieben` : ""}`,
  noKey: "keine, gehört zu keiner Tonart",
  asKeyIs: (count, key) => `${count} wie ${key}`,
  withNone: "ohne",
  stepsInCents: (steps) => `Schritte in Cent: ${steps}`,
  steps: (steps) => `Schritte: ${steps}`,
  stepsUp: (steps) => `Schritte aufwärts: ${steps}`,
  noKeyHasIt: "Keine gebräuchliche Tonart hat so viele.",
  keysHaveIt: (major, minor) => `So stehen ${major} und ${minor}.`,
  signatureHere: (what) => ` Hier: ${what}.`,
  relative: (key) => `Paralleltonart: ${key}`,
  parallel: (key) => `gleichnamige Tonart: ${key}`,
  collection: (name, { number, of }, marks, sameFrom) =>
    `${COLLECTIONS[name]} ${number} von ${of}, mit ${marks.join(" und ")}; dieselben Töne von ${sameFrom} aus`,
};
