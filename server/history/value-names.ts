import type { NoteValue } from "../journal/model.ts";
import { BEATS, TERMS } from "../syntax/words/terms.ts";
import { valueTexts } from "./value-texts.ts";

/** A note value in the journal's first word for it: `8ths`, `triplets`. */
export function noteValueName(value: NoteValue): string {
  const phrase = TERMS.find(({ meaning }) => meaning.type === "note value" && isSame(meaning.value, value));
  return phrase?.words[0] ?? beatName(value);
}

/** The same as a word to read. */
export function noteValueInWords(value: NoteValue): string {
  return valueTexts.value(noteValueName(value));
}

/**
 * A beat as it stands before `=`: `quarter`, `dotted quarter`. Never a bare fraction, which a spreadsheet takes for a
 * day.
 */
export function beatName({ numerator, denominator }: NoteValue): string {
  const plain = plainBeat({ numerator, denominator });
  if (plain !== undefined) return plain;
  const undotted =
    numerator % 3 === 0 ? plainBeat({ numerator: numerator / 3, denominator: denominator / 2 }) : undefined;
  return undotted === undefined ? `${numerator}/${denominator} of a whole` : `dotted ${undotted}`;
}

/** The same as a word to read. */
export function beatInWords(beat: NoteValue): string {
  return valueTexts.value(beatName(beat));
}

function plainBeat(value: NoteValue): string | undefined {
  for (const [name, beat] of BEATS) if (!name.includes("/") && isSame(beat, value)) return name;
  return undefined;
}

function isSame(a: NoteValue, b: NoteValue): boolean {
  return a.numerator * b.denominator === b.numerator * a.denominator;
}
