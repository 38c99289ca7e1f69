/** Titles of fixes that several checks offer. */
export const fixTexts = {
  changeTo: (text: string) => `Change to ${text}`,
  write: (words: string) => `Write "${words}"`,
  takeOut: (words: string) => `Take out "${words}"`,
  /** Words in quotes, in a sentence or a title. */
  quoted: (words: string) => `"${words}"`,
};
