import type { declaredKindTexts as english } from "./declared-kind-texts.ts";

export const declaredKindTexts: typeof english = {
  sentence: (name, words) => `${name}: eine Tonleiter, die dieses Tagebuch festlegt, ${words}.`,
  noDegree: (word) => `${word} ist keine Stufe: Schreib 1 bis 7, davor höchstens zwei # oder b, wie in \`1 b2 3\``,
  passesOctave: (word) => `${word} geht über die Oktave hinaus: Dort darf nur eine schließende \`8\` stehen`,
  startsOnOne: (word) => `eine Tonleiter beginnt mit \`1\`, nicht mit ${word}`,
  closingTonic: "der schließende Grundton wird als `8` geschrieben oder weggelassen",
  oneTooMany: (word, most) =>
    `${word} ist eine Stufe zu viel: Eine Oktave hat ${most} Tasten; eine Tonleiter mit mehr Tönen wird in \`cents\` festgelegt`,
  notUpward: (word, before) => `${word} kommt nach ${before}: Die Stufen gehen der Zahl nach aufwärts`,
  notHigher: (word, before) => `${word} ist nicht höher als ${before} davor: Eine Tonleiter steigt`,
  reachesOctave: (word) => `${word} erreicht die Oktave: Jede Stufe liegt unter dem nächsten Grundton`,
  noCents: (word) => `${word} ist keine Zahl von Cent über dem Grundton, wie in \`cents 0 150 300\``,
  centsFromNought: (word) => `Cent beginnen mit \`0\`, dem Grundton, nicht mit ${word}`,
  centsReachOctave: (word) => `${word} erreicht die Oktave: Cent bleiben unter 1200`,
  twoNotes: "eine Tonleiter braucht mindestens zwei Töne, wie in `1 b2 3 4 5 b6 7`",
  atMost: (most) => `eine Tonleiter kann höchstens ${most} Töne haben`,
  unequalWays: (up, down) =>
    `${up} ${up === 1 ? "Ton geht" : "Töne gehen"} aufwärts und ${down} abwärts: In beiden Richtungen sind es gleich viele`,
};
