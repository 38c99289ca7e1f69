/** The declaration words behind which a name stands in quotes that may be used without them, or tells a pattern or scale. */
export const NAMING_WORDS: readonly string[] = [
  "piece",
  "study",
  "pattern",
  "scale",
  "phase",
  "activity",
  "instrument",
];

const FIRST_LETTERS = NAMING_WORDS.map((word) => word.charCodeAt(0));
const NAMING = new RegExp(`^[\\s\\uFEFF]*(?:[-*•]\\s+)?(?:${NAMING_WORDS.join("|")})\\s*["“”„«»‟]`, "i");

/** Whether a line may declare a name. */
export function mayDeclareName(line: string): boolean {
  return NAMING.test(line);
}

/** Whether the code of a line's first character that is no space allows for that; 0 for a blank line, which does not. */
export function mayNameBy(first: number): boolean {
  const isLetter = (first >= 65 && first <= 90) || (first >= 97 && first <= 122);
  return isLetter ? FIRST_LETTERS.includes(first | 32) : first > 0 && (first < 48 || first > 57);
}
