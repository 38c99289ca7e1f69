import { describe, expect, test } from "vitest";
import type { PreviewLesson } from "../../../shared/preview.ts";
import { lineAtPlace, previewOf } from "./preview-asked.ts";

/** Set on a Monday, for a week; the lesson before it was on 2026-02-23. */
const TEXT = `2026-02-23 Mon
lesson, 45 min
  said: slower
2026-03-02 Mon
ask: asked before the lesson
lesson, 45 min
set D melodic minor, thirds, tongued, 8ths at 76, 5 days
set "clap line 4, then say it" by 2026-03-06
said: the thumb hangs from the air
ask: breathe before or after the tie in 24?
2026-03-03 Tue
  D melodic minor, thirds, tongued, 8ths at 76 clean
  done "clap line 4, then say it"
2026-03-04 Wed
  D melodic minor, thirds, slurred, 8ths at 76 clean
  ask: may it be slurred?
2026-03-05 Thu
  D melodic minor, thirds, tongued, 8ths at 80 slips
2026-03-10 Tue plan
  D melodic minor, thirds, tongued, 8ths at 76
`;

function lesson(text: string, today = "2026-03-07"): PreviewLesson {
  return previewOf(text, { today }).lesson!;
}

/** `Mon – Tue ✓ …`. */
function ticks(text: string, at = 0, today?: string): string {
  const signs = { done: "✓", "not done": "–", ahead: "" };
  return lesson(text, today)
    .set[at]!.days.map(({ label, state }) => `${label}${signs[state]}`)
    .join(" ");
}

describe("set work", () => {
  test("is ticked on the days on which an entry has all that it states", () => {
    expect(ticks(TEXT)).toBe("Mon– Tue✓ Wed– Thu✓ Fri– Sat– Sun Mon");
    expect(lesson(TEXT).set[0]!.sentence).toBe("Done on 2 of 5 days; for 2026-03-09, in 2 days.");
  });

  test("free words are ticked by `done`, up to the day that is named", () => {
    expect(ticks(TEXT, 1)).toBe("Mon– Tue✓ Wed– Thu– Fri–");
    expect(lesson(TEXT).set[1]!.sentence).toBe("Done on 1 day; it was for 2026-03-06.");
  });

  test("is left out once its day and the next lesson have passed", () => {
    expect(lesson(TEXT, "2026-03-09").set).toHaveLength(2);
    expect(lesson(`${TEXT}2026-03-10 Tue\nlesson\nset E major, slow\n`, "2026-03-10").set).toHaveLength(1);
  });

  test("above the first day it stands for as long as it stands there", () => {
    expect(ticks("set E major, slow\n2026-03-05\n  E major, slow\n")).toBe("Sun– Mon– Tue– Wed– Thu✓ Fri– Sat–");
    expect(lesson("set E major, slow\n2026-03-05\n  E major, slow\n").set[0]!.sentence).toBe("Done on 1 day.");
  });

  test("of a long stretch the latest days are shown, and all are counted", () => {
    const text = "2026-01-05\nset E major by 2026-06-01\n2026-01-06\n  E major, slow\n2026-03-05\n  E major, slow\n";
    const [work] = lesson(text).set;
    expect(work!.days).toHaveLength(15);
    expect(work!.days.at(-1)).toEqual({ label: "Sat", date: "2026-03-07", state: "not done" });
    expect(work!.sentence).toBe("Done on 2 days; for 2026-06-01, in 86 days.");
  });
});

describe("questions and the teacher's words", () => {
  test("are those since the last lesson, oldest first, each with its day", () => {
    const { since, questions, words } = lesson(TEXT);
    expect(since).toBe("Since the lesson on Mon 2026-03-02.");
    expect(questions.map(({ text, note }) => `${text} ${note}`)).toEqual([
      "breathe before or after the tie in 24? 2026-03-02",
      "may it be slurred? 2026-03-04",
    ]);
    expect(words.map(({ text }) => text)).toEqual(["the thumb hangs from the air"]);
    expect(lineAtPlace(TEXT, questions[1]!.place)).toContain("may it be slurred?");
  });

  test("a lesson that is only planned is none yet", () => {
    expect(lesson(`${TEXT}2026-03-06\nlesson plan\n`).since).toBe("Since the lesson on Mon 2026-03-02.");
  });

  test("where no lesson is written, those of the last four weeks", () => {
    const { since, questions } = lesson("2026-01-05\nask: long ago\n2026-03-01\nask: which?\n");
    expect(since).toBe("From the last four weeks, as no lesson is written.");
    expect(questions.map(({ text }) => text)).toEqual(["which?"]);
  });
});

test("where there is nothing of it there is no section", () => {
  expect(previewOf("2026-03-02\n  C major, slow -- a remark\n").lesson).toBeNull();
});
