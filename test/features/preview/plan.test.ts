import { describe, expect, test } from "vitest";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { dayPlan } from "../../../server/plan/day-plan.ts";
import { USUAL_PLAN } from "../../../server/plan/plan.ts";
import type { PreviewPlan, PreviewToday } from "../../../shared/preview.ts";
import { journalOf, URI } from "../journal-text.ts";
import { type Asked, previewOf } from "./preview-asked.ts";

// What a plan has is tested in test/plan; here, when it is shown, and what of it. Journals are invented.

const TODAY = "2026-03-09";
const WORKED = `2026-03-02, 20 min
  D minor, thirds, slurred, 8ths at 60 clean
2026-03-06, 20 min
  F major, 8ths at 80 clean
`;

function today(text: string, asked: Partial<Asked["plan"]> = {}, day = TODAY): PreviewToday {
  return previewOf(text, { today: day, plan: { settings: USUAL_PLAN, ...asked } }).today;
}

function plan(text: string, asked?: Partial<Asked["plan"]>, day?: string): PreviewPlan | null {
  return today(text, asked, day).plan;
}

/** Each stretch with the minutes of its lines. */
function shape(found: PreviewPlan | null): string {
  const told = (found?.stretches ?? []).map(({ phase, minutes, lines }) =>
    [`${phase} ${minutes}`, ...lines.map((line) => line.minutes)].join(": "),
  );
  return told.join("; ");
}

describe("on a day that has not begun", () => {
  test("its lines by phase, as the plan of the day has them, each with its minutes and reasons apart", () => {
    const asked = { day: parseIsoDate(TODAY)!, minutes: 45, settings: USUAL_PLAN };
    const { lines, breaks } = dayPlan(journalOf(WORKED), asked);
    const shown = plan(WORKED, { minutes: 45 })!;
    expect(shown).toMatchObject({ day: TODAY, offer: "", place: null, minutes: 45 });
    expect(shown.stretches.flatMap((each) => each.lines.map(({ text, minutes }) => `${text}, ${minutes}`))).toEqual(
      lines.map(({ text }) => text),
    );
    expect(shown.stretches.flatMap((each) => each.lines.map(({ reasons }) => reasons))).toEqual(
      lines.map(({ reasons }) => reasons),
    );
    expect(shown.stretches.filter(({ phase }) => phase === "break")).toEqual(
      breaks.map(({ minutes }) => ({ phase: "break", minutes: `${minutes} min`, lines: [] })),
    );
    expect(breaks.length).toBeGreaterThan(0);
  });

  test("for as long as was asked, or as is usual", () => {
    expect(plan(WORKED)!.minutes).toBe(20); // plan.md 3: with fewer than three practised days
    expect(shape(plan(WORKED))).toBe("warm-up 5 min: 5 min; groundwork 15 min: 10 min: 5 min");
    expect(shape(plan(WORKED, { minutes: 5 }))).toBe("groundwork 5 min: 5 min");
  });

  test("what was worked last is not said beside it", () => {
    expect(today(WORKED).last).toEqual([]);
  });

  test("why the time is shorter is said", () => {
    expect(plan("2026-01-02\n  D minor, 8ths at 60 clean\n")!.sentences).toEqual([
      "One of the first days back after 9 weeks away: 10 minutes instead of 20, and nothing fast.",
    ]);
  });

  test("for the instrument that was chosen", () => {
    const text = `instrument alto recorder\n${WORKED}2026-03-07\n  G major, 8ths at 66 clean, on flute\n`;
    const choice = { span: 26, instrument: "flute" } as const;
    const { stretches } = previewOf(text, { today: TODAY, choice }).today.plan!;
    expect(stretches.every(({ lines }) => lines.every((line) => line.text.includes(", on flute")))).toBe(true);
  });
});

describe("on a day that has begun", () => {
  const begun = `${WORKED}${TODAY}\n  G major, 8ths at 60 clean\n`;

  test("it is behind a button, and what was worked last is there", () => {
    const shown = today(begun);
    expect(shown.plan).toMatchObject({ day: TODAY, offer: "Show a plan for another session", stretches: [] });
    expect(shown.last.length).toBeGreaterThan(0);
  });

  test("the button shows it for that day alone", () => {
    expect(plan(begun, { shownOn: TODAY })).toMatchObject({ offer: "", day: TODAY });
    expect(plan(begun, { shownOn: TODAY })!.stretches.length).toBeGreaterThan(0);
    expect(plan(begun, { shownOn: "2026-03-08" })!.stretches).toEqual([]);
  });

  test("a plan that waits in the journal is led to", () => {
    const text = `${WORKED}${TODAY}, plan\n  G major, 8ths at 60 clean\n  D minor, slow\n`;
    expect(today(text)).toMatchObject({ plan: { place: { uri: URI, line: 6 }, stretches: [] }, last: [] });
  });
});

describe("after pain", () => {
  const sore = (day: string) => `${WORKED}${day}\n  C major, at 60 clean, sore left thumb\n`;
  const offer = "Show a plan for a short day";

  test("there is a word of care, and a plan behind a button", () => {
    for (const day of ["2026-03-08", "2026-03-06", "2026-02-20"]) {
      const shown = today(sore(day));
      expect(shown.plan).toMatchObject({ offer, stretches: [] });
      expect(shown.last).toEqual([]);
    }
    expect(today(sore("2026-03-08")).sentences).toEqual([
      expect.stringMatching(/^Yesterday you noted “sore left thumb”\./),
    ]);
  });

  test("the plan brings its own words of care in place of these", () => {
    const { plan: shown, sentences } = today(sore("2026-03-06"), { shownOn: TODAY });
    expect(shown!.stretches.length).toBeGreaterThan(0);
    expect(sentences).toEqual([
      expect.stringMatching(/^On 6 March you noted “sore left thumb”\. Rest is a full answer\./),
      "If it is still there, no playing: tell your teacher and see a doctor.",
    ]);
    expect(shape(plan(sore("2026-03-08"), { shownOn: TODAY }))).toMatch(/^away 15 min/);
  });
});

test("once the time of a day after pain is used up, no other plan is offered, and a sentence says so", () => {
  const played = `${WORKED}2026-03-06\n  C major, slow, sore left thumb\n${TODAY}, 10 min\n  G major, slow\n`;
  const shown = today(played); // usual: 20 minutes, so half of it is 10
  expect([shown.plan, shown.last]).toEqual([null, []]);
  expect(shown.sentences.at(-1)).toBe("That was today's half: leave it at that, and rest.");
  expect(today(played.replace("10 min", "5 min")).plan).toMatchObject({ offer: "Show a plan for a short day" });
});

describe("where there is none", () => {
  test("on a day of rest", () => expect(plan(`${WORKED}${TODAY}, rest\n`)).toBeNull());

  test("while files are still being read, as it would be of a part", () => {
    expect(previewOf(WORKED, { today: TODAY, reading: true }).today.plan).toBeNull();
  });

  test("on the evening of the first day; the morning after there is one", () => {
    const first = "2026-03-08, 20 min\n  D minor, slurred, 8ths at 60 clean\n";
    expect(plan(first, {}, "2026-03-08")).toBeNull();
    expect(plan(first)!.stretches.length).toBeGreaterThan(0);
  });

  test("while nothing is named that it could go by", () => {
    const sentence = "Name a piece, an aim or an instrument, and the plan has something to go by.";
    for (const text of ["player Noor\n", "2026-03-08\nIt was cold.\n"])
      expect(today(text)).toMatchObject({ plan: null, sentences: expect.arrayContaining([sentence]) });
    for (const text of ["instrument alto recorder\n", 'piece "Ground"\n', "aim D minor by 2026-05-01\n", WORKED])
      expect(today(text)).toMatchObject({ plan: {}, sentences: expect.not.arrayContaining([sentence]) });
  });
});
