import fc from "fast-check";
import { isoDate } from "../../../server/journal/calendar.ts";
import {
  DAYS,
  declaration,
  FILES,
  head,
  line,
  lines,
  practice,
  ROOT,
  TODAY,
  type TypedEdit,
  typedEditOf,
  typedText,
} from "../edits.ts";
import { titleLine } from "../title-lines.ts";
import type { Hand } from "./hands.ts";
import { QUESTIONS, type Question } from "./told.ts";

/** One step in the life of a journal. Places count around, so that a step fits any text. */
export type Step = { readonly file: string } & (
  | { readonly type: "edit"; readonly edit: TypedEdit }
  /** Character by character. */
  | { readonly type: "typed"; readonly at: number; readonly text: string }
  /** A day is cut and pasted elsewhere, in one edit where it is the same file. */
  | { readonly type: "moved"; readonly day: number; readonly to: string; readonly at: number }
  /** The last edit of the file is taken back. */
  | { readonly type: "undone" }
  | { readonly type: "whole"; readonly text: string }
  /** The file goes, or comes back as it was; it comes back before it is edited, too. */
  | { readonly type: "toggled" }
  | { readonly type: "asked"; readonly question: Question; readonly at: number }
);

/** Two days' files beside the three with declarations: days of one date come to stand in several. */
export const ALL_FILES = [...FILES, `${ROOT}/2026/c.practice`];

/** What goes on with the line above, is set for later, or begins what lines below stand under. */
const JOINED_LINES = [
  "same",
  "same, 66",
  "  same, 72 clean",
  "same as above, slurred",
  '" at 60',
  "ditto",
  "again",
  "plan",
  "homework:",
  "homework",
  "for next week: D minor at 72",
  "questions:",
  "ask:",
  "teacher said:",
  "lesson",
  "warm-up",
  "scales",
  "rest",
  "break",
];
/** They declare what stands in other days, or teach a title under another word. */
const NAMING_LINES = [
  'piece "The Late Bus"',
  'piece "Late Bus" as Bus: D minor',
  'study "Daily study" as Set',
  'outcome "wobbly": missed',
  'articulation "puffed"',
  "names german",
  "names french",
  "names english",
  "The Late Bus, bars 1-8 at 60",
  "Late Bus 66 ok",
  "the late bus was fun",
  "Set, at 80",
  "H-Moll, Terzen, 60",
  "si b majeur, 60 bien",
];
const MORE_DAYS = [
  ...DAYS,
  "2026-03-05",
  "2026-03-06 Fri",
  "March 7",
  "8.3.",
  "9 Mar, 20 min",
  "10/03/2026",
  "Mon 2 March",
];
/** Half of a pair, an unpaired surrogate, line ends of all sorts, signs of other alphabets. */
const RAW = [
  "\ud83d",
  "\udc4d",
  "👍",
  "\u0085",
  "\u2029",
  "\ufeff",
  "\u200b",
  "é",
  "e\u0301",
  "“",
  "”",
  "–",
  "×",
  "½",
  "♯",
];

const at = fc.nat(100_000);
const file = fc.constantFrom(...ALL_FILES);

/** So many of the hands' lines are written in one life: what is written once comes again, also in other days. */
const LINES_OF_LIFE = 30;

/** What is written in a life, by the mood of whoever writes. */
export interface Writing {
  readonly beginning: fc.Arbitrary<readonly string[]>;
  /** Days stand in order, each once, and declarations mostly stay: nearly all that was read is still good. */
  readonly tidy: fc.Arbitrary<Step>;
  /** Days come in any order, and again. */
  readonly calm: fc.Arbitrary<Step>;
  /** The same declarations come and go in several files; days stand in order. */
  readonly declaring: fc.Arbitrary<Step>;
  /** Whatever may be written comes and goes. */
  readonly wild: fc.Arbitrary<Step>;
}

/** A life in which some hands write. */
export function writingOf(hands: readonly Hand[], seed: number): Writing {
  const all = fc.constantFrom(...hands.flatMap(({ lines: each }) => each));
  const tidy = tidyLine(fc.sample(all, { seed, numRuns: LINES_OF_LIFE }));
  const calm = fc.oneof({ weight: 9, arbitrary: tidy }, { weight: 1, arbitrary: fc.constantFrom(...MORE_DAYS) });
  const wild = fc.oneof(
    { weight: 3, arbitrary: calm },
    { weight: 3, arbitrary: all },
    { weight: 2, arbitrary: line },
    { weight: 1, arbitrary: fc.constantFrom(...NAMING_LINES) },
  );
  const declaring = fc.oneof({ weight: 2, arbitrary: tidy }, { weight: 3, arbitrary: declaration });
  const names = hands.flatMap((hand) => (hand.names ? [`names ${hand.names}\n`] : []));
  return {
    beginning: fc.tuple(fc.constantFrom("", ...names), lines, pageOf(calm), PRACTICE),
    tidy: stepsOf(tidy, { pasted: belowOf(tidy), whole: tidyPageOf(tidy) }),
    calm: stepsOf(calm, { pasted: fc.oneof(PRACTICE, pageOf(calm)), whole: pageOf(calm) }),
    declaring: stepsOf(declaring, { pasted: head.map((text) => `${text}\n`), whole: tidyPageOf(tidy) }),
    wild: stepsOf(wild, { pasted: fc.oneof(typedText.day, pageOf(wild)), whole: pageOf(wild) }),
  };
}

const PRACTICE = practice.map((days) => days.map((day) => `${day}\n`).join(""));

function tidyLine(written: readonly string[]): fc.Arbitrary<string> {
  return fc.oneof(
    { weight: 5, arbitrary: fc.constantFrom(...written) },
    { weight: 3, arbitrary: titleLine },
    { weight: 1, arbitrary: fc.constantFrom(...JOINED_LINES) },
  );
}

/** What is pasted, and what comes in place of all that a file holds. */
interface Blocks {
  readonly pasted: fc.Arbitrary<string>;
  readonly whole: fc.Arbitrary<string>;
}

function stepsOf(written: fc.Arbitrary<string>, { pasted, whole }: Blocks): fc.Arbitrary<Step> {
  const edit = typedEditOf({
    character: fc.oneof({ weight: 6, arbitrary: typedText.character }, fc.constantFrom(...RAW)),
    word: fc.oneof(
      typedText.word,
      written.map((text) => `${text.split(" ").slice(0, 2).join(" ")} `),
    ),
    line: written.map((text) => `${text}\n`),
    day: pasted,
  });
  const question = fc.constantFrom(...QUESTIONS);
  return fc.oneof(
    { weight: 70, arbitrary: fc.record({ type: fc.constant("edit" as const), file, edit }) },
    { weight: 1, arbitrary: fc.record({ type: fc.constant("typed" as const), file, at, text: written }) },
    { weight: 4, arbitrary: fc.record({ type: fc.constant("moved" as const), file, day: at, to: file, at }) },
    { weight: 6, arbitrary: fc.record({ type: fc.constant("undone" as const), file }) },
    { weight: 2, arbitrary: fc.record({ type: fc.constant("whole" as const), file, text: whole }) },
    { weight: 1, arbitrary: fc.record({ type: fc.constant("toggled" as const), file }) },
    { weight: 20, arbitrary: fc.record({ type: fc.constant("asked" as const), file, question, at }) },
  );
}

function belowOf(written: fc.Arbitrary<string>): fc.Arbitrary<string> {
  return fc.array(written, { maxLength: 6 }).map((below) => below.map((text) => `  ${text}\n`).join(""));
}

/** Some days as one hand or several write them. */
function pageOf(written: fc.Arbitrary<string>): fc.Arbitrary<string> {
  const day = fc.tuple(fc.constantFrom(...MORE_DAYS), belowOf(written)).map(([date, below]) => `${date}\n${below}`);
  return fc.array(day, { minLength: 1, maxLength: 3 }).map((days) => days.join(""));
}

/** Days in order, of which few stand in another file. */
function tidyPageOf(written: fc.Arbitrary<string>): fc.Arbitrary<string> {
  const days = fc.array(fc.tuple(fc.constantFrom(1, 1, 1, 2, 7), belowOf(written)), { minLength: 2, maxLength: 7 });
  return fc.tuple(fc.nat(300), days).map(([first, all]) => {
    const dateOf = (i: number) => all.slice(0, i).reduce((date, [later]) => date + later, TODAY - 340 + first);
    return all.map(([, below], i) => `${isoDate(dateOf(i))}\n${below}`).join("");
  });
}
