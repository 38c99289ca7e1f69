import { describe, expect, test } from "vitest";
import { PLAYERS } from "./plan-players.ts";
import { type Course, longestGaps, type Wanted } from "./twelve-weeks.ts";

// Invented players who do the plan of nearly every day for twelve weeks: whatever they want comes round (design: plan.md, 11.4).
// How far apart two plays of a thing may be is our own choice. How real players keep to plans: no source, an assumption.

const IN_FULL = process.env["DAYSTAVE_SIMULATION"] === "in full"; // as test/history/simulation/in-full.mjs says
const SEEDS = Array.from({ length: IN_FULL ? 6 : 1 }, (_, i) => 1968 + i); // that of the other simulations, and those after it
const MINUTES = IN_FULL ? [10, 15, 20, 30, 45, 60, 90] : [10, 20, 45];
const FORTNIGHT = 14;
/** A key next to that of a piece is wanted within four weeks, and has its turn from so many minutes on. */
const FOUR_WEEKS = 28;
const MINUTES_FOR_NEIGHBOURS = 45;

/** The longest time between two plays of each thing in any of the courses. */
function longest(course: Omit<Course, "seed">): readonly { readonly wanted: Wanted; readonly days: number }[] {
  const all = SEEDS.map((seed) => longestGaps({ ...course, seed }));
  return course.player.wanted.map((wanted) => ({ wanted, days: Math.max(...all.map((gaps) => gaps.get(wanted)!)) }));
}

describe.each(PLAYERS)("$name, on 95 days of 100", (player) => {
  test.each(MINUTES)("%i minutes: every aim, every piece and its key within a fortnight", (minutes) => {
    const found = longest({ player, share: 0.95, minutes });
    const most = ({ what }: Wanted): number => {
      if (what !== "neighbour") return FORTNIGHT;
      return minutes < MINUTES_FOR_NEIGHBOURS ? Number.POSITIVE_INFINITY : FOUR_WEEKS;
    };
    const late = found.filter(({ wanted, days }) => days > most(wanted));
    expect(late.map(({ wanted: { name }, days }) => `${name}: ${days} days`)).toEqual([]);
  });
});

/** In so many of a hundred things wanted, neighbours aside; measured in full, where nothing is promised. */
const KNOWN_LATE: Readonly<Record<number, number>> = { 10: 0.0333, 15: 0.0417, 20: 0.0167 };

describe("on 60 days of 100 things may wait for longer than a fortnight, as is known", () => {
  for (const [minutes, recorded] of Object.entries(KNOWN_LATE))
    test(`known miss: ${minutes} minutes`, ({ task }) => {
      const all = PLAYERS.flatMap((player) =>
        SEEDS.flatMap((seed) => [...longestGaps({ player, share: 0.6, minutes: Number(minutes), seed })]),
      ).filter(([{ what }]) => what !== "neighbour");
      const measured = all.filter(([, days]) => days > FORTNIGHT).length / all.length;
      Object.assign(task.meta, { miss: { recorded, measured } });
      const slack = IN_FULL ? 0.005 : 3 * Math.sqrt((recorded * (1 - recorded)) / all.length);
      expect(Math.abs(measured - recorded)).toBeLessThanOrEqual(slack);
    });
});
