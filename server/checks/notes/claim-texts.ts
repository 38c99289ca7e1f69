import { degreeTexts } from "../../music/scales/degree-texts.ts";
import { signatureTexts } from "../../music/scales/signature-texts.ts";

const { accidentals } = signatureTexts;

/** What is said of claimed signatures and steps. An `exercise` is a scale or a chord; signatures are in fifths. */
export const claimTexts = {
  /** Which signature one is, as a phrase: */
  signatureOf: (exercise: string) => `the key signature of ${exercise}`,
  ownSignature: (exercise: string) => `the signature of ${exercise} itself, which holds all its notes`,
  onTonic: (key: string, exercise: string) =>
    `the signature of ${key}, on the same tonic: what differs in ${exercise} is written with accidentals`,
  ofParent: (key: string, exercise: string) => `the signature of ${key}, of whose scale ${exercise} is a form`,
  ofKey: (key: string) => `the signature of ${key}`,
  onDominant: (key: string) => `the signature of ${key}, which has this chord with its leading note raised`,
  onLeadingNote: (key: string) => `the signature of ${key}, which has this chord on its raised seventh degree`,
  withoutSignature: (exercise: string) =>
    `no key signature: every accidental of ${exercise} is written before its note`,
  ofNoKey: "no key signature, as it belongs to no key",

  /** @param notes of its accidentals, if any */
  inFull: (fifths: number, notes: string) => accidentals(fifths) + (notes ? ` (${notes})` : ""),
  orAlso: (fifths: number, key: string | undefined) => `, or ${accidentals(fifths)}${key ? ` as ${key} has` : ""}`,
  hasSignature: (exercise: string, right: string, claimed: number) =>
    `${exercise} has ${right}, not ${accidentals(claimed)}.`,
  belongsToNoKey: (exercise: string, claimed: number) =>
    `${exercise} belongs to no key and has no key signature, not ${accidentals(claimed)}: its sharps and flats are written before the notes.`,
  raised: (key: string, notes: readonly string[]) =>
    ` It has the signature of ${key}; ${notes.join(" and ")} ${notes.length === 1 ? "is" : "are"} written with accidentals.`,
  overSeven: "No key signature has more than seven accidentals.",
  belongsTo: (fifths: number, first: string, second: string) => {
    const claimed = accidentals(fifths);
    const verb = Math.abs(fifths) === 1 ? "belongs" : "belong";
    return `${claimed[0]!.toUpperCase()}${claimed.slice(1)} ${verb} to ${first} and ${second}.`;
  },

  noSteps: (exercise: string) => `${exercise} has no steps to check: a chord moves by thirds and more.`,
  stepsUnread: (typed: string, exercise: string, steps: string) =>
    `Write steps as T and S, W and H, or semitones in digits (three are A, 3 or m3): "${typed}" cannot be read. ${exercise} has ${steps}.`,
  inCents: (exercise: string, steps: string) => `${exercise} has its steps in cents: ${steps}.`,
  countOfSteps: (exercise: string, right: number, given: number, steps: string) =>
    `${exercise} has ${right} steps up to the octave, and ${given} are given here: ${steps}.`,
  /** @param between the notes on either side, where they are named */
  step: (
    place: number,
    exercise: string,
    way: "up" | "down",
    between: readonly [string, string] | undefined,
    right: string,
    claimed: string,
    steps: string,
  ) => {
    const which = place <= NAMED ? `The ${degreeTexts.ordinal(place)} step` : `Step ${place}`;
    const where = between ? `, ${between[0]} to ${between[1]},` : "";
    return `${which} of ${exercise}${way === "down" ? ", read downward" : ""}${where} is ${right}, not ${claimed}: ${steps}.`;
  },
  andCount: (right: number, given: number) => ` It has ${right} steps, and ${given} are given here.`,
  risingForm: " Steps are those of the rising form.",

  otherScale: (what: "notes" | "steps", name: string, kind: string) =>
    `These are the ${what} of ${name}. \`minor\` alone means the natural minor here: name the ${kind} if you played it.`,
  changeSubject: (name: string) => `Change the subject to ${name}`,

  chromatic: (ways: readonly string[]) =>
    `Every pitch is right. Chromatic scales are usually spelled in one of these ways. ${ways.join(" ")}`,
  chromaticWays: {
    plain: "Sharps going up and flats coming down",
    melodic: "The key's own notes, and the others raised going up and lowered coming down",
    harmonic: "As the key has them, the same both ways",
  },
  chromaticFixes: {
    plain: "Write sharps going up, flats coming down",
    melodic: "Keep the key's notes, raise the others going up, lower them coming down",
    harmonic: "Name the notes as the key has them, the same both ways",
  },
};

/** Degrees are named in words up to the twelfth. */
const NAMED = 12;
