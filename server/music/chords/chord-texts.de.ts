import type { chordTexts as english } from "./chord-texts.ts";

const NUMBERS = [
  ...["Prime", "Sekunde", "Terz", "Quarte", "Quinte", "Sexte", "Septime"],
  ...["Oktave", "None", "Dezime", "Undezime", "Duodezime", "Tredezime"],
];
const QUALITIES = {
  perfect: "reine",
  major: "große",
  minor: "kleine",
  augmented: "übermäßige",
  diminished: "verminderte",
} as const;

export const chordTexts: typeof english = {
  sentence: (_name, symbol, intervals) => {
    const above = intervals.map(({ number, quality }) => `${QUALITIES[quality]} ${NUMBERS[number - 1]}`);
    return `Akkord „${symbol}“: ${above.slice(0, -1).join(", ")} und ${above.at(-1)} über dem Grundton.`;
  },
};
