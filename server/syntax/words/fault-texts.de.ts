import type { faultTexts as english } from "./fault-texts.ts";

export const faultTexts: typeof english = {
  noSuchNote: (typed) => `es gibt keinen Ton ${typed}`,
  halfKind: (typed) => `„${typed}“ allein nennt keine Art von Tonleiter`,
  noKind: (typed) => `„${typed}“ ist keine Art von Tonleiter`,
  noSuchScale: (name) => `eine Tonleiter „${name}“ gibt es noch nicht: Leg sie zuerst fest`,
  singleNote: (typed) => `${typed} ist ein einzelner Ton`,
  majorOrMinor: (typed) => `ein kleines ${typed} kann Dur oder Moll sein`,
};
