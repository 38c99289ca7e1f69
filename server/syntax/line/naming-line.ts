/**
 * The declaration words behind which a name stands in quotes that may be used without them, or tells a pattern or
 * scale.
 */
export const NAMING_WORDS: readonly string[] = [
  "piece",
  "study",
  "pattern",
  "scale",
  "phase",
  "activity",
  "articulation",
  "instrument",
  "outcome",
];

/** Any of these may open a name. */
export const QUOTES = '"“”„«»‟';
const NAMING = new RegExp(`^[\\s\\uFEFF]*(?:[-*•]\\s+)?(?:${NAMING_WORDS.join("|")})\\s*[${QUOTES}]`, "i");

/** Whether a line may declare a name. */
export function mayDeclareName(line: string): boolean {
  return NAMING.test(line);
}
