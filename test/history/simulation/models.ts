import type { Habit, Player } from "./player.ts";

/** A player but for what is gained or lost: the level player of the same ways is the one to compare with. */
export type Ways = Omit<Player, "gain">;

export const HABITS: readonly Habit[] = ["climbs", "reached only", "comfortable"];

/** Per cent a week. */
export const GAINS = [0, 0.5, 1, 2, 3, -1, -2] as const;

export const SPANS = [12, 26, 52] as const;

/** One sitting a week whose tempo swings by 5 %, on the marks of a metronome, for half a year. */
export function ways(different: Partial<Ways> = {}): Ways {
  return {
    habit: "climbs",
    growth: "line",
    noise: 0.05,
    weeks: 26,
    daysAWeek: 1,
    gaps: false,
    slowWeeks: false,
    wanders: false,
    metronome: "marks",
    ...different,
  };
}

const COURSES = [
  {},
  { gaps: true },
  { slowWeeks: true },
  { gaps: true, slowWeeks: true },
] as const satisfies readonly Partial<Ways>[];

/** Each habit and span, with and without gaps and slow weeks, at these swings. */
export function grid(habits: readonly Habit[], swings: readonly number[], different: Partial<Ways> = {}): Ways[] {
  return habits.flatMap((habit) =>
    swings.flatMap((noise) =>
      SPANS.flatMap((weeks) => COURSES.map((course) => ways({ habit, noise, weeks, ...course, ...different }))),
    ),
  );
}

/** Everything that the report tells of. */
export const ALL: readonly Ways[] = [
  ...grid(HABITS, [0.02, 0.05, 0.08]),
  ...grid(["climbs", "reached only"], [0.05], { metronome: "whole numbers" }),
  ...grid(["climbs", "reached only"], [0.05], { metronome: "tenths" }),
  ...grid(["climbs", "reached only"], [0.05], { daysAWeek: 3 }),
  ...(["climbs", "reached only"] as const).flatMap((habit) => [
    ways({ habit, weeks: 12, growth: "compound" }),
    ways({ habit, slowWeeks: "a third" }),
    ways({ habit, slowWeeks: "two thirds" }),
    ways({ habit, gaps: "six in ten" }),
    ways({ habit, daysAWeek: "1, later 5" }),
    ways({ habit, wanders: true }),
  ]),
  ...(["moves on", "cautious first"] as const).map((habit) => ways({ habit })),
];

/** `climbs, 5 %, 12 weeks, gaps`. */
export function nameOf({ habit, growth, noise, weeks, daysAWeek, gaps, slowWeeks, wanders, metronome }: Ways): string {
  const rest = [
    gaps && (gaps === true ? "gaps" : "six weeks of ten off"),
    slowWeeks && (slowWeeks === true ? "slow weeks" : `${slowWeeks} of the weeks slow`),
    daysAWeek !== 1 && (daysAWeek === 3 ? "three days a week" : "one day a week, later five"),
    wanders && "form wanders",
    metronome !== "marks" && metronome,
    growth === "compound" && "compound",
  ].filter((part) => part !== false);
  return [habit, `${Math.round(100 * noise)} %`, `${weeks} weeks`, ...rest].join(", ");
}
