import { signatureTexts } from "../music/scales/signature-texts.de.ts";
import type { staffTexts as english } from "./staff-texts.ts";

const CLEFS = {
  treble: "Violinschlüssel",
  bass: "Bassschlüssel",
  alto: "Altschlüssel",
  tenor: "Tenorschlüssel",
} as const;

export const staffTexts: typeof english = {
  head: (clef, mark, fifths, way) => {
    const marked = mark === undefined ? "" : ` mit einer 8 ${mark === "8va" ? "darüber" : "darunter"}`;
    return [`${CLEFS[clef]}${marked}`, signatureTexts.accidentals(fifths), ...(way ? [way] : [])].join(", ");
  },
  markedNote: (name, mark) => `${name} (${mark})`,
  degree: (place) => `${place}. Stufe`,
  chordNote: (place) => `${place}. Ton`,
  noDegree: "keine Stufe",

  nothingFits: "Nichts davon passt in diesen Umfang.",
  inCents: "Eine Tonleiter in Cent lässt sich nicht in Noten zeigen: Ihre Töne liegen zwischen den Tasten.",
  tooLong: (most) => `Es sind mehr als ${most} Töne. Nenn einen kleineren Umfang.`,
  beyondDouble: "Die Töne bräuchten drei Kreuze oder b; die gibt es in der Notenschrift nicht.",

  asWritten: "wie geschrieben",
  asItShouldBe: "wie es sein sollte",
  titleOf: (title, label) => `${title}, ${label}`,
  leftOut: "ausgelassen",
  oneTooMany: "einer zu viel",
  here: (note) => `hier ${note}`,
  written: (note) => `geschrieben ${note}`,
};
