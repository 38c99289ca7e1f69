import { join } from "node:path";
import { expect, test } from "vitest";
import { bringUpTo } from "../../client/workbench/bring-up-to.mjs";
import { readSample } from "../../client/workbench/serve.mjs";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import { formatEdits } from "../../server/features/layout/formatting.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import { createDocument } from "../../server/syntax/document/document.ts";

const HEAD = "-- Invented.\n";
const TEXTS = {
  "year/journal.practice": "concert on 2026-06-20, aim by 2026-12-01\n",
  "year/2026-10.practice": `${HEAD}\n2026-10-31 Sat\nF major\n`,
  "year/2026-11.practice": `${HEAD}\n2026-11-20 Fri, 20 min\nset D minor by 2026-11-27\n\n2026-11-22 Sun, rest\n`,
};

test("a sample's last week becomes the present one: what lies ahead is left out, months have their own days", () => {
  expect(bringUpTo(TEXTS, "2026-12-05")).toEqual({
    "year/journal.practice": "concert on 2026-07-04, aim by 2026-12-15\n",
    "year/2026-11.practice": `${HEAD}\n2026-11-14 Sat\nF major\n`,
    "year/2026-12.practice": `${HEAD}\n2026-12-04 Fri, 20 min\nset D minor by 2026-12-11\n`,
  });
});

test("one of this week, or of a later one, stays as it is", () => {
  expect(bringUpTo(TEXTS, "2026-11-18")).toEqual(TEXTS);
  expect(bringUpTo(TEXTS, "2026-01-01")).toEqual(TEXTS);
});

test.each(["2026-11-28", "2027-01-01", "2028-02-29", "2030-07-01"])(
  "on %s the sample year is without fault, up to that day",
  async (today) => {
    const texts = bringUpTo(await readSample(join(import.meta.dirname, "../../samples/year")), today);
    const journal = new Journal(
      "file:///year",
      new Map(Object.entries(texts).map(([path, text]) => [`file:///${path}`, createDocument(text)])),
    );
    const day = parseIsoDate(today)!;
    for (const uri of journal.addresses) {
      expect(diagnosticsOf(journal, uri, day).map(({ code, message }) => `${uri} ${code} ${message}`)).toEqual([]);
      expect(formatEdits(journal, uri)).toEqual([]);
    }
    expect(Object.keys(texts)).toContain(`year/${today.slice(0, 7)}.practice`);
  },
);
