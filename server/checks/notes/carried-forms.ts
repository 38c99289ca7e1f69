import type { Cell, DegreeIntervals, Variant } from "../../music/patterns/pattern.ts";
import { carriedDegrees, type PlayedForm, patternDegrees, turnedForms } from "../../music/patterns/pattern-forms.ts";
import type { Direction } from "../../music/patterns/reach.ts";

/** One of them; `skipped` says how many notes of its first figure are not repeated. */
export interface FurtherForm extends PlayedForm {
  readonly skipped?: number;
}

/** Which forms of a pattern a way of playing it has, over so many degrees; none where the pattern has no such form. */
export type FormsOver = (degrees: number) => readonly FurtherForm[];

/** A pattern, and how its degrees are counted. */
export interface Figured {
  readonly pattern: string | Cell;
  readonly variant: Variant | undefined;
  readonly intervals: DegreeIntervals;
}

/** With the closing tonic after the last figure that starts below the octave, or as far as the notes go. */
type Ending = "carried" | "plain";

/** How each half ends, and whether the note between them is played once. */
type Ways = readonly (readonly [first: Ending, second: Ending, once: boolean])[];

const CARRIED: Ways = [
  ["carried", "carried", true],
  ["carried", "carried", false],
];
const UP_AND_DOWN: Ways = [
  ...CARRIED,
  ["carried", "plain", true],
  ["carried", "plain", false],
  ["plain", "carried", false],
];

/**
 * The further ways of playing a pattern in one direction: through the neighbours of the notes that it turns on, and
 * carried on until it would start on the octave, with the tonic to close. There and back, the note that one form ends
 * on and the other begins with is played once or twice. Common practice, no source.
 */
export function furtherForms(figured: Figured, direction: Direction): readonly FormsOver[] {
  const { pattern, variant, intervals } = figured;
  if (direction === "up" || direction === "down") return [(T) => single(figured, "carried", T, direction === "down")];
  const downFirst = direction === "down and up";
  const joined = (downFirst ? CARRIED : UP_AND_DOWN).map(([one, other, once]): FormsOver => {
    return (T) => there(single(figured, one, T, downFirst), single(figured, other, T, !downFirst), once);
  });
  return [(T) => turnedForms(pattern, variant, T, direction, intervals) ?? [], ...joined];
}

function single({ pattern, variant, intervals }: Figured, ending: Ending, T: number, falling: boolean): PlayedForm[] {
  const make = ending === "carried" ? carriedDegrees : patternDegrees;
  const degrees = make(pattern, variant, T, !falling, intervals);
  return degrees?.length ? [{ degrees, falling }] : [];
}

function there([one]: PlayedForm[], [other]: PlayedForm[], once: boolean): FurtherForm[] {
  if (!one || !other) return [];
  if (!once) return [one, other];
  return one.degrees.at(-1) === other.degrees[0]
    ? [one, { ...other, degrees: other.degrees.slice(1), skipped: 1 }]
    : [];
}
