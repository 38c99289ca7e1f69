import type { sheetTexts as english } from "./sheet-texts.ts";

export const sheetTexts: typeof english = {
  language: "de",
  exercises: (days) => `Übungen, ${days}`,
  planFor: (date, year) => `Plan für den ${date} ${year}`,
  ofPlayer: (name, title) => `${name}: ${title}`,
  scales: "Tonleitern und Arpeggien",
  pieces: "Stücke",
  nothing: "An diesen Tagen stehen weder Tonleitern noch Arpeggien noch Stücke im Tagebuch.",
  set: (words) => `Aufgegeben: „${words}“.`,
  pause: "Pause",
  part: (heading, minutes) => `${heading}, ${minutes} min`,
  minutes: (minutes) => `${minutes} min`,
  hidden: "Die Töne bleiben verborgen, wie das Tagebuch es will.",
  tempo: "Tempo",
  howItWent: "wie es ging",
};
