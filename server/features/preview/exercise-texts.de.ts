import { instrumentTexts } from "../../music/instruments/instrument-texts.ts";
import type { exerciseTexts as english } from "./exercise-texts.ts";

export const exerciseTexts: typeof english = {
  recent: "in den letzten vier Wochen gespielt, das Neueste zuerst",
  nothing: "nichts gespielt",
  nothingInWeeks: (weeks) => `in diesen ${weeks} Wochen nichts gespielt`,
  tooFewWeeks: "zu wenige Wochen für eine Aussage",
  onInstrument: (exercise, instrument) => `${exercise}, ${instrumentTexts.name(instrument)}`,
  tempo: "Tempo",
  beats: (beat) => `Schlag: ${beat}`,
  byWeek: (exercise) => `${exercise}, nach Wochen`,
  headings: ["Woche vom", "am schnellsten", "üblich", "erreicht", "Minuten"],
  slope: (slope, low, high, weeks) => `Steigung ${slope} in der Woche (${low} bis ${high}), ${weeks} geprüfte Wochen.`,
  /** A month that is shortened ends with the sentence's full stop. */
  also: (ways) => `Außerdem ${ways.join("; ").replace(/\.$/, "")}.`,
  otherWay: (way, last) => `${way}: zuletzt am ${last}`,
  otherWayAt: (way, tempo, last) => `${way}: ${tempo}, zuletzt am ${last}`,
};
