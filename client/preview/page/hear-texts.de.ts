import type { hearTexts as english } from "./hear-texts.ts";

export const hearTexts: typeof english = {
  heading: "Zum Anhören",
  aLine: "eine Zeile zum Anhören",
  hear: "Anhören",
  hearLine: (line) => `Anhören: ${line}`,
  stop: "Stopp",
  goOn: (next) => `Weiter: ${next}`,
  was: (heard) => `Das war: ${heard}.`,
  sounds: (heard) => `Zu hören: ${heard}.`,
  writeTempo: (bpm) => `${String(bpm).replace(".", ",")} in die Zeile von heute schreiben`,
  loudness: "Lautstärke",
  caution: "Fang leise an: Lauter Klang schadet dem Gehör, besonders mit Kopfhörern.",
  unknown: "Das lässt sich gerade nicht anhören.",
};
