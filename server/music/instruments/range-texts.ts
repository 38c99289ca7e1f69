/** What of the range of an instrument is not firm. */
export const rangeTexts = {
  /** From the clause that its row has in English, which is its key. */
  soft: (english: string): string => english,
};
