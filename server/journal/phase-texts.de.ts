import type { phaseTexts as english } from "./phase-texts.ts";

const NAMES: Readonly<Record<string, string>> = {
  "warm-up": "Einspielen",
  groundwork: "Grundlagen",
  fluency: "Geläufigkeit",
  scales: "Tonleitern",
  technique: "Technik",
  studies: "Etüden",
  pieces: "Stücke",
  reading: "Vom Blatt",
  together: "Zusammenspiel",
  lesson: "Unterricht",
  away: "Ohne Instrument",
  break: "Pause",
};

export const phaseTexts: typeof english = {
  name: (phase) => NAMES[phase] ?? phase,
};
