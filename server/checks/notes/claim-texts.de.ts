import { degreeTexts } from "../../music/scales/degree-texts.ts";
import { signatureTexts } from "../../music/scales/signature-texts.ts";
import type { claimTexts as english } from "./claim-texts.ts";

const { accidentals } = signatureTexts;

export const claimTexts: typeof english = {
  signatureOf: (exercise) => `die Vorzeichen von ${exercise}`,
  ownSignature: (exercise) => `die eigenen Vorzeichen von ${exercise}, in denen alle Töne enthalten sind`,
  onTonic: (key, exercise) =>
    `die Vorzeichen von ${key} auf demselben Grundton; was in ${exercise} anders ist, steht vor dem einzelnen Ton`,
  ofParent: (key, exercise) => `die Vorzeichen von ${key}; aus dessen Tonleiter kommt ${exercise}`,
  ofKey: (key) => `die Vorzeichen von ${key}`,
  onDominant: (key) => `die Vorzeichen von ${key}; dort gibt es diesen Akkord mit erhöhtem Leitton`,
  onLeadingNote: (key) => `die Vorzeichen von ${key}; dort gibt es diesen Akkord auf der erhöhten siebten Stufe`,
  withoutSignature: (exercise) => `keine Vorzeichen am Anfang; in ${exercise} steht jedes vor seinem Ton`,
  ofNoKey: "keine Vorzeichen am Anfang, denn eine Tonart gibt es dazu nicht",

  inFull: (fifths, notes) => accidentals(fifths) + (notes ? ` (${notes})` : ""),
  orAlso: (fifths, key) => ` oder ${accidentals(fifths)}${key ? ` wie ${key}` : ""}`,
  hasSignature: (exercise, right, claimed) => `${exercise} hat ${right}, nicht ${accidentals(claimed)}.`,
  belongsToNoKey: (exercise, claimed) =>
    `${exercise} gehört zu keiner Tonart und hat keine Vorzeichen am Anfang, nicht ${accidentals(claimed)}: Kreuze und b stehen vor den einzelnen Tönen.`,
  raised: (key, notes) =>
    notes.length === 1
      ? ` Es hat die Vorzeichen von ${key}; bei ${notes[0]} steht das Vorzeichen vor dem Ton.`
      : ` Es hat die Vorzeichen von ${key}; bei ${notes.join(" und ")} steht das Vorzeichen jeweils vor dem Ton.`,
  overSeven: "Mehr als sieben Vorzeichen hat keine Tonart.",
  belongsTo: (fifths, first, second) => {
    if (fifths === 0) return `Keine Vorzeichen haben ${first} und ${second}.`;
    return `${accidentals(fifths)} ${Math.abs(fifths) === 1 ? "gehört" : "gehören"} zu ${first} und ${second}.`;
  },

  noSteps: (exercise) =>
    `${exercise} hat keine Tonschritte, die sich prüfen ließen: Ein Akkord geht in Terzen und größeren Sprüngen.`,
  stepsUnread: (typed, exercise, steps) =>
    `Schreib Tonschritte als T und S, als W und H oder als Halbtöne in Ziffern (drei sind A, 3 oder m3): „${typed}“ lässt sich nicht lesen. ${exercise} hat ${steps}.`,
  inCents: (exercise, steps) => `${exercise} hat seine Schritte in Cent: ${steps}.`,
  countOfSteps: (exercise, right, given, steps) =>
    `${exercise} hat bis zur Oktave ${right} Schritte, hier ${stand(given)}: ${steps}.`,
  step: (place, exercise, way, between, right, claimed, steps) => {
    const which = place <= NAMED ? `Der ${degreeTexts.ordinal(place)} Schritt` : `Schritt ${place}`;
    const where = between ? ` (${between[0]} bis ${between[1]})` : "";
    return `${which} von ${exercise}${way === "down" ? " abwärts" : ""}${where} umfasst ${right}, nicht ${claimed}: ${steps}.`;
  },
  andCount: (right, given) => ` Es hat ${right} Schritte, hier ${stand(given)}.`,
  risingForm: " Gemeint sind die Schritte aufwärts.",

  otherScale: (what, name, kind) =>
    `Das sind die ${what === "notes" ? "Töne" : "Schritte"} von ${name}. Moll allein heißt hier natürliches Moll: Schreib dazu, dass es ${KINDS[kind] ?? kind} ist, wenn du das gespielt hast.`,
  changeSubject: (name) => `In ${name} ändern`,

  chromatic: (ways) =>
    `Alle Töne klingen richtig. Chromatische Tonleitern schreibt man meist auf eine dieser Weisen. ${ways.join(" ")}`,
  chromaticWays: {
    plain: "Aufwärts mit Kreuzen, abwärts mit b",
    melodic: "Die Töne der Tonart, die übrigen aufwärts erhöht und abwärts erniedrigt",
    harmonic: "Wie in der Tonart, aufwärts und abwärts gleich",
  },
  chromaticFixes: {
    plain: "Aufwärts mit Kreuzen, abwärts mit b schreiben",
    melodic: "Die Töne der Tonart behalten, die übrigen aufwärts erhöhen und abwärts erniedrigen",
    harmonic: "Die Töne wie in der Tonart nennen, aufwärts und abwärts gleich",
  },
};

const NAMED = 12;

/** The kinds that `minor` leaves open. */
const KINDS: Readonly<Record<string, string>> = {
  "harmonic minor": "harmonisches Moll",
  "melodic minor": "melodisches Moll",
  "jazz minor": "Jazz-Moll",
};

function stand(given: number): string {
  return given === 1 ? "steht einer" : `stehen ${given}`;
}
