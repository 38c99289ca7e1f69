import fc from "fast-check";
import { DAYS, FILES, line, lines, practice, ROOT, type TypedEdit, typedEditOf, typedText } from "../edits.ts";
import type { Hand } from "./hands.ts";
import { QUESTIONS, type Question } from "./told.ts";

/** One step in the life of a journal. Places count around, so that a step fits any text. */
export type Step = { readonly file: string } & (
  | { readonly type: "edit"; readonly edit: TypedEdit }
  /** Character by character; whoever shows the file asks after each what is wrong with it. */
  | { readonly type: "typed"; readonly at: number; readonly text: string }
  /** A day is cut and pasted elsewhere, in one edit where it is the same file. */
  | { readonly type: "moved"; readonly day: number; readonly to: string; readonly at: number }
  /** The last edit of the file is taken back. */
  | { readonly type: "undone" }
  | { readonly type: "whole"; readonly text: string }
  /** The file goes, or comes back as it was. */
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

/** Steps of a life in which some hands write. */
export function stepsOf(hands: readonly Hand[]): fc.Arbitrary<Step> {
  const written = lineOf(hands);
  const edit = typedEditOf(textsOf(written));
  return fc.oneof(
    { weight: 70, arbitrary: fc.record({ type: fc.constant("edit" as const), file, edit }) },
    { weight: 1, arbitrary: fc.record({ type: fc.constant("typed" as const), file, at, text: written }) },
    { weight: 4, arbitrary: fc.record({ type: fc.constant("moved" as const), file, day: at, to: file, at }) },
    { weight: 6, arbitrary: fc.record({ type: fc.constant("undone" as const), file }) },
    { weight: 1, arbitrary: fc.record({ type: fc.constant("whole" as const), file, text: pageOf(written) }) },
    { weight: 1, arbitrary: fc.record({ type: fc.constant("toggled" as const), file }) },
    {
      weight: 25,
      arbitrary: fc.record({ type: fc.constant("asked" as const), file, question: fc.constantFrom(...QUESTIONS), at }),
    },
  );
}

function lineOf(hands: readonly Hand[]): fc.Arbitrary<string> {
  return fc.oneof(
    { weight: 6, arbitrary: fc.constantFrom(...hands.flatMap((hand) => hand.lines)) },
    { weight: 2, arbitrary: line },
    { weight: 1, arbitrary: fc.constantFrom(...JOINED_LINES) },
    { weight: 1, arbitrary: fc.constantFrom(...NAMING_LINES) },
    { weight: 1, arbitrary: fc.constantFrom(...MORE_DAYS) },
  );
}

function textsOf(written: fc.Arbitrary<string>) {
  return {
    character: fc.oneof({ weight: 6, arbitrary: typedText.character }, fc.constantFrom(...RAW)),
    word: fc.oneof(
      typedText.word,
      written.map((text) => `${text.split(" ").slice(0, 2).join(" ")} `),
    ),
    line: written.map((text) => `${text}\n`),
    day: fc.oneof(typedText.day, pageOf(written)),
  };
}

/** Some days as one hand or several write them. */
export function pageOf(written: fc.Arbitrary<string>): fc.Arbitrary<string> {
  const day = fc
    .tuple(fc.constantFrom(...MORE_DAYS), fc.array(written, { maxLength: 6 }))
    .map(([date, below]) => [date, ...below.map((text) => `  ${text}`)].join("\n"));
  return fc.array(day, { minLength: 1, maxLength: 3 }).map((days) => `${days.join("\n")}\n`);
}

/** What the files of a life begin with, in their order. */
export function beginningOf(hands: readonly Hand[]): fc.Arbitrary<readonly string[]> {
  const names = hands.flatMap((hand) => (hand.names ? [`names ${hand.names}\n`] : []));
  const days = practice.map((all) => `${all.join("\n")}\n`);
  return fc.tuple(fc.constantFrom("", ...names), lines, pageOf(lineOf(hands)), days);
}
