import { describe, expect, test } from "vitest";
import { dayPlan } from "../../server/plan/day-plan.ts";
import { USUAL_PLAN } from "../../server/plan/plan.ts";
import { planFor } from "./planned.ts";
import { day, journalOf } from "./written.ts";

// The journals are invented; the rules are the project's own (the plan page, 4.1).

function planned(text: string, minutes: number | undefined, date = "2026-03-16") {
  const {
    asked,
    minutes: planned,
    kind,
    notes,
  } = dayPlan(journalOf(text), {
    day: day(date),
    settings: USUAL_PLAN,
    ...(minutes === undefined ? {} : { minutes }),
  });
  return { asked, planned, kind, notes };
}

test("an instrument that may be played for so long only", () => {
  const most = "At most 15 minutes a day on the new alto";
  const alto = 'instrument "new alto": alto recorder, at most 15 min a day until 2026-04-30\n';
  expect(planned(alto, 40)).toMatchObject({ planned: 15, kind: "usual", notes: [`${most}.`] });
  expect(planned(alto, 10)).toMatchObject({ planned: 10, notes: [] });
  expect(planned(alto, 40, "2026-05-01")).toMatchObject({ planned: 40, notes: [] });
  const today = `${alto}\n2026-03-16\n  F major, slow, 10 min\n`;
  expect(planned(today, 40)).toMatchObject({ planned: 5, notes: [`${most}, of which 10 are used up.`] });
  expect(planned(today.replace("10 min", "15 min"), 40)).toMatchObject({ planned: 15, kind: "noInstrument" });
});

test("the middle of the last eight practised days that say how long they were, in whole fives", () => {
  const days = (minutes: readonly (number | undefined)[]) =>
    minutes
      .map(
        (each, i) =>
          `2026-03-${String(i + 1).padStart(2, "0")}${each === undefined ? "" : `, ${each} min`}\n C major, slow\n`,
      )
      .join("");
  expect(planned(days([30, 40, 50]), undefined).asked).toBe(40);
  expect(planned(days([30, 44]), undefined).asked).toBe(20); // too few to tell
  expect(planned(days([30, undefined, 44, 33]), undefined).asked).toBe(30); // 33
  expect(planned(days([200, 200, 200]), undefined).asked).toBe(60);
  expect(planned(days([5, 5, 5]), undefined).asked).toBe(10);
  expect(planned(days([90, 90, 90, 30, 30, 30, 30, 30, 30, 30, 30]), undefined).asked).toBe(30);
});

describe("on a day on which one goes easy, what was played already is part of its time", () => {
  const HURT = "2026-03-09, 30 min\n  C major, slow\n2026-03-10\n  C major, slow, sore thumb\n";
  const on = (text: string, minutes = 30) => {
    const { kind, minutes: own, notes, lines } = planFor(journalOf(text), day("2026-03-13"), { minutes });
    return [kind, own, lines.length > 0, notes];
  };

  test("after something hurt", () => {
    expect(on(HURT)).toEqual(["sparing", 15, true, []]);
    expect(on(`${HURT}2026-03-13, 10 min\n  G major, slow\n`)).toEqual([
      "sparing",
      5,
      true,
      ["You have played 10 of them today."],
    ]);
    const over = "That was today's half: leave it at that, and rest.";
    expect(on(`${HURT}2026-03-13, 15 min\n  G major, slow\n`)).toEqual(["none", 0, false, [over]]);
    expect(on(`${HURT}2026-03-13, 12 min\n  G major, slow\n`)).toEqual(["none", 0, false, [over]]);
  });

  test("and after a break", () => {
    const text = "2026-01-09\n  C major, slow\n";
    expect(on(text)).toEqual([
      "return",
      15,
      true,
      ["One of the first days back after 8 weeks away: 15 minutes instead of 30, and nothing fast."],
    ]);
    expect(on(`${text}2026-03-13, 20 min\n  C major, slow\n`)[3]).toEqual([
      "That was today's half: leave it at that, and rest.",
    ]);
  });

  test("how long the break was is said, in the largest unit that fits; after being ill, that", () => {
    const back = (text: string) => on(text)[3];
    const backAfter = (away: string) => [
      `One of the first days back after ${away}: 15 minutes instead of 30, and nothing fast.`,
    ];
    expect(back("2026-02-19\n  C major, slow\n")).toEqual(backAfter("3 weeks away"));
    expect(back("2025-12-25\n  C major, slow\n2026-03-12\n  C major, slow\n")).toEqual(backAfter("10 weeks away"));
    expect(back("2025-08-01\n  C major, slow\n")).toEqual(backAfter("7 months away"));
    expect(back("2023-08-01\n  C major, slow\n")).toEqual(backAfter("2 years away"));
    expect(back("2026-03-09\n  C major, slow\n2026-03-12 rest, ill\n")).toEqual(backAfter("being ill"));
  });

  test("on a usual day it is not", () => {
    expect(on("2026-03-11\n  C major, slow\n2026-03-13, 30 min\n  C major, slow\n")).toEqual(["usual", 30, true, []]);
  });
});
