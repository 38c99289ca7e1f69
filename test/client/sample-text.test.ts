import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { sampleText } from "../../client/sample-text.ts";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { journalOf, URI } from "../features/journal-text.ts";

// The sample that the walkthrough opens, as one text. Its player and all its numbers are made up.

const JOURNAL = "player Ottilie\naim D minor at 72 by 2026-04-01\n";
const EARLIER = "-- Earlier.\n\n2026-02-28 Sat\n  F major\n";
const WEEK = "-- Look here.\n\n2026-03-02 Mon\n  D minor\n\n2026-03-08 Sun, plan\n  D minor\n";

test("declarations come first, then what the week says of itself, then all days", () => {
  expect(sampleText([JOURNAL, EARLIER, WEEK], "2026-03-08")).toBe(`player Ottilie
aim D minor at 72 by 2026-04-01

-- Look here.

2026-02-28 Sat
  F major

2026-03-02 Mon
  D minor

2026-03-08 Sun, plan
  D minor
`);
});

test.each([
  ["the day after it ends it stays as it is", "2026-03-09", "2026-03-08 Sun"],
  ["six days later too", "2026-03-14", "2026-03-08 Sun"],
  ["a week later it is a week later, weekdays stay right", "2026-03-15", "2026-03-15 Sun"],
  ["over the end of a year", "2027-01-02", "2026-12-27 Sun"],
  ["before it ends it stays as it is", "2026-01-01", "2026-03-08 Sun"],
])("%s", (_, today, last) => {
  expect(sampleText([JOURNAL, EARLIER, WEEK], today)).toContain(last);
});

test.each(["2026-03-09", "2027-01-02", "2028-02-29"])(
  "on %s the quickstart sample has its two wrong scales, and nothing else to find",
  (today) => {
    const read = (name: string) => readFileSync(`samples/quickstart/${name}.practice`, "utf8");
    const journal = journalOf(sampleText([read("journal"), read("2026-02"), read("week")], today));
    const found = diagnosticsOf(journal, URI, parseIsoDate(today)!);
    expect(found.map(({ code }) => code).sort()).toEqual(["scale-note", "scale-spelling"]);
  },
);
