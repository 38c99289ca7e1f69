import { expect, test } from "vitest";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { PATTERNS, VARIANTS } from "../../../server/music/patterns/pattern.ts";
import { edited, journalOf, URI } from "../../features/journal-text.ts";

const HEAD = 'pattern "zigzag": 1 3 2 4\n2026-03-02 Mon\n';

/** What is found on a line: the code, the message, and the line after each fix. */
function check(line: string, ...found: readonly (readonly string[])[]): void {
  const text = `${HEAD}${line}\n`;
  const diagnostics = diagnosticsOf(journalOf(text), URI, parseIsoDate("2026-03-02")!);
  expect(
    diagnostics.map(({ code, message, fixes }) => [
      `${code}: ${message}`,
      ...fixes.map(({ title, safe, edits }) => `${safe ? "=>" : "->"} ${title}: ${edited(text, edits).split("\n")[2]}`),
    ]),
  ).toEqual(found);
}

test("a variant that the pattern has not: those that it has are offered, or none", () => {
  check("F major, triads, linked, slow", [
    "unknown-pattern: triads has no linked form: it has alternating and broken.",
    "-> Change to alternating: F major, triads, alternating, slow",
    "-> Change to broken: F major, triads, broken, slow",
    '-> Take out "linked": F major, triads, slow',
  ]);
  check("F major, pedal alternating, slow", [
    "unknown-pattern: pedal has no alternating form: it has only one form.",
    '-> Take out "alternating": F major, pedal, slow',
  ]);
  check("F major, leaps, returning", [
    "unknown-pattern: leaps has no returning form: it has only one form.",
    '-> Take out "returning": F major, leaps',
  ]);
});

test("a variant without a pattern, or beside a declared one: the patterns that have it are told", () => {
  check("F major, returning, slow", [
    'unknown-term: "returning" is a way of playing a pattern; name one: growing.',
    '-> Take out "returning": F major, slow',
  ]);
  check('F major, "zigzag", linked, slow', [
    'unknown-term: "linked" is a way of playing a pattern; name one: threes, fours or fives.',
    '-> Take out "linked": F major, "zigzag", slow',
  ]);
});

test("a second variant is one too many", () => {
  const codes = (line: string) =>
    diagnosticsOf(journalOf(`${HEAD}${line}\n`), URI, parseIsoDate("2026-03-02")!).map(({ code }) => code);
  expect(codes("F major, triads, alternating, broken, slow")).toEqual(["repeated-term"]);
});

test("every variant of every pattern passes, before it and behind it, and each variant is some pattern's", () => {
  for (const { names, variants } of PATTERNS) {
    for (const variant of variants) {
      for (const name of names) check(`F major, ${name}, ${variant}, slow`);
      check(`F major, ${names[0]} ${variant}, slow`);
      check(`F major, ${variant}, ${names[0]}, slow`);
    }
  }
  const had = new Set(PATTERNS.flatMap(({ variants }) => [...variants]));
  expect(VARIANTS.map(({ id }) => id).toSorted()).toEqual([...had].toSorted());
});
