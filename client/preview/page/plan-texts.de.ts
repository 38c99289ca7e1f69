import type { planTexts as english } from "./plan-texts.ts";

export const planTexts: typeof english = {
  heading: "Plan für heute",
  minutes: "Minuten",
  minutesOfPlan: "Minuten für den Plan",
  wrongMinutes: (least, most) => `Ganze Minuten, von ${least} bis ${most}.`,
  isInJournal: "Der Plan für heute steht im Tagebuch",
  write: "Ins Tagebuch schreiben",
  why: "Warum diese Zeilen",
};
