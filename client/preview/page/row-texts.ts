/** What can be left out behind a trend or a date where there is no room: `in four weeks`, `(in 13 days)`. */
const WITHIN = / \(?in [^,]+$/;

/** The rows of exercises and of pieces: their columns, their marks, what is folded away. */
export const rowTexts = {
  lastDay: "last day",
  latest: "latest",
  temposByMonth: "tempos by month",
  ofExercise: "name, way of playing, trend",
  fastestClean: "fastest clean",
  ofPiece: "name, key and bars, date",
  bars: "bars",
  wanted: "wanted",
  /** What is said of a trend or of a date, and what of it can be left out where there is no room. */
  trendParts: (trend: string): readonly [said: string, within: string] => {
    const within = WITHIN.exec(trend)?.[0] ?? "";
    return [trend.slice(0, trend.length - within.length), within];
  },

  earlierExercises: "Earlier exercises",
  countOfEarlierExercises: (count: number) => `Earlier: ${count} exercise${count === 1 ? "" : "s"}`,
  showOthers: (count: number) => `Show the other ${count}`,
  countOfEarlierPieces: (count: number) => `Earlier: ${count} piece${count === 1 ? "" : "s"}`,

  reached: "reached",
  notReached: "not reached, or not said",
  best: "week’s best",
  trend: "trend, in notches over four weeks",
  slowWork: "a week of slow work",
  pause: "a pause, drawn short",
  heightOfStrip: "height: tempo",
  lineOfStrip: "top line: the tempo you want",
  colourOfStrip: "fuller colour: worked lately",
};
