import { breaksUpTo, practisedDays } from "../../../server/history/break.ts";
import { type Comparison, comparisonsOf } from "../../../server/history/comparisons.ts";
import type { AttemptRecord } from "../../../server/history/record.ts";
import { baselineOf, returnsOf } from "../../../server/history/return.ts";
import { settledIn } from "../../../server/history/settled.ts";
import { trendOf } from "../../../server/history/trend.ts";
import { weeksOf } from "../../../server/history/weeks.ts";
import { attempt } from "../attempt.ts";
import { randomFrom } from "../random.ts";
import { ways } from "./models.ts";
import { type Player, practiceOf } from "./player.ts";
import { courses, SEED } from "./runs.ts";
import { recordsOf } from "./written.ts";

/** A part of the courses of one kind: how many of so many. */
export type Part = (courses: number) => number;

type Course = Partial<Player> & Pick<Player, "gain">;

/** The records of each course of a player who climbs, once a week, unless said. */
function* recordsOfCourses(course: Course, count: number): Generator<readonly AttemptRecord[]> {
  for (const { sittings } of courses({ ...ways(), ...course }, count)) yield recordsOf(sittings);
}

function partOf<T>(all: Iterable<T>, holds: (each: T) => boolean): number {
  let [count, holding] = [0, 0];
  for (const each of all) {
    count++;
    if (holds(each)) holding++;
  }
  return holding / count;
}

/** Of whom it is said, in the last week of the course, that a tempo has settled. */
export const settled =
  (course: Course): Part =>
  (count) =>
    partOf(recordsOfCourses(course, count), (records) => {
      const weeks = weeksOf(records);
      return settledIn(weeks, weeks.at(-1)!.index) !== null;
    });

interface Back {
  readonly isFresh: boolean;
  readonly verdict: string;
  /** Had nothing been cut off. */
  readonly uncut: string;
}

/** Of whom something holds after a break: the whole course is looked at, or what came after. */
export const back =
  (course: Course, holds: (each: Back) => boolean): Part =>
  (count) =>
    partOf(recordsOfCourses(course, count), (records) => {
      const weeks = weeksOf(records);
      const [days] = practisedDays(records).values();
      const since = baselineOf(returnsOf(weeks, breaksUpTo(days!, Number.POSITIVE_INFINITY)));
      return holds({
        isFresh: since !== undefined,
        verdict: trendOf(weeks, since).verdict,
        uncut: trendOf(weeks).verdict,
      });
    });

/** What is said of two ways of playing, tongued so many per cent below slurred, each played once a week for so long. */
function* comparisons(apart: number, weeks: number, count: number): Generator<Comparison | undefined> {
  const random = randomFrom(SEED);
  const player: Player = { ...ways({ weeks }), gain: 0 };
  for (let run = 0; run < count; run++) {
    const lowest = 60 + (run % 12);
    const slurred = recordsOf(practiceOf(player, lowest, random));
    const tongued = recordsOf(practiceOf(player, lowest * (1 - apart / 100), random));
    const records = [
      ...slurred.map((record) => attempt({ ...record, tonguing: "slurred" })),
      ...tongued.map((record) => attempt({ ...record, tonguing: "single" })),
    ];
    yield comparisonsOf(records, records.at(-1)!.day)[0];
  }
}

/** Of whom it is said that the two differ. */
export const toldApart =
  (apart: number, weeks: number): Part =>
  (count) =>
    partOf(comparisons(apart, weeks, count), (found) => found !== undefined);

/** How far apart, in per cent, they are said to be where they are said to be so: the mean. */
export function meanApart(apart: number, weeks: number, count: number): number {
  const ratios = [...comparisons(apart, weeks, count)].flatMap((found) => found?.ratio ?? []);
  return 100 * (1 - ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length);
}
