import fc from "fast-check";
import { expect, test } from "vitest";
import { foldingRanges } from "../../../server/features/outline/folding-ranges.ts";
import { LATEST_DAYS, MOST_DAYS_WHOLE } from "../../../server/features/outline/latest-days.ts";
import { isoDate, parseIsoDate } from "../../../server/journal/calendar.ts";
import { anyText, journalOf, journalText, URI } from "../journal-text.ts";

/** Draws the folds of a text in front of its lines: `┌` where one begins, `│` inside, `└` where one ends. */
function drawn(text: string): string {
  const folds = foldingRanges(journalOf(text), URI);
  const mark = (line: number, startLine: number, endLine: number): string => {
    if (line === startLine) return "┌";
    if (line === endLine) return "└";
    return line > startLine && line < endLine ? "│" : " ";
  };
  return text
    .split("\n")
    .map((line, i) => `${folds.map(({ startLine, endLine }) => mark(i, startLine, endLine)).join("")} ${line}`)
    .join("\n");
}

function check(expected: string): void {
  const text = expected
    .split("\n")
    .map((line) => line.replace(/^(?:[┌│└][┌│└ ]*$|[┌│└ ]* )/, ""))
    .join("\n");
  const trimmed = (drawing: string): string => drawing.replace(/ +$/gm, "");
  expect(trimmed(drawn(text))).toBe(trimmed(expected));
}

test("days, sessions and phases fold to their last line that is not blank", () => {
  check(`┌    2026-03-02 Mon
│    C major, slow
│┌   session 19:30
││┌  groundwork, 15 min
│││  D minor, slow
│││
││└  G major, slow
││ ┌ pieces
││ │
└└ └ "Solo", slow
     `);
});

test("what stands above the first day folds, and so do remarks below each other", () => {
  check(`
┌   -- evenings
│   -- after the shop is shut
│
│   player Noor
│┌  -- one
││  -- two
│└  -- three
└   pitch A=415

  ┌ 2026-03-02
  └ -- alone`);
});

test("months fold where a file has several; the first day of one folds with it", () => {
  check(`┌      -- evenings
└      player Noor
 ┌     2026-02-27 Fri
 │     C major, slow
 │┌    2026-02-28 Sat
 └└    C major, slow

   ┌   2026-03-01 Sun
   │   C major, slow
   │┌  2026-03-02 Mon
   └└  C major, slow

     ┌ 2026-04-01 Wed
     └ C major, slow
       2026-05-01
       2026-06-01`);
});

test("years do, too; a day that does not exist belongs to those before it", () => {
  check(`┌    2025-12-30 Tue
│    C major, slow
│┌   2025-12-41
│└   C major, slow
└    2025-12-31
  ┌  2026-01-01
  │┌ 2026-01-02
  ││ C major, slow
  └└ C major, slow`);
});

test("a file that has the newest day first folds alike, and a month with another one in its middle folds in two", () => {
  check(`┌  2026-03-02
└  2026-03-01
 ┌ 2026-02-27
 └ 2026-02-26
`);
  check(`┌  2026-03-01
└  2026-03-02
   2026-02-27
 ┌ 2026-03-03
 └ 2026-03-04
`);
});

test("a single line folds nothing", () => {
  check(` 2026-03-02
 2026-03-03
 `);
});

test("where an editor takes only so many, the latest days keep theirs, older ones fold as a whole, and the oldest not at all", () => {
  const days = Array.from({ length: MOST_DAYS_WHOLE + 3 }, (_, i) => {
    const date = isoDate(parseIsoDate("2026-03-08")! - i);
    return `${date}\nwarm-up\nC major\npieces\n"Solo"`;
  });
  for (const [order, text] of Object.entries({ newest: days.join("\n"), oldest: days.toReversed().join("\n") })) {
    const foldsOf = (most?: number): readonly number[] =>
      foldingRanges(journalOf(text), URI, most).map(({ startLine }) => startLine % 5);
    expect(foldsOf()).toHaveLength(3 * days.length);
    expect(foldsOf(3 * days.length)).toHaveLength(3 * days.length);
    const whole = Array.from({ length: LATEST_DAYS }, () => [0, 1, 3]).flat();
    const alone = Array.from({ length: days.length - LATEST_DAYS }, () => 0);
    expect(foldsOf(3 * days.length - 1)).toEqual(order === "newest" ? [...whole, ...alone] : [...alone, ...whole]);
    expect(foldsOf(7)).toHaveLength(7);
  }
});

test("folds lie inside one another or apart, each over two lines or more, one from a line", () => {
  fc.assert(
    fc.property(fc.oneof(journalText, anyText), (text) => {
      const journal = journalOf(text);
      const { blocks, lineCount } = journal.files.get(URI)!;
      const lines = blocks.flatMap((block) => block.lines);
      const open: number[] = [];
      let before = -1;
      for (const { startLine, endLine } of foldingRanges(journal, URI)) {
        expect(startLine).toBeGreaterThan(before);
        expect(endLine).toBeGreaterThan(startLine);
        expect(endLine).toBeLessThan(lineCount);
        expect(lines[endLine]!.trim()).not.toBe("");
        while (open.length && open.at(-1)! < startLine) open.pop();
        if (open.length) expect(endLine).toBeLessThanOrEqual(open.at(-1)!);
        open.push(endLine);
        before = startLine;
      }
    }),
    { seed: 1 },
  );
});
