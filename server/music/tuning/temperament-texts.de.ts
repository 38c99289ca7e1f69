import { numberTexts } from "../notes/number-texts.de.ts";
import type { temperamentTexts as english } from "./temperament-texts.ts";

export const temperamentTexts: typeof english = {
  declared: (cents) =>
    `In diesem Tagebuch festgelegt, in Cent von C bis H: ${cents.map((each) => numberTexts.decimal(each)).join("; ")}.`,
  noRatio: (word) => `${word} ist kein Verhältnis`,
  noSize: (word) => `${word} ist weder eine Zahl von Cent noch ein Verhältnis`,
  firstIsC: (word) => `die erste der zwölf Tasten ist C, \`0\` in Cent oder \`1\` als Verhältnis, nicht ${word}`,
  oneTooMany: (word) => `${word} ist eine zu viel: Es gibt zwölf Tasten, C bis H`,
  notHigher: (word, before) => `${word} ist nicht höher als ${before} davor: Die Tasten steigen`,
  reachesOctave: (word) => `${word} erreicht die Oktave, jede Taste liegt aber darunter`,
  tooFew: (given) =>
    `eine Stimmung braucht zwölf Tasten, C bis H, in Cent oder Verhältnissen, und ${given === 0 ? "keine ist" : given === 1 ? "eine ist" : `${given} sind`} angegeben`,
  choose: (names) => `wähle eine Stimmung: ${names.map((name) => `\`${name}\``).join(", ")}`,
  justOnWhat: "die reine Stimmung braucht einen Ton: just on C, just on F#, just on Bb",
};
