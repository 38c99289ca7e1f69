/** How distances are said. */
export const intervalTexts = {
  /** Of the intervals that chords are built of, by letters and semitones above the root; others are undefined. */
  chordInterval: (letters: number, semitones: number): string | undefined => CHORD_INTERVALS[`${letters} ${semitones}`],
  /** By which a note lies above another, or which a step comes to: `a semitone`, `three semitones`. */
  semitones: (count: number): string =>
    ["", "a semitone", "a whole tone", "three semitones"][count] ?? `${count} semitones`,
};

const CHORD_INTERVALS: Readonly<Record<string, string>> = {
  "2 3": "a minor third",
  "2 4": "a major third",
  "4 6": "a diminished fifth",
  "4 7": "a perfect fifth",
  "4 8": "an augmented fifth",
  "6 9": "a diminished seventh",
  "6 10": "a minor seventh",
  "6 11": "a major seventh",
};
