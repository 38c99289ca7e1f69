/** What the libraries that judge call our chords. */
export const CHORD_SYMBOLS: Readonly<Record<string, string>> = {
  major: "M",
  minor: "m",
  augmented: "aug",
  diminished: "dim",
  "dominant seventh": "7",
  "major seventh": "maj7",
  "minor seventh": "m7",
  "half-diminished seventh": "m7b5",
  "diminished seventh": "dim7",
};
