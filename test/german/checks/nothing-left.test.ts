import { expect, test } from "vitest";
import { askedFixesIn } from "../../../server/features/diagnostics/asked-fixes.ts";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { journalOf, URI } from "../../features/journal-text.ts";
import { faultyText } from "../../support/faulty-text.ts";
import { englishLeft } from "../english-left.ts";
import { GERMAN_JOURNAL, sampleJournals } from "../journals.ts";

// Messages and titles over the samples, over a journal in German, and over both with a slip on every line, hold no
// English but what the journal says itself.

const TODAY = parseIsoDate("2026-06-01")!;
const JOURNALS = [...sampleJournals(), GERMAN_JOURNAL, faultyText(8000)];

test("as they are written", () => {
  const shown = JOURNALS.flatMap(shownOf);
  expect(shown.length).toBeGreaterThan(400);
  expect(englishAmong(shown)).toEqual([]);
});

/** Each leaves something to be found on most lines. */
const SLIPS: readonly (readonly [name: string, slip: (line: string) => string])[] = [
  ["a letter twice", (line) => line.replace(/(\p{L})(?=\p{L}{2}$)/u, "$1$1")],
  ["a letter left out", (line) => line.replace(/(\p{L}{3})\p{L}/u, "$1")],
  ["a word left out", (line) => line.replace(/\s+\S+(?=\s)/, "")],
  ["the last word left out", (line) => line.replace(/\s+\S+$/, "")],
  ["a word twice", (line) => line.replace(/(\s\S+)$/, "$1$1")],
  ["no commas", (line) => line.replaceAll(",", "")],
  ["no colon", (line) => line.replace(":", "")],
  ["the first note of a list another", (line) => line.replace(/: [A-Ha-h]\b/, ": E")],
  ["a digit more", (line) => line.replace(/\d+(?=\D*$)/, (digits) => `${digits}7`)],
  ["words behind it", (line) => `${line}, wumsig, 12, "Quax", 3rd inversion, on Wumse, C#`],
  ["a quote that does not close", (line) => line.replace(/"(?=[^"]*$)/, "")],
];

test.each(SLIPS)("with a slip on every line: %s", (_, slip) => {
  const shown = JOURNALS.flatMap((journal) => shownOf(journal.split("\n").map(slip).join("\n")));
  expect(shown.length).toBeGreaterThan(400);
  expect(englishAmong(shown)).toEqual([]);
});

test("what is offered to those who ask, anywhere on a line", () => {
  const shown = [...sampleJournals(), GERMAN_JOURNAL].flatMap((text) => {
    const journal = journalOf(text);
    return text.split("\n").flatMap((line, i) =>
      [...line.matchAll(/(?<=\p{L}\p{L}),|$/gu)].flatMap(({ index }) => {
        const place = { line: i, character: index };
        const actions = askedFixesIn(journal, URI, { start: place, end: place });
        return actions.map(({ title, edits }) => titleOf(title, edits, line));
      }),
    );
  });
  expect(shown.length).toBeGreaterThan(50);
  expect(englishAmong(shown)).toEqual([]);
});

interface Shown {
  readonly text: string;
  /** Of the journal: what stands there, and what a fix would write. */
  readonly journal: string;
}

/** All messages on a journal, and the titles of their fixes. */
function shownOf(text: string): readonly Shown[] {
  const lines = text.split("\n");
  return diagnosticsOf(journalOf(text), URI, TODAY).flatMap(({ message, range, fixes }) => {
    const journal = lines[range.start.line]!;
    return [{ text: message, journal }, ...fixes.map(({ title, edits }) => titleOf(title, edits, journal))];
  });
}

function titleOf(title: string, edits: readonly { readonly newText: string }[], line: string): Shown {
  return { text: title, journal: [line, ...edits.map(({ newText }) => newText)].join(" ") };
}

function englishAmong(shown: readonly Shown[]): readonly string[] {
  return [
    ...new Set(shown.filter(({ text, journal }) => englishLeft(text, journal).length > 0).map(({ text }) => text)),
  ];
}
