import type { claimTexts as english } from "./claim-texts.ts";

export const claimTexts: typeof english = {
  steps:
    "Schritte, aufwärts gelesen: Ein Ganzton ist `T` oder `W`, ein Halbton `S` oder `H`, drei Halbtöne sind `A`, `3` oder `m3`.",
  hasSteps: (exercise, steps) => ` ${exercise} hat ${steps}.`,
  cents: (steps) => `${steps} Cent`,
  noNote: (typed) => `${typed} ist kein Ton.`,
  oneMore: (note, exercise) => `${note}: ein Ton mehr, als ${exercise} hier hat.`,
  resolves: (note, exercise) => `${note} ist der Grundton, in den sich ${exercise} auflöst.`,
  shouldBe: (note, right, place) => `${note} müsste ${right} sein, ${place}.`,
  is: (note, place) => `${note} ist ${place}.`,
  degreeOf: (ordinal, exercise) => `die ${ordinal} Stufe von ${exercise}`,
  chordNoteOf: (ordinal, exercise) => `der ${ordinal} Ton von ${exercise}`,
};
