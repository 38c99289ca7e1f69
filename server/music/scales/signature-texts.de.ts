import type { signatureTexts as english } from "./signature-texts.ts";

const NUMBERS = ["kein", "ein", "zwei", "drei", "vier", "fünf", "sechs", "sieben"];

export const signatureTexts: typeof english = {
  accidentals: (fifths) => (fifths === 0 ? "keine Vorzeichen" : `${Math.abs(fifths)} ${signs(fifths)}`),
  accidentalsInWords: (fifths) =>
    fifths === 0 ? "keine Vorzeichen" : `${NUMBERS[Math.abs(fifths)] ?? Math.abs(fifths)} ${signs(fifths)}`,
  withAccidentals: (fifths) =>
    fifths === 0 ? "ohne Vorzeichen" : `mit ${Math.abs(fifths)} ${fifths > 1 ? "Kreuzen" : signs(fifths)}`,
};

/** The plural of `b` is `b`, as in `drei b` (from memory). */
function signs(fifths: number): string {
  if (fifths < 0) return "b";
  return fifths === 1 ? "Kreuz" : "Kreuze";
}
