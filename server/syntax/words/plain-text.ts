/** Control characters, those that steer the direction of writing (Unicode Standard Annex #9), and line separators. */
const UNSEEN = /[\p{Cc}\p{Bidi_Control}\uFEFF\u2028\u2029]/gu;

/** A journal's words for where they stand among others: without what is not seen and changes how the rest is shown. */
export function plainText(words: string, instead = ""): string {
  return words.replace(UNSEEN, instead);
}
