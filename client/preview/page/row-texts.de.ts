import type { rowTexts as english } from "./row-texts.ts";

const FOUR_WEEKS = "in vier Wochen";
/** `(in 13 Tagen)` */
const AHEAD = / \(in [^,]+$/;

export const rowTexts: typeof english = {
  lastDay: "letzter Tag",
  latest: "zuletzt",
  temposByMonth: "Tempi nach Monaten",
  ofExercise: "Name, Spielweise, Trend",
  fastestClean: "sauber bis",
  ofPiece: "Name, Tonart und Takte, Datum",
  bars: "Takte",
  wanted: "Ziel",
  /** A trend begins with its time, which is put behind it here. */
  trendParts: (trend) => {
    if (trend.startsWith(`${FOUR_WEEKS} `) && !trend.includes(", "))
      return [trend.slice(FOUR_WEEKS.length + 1), ` ${FOUR_WEEKS}`];
    const ahead = AHEAD.exec(trend)?.[0] ?? "";
    return [trend.slice(0, trend.length - ahead.length), ahead];
  },

  earlierExercises: "Frühere Übungen",
  countOfEarlierExercises: (count) => `Früher: ${count} ${count === 1 ? "Übung" : "Übungen"}`,
  showOthers: (count) => `Noch ${count} zeigen`,
  countOfEarlierPieces: (count) => `Früher: ${count} ${count === 1 ? "Stück" : "Stücke"}`,

  reached: "erreicht",
  notReached: "nicht erreicht oder nicht notiert",
  best: "Bestes der Woche",
  trend: "Trend, in Metronomstufen über vier Wochen",
  slowWork: "eine Woche mit langsamem Üben",
  pause: "eine Pause, kürzer gezeichnet",
  heightOfStrip: "Höhe: Tempo",
  lineOfStrip: "obere Linie: dein Zieltempo",
  colourOfStrip: "kräftigere Farbe: vor Kurzem geübt",
};
