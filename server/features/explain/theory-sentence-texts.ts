/** What the tables of `music/` say of scales, chords, patterns and temperaments. */
export const theorySentenceTexts = {
  /** From the sentence that the table has in English, which is its key; one that no table has stays. */
  of: (english: string): string => english,
};
