import { describe, expect, test } from "vitest";
import { leapsOf, withoutLeaps } from "../../server/history/leaps.ts";
import { standingOf } from "../../server/history/start-tempo.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { practised } from "./attempt.ts";

// A tempo far above all before it: one and a half times is our own choice. Invented attempts.

const DAY = parseIsoDate("2026-04-06")!;

describe("a leap is held against", () => {
  const leaps = (lines: string) =>
    leapsOf({ records: practised(lines) }).map(({ record, before }) => [record.rate, before.rate]);

  test.each([
    ["the best that was reached before", "2026-03-02 54\n2026-03-03 56\n2026-03-04 160", [[160, 56]]],
    ["nothing else, where something was reached", "2026-03-02 54 70x\n2026-03-03 84", [[84, 54]]],
    ["the fastest that was tried, where nothing was", "2026-03-02 56x 58x\n2026-03-04 160", [[160, 58]]],
    ["also of the same day", "2026-03-02 60x 48x 144 160", [[144, 60]]],
    ["what was tried within twelve weeks", "2025-12-01 56x\n2026-03-04 160", []],
    ["exactly one and a half times is none", "2026-03-02 60\n2026-03-04 90", []],
    ["the first of all is none", "2026-03-02 160", []],
  ])("%s", (_, lines, expected) => expect(leaps(lines)).toEqual(expected));
});

describe("a leap counts for nothing until a second day reaches it", () => {
  const rates = (lines: string) => withoutLeaps(practised(lines), DAY).map(({ rate }) => rate);

  test.each([
    ["alone", "2026-03-02 54\n2026-03-03 56 160", [54, 56]],
    ["twice on one day", "2026-03-02 60x 48x 144 160", [60, 48]],
    ["five times in a row on one day", "2026-03-02 54\n2026-03-03 160 160 160 160 160", [54]],
    ["on a second day", "2026-03-02 54\n2026-03-03 96\n2026-03-04 96", [54, 96, 96]],
    ["on a second day faster still", "2026-03-02 54\n2026-03-03 96\n2026-03-04 100 102", [54, 96, 100, 102]],
    ["as fast as both days went", "2026-03-02 54\n2026-03-03 160\n2026-03-04 96", [54, 96]],
    ["what goes on from it counts", "2026-03-02 54\n2026-03-03 96\n2026-03-04 97\n2026-03-05 98", [54, 96, 97, 98]],
    ["a slower tempo behind it does not make it sure", "2026-03-02 54\n2026-03-03 100\n2026-03-04 70", [54, 70]],
    ["a second day that is still to come", "2026-03-02 54\n2026-03-03 96\n2026-04-06 96", [54, 96].slice(0, 1)],
  ])("%s", (_, lines, expected) => {
    const told = rates(lines);
    expect(told.slice(0, expected.length)).toEqual(expected);
    expect(told.length - expected.length).toBe(lines.includes("04-06") ? 1 : 0); // days ahead stay as they are
  });

  test("nothing is copied where there is none", () => {
    const records = practised("2026-03-02 54\n2026-03-03 60");
    expect(withoutLeaps(records, DAY)).toBe(records);
  });

  test("it is neither steady nor reached, but was practised", () => {
    const lines = "2026-03-02 54\n2026-03-03 160 160 160 160 160";
    expect(standingOf(practised(lines), DAY)).toMatchObject({
      steady: null,
      reached: 54,
      practisedOn: parseIsoDate("2026-03-03"),
    });
  });
});
