import { grid, SPANS, type Ways, ways } from "./models.ts";
import { type Outcome, outcomeOf, turnedToFalling } from "./runs.ts";

/** So many of so many courses. */
export interface Count {
  readonly count: number;
  readonly of: number;
}

/** What the trend is meant to keep of each of these players. */
export interface Claim {
  readonly name: string;
  /** Limits of the part of the courses that is counted. */
  readonly least?: number;
  readonly most?: number;
  readonly players: readonly Ways[];
  readonly counted: (each: Ways, simulation: Simulation) => Count;
}

/** So many courses of each player. Each is simulated once, whatever is asked of it. */
export class Simulation {
  readonly courses: number;
  readonly #outcomes = new Map<string, Outcome>();

  constructor(courses: number) {
    this.courses = courses;
  }

  /** Of a player of these ways who gains so many per cent a week. */
  of(each: Ways, gain: number): Outcome {
    const player = { ...each, gain };
    const name = JSON.stringify(player);
    const outcome = this.#outcomes.get(name) ?? outcomeOf(player, this.courses);
    this.#outcomes.set(name, outcome);
    return outcome;
  }
}

const NOTERS = ["climbs", "reached only"] as const;
const marks = grid(NOTERS, [0.05]);
const wholeNumbers = NOTERS.flatMap((habit) =>
  SPANS.map((weeks) => ways({ habit, weeks, metronome: "whole numbers" })),
);
const stepless = grid(["climbs"], [0.05], { metronome: "tenths" });
const players = [...stepless, ...marks, ...wholeNumbers];
const uneven = NOTERS.flatMap((habit) =>
  SPANS.flatMap((weeks) => [
    ways({ habit, weeks, slowWeeks: "a third" }),
    ways({ habit, weeks, gaps: "six in ten" }),
    ways({ habit, weeks, daysAWeek: "1, later 5" }),
  ]),
);
const movesOn = SPANS.map((weeks) => ways({ habit: "moves on", weeks }));
/** Of whom the trend is known to be wrong: what is measured is recorded, and nothing is promised. */
const known = [
  ...SPANS.map((weeks) => ways({ weeks, wanders: true })),
  ...SPANS.map((weeks) => ways({ habit: "cautious first", weeks })),
  ...SPANS.map((weeks) => ways({ habit: "reached only", noise: 0.08, weeks })),
  ...SPANS.map((weeks) => ways({ habit: "reached only", slowWeeks: "two thirds", weeks })),
];

const twelve = (habit: Ways["habit"]) => [
  ways({ habit, weeks: 12, metronome: "tenths" }),
  ...(["marks", "whole numbers"] as const).flatMap((metronome) => [
    ways({ habit, weeks: 12, metronome }),
    ways({ habit, weeks: 12, metronome, growth: "compound" }),
    ways({ habit, weeks: 12, metronome, daysAWeek: 3 }),
  ]),
];

const covered =
  (gain: number) =>
  (each: Ways, simulation: Simulation): Count => {
    const { covering, intervals } = simulation.of(each, gain);
    return { count: covering, of: intervals };
  };

const called =
  (verdict: "rising" | "falling", gain: number) =>
  (each: Ways, simulation: Simulation): Count => ({
    count: simulation.of(each, gain).verdicts[verdict],
    of: simulation.courses,
  });

const WRONG_WAY = [
  { gain: 1, verdict: "falling" },
  { gain: 2, verdict: "falling" },
  { gain: -1, verdict: "rising" },
] as const;

export const CLAIMS: readonly Claim[] = [
  ...(["rising", "falling"] as const).flatMap((verdict) => [
    {
      name: `a level player is called ${verdict} in at most 5 %`,
      most: 0.05,
      players: [...players, ...uneven],
      counted: called(verdict, 0),
    },
    {
      name: `a level player who moves on after success is called ${verdict} in at most 10 %`,
      most: 0.1,
      players: movesOn,
      counted: called(verdict, 0),
    },
    { name: `a level player is called ${verdict}, as is known`, players: known, counted: called(verdict, 0) },
  ]),
  {
    name: "a rise of 2 % a week over 12 weeks is found in at least 90 %",
    least: 0.9,
    players: twelve("climbs"),
    counted: called("rising", 2),
  },
  {
    name: "a rise of 2 % a week over 12 weeks is found in at least 85 %, where no failure is noted",
    least: 0.85,
    players: twelve("reached only"),
    counted: called("rising", 2),
  },
  ...WRONG_WAY.map(({ gain, verdict }) => ({
    name: `gaining ${gain} % a week is called ${verdict} in at most 0.5 %`,
    most: 0.005,
    players: [...players, ...uneven, ...movesOn],
    counted: called(verdict, gain),
  })),
  ...[0, 1, 2, -1].map((gain) => ({
    name: `gaining ${gain} % a week, the interval holds the true slope in at least 90 %`,
    least: 0.9,
    players,
    counted: covered(gain),
  })),
  ...[0, 1, 2, -1].map((gain) => ({
    name: `gaining ${gain} % a week, the interval holds the true slope in at most 98 %`,
    most: 0.98,
    players,
    counted: covered(gain),
  })),
  {
    // A level player is called falling now and then by chance: the same course is judged with the slow weeks and without.
    name: "one to three slow weeks more turn no course to falling",
    most: 0,
    players: [...stepless, ...marks],
    counted: (each, { courses }) => ({
      count: turnedToFalling({ ...each, gain: 0 }, courses) + turnedToFalling({ ...each, gain: 2 }, courses),
      of: 2 * courses,
    }),
  },
];
