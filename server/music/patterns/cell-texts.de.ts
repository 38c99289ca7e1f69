import type { cellTexts as english } from "./cell-texts.ts";

export const cellTexts: typeof english = {
  empty: "ein Muster braucht mindestens eine Stufe, wie in `1 3 2 4`",
  tooLong: (most) => `ein Muster kann höchstens ${most} Stufen haben`,
  step: (most) => `der Schritt ist eine ganze Zahl von Stufen, von 1 bis ${most}`,
  noDegree: (word) =>
    `${word} ist keine Stufe: Stufen sind ganze Zahlen, 1 ist der erste Ton, 8 die Oktave, 0 der Ton unter dem ersten`,
  outOfReach: (word, lowest, highest) => `${word} liegt zu weit weg: Stufen gehen von ${lowest} bis ${highest}`,
};
