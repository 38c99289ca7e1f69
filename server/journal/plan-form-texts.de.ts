import type { planFormTexts as english } from "./plan-form-texts.ts";

export const planFormTexts: typeof english = {
  endsHere: "endet hier; was du darunter schreibst, zählt als gespielt.",
};
