import { signatureTexts } from "../../music/scales/signature-texts.ts";
import { listTexts } from "../list-texts.ts";

const { accidentals } = signatureTexts;

/** What is said of keys that nobody uses, and of notes that an instrument does not have. */
export const keyTexts = {
  tonicOfNoKey: (tonic: string) => `${tonic} is the tonic of no major or minor key in use.`,
  /** @param several accidentals of its signature that are more than single */
  wouldNeed: (exercise: string, fifths: number, several: string) =>
    `${exercise[0]!.toUpperCase()}${exercise.slice(1)} would need ${accidentals(fifths)} (${several}).`,
  /** Letters that have so many sharps, or flats: `F and C double sharp`. */
  signs: (letters: string, times: 2 | 3, sign: "sharp" | "flat") =>
    `${letters} ${times === 3 ? "triple" : "double"} ${sign}`,
  usualName: (exercise: string, fifths: number | undefined) =>
    `Its usual name is ${exercise}${fifths === undefined ? "" : `, ${accidentals(fifths)}`}.`,
  soundsAs: (exercise: string, fifths: number | undefined) =>
    `It sounds as ${exercise}${fifths === undefined ? "" : `, ${accidentals(fifths)}`}.`,

  /** @param more so many notes beside those that are named */
  notOn: (instrument: string, notes: readonly string[], more: number, low: string, high: string) =>
    `The ${instrument} has no ${more > 0 ? named(notes, more) : listTexts.or(notes)} (${low} to ${high} as written).`,
  beyondVoice: (voice: string, notes: readonly string[], more: number, low: string, high: string) =>
    `Beyond the usual range of the ${voice}: ${named(notes, more)} (${low} to ${high} as written).`,
  rangeVaries: (why: string) => ` Its range varies: ${why}.`,
};

function named(notes: readonly string[], more: number): string {
  return more > 0 ? listTexts.more(notes.join(", "), more) : listTexts.and(notes);
}
