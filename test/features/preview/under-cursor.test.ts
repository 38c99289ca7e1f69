import { expect, test } from "vitest";
import { shownBy } from "../../../server/features/preview/under-cursor.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { journalOf, URI } from "../journal-text.ts";

// By which line the preview shows what stands on another. The journal is invented.

const TEXT = `piece "Suite" as Suite: D major, 60 bars
piece "Suite", movement 1: D major, 20 bars
2026-03-02
  D minor, thirds, slurred, 8ths at 60 clean
  Suite, movement 1, bars 1-8, at 60 clean
  Suite, movement 2, bars 1-8, at 50 clean
  ask: where does one breathe?
2026-03-04
  D minor, thirds, tongued, 8ths at 63 clean
  Suite, movement 1, bars 9-16, at 60 clean
2026-03-20, plan
  D minor, thirds, slurred, 8ths at 66
`;
const LINES = TEXT.split("\n");

function found(words: string): string {
  const journal = journalOf(TEXT);
  const line = LINES.findIndex((each) => each.includes(words));
  const place = shownBy(journal, URI, line, parseIsoDate("2026-03-09")!);
  expect(place.uri).toBe(URI);
  return LINES[place.line]!.trim();
}

test.each([
  [
    "an exercise by the line it was last played on, in whichever way",
    "8ths at 60",
    "D minor, thirds, tongued, 8ths at 63 clean",
  ],
  ["that line by itself", "8ths at 63", "D minor, thirds, tongued, 8ths at 63 clean"],
  ["what is planned by what was played", "8ths at 66", "D minor, thirds, tongued, 8ths at 63 clean"],
  ["a movement by its own last line", "bars 1-8, at 60", "Suite, movement 1, bars 9-16, at 60 clean"],
  ["another movement by its own", "bars 1-8, at 50", "Suite, movement 2, bars 1-8, at 50 clean"],
  ["a question by itself", "ask:", "ask: where does one breathe?"],
  ["a day by itself", "2026-03-04", "2026-03-04"],
])("%s", (_, words, by) => {
  expect(found(words)).toBe(by);
});
