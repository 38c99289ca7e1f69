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

const twelve = (different: Partial<Ways>) => NOTERS.map((habit) => ways({ habit, weeks: 12, ...different }));

const covered =
  (gain: number) =>
  (each: Ways, simulation: Simulation): Count => {
    const { covering, intervals } = simulation.of(each, gain);
    return { count: covering, of: intervals };
  };

export const CLAIMS: readonly Claim[] = [
  {
    name: "a level player is called rising in at most 5 %",
    most: 0.05,
    players,
    counted: (each, simulation) => ({ count: simulation.of(each, 0).verdicts.rising, of: simulation.courses }),
  },
  {
    name: "a rise of 2 % a week over 12 weeks is found in at least 90 %",
    least: 0.9,
    players: [
      ways({ habit: "climbs", weeks: 12, metronome: "tenths" }),
      ...twelve({}),
      ...twelve({ growth: "compound" }),
      ...twelve({ daysAWeek: 3 }),
      ...twelve({ metronome: "whole numbers" }),
      ...twelve({ metronome: "whole numbers", growth: "compound" }),
      ...twelve({ metronome: "whole numbers", daysAWeek: 3 }),
    ],
    counted: (each, simulation) => ({ count: simulation.of(each, 2).verdicts.rising, of: simulation.courses }),
  },
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
