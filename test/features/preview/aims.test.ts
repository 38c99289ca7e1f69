import { expect, test } from "vitest";
import { isoDate, parseIsoDate } from "../../../server/journal/calendar.ts";
import { lineAtPlace, previewOf } from "./preview-asked.ts";

const DAYS =
  "2026-02-16\n  D minor, thirds, slurred, 8ths at 60 clean, 66 clean\n2026-03-02\n  D minor, thirds, slurred, 8ths at 72 clean, 80 slips\n";

/** Each aim as it is shown on 2026-03-09. */
function aims(text: string): string[] {
  return previewOf(text).aims.map(({ text, below, day }) => `${text}: ${below} (${day})`);
}

/** Where one aim stands. */
function check(aim: string, days: string, expected: string): void {
  expect(aims(`${aim}\n${days}`)).toEqual([expected]);
}

test("the day, the best yet, and the forecast or why there is none", () => {
  check(
    "aim D minor, thirds, slurred, 8ths at 96 by 2026-04-30",
    DAYS,
    "D minor, thirds, slurred, 8ths at 96: In 52 days. Best yet: 8ths at 72, in the week of 2 March. Too early for a forecast: 2 of 6 tested weeks. (by Thu 30 Apr)",
  );
});

test("what was reached says when, in whichever note value", () => {
  check(
    "aim D minor, thirds, slurred, 8ths at 66",
    DAYS,
    "D minor, thirds, slurred, 8ths at 66: Reached on 16 February. (no date set)",
  );
  check(
    "aim D minor, thirds, slurred, 16ths at 36",
    DAYS,
    "D minor, thirds, slurred, 16ths at 36: Reached on 2 March. (no date set)",
  );
  check(
    "aim D minor, thirds, slurred, 8ths at 72 5 in a row",
    DAYS,
    "D minor, thirds, slurred, 8ths at 72 5 in a row: 8ths at 72 reached, but not 5 in a row yet. (no date set)",
  );
});

test("without practice lately there is no forecast", () => {
  const days = "2025-03-02\n  E major, at 60 clean\n";
  check(
    "aim E major, at 72",
    days,
    "E major, at 72: Best yet: at 60, in the week of 24 February 2025. No forecast: not tested since then. (no date set)",
  );
});

test("the forecast says which weeks it rests on, whichever are drawn", () => {
  const mondays = ["01-05", "01-12", "01-19", "01-26", "02-02", "02-09", "02-16", "02-23", "03-02"];
  const days = mondays.map((day, at) => `2026-${day}\n  E major, at ${60 + 3 * at} clean\n`).join("");
  const below = (span: 4 | 26) =>
    previewOf(`aim E major, at 96\n${days}`, { choice: { span, instrument: null } }).aims[0]!.below;
  expect(below(26)).toBe(
    "Best yet: at 84, in the week of 2 March. If it goes on as in the last 9 tested weeks, in 2 to 4 weeks; it need not.",
  );
  expect(below(4)).toBe(below(26));
});

test("another way of playing it is not held against it", () => {
  check(
    "aim D minor, thirds, 8ths at 66",
    DAYS,
    "D minor, thirds, 8ths at 66: Not played in this way yet. (no date set)",
  );
});

test("without a tempo, the last time that it was done as it says", () => {
  const days = "2026-03-02\n  E major, by heart, at 60 slips\n2026-03-04\n  E major, at 60 clean\n";
  check(
    "aim E major, by heart by 2026-03-10",
    days,
    "E major, by heart: Tomorrow. Last done on 2 March. (by Tue 10 Mar)",
  );
  check("aim F major, by heart", days, "F major, by heart: Not done yet. (no date set)");
});

test("the nearest day stands first; one that has just passed stands last, one long past is left out", () => {
  const text =
    "aim A major by 2026-03-01\naim B major by 2026-01-01\naim C major\naim D major by 2026-05-01\naim E major by 2026-04-01\n";
  expect(aims(text).map((aim) => aim.slice(0, 7))).toEqual(["E major", "D major", "C major", "A major"]);
  expect(aims(text)[3]).toContain("Was for 1 Mar.");
});

test("an aim below a day is one too, and leads to its line", () => {
  const text = "2026-03-02\n  aim E major, at 72 by 2026-04-01\n  C major, slow\n";
  const [aim] = previewOf(text).aims;
  expect(lineAtPlace(text, aim!.place)).toBe("aim E major, at 72 by 2026-04-01");
});

test("of several subjects each by its name", () => {
  const days = "2026-03-02\n  C major, F major, at 60 clean\n2026-03-04\n  F major, at 72 clean\n";
  check(
    "aim C major, F major, at 72",
    days,
    "C major, F major, at 72: C major: Best yet: at 60, in the week of 2 March. Too early for a forecast: 1 of 6 tested weeks. F major: Reached on 4 March. (no date set)",
  );
  check(
    "aim F major, slow, by heart",
    "2026-03-02\n  C major, F major, slow, by heart\n",
    "F major, slow, by heart: Last done on 2 March. (no date set)",
  );
});

test("nothing ahead of today counts", () => {
  check("aim E major, at 60", "2026-03-10\n  E major, at 60 clean\n", "E major, at 60: Not played yet. (no date set)");
});

test("a forecast as a range of weeks; none while files are still being read", () => {
  const tempos = [60, 60, 63, 63, 66, 66, 69, 69, 72, 72];
  const days = tempos.map((bpm, i) => `${isoDate(parseIsoDate("2026-01-05")! + 7 * i)}\n  E major, at ${bpm} clean\n`);
  const text = `aim E major, at 84\n${days.join("")}`;
  expect(previewOf(text).aims[0]!.below).toBe(
    "Best yet: at 72, in the week of 2 March. If it goes on as in the last 10 tested weeks, in 7 to 12 weeks; it need not.",
  );
  expect(previewOf(text, { reading: true }).aims[0]!.below).toBe("Best yet: at 72, in the week of 2 March.");
});
