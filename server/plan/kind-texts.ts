/** Kinds of scales and chords as words to read. */
export const kindTexts = {
  /** By its id, of a chord with what it is played as (`minor arpeggio`), and in the words of the journal's notes. */
  kind: (_id: string, words: string) => words,
  /** A key on a tonic, by the id of its kind, and in the words of the journal's notes. */
  key: (_tonic: string, _kind: string, words: string) => words,
};
