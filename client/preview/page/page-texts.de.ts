import type { pageTexts as english } from "./page-texts.ts";

export const pageTexts: typeof english = {
  practice: "Üben",
  parts: "Abschnitte",
  today: "Heute",
  exercises: "Übungen",
  pieces: "Stücke",
  keys: "Tonarten",
  lesson: "Unterricht",
  forTheLesson: "Für den Unterricht",
  weeks: "Wochen",
  aims: "Ziele",

  weeksShown: "Gezeigte Wochen",
  weeksShownFrom: (dates) => `Gezeigte Wochen: ${dates}`,
  allWeeks: "alle Wochen",
  weeksLong: (weeks) => `${weeks} Wochen`,
  instrument: "Instrument",
  allInstruments: "alle Instrumente",

  reading:
    "Es werden noch Dateien gelesen: Was hier steht, ist vielleicht nur ein Teil, deshalb ist noch kein Trend zu sehen.",
  showCare: "Zeigen, was du zum Körper notiert hast",
  putCareAway: "Für heute ausblenden",
  inMinutes: "Minuten",
  asTable: "Als Tabelle",
  minutesAsTable: "Minuten in der Woche als Tabelle",
};
