import { describe, expect, test } from "vitest";
import type { PreviewToday } from "../../../shared/preview.ts";
import { lineAtPlace, previewOf, seen } from "./preview-asked.ts";

const DAYS = `2026-02-16 Mon
  D minor, thirds, slurred, 8ths at 60 clean
2026-03-05 Thu
  G major, 8ths at 60 clean, 66 slips
  long tones, 5 min
2026-03-06 Fri, 20 min
  "Ground", bars 1-16, at 54 clean
  F major, 8ths at 80 slips
`;

function today(text: string, day = "2026-03-09"): PreviewToday {
  return previewOf(text, { today: day }).today;
}

/** A day that has begun: before that there is a plan in its place (plan.test.ts). */
const BEGUN = "2026-03-09\n  long tones, 5 min\n";

test("what was worked last that has a tempo, with where to start, the latest first", () => {
  const { date, sentences, last } = today(DAYS + BEGUN);
  expect([date, sentences]).toEqual(["Monday 9 March", []]);
  expect(last.map(({ text, behind }) => text + behind)).toEqual([
    "F major, tongued, one octave, 8ths",
    "Ground, bars 1-16",
    "G major, tongued, one octave, 8ths",
  ]);
  expect(last.map(({ facts }) => facts[0])).toEqual([
    "",
    expect.stringMatching(/^start at \d+$/),
    expect.stringMatching(/^start at \d+$/),
  ]);
  expect(last.map(({ day }) => day)).toEqual(["Fri 6 Mar", "Fri 6 Mar", "Thu 5 Mar"]);
  expect(today(DAYS, "2026-03-06").last.map(({ day }) => day)).toEqual(["today", "today", "yesterday"]);
  expect(lineAtPlace(DAYS, last[0]!.place)).toBe("F major, 8ths at 80 slips");
});

test("articulation and note value are called as the line calls them", () => {
  const text = "2026-02-02\n  D minor, slow\n2026-03-06\n  Bb major, legato, quavers at 60 clean\n";
  expect(seen(today(text + BEGUN).last[0]!)).toMatch(/^Bb major, legato, one octave, quavers/);
});

test("on a day of rest there is that, and what is set", () => {
  const shown = today(`set E major, slow\n${DAYS}2026-03-09, rest\n`);
  expect(shown).toMatchObject({ isRest: true, sentences: ["Today is a day of rest."], last: [] });
  expect(shown.set.map(({ text }) => text)).toEqual(["E major, slow"]);
});

describe("after pain", () => {
  // The words of plan.md, 7: the player's own, and the usual caution; common practice, no source.
  const care = (when: string) =>
    `${when} you noted “sore left thumb”. If something hurts, stop and rest, and tell your teacher; see a doctor who knows musicians if it stays, comes back, wakes you, or brings numbness or weakness.`;
  const text = DAYS.replace("at 80 slips", "at 80 slips, sore left thumb");

  test("on that day and the next nothing is proposed", () => {
    expect(today(text, "2026-03-06")).toMatchObject({ sentences: [care("Today")], last: [] });
    expect(today(text, "2026-03-07")).toMatchObject({ sentences: [care("Yesterday")], last: [] });
  });

  test("the sentence stays for a week", () => {
    expect(today(text, "2026-03-12").sentences).toEqual([care("On 6 March")]);
    expect(today(text, "2026-03-13").sentences).toEqual([]);
  });
});

describe("a young journal", () => {
  test("before the first line it says how to begin, and nothing else", () => {
    const { today: shown, exercises, pieces, keys, lesson, weeks, aims } = previewOf("player Noor\n");
    expect(shown).toEqual({
      date: "",
      isRest: false,
      care: 0,
      sentences: [
        "Write a line in the journal, such as `D minor, slurred, 8ths at 60 clean`, and it appears here.",
        "Name a piece, an aim or an instrument, and the plan has something to go by.",
      ],
      set: [],
      last: [],
      plan: null,
    });
    expect([exercises, pieces, keys, lesson, weeks, aims]).toEqual([null, null, null, null, null, []]);
  });

  test("on the first evening one sentence speaks for the whole page", () => {
    const shown = previewOf("2026-03-09, 20 min\n  D minor, slurred, 8ths at 60 clean\n");
    expect(shown.today.sentences).toEqual([
      "Your first lines are here. After some weeks they can show which way a tempo goes.",
    ]);
    expect(shown.exercises!.recent.map(({ shows }) => [shows!.latest, shows!.trend, shows!.day])).toEqual([
      ["60", "", "today"],
    ]);
    expect([shown.keys, shown.weeks, shown.today.last]).toEqual([null, null, []]);
  });

  test("what is dated ahead is no line yet", () => {
    expect(today("2026-03-20\n  D minor, at 60 clean\n").date).toBe("");
  });
});
