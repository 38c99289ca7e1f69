import { describe, expect, test } from "vitest";
import type { PreviewLesson } from "../../../shared/preview.ts";
import { lineAtPlace, previewOf, seen } from "./preview-asked.ts";

/** Lessons on two Mondays. */
const TEXT = `2026-02-23 Mon
lesson, 45 min
  said: slower
set E major, slow, 2 days
2026-02-25 Wed
  E major, slow
2026-03-02 Mon
ask: asked before the lesson
lesson, 45 min
  D melodic minor, thirds, tongued, 8ths at 76 clean
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

function lesson(text = TEXT, today = "2026-03-07"): PreviewLesson {
  return previewOf(text, { today }).lesson!;
}

/** The set work of now as it is seen. */
function set(text = TEXT, today?: string): string[] {
  return lesson(text, today).now.set.map(seen);
}

describe("set work", () => {
  test("says in words when it was played with all that it states, and for how many days it was set", () => {
    expect(set()[0]).toBe(
      "D melodic minor, thirds, tongued, 8ths at 76 | played Tue 3, Thu 5; set for five days | Mon 2 Mar",
    );
  });

  test("free words are shown without their quotes, with the days on which they were done, and their day", () => {
    expect(set(TEXT, "2026-03-05")[1]).toBe("clap line 4, then say it | done Tue 3 | for Fri 6 Mar");
    expect(set()[1]).toBe("clap line 4, then say it | done Tue 3; was for 6 Mar | Mon 2 Mar");
  });

  test("where it was not played nothing is said of that", () => {
    expect(set('2026-03-02\nlesson\nset "breathe", 3 days\nset F major, slow\n')).toEqual([
      "breathe | set for three days | Mon 2 Mar",
      "F major, slow | Mon 2 Mar",
    ]);
  });

  test("of many days their number and the last", () => {
    const days = [2, 3, 4, 5, 6, 7, 8].map((day) => `2026-03-0${day}\n  F major, slow\n`).join("");
    expect(set(`2026-03-01\nlesson\nset F major, slow\n${days}`, "2026-03-08")).toEqual([
      "F major, slow | played on seven days, last on Sun 8 Mar | Sun 1 Mar",
    ]);
  });

  test("is of the last lesson until the next, unless it is set for a later day", () => {
    const next = "2026-03-09 Mon\nlesson\nset G major, slow\n";
    expect(set(`${TEXT.replace("2026-03-10 Tue plan", "2026-03-20 plan")}${next}`, "2026-03-09")).toEqual([
      "G major, slow | Mon 9 Mar",
    ]);
    const later = "2026-03-02\nlesson\nset F major, slow by 2026-03-21\n";
    expect(set(`${later}${next}`, "2026-03-09").map((each) => each.split(",")[0])).toEqual(["F major", "G major"]);
  });

  test("above the first day it stands for as long as it stands there", () => {
    expect(set("set E major, slow\n2026-03-05\n  E major, slow\n")).toEqual([
      "E major, slow | played Thu 5 | no date set",
    ]);
  });

  test("is homework, too, in words of one's own", () => {
    expect(set("2026-03-02 Mon\nlesson\nhomework:\n  F major, slow\n\n2026-03-05\n  F major, slow\n")).toEqual([
      "F major, slow | played Thu 5 | Mon 2 Mar",
    ]);
  });

  test("stands in Today as well", () => {
    expect(previewOf(TEXT, { today: "2026-03-07" }).today.set).toEqual(lesson().now.set);
  });
});

describe("questions and the teacher's words", () => {
  test("are those since the last lesson, oldest first, each with its day", () => {
    const { note, now } = lesson();
    expect(note).toBe("since Mon 2 Mar");
    expect(now.ask.map(seen)).toEqual([
      "breathe before or after the tie in 24? | Mon 2 Mar",
      "may it be slurred? | Wed 4 Mar",
    ]);
    expect(now.said.map(seen)).toEqual(["the thumb hangs from the air | Mon 2 Mar"]);
    expect(lineAtPlace(TEXT, now.ask[1]!.place)).toContain("may it be slurred?");
  });

  test("between the lesson before and the last they are told apart", () => {
    const { title, set: work, said, ask } = lesson().before!;
    expect(title).toBe("Before that, from Mon 23 Feb");
    expect([work, said, ask].map((those) => those.map(seen))).toEqual([
      ["E major, slow | played Wed 25; set for two days | Mon 23 Feb"],
      ["slower | Mon 23 Feb"],
      ["asked before the lesson | Mon 2 Mar"],
    ]);
  });

  test("a lesson that is only planned is none yet", () => {
    expect(lesson(`${TEXT}2026-03-06\nlesson plan\n`).note).toBe("since Mon 2 Mar");
  });

  test("where no lesson is noted, those of the last four weeks", () => {
    const { note, now, before } = lesson("2026-01-05\nask: long ago\n2026-03-01\nask: which?\n");
    expect(note).toBe("in the last four weeks");
    expect(now.ask.map(({ text }) => text)).toEqual(["which?"]);
    expect(before).toBeNull();
  });
});

test("where there is nothing of it there is no such part", () => {
  expect(previewOf("2026-03-02\n  C major, slow -- a remark\n").lesson).toBeNull();
});
