/** Longer words are no name. */
const LONGEST_NAME = 60;

/** A word with letters in it, without the signs that would end the quotes around it. */
export function isName(name: string): boolean {
  return /\p{L}/u.test(name) && !/["“”„«»‟]/.test(name) && name.length <= LONGEST_NAME;
}
