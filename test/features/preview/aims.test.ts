import { expect, test } from "vitest";
import { lineAtPlace, previewOf } from "./preview-asked.ts";

const DAYS =
  "2026-02-16\n  D minor, thirds, slurred, 8ths at 60 clean, 66 clean\n2026-03-02\n  D minor, thirds, slurred, 8ths at 72 clean, 80 slips\n";

/** Each aim as it is shown on 2026-03-09. */
function aims(text: string): string[] {
  return previewOf(text).aims.map(({ text, sentences }) => `${text}: ${sentences.join(" ")}`);
}

/** Where one aim stands. */
function check(aim: string, days: string, expected: string): void {
  expect(aims(`${aim}\n${days}`)).toEqual([expected]);
}

test("the day, the best so far and the trend", () => {
  check(
    "aim D minor, thirds, slurred, 8ths at 96 by 2026-04-30",
    DAYS,
    "D minor, thirds, slurred, 8ths at 96: By 2026-04-30, in 52 days. Best so far 8ths at 72, in 2026-W10. Too early to say: two tested weeks, it takes four.",
  );
});

test("what was reached says when, in whichever note value", () => {
  check(
    "aim D minor, thirds, slurred, 8ths at 66",
    DAYS,
    "D minor, thirds, slurred, 8ths at 66: Without a day. Reached on 2026-02-16.",
  );
  check(
    "aim D minor, thirds, slurred, 16ths at 36",
    DAYS,
    "D minor, thirds, slurred, 16ths at 36: Without a day. Reached on 2026-03-02.",
  );
  check(
    "aim D minor, thirds, slurred, 8ths at 72 5 in a row",
    DAYS,
    "D minor, thirds, slurred, 8ths at 72 5 in a row: Without a day. Best so far 8ths at 72, in 2026-W10. Too early to say: two tested weeks, it takes four.",
  );
});

test("without practice in half a year there is no trend to tell", () => {
  const days = "2025-03-02\n  E major, at 60 clean\n";
  check("aim E major, at 72", days, "E major, at 72: Without a day. Best so far at 60, in 2025-W09.");
});

test("another way of playing it is not held against it", () => {
  check(
    "aim D minor, thirds, 8ths at 66",
    DAYS,
    "D minor, thirds, 8ths at 66: Without a day. Not played in this way so far.",
  );
});

test("without a tempo, the last time that it was done as it says", () => {
  const days = "2026-03-02\n  E major, by heart, at 60 slips\n2026-03-04\n  E major, at 60 clean\n";
  check(
    "aim E major, by heart by 2026-03-10",
    days,
    "E major, by heart: By 2026-03-10, tomorrow. Last done on 2026-03-02.",
  );
  check("aim F major, by heart", days, "F major, by heart: Without a day. Not done so far.");
});

test("the nearest day stands first; one that has just passed stands last, one long past is left out", () => {
  const text =
    "aim A major by 2026-03-01\naim B major by 2026-01-01\naim C major\naim D major by 2026-05-01\naim E major by 2026-04-01\n";
  expect(aims(text).map((aim) => aim.slice(0, 7))).toEqual(["E major", "D major", "C major", "A major"]);
  expect(aims(text)[3]).toContain("Its day, 2026-03-01, has passed.");
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
    "C major, F major, at 72: Without a day. C major: Best so far at 60, in 2026-W10. Too early to say: one tested week, it takes four. F major: Reached on 2026-03-04.",
  );
  check(
    "aim F major, slow, by heart",
    "2026-03-02\n  C major, F major, slow, by heart\n",
    "F major, slow, by heart: Without a day. Last done on 2026-03-02.",
  );
});

test("nothing ahead of today counts", () => {
  check(
    "aim E major, at 60",
    "2026-03-10\n  E major, at 60 clean\n",
    "E major, at 60: Without a day. Not played in this way so far.",
  );
});
