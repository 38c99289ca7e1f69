/** How the degrees of scales are said, and why each has its name. Degrees and notes are counted from 1. */
export const degreeTexts = {
  /** `first`, `second`; in a language with genders as before `degree`. */
  ordinal,
  /** @param name of a natural note: a letter, or a syllable */
  takes: (degree: number, name: string) => `its ${ordinal(degree)} degree ${taking(name)}`,
  /** Of scales that do not have each letter once: which degree of `key` the note is. */
  isDegreeOf: (note: number, change: "raised" | "lowered" | undefined, degree: number, key: string, name: string) =>
    `its ${ordinal(note)} note is the ${change ? `${change} ` : ""}${ordinal(degree)} of ${key} and ${taking(name)}`,
};

const ORDINALS = [
  "first",
  "second",
  "third",
  "fourth",
  "fifth",
  "sixth",
  "seventh",
  "eighth",
  "ninth",
  "tenth",
  "eleventh",
  "twelfth",
];

function ordinal(place: number): string {
  return ORDINALS[place - 1] ?? `${place}th`;
}

function taking(name: string): string {
  return `takes the ${name.length > 1 ? "name" : "letter"} ${name}`;
}
