import { signatureTexts } from "../../music/scales/signature-texts.ts";
import { listTexts } from "../list-texts.ts";
import type { keyTexts as english } from "./key-texts.ts";

const { accidentals } = signatureTexts;

export const keyTexts: typeof english = {
  tonicOfNoKey: (tonic) => `${tonic} ist der Grundton keiner gebräuchlichen Dur- oder Molltonart.`,
  wouldNeed: (exercise, fifths, several) => `${exercise} bräuchte ${accidentals(fifths)} (${several}).`,
  signs: (letters, times, sign) => {
    if (times === 3) return `${letters} mit drei ${sign === "sharp" ? "Kreuzen" : "b"}`;
    return `${letters} mit ${sign === "sharp" ? "Doppelkreuz" : "Doppel-b"}`;
  },
  usualName: (exercise, fifths) => `Üblich ist der Name ${exercise}${inBrackets(fifths)}.`,
  soundsAs: (exercise, fifths) => `Es klingt wie ${exercise}${inBrackets(fifths)}.`,

  notOn: (instrument, notes, more, low, high) =>
    `${named(notes, more)} gibt es auf diesem Instrument nicht (${instrument}: ${low} bis ${high}, wie notiert).`,
  beyondVoice: (voice, notes, more, low, high) =>
    `Außerhalb des üblichen Umfangs dieser Stimme: ${named(notes, more)} (${voice}: ${low} bis ${high}, wie notiert).`,
  rangeVaries: (why) => ` Der Umfang ist nicht bei allen gleich: ${why}.`,
};

function inBrackets(fifths: number | undefined): string {
  return fifths === undefined ? "" : ` (${accidentals(fifths)})`;
}

function named(notes: readonly string[], more: number): string {
  return more > 0 ? listTexts.more(notes.join(", "), more) : listTexts.and(notes);
}
