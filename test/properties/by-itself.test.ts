import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { semanticTokens } from "../../server/features/colours/semantic-tokens.ts";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import { documentSymbols } from "../../server/features/outline/document-symbols.ts";
import { attemptsOfJournal } from "../../server/history/attempts.ts";
import { isoDate, parseIsoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import { blockIndexAt, createDocument } from "../../server/syntax/document/document.ts";
import { times } from "../support/random-runs.ts";
import { anyLine, anyVocabulary, HAND_NAMES, HANDS, kindredLinesBy, lineBy } from "./any-line.ts";

// However a line is written and whatever was read before it: it says what it says by itself.

const URI = "file:///journal/journal.practice";
const TODAY = parseIsoDate("2026-06-01")!;
const FIRST = parseIsoDate("2026-02-02")!;

/** What is told across days, by design. */
const CROSSING = ["tempo-leap", "duplicate-declaration", "aim-far"];
/** Names that are declared in a day hold everywhere, by design. */
const NAMING = /\b(?:piece|study|pattern|scale|phase|activity|instrument|names)\b/i;

/** What is told of a line, and which known titles it names. */
interface Told {
  readonly titles: string;
  readonly [what: string]: unknown;
}

/** What a journal of one line a day tells of each line. */
function toldOf(head: readonly string[], lines: readonly string[], end: string, first = FIRST): readonly Told[] {
  const days = lines.map((line, i) => `${isoDate(first + i)}${end}${line}${end}`);
  const text = head.map((each) => each + end).join("") + days.join("");
  const journal = new Journal("file:///journal", new Map([[URI, createDocument(text)]]));
  const found = diagnosticsOf(journal, URI, TODAY).filter(({ code }) => !CROSSING.includes(code));
  const attempts = attemptsOfJournal(journal);
  const symbols = documentSymbols(journal, URI);
  const document = journal.files.get(URI)!;
  return lines.map((line, i) => {
    const at = head.length + 2 * i;
    const start = { line: at, character: 0 };
    return {
      line,
      titles: JSON.stringify([...(journal.titlesOf(document.blocks[blockIndexAt(document, at)]!) ?? [])]),
      findings: found
        .filter(({ range }) => range.start.line === at + 1)
        .map(({ code, message, range, fixes }) => [
          code,
          message,
          range.start.character,
          range.end.character,
          fixes.length,
        ]),
      attempts: attempts
        .filter(({ day }) => day === first + i)
        .map(({ strandKey, rate, reached, count, minutes, noteValue, beat, subject, where }) => ({
          ...{ strandKey, rate, reached, count, minutes, noteValue, beat, subject, where },
        })),
      symbols: symbols.filter(({ range }) => range.start.line === at).flatMap(({ children }) => children.map(namesOf)),
      tokens: semanticTokens(journal, URI, { start, end: { line: at + 2, character: 0 } }).slice(1),
    };
  });
}

function namesOf({ kind, name, detail }: { readonly kind: string; readonly name: string; readonly detail?: string }) {
  return [kind, name, detail];
}

function check(head: readonly string[], lines: readonly string[], end = "\n"): void {
  const told = toldOf(head, lines, end);
  const alone = lines.map((line, i) => toldOf(head, [line], end, FIRST + i)[0]!);
  // A title that a day teaches is known on later days, by design (titles.test.ts): such a line has its meaning from there.
  const apart = told.flatMap(({ titles }, i) => (titles === alone[i]!.titles ? [i] : []));
  expect(apart.map((i) => told[i])).toEqual(apart.map((i) => alone[i]));
}

const linesOf = (line: fc.Arbitrary<string>) => fc.array(line, { minLength: 2, maxLength: 30 });
const oneByOne = (lines: fc.Arbitrary<readonly string[]>) =>
  lines.map((all) => all.filter((each) => !NAMING.test(each) && !/[\r\n]/.test(each)));

describe.each(HAND_NAMES)("the %s hand", (name) => {
  const hand = HANDS[name];
  const lines = oneByOne(fc.oneof(kindredLinesBy(hand), linesOf(lineBy(hand))));

  test("a line among others says what it says by itself", () => {
    fc.assert(
      fc.property(anyVocabulary, lines, (head, all) => check(head, all, hand.end)),
      { seed: 71, numRuns: times(4) },
    );
  });
});

test("and so in all hands together, with slips of the fingers", () => {
  fc.assert(
    fc.property(anyVocabulary, oneByOne(linesOf(anyLine)), (head, lines) => check(head, lines)),
    { seed: 72, numRuns: times(8) },
  );
});
