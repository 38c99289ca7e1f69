import { numberTexts } from "../../music/notes/number-texts.ts";
import type { fileTexts as english } from "./file-texts.ts";

export const fileTexts: typeof english = {
  duplicateDay: (date, where) =>
    `${date} steht schon ${where}. Für eine zweite Übeeinheit schreib \`session\` unter jenen Tag.`,
  above: (line) => `weiter oben, in Zeile ${line}`,
  inFile: (path, line) => `in ${path}, Zeile ${line}`,
  sameDays: (folders) =>
    `Die Ordner ${folders} haben dieselben Tage, wie wenn mehrere Personen darin schreiben. Leg in jeden eine leere Datei namens \`journal.practice\`: Dann ist jeder ein eigenes Tagebuch.`,
  strayDay: (date, file) =>
    `${date} liegt mitten unter den Tagen von ${file}, aber die meisten Dateien dieses Tagebuchs überschneiden sich nicht. Stimmt das Datum?`,
  futureDay: (date) => `${date} liegt in der Zukunft. Schreib \`plan\` dazu oder prüf das Datum.`,
  outOfOldestFirst: (date, before) => outOfOrder(date, before, "älteste"),
  outOfNewestFirst: (date, before) => outOfOrder(date, before, "neueste"),
  declaredTwice: (declaration) =>
    `\`${declaration}\`: Das ist schon festgelegt, und das Erste gilt. Lösch eines von beiden.`,

  aimPast: "Der Tag für dieses Ziel ist vorbei. Setz einen neuen oder lösch die Zeile.",
  aimFar: (subject, near, by) =>
    `Wenn es weitergeht wie zuletzt, läge ${subject ?? "das"} am ${by} bei etwa ${near}. Ein späterer Tag oder ein näheres Ziel lässt Raum, gelöst zu spielen.`,

  overBest: (tempo, before, when) => leap(tempo, "dein Bestes vorher", before, when),
  overFastest: (tempo, before, when) => leap(tempo, "dein schnellster Versuch vorher", before, when),
  sameDay: "früher am selben Tag",
  on: (date) => `am ${date}`,
};

function outOfOrder(date: string, before: string, first: string): string {
  return `${date} kommt nach ${before}, aber in dieser Datei steht der ${first} Tag zuerst. Stimmt das Datum?`;
}

function leap(tempo: string, what: string, before: string, when: string): string {
  const [now, then] = [numberTexts.decimal(tempo), numberTexts.decimal(before)];
  return `${now} ist über anderthalbmal so schnell wie ${what}, ${then} ${when}. Wenn das stimmt, lass es so. Sonst prüf Ziffern, Zählzeit und Notenwert.`;
}
