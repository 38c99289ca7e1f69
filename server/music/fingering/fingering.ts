import type { Instrument } from "../instruments/instrument.ts";
import { midi, type Note } from "../notes/note.ts";
import { chartTexts } from "./chart-texts.ts";

/** How much of a hole is covered. */
export type Cover = "open" | "half" | "closed";

/** What the hands do for one note on a recorder. */
export interface Fingering {
  /** Half is the thumb pinched: a narrow opening that makes the upper register speak. */
  readonly thumb: Cover;
  /** Holes 1 to 7, from the mouth down. Of a double hole (6 and 7) half closes the larger one alone. */
  readonly holes: readonly Cover[];
  /** Whether the end of the tube is closed, on the knee or by a key. */
  readonly bell: boolean;
  /** Whether the note sounds in the third register, a twelfth above what the same pattern gives low down. */
  readonly thirdRegister: boolean;
}

/** Another fingering in use, and the charts that give it. */
export interface Alternative extends Fingering {
  readonly charts: readonly string[];
}

/** How far charts agree: all, most, or only one of them gives it. High notes differ by maker. */
export type Confidence = "high" | "medium" | "uncertain";

export interface FingeredNote {
  readonly known: true;
  readonly fingering: Fingering;
  readonly confidence: Confidence;
  /** Others in use, in the order of the reference. */
  readonly alternatives: readonly Alternative[];
}

/** Why a note has no fingering here. */
export interface Unfingered {
  readonly known: false;
  readonly because: "no recorder" | "german fingering" | "beyond the table";
}

const THUMB: Readonly<Record<Cover, string>> = { closed: "0", half: "Ø", open: "-" };

type Row = readonly [
  fingering: string,
  confidence?: Confidence,
  ...alternatives: readonly (readonly [fingering: string, charts: string])[],
];

/** D#6 on an alto: the note a twelfth above the G# with the same fingers (from memory). */
const THIRD_REGISTER = 22;

/**
 * Baroque (English) fingering on a recorder with double holes for 6 and 7, a row for each semitone from the lowest note
 * up: test/reference/recorder-fingerings.json, which names the charts behind every row. One table serves instruments in
 * C, D, F and G. It is written as `printFingering` prints it.
 */
const BAROQUE: readonly Row[] = [
  ["0 123 4567"],
  ["0 123 4567/"],
  ["0 123 456-"],
  ["0 123 456/-"],
  ["0 123 45--"],
  ["0 123 4-67"],
  ["0 123 -56-"],
  ["0 123 ----"],
  ["0 12- 45--", "medium", ["0 12- 456/-", "DCB"]],
  ["0 12- ----"],
  ["0 1-3 4---"],
  ["0 1-- ----", "high", ["0 -23 ----", "RB"]],
  ["0 -2- ----", "high", ["- 123 ----", "R"]],
  ["- 12- ----"],
  ["- -2- ----", "high", ["- 123 4567", "RB"]],
  ["- -23 456-"],
  ["Ø 123 45--", "high", ["- 123 45-7", "D"]],
  ["Ø 123 4-6-"],
  ["Ø 123 -5--"],
  ["Ø 123 ----"],
  ["Ø 12- 4---"],
  ["Ø 12- ----"],
  ["Ø 12- -56-", "medium", ["Ø 12- -567", "D"], ["Ø 12- 456-", "C"]],
  ["Ø 12- 45--"],
  ["Ø 1-- 45--"],
  ["Ø 1-3 4-6- bell", "high", ["Ø 1-3 4567", "R"], ["Ø 12/3 4567", "R"]],
  ["Ø 1-3 4-6-", "high", ["Ø 1-3 4-67", "DC"]],
  ["Ø -23 -56-", "medium"],
  ["Ø -23 -56- bell", "uncertain"],
  ["Ø 12- 45-- bell", "uncertain"],
  ["Ø 12- 45--", "uncertain"],
  ["Ø 1-- 4---", "uncertain"],
];

const BAROQUE_NOTES: readonly FingeredNote[] = BAROQUE.map(([text, confidence = "high", ...alternatives], above) => ({
  known: true,
  fingering: readFingering(text, above),
  confidence,
  alternatives: alternatives.map(([other, charts]) => ({
    ...readFingering(other, above),
    charts: [...charts].map((letter) => chartTexts[letter as keyof typeof chartTexts]),
  })),
}));

/** Why nothing is known of an instrument's fingerings; undefined where there is a table. */
export function whyUnfingered({
  family,
  fingering,
}: Pick<Instrument, "family" | "fingering">): Exclude<Unfingered["because"], "beyond the table"> | undefined {
  if (family !== "recorder") return "no recorder";
  return fingering === "german" ? "german fingering" : undefined;
}

/**
 * The usual fingering of a written note. The table reaches five semitones above the ranges of `INSTRUMENTS`, for notes
 * that only some instruments have. German fingering differs in more notes than its fourth degree, and no chart of all
 * of it with a source is at hand: it is not known, rather than guessed.
 */
export function fingeringOf(
  instrument: Pick<Instrument, "family" | "fingering" | "low">,
  written: Note,
): FingeredNote | Unfingered {
  const because = whyUnfingered(instrument);
  if (because) return { known: false, because };
  return BAROQUE_NOTES[midi(written) - midi(instrument.low)] ?? { known: false, because: "beyond the table" };
}

/** Whether one of the seven fingers closes a hole by half. The pinched thumb does not count. */
export function hasHalfHole({ holes }: Fingering): boolean {
  return holes.includes("half");
}

/**
 * Thumb, left hand, right hand: `0 123 45--`. A number is a closed hole, a dash an open one, a stroke behind a number
 * closes the hole by half, `Ø` is the pinched thumb, and `bell` stands where the bell is closed.
 */
export function printFingering({ thumb, holes, bell }: Fingering): string {
  const fingers = holes.map((cover, i) => (cover === "open" ? "-" : `${i + 1}${cover === "half" ? "/" : ""}`));
  const hands = [THUMB[thumb], fingers.slice(0, 3).join(""), fingers.slice(3).join("")];
  return [...hands, ...(bell ? ["bell"] : [])].join(" ");
}

/** The other way round, for the rows above; `above` is how many semitones the note lies above the lowest. */
function readFingering(text: string, above: number): Fingering {
  const [thumb, ...hands] = text.split(" ");
  const [left = "", right = "", bell] = hands;
  return {
    thumb: thumb === THUMB.closed ? "closed" : thumb === THUMB.half ? "half" : "open",
    holes: [...`${left}${right}`.matchAll(/-|\d\/?/g)].map(([hole]) =>
      hole === "-" ? "open" : hole.endsWith("/") ? "half" : "closed",
    ),
    bell: bell === "bell",
    thirdRegister: above >= THIRD_REGISTER,
  };
}
