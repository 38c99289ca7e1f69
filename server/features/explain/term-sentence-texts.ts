/** What the tables of words say of the terms of the language. */
export const termSentenceTexts = {
  /** From the sentence that the table has in English, which is its key; one that no table has stays. */
  of: (english: string): string => english,
};
