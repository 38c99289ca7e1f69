import type { likelyScaleTexts as english } from "./likely-scale-texts.ts";
import { signatureTexts } from "./signature-texts.de.ts";

const CHANGED = {
  "lowered seventh": "kleine Septime",
  "raised fourth": "übermäßige Quarte",
  "major sixth": "große Sexte",
  "lowered second": "kleine Sekunde",
} as const;
const DEGREES = { fourth: "vierte", sixth: "sechste", seventh: "siebte" } as const;

export const likelyScaleTexts: typeof english = {
  mode: (fifths, accidentals, name, key) => {
    const signed = accidentals === "" ? "Ohne Vorzeichen" : `${capital(withCount(fifths))} (${accidentals})`;
    return `${signed} sind die Töne von ${name} bis ${name} die von ${key}.`;
  },
  byAccidentals: (key, degree, note) =>
    `Oft mit den Vorzeichen von ${key} geschrieben; dann braucht die ${CHANGED[degree]}, ${note}, überall ein Versetzungszeichen.`,
  asOlderMusic: (key, degree, note) =>
    `In älterer Musik steht ${key} oft mit diesen Vorzeichen; dann braucht die ${DEGREES[degree]} Stufe, ${note}, ein Versetzungszeichen.`,
  endingOpen: (fifths, key) =>
    `${capital(withCount(fifths))} steht auch ${key}; dann endet das Stück offen, auf der fünften Stufe, wie ein Satz, der weiterführt.`,
  hasSignature: (why, key) => `${why} ${key} hat diese Vorzeichen.`,
  endingOnTonic: (fifths, key) => `${capital(withCount(fifths))} steht ${key}, und es endet auf dem Grundton.`,
  raised: (seventh, sixth) =>
    ` Kommt ${seventh} mit Versetzungszeichen vor, ist es harmonisches Moll, mit ${sixth} dazu melodisches.`,
  seldomLocrian: (note) =>
    `Ein ganzes Stück ist selten lokrisch: Vielleicht ist ${note} nicht der letzte Ton der tiefsten Stimme.`,
  raisedThird: (note, key) =>
    `${note} ist die große Terz von ${key}, dessen Vorzeichen das sind: Ältere Stücke in Moll schließen oft mit der großen Terz.`,
  notAmong: (note, fifths) => `${capital(withCount(fifths))} kommt ${note} nicht vor.`,
  undecided: (why) => `${why} So entscheidet der Schluss es nicht.`,
};

function withCount(fifths: number): string {
  return signatureTexts.withAccidentals(fifths);
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
