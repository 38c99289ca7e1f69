import { signatureTexts } from "./signature-texts.ts";

/** A degree that a mode has otherwise than the key whose signature it is written with. */
type Changed = "lowered seventh" | "raised fourth" | "major sixth" | "lowered second";
/** A degree that a key has otherwise than its signature. */
type Degree = "fourth" | "sixth" | "seventh";

/** Why a piece is likely in a scale: its notes and keys are named as the journal does, its signature is in fifths. */
export const likelyScaleTexts = {
  /** The mode whose own signature this is. */
  mode: (fifths: number, accidentals: string, name: string, key: string) => {
    const signed = accidentals === "" ? "Without sharps or flats" : `With ${count(fifths)} (${accidentals})`;
    return `${signed} the notes from ${name} to ${name} are those of ${key}.`;
  },
  byAccidentals: (key: string, degree: Changed, note: string) =>
    `It is often written with the signature of ${key}; then its ${degree}, ${note}, has accidentals throughout.`,
  asOlderMusic: (key: string, degree: Degree, note: string) =>
    `Older music often writes ${key} with this signature; then its ${degree}, ${note}, has accidentals before it.`,
  endingOpen: (fifths: number, key: string) =>
    `${signatureIs(fifths)} the signature of ${key} too; then the piece ends open, on the fifth degree, as a movement that leads on does.`,
  hasSignature: (why: string, key: string) => `${why} ${key} has this signature.`,
  endingOnTonic: (fifths: number, key: string) =>
    `${signatureIs(fifths)} the signature of ${key}, and it ends on its tonic.`,
  raised: (seventh: string, sixth: string) =>
    ` Where ${seventh} comes with an accidental it is harmonic, with ${sixth} as well melodic minor.`,
  seldomLocrian: (note: string) =>
    `A whole piece is seldom in locrian: perhaps ${note} is not the last note of the lowest part.`,
  raisedThird: (note: string, key: string) =>
    `${note} is the raised third of ${key}, whose signature this is: older pieces in minor often close on the major third.`,
  notAmong: (note: string, fifths: number) => `${note} is not among the notes of ${count(fifths)}.`,
  undecided: (why: string) => `${why} So the ending does not decide.`,
};

function count(fifths: number): string {
  return signatureTexts.accidentals(fifths);
}

function signatureIs(fifths: number): string {
  const words = count(fifths);
  return `${words.charAt(0).toUpperCase()}${words.slice(1)} ${Math.abs(fifths) === 1 ? "is" : "are"}`;
}
