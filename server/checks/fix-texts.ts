/** What several checks say: guesses, and titles of fixes. */
export const fixTexts = {
  /** Words in quotes, in a sentence or a title. */
  quoted: (words: string) => `"${words}"`,
  /** @param offers as they are shown, one or more */
  didYouMean: (offers: readonly string[]) => ` Did you mean ${offers.join(" or ")}?`,
  changeTo: (text: string) => `Change to ${text}`,
  write: (words: string) => `Write "${words}"`,
  takeOut: (words: string) => `Take out "${words}"`,
  closeQuote: "Close the quote",
  closingQuoteMissing: "The closing quote is missing after the name.",
  makeRemark: "Make it a remark",
};
