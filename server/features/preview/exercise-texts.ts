/** The preview's list of exercises, and one that is unfolded. */
export const exerciseTexts = {
  recent: "played in the last four weeks, latest first",
  nothing: "nothing was played",
  nothingInWeeks: (weeks: number) => `nothing was played in these ${weeks} weeks`,
  tooFewWeeks: "too few weeks to say",
  /** An exercise on an instrument that is not the usual one, by its name or its id. */
  onInstrument: (exercise: string, instrument: string) => `${exercise}, on ${instrument}`,
  tempo: "tempo",
  /** What the metronome counts, where that is not a quarter. */
  beats: (beat: string) => `${beat} beats`,
  byWeek: (exercise: string) => `${exercise}, by week`,
  headings: ["week of", "best", "usual", "reached", "minutes"],
  /** Gained in a week, with the ends of its interval. */
  slope: (slope: string, low: string, high: string, weeks: number) =>
    `Slope ${slope} a week (${low} to ${high}), ${weeks} tested weeks.`,
  also: (ways: readonly string[]) => `Also ${ways.join("; ")}.`,
  otherWay: (way: string, last: string) => `${way}: last on ${last}`,
  otherWayAt: (way: string, tempo: string, last: string) => `${way}: ${tempo}, last on ${last}`,
};
