import type { signatureTexts as english } from "./signature-texts.ts";

export const signatureTexts: typeof english = {
  accidentals: (fifths) => {
    if (fifths === 0) return "keine Vorzeichen";
    const number = Math.abs(fifths);
    return fifths > 0 ? `${number} ${number === 1 ? "Kreuz" : "Kreuze"}` : `${number} b`;
  },
};
