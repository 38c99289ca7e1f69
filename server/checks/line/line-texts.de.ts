import type { lineTexts as english } from "./line-texts.ts";

export const lineTexts: typeof english = {
  nothingPlayed:
    "Schreib zuerst, was du gespielt hast: eine Tonleiter (`D minor`), Töne (`notes E5 F5`) oder einen Titel in Anführungszeichen.",
  faultySubject: (because, names) =>
    `${capital(because)}${names === undefined ? "" : ` unter den ${LANGUAGES[names] ?? names}en Tonnamen`}.`,
  englishNotes: " Töne heißen wie die Buchstaben A bis G, mit höchstens zwei Kreuzen oder zwei b.",
  notesIn: (names, examples) =>
    ` In diesem Tagebuch gelten die ${LANGUAGES[names] ?? names}en Tonnamen, etwa ${examples}.`,
  oneLineEach: "Für jedes eine eigene Zeile schreiben",
  titleNotDeclared: (title) => `„${title}“ ist noch nicht festgelegt, darum sind Tonart und Ziel nicht bekannt.`,
  declare: (declaration) => `Festlegen: ${declaration}`,
  claimsOnNothing:
    "Töne und Tonschritte nach einem Doppelpunkt lassen sich nur bei einer einzelnen Tonleiter oder einem einzelnen Arpeggio prüfen.",

  takes: {
    day: "In die Zeile mit dem Datum gehören ein Wochentag, Minuten, `lesson`, `plan` oder `rest` mit einem Grund",
    session: "In eine Zeile mit `session` gehören eine Uhrzeit und Minuten",
    phase: "In die Zeile einer Phase gehören Minuten, `plan` oder `with` mit Wörtern",
    break: "In die Zeile einer Pause gehören Minuten",
    plan: "In diese Zeile gehört sonst nichts",
  },
  impossibleTime: (typed) =>
    `„${typed}“ ist keine mögliche Dauer: 1 bis 1440 Minuten am Tag, 0 bis 59 nach den Stunden.`,

  conflictMarker:
    "Behalte die richtigen Zeilen und lösch die Markierungen: Zwei Fassungen dieses Tagebuchs wurden zusammengeführt, und diese Markierung ist stehen geblieben.",
  tooLong: (length, most) =>
    `Teil diese Zeile in mehrere auf: Sie hat ${length} Zeichen und wurde nicht gelesen. Eine Zeile darf höchstens ${most} haben.`,
  notADeclaration: (word) => `„${word}“ ist keine Festlegung.`,
  kept: "Bleibt, wie es da steht, und zählt nicht. Eine Bemerkung beginnt mit `--`.",
  noDay: "Über dieser Zeile steht kein Datum. Schreib eines in der Form Jahr-Monat-Tag, wie `2026-03-02`.",

  faultyDeclaration: (because) => `${capital(because)}.`,
  belowDay: (word) => `\`${word}\` gilt für das ganze Tagebuch: Schreib es über den ersten Tag.`,
  moveAbove: "Über den ersten Tag verschieben",

  notInCalendar: (date) => `${date} gibt es im Kalender nicht, darum haben die Zeilen darunter kein Datum.`,
  notIsoDate: (date) => `${date} hat nicht die Form Jahr-Monat-Tag, darum haben die Zeilen darunter kein Datum.`,
  otherWeekday: (date, right, written) =>
    `${date} ist ein ${right}, kein ${written}. Entweder das Datum oder der Wochentag stimmt nicht.`,
  changeDateTo: (date) => `Das Datum in ${date} ändern`,
};

/** The languages of the names of notes, as adjectives without an ending. */
const LANGUAGES: Readonly<Record<string, string>> = {
  english: "englisch",
  german: "deutsch",
  dutch: "niederländisch",
  french: "französisch",
  italian: "italienisch",
  spanish: "spanisch",
};

function capital(words: string): string {
  return words[0]!.toUpperCase() + words.slice(1);
}
