import { expect, test } from "vitest";
import { dateAboveIn } from "../../../server/features/commands/date-above.ts";
import { underlinedOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { edited, journalOf, URI } from "../journal-text.ts";

const TODAY = parseIsoDate("2026-06-01")!;

/** What the text becomes with the cursor on a line, from 0, by the title of the fix. */
function dated(text: string, line: number): Readonly<Record<string, string>> {
  const at = { line, character: 0 };
  const actions = dateAboveIn(journalOf(text), URI, { start: at, end: at }, TODAY);
  return Object.fromEntries(actions.map(({ title, edits }) => [title, edited(text, edits)]));
}

const EVENING = "instrument alto recorder\n\nlong tones 5 min\nf major 66 clean\n";
const WITH_DATE = "instrument alto recorder\n\n2026-06-01 Mon\nlong tones 5 min\nf major 66 clean\n";

test("lines without a date get today's, above the first of them", () => {
  const fix = { "Date these lines 2026-06-01 Mon": WITH_DATE };
  expect([dated(EVENING, 2), dated(EVENING, 3)]).toEqual([fix, fix]);
});

test("a date is written as the file writes its own, with the file's line ends", () => {
  expect(dated("f major 66 clean\r\n2026-05-30 saturday\r\nlong tones\r\n", 0)).toEqual({
    "Date these lines 2026-06-01 monday":
      "2026-06-01 monday\r\nf major 66 clean\r\n2026-05-30 saturday\r\nlong tones\r\n",
  });
});

test("nothing where no date is missing, or where today is there already", () => {
  expect(dated(EVENING, 0)).toEqual({});
  expect(dated(WITH_DATE, 3)).toEqual({});
  expect(dated(`${EVENING}2026-06-01\n`, 2)).toEqual({});
});

test("of an evening without a date the first line alone is marked", () => {
  const marks = underlinedOf(journalOf(EVENING), URI, TODAY);
  expect(marks.map(({ code, range }) => [code, range.start.line])).toEqual([["no-day", 2]]);
});
