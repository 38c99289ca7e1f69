/**
 * What a record has as its pattern where the line names none: a scale note by note, a broken chord as its name says.
 */
const GOES_WITHOUT_SAYING: readonly (string | null)[] = [null, "straight", "broken chord"];

/**
 * `D melodic minor, thirds`: a subject and the pattern of its records, which is left out where it goes without saying.
 */
export function exerciseInWords(subject: string, pattern: string | null): string {
  return GOES_WITHOUT_SAYING.includes(pattern) ? subject : `${subject}, ${pattern}`;
}

/** `, one of 3 ways of playing it`, behind the name of a strand; empty where there is no other. */
export function oneOfStrands(count: number, { title }: { readonly title: boolean }): string {
  return count > 1 ? `, one of ${count} ${title ? "places worked on" : "ways of playing it"}` : "";
}
