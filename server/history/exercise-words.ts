/**
 * What a record has as its pattern where the line names none: a scale note by note, a broken chord as its name says.
 */
const GOES_WITHOUT_SAYING: readonly (string | null)[] = [null, "straight", "broken chord"];

/**
 * `D melodic minor, thirds`: a subject and the pattern of its records, which is left out where it goes without saying.
 */
export function exerciseInWords(subject: string, pattern: string | null): string {
  return GOES_WITHOUT_SAYING.includes(pattern) ? subject : `${subject}, ${pattern!.replace(/^straight, /, "")}`;
}
