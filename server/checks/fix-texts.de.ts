import type { fixTexts as english } from "./fix-texts.ts";

export const fixTexts: typeof english = {
  quoted: (words) => `„${words}“`,
  didYouMean: (offers) => ` Meinst du ${offers.join(" oder ")}?`,
  changeTo: (text) => `In ${text} ändern`,
  write: (words) => `„${words}“ schreiben`,
  takeOut: (words) => `„${words}“ streichen`,
  closeQuote: "Anführungszeichen schließen",
  closingQuoteMissing: "Nach dem Namen fehlt das schließende Anführungszeichen.",
  makeRemark: "Zur Bemerkung machen",
};
