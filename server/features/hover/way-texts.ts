/** How an exercise is played, in words that a line can do without. */
export const wayTexts = {
  reaches: {
    short: "less than an octave",
    octave: "one octave",
    twelfth: "a twelfth",
    wide: "more than a twelfth",
  },
  noReach: "of no certain span",
  tonguings: {
    slurred: "slurred",
    single: "tongued",
    mixed: "slurred and tongued",
    multiple: "double-tongued",
  },
  uneven: "in an uneven rhythm",
  even: "in an even rhythm",
  wholePiece: "the whole piece",
  /** Another way with the latest tempo that was reached in it. */
  otherWay: (way: string, tempo: string, date: string) => `${way}: ${tempo} on ${date}`,
  also: (ways: readonly string[]) => `Also ${ways.join("; ")}.`,
};
