import { median } from "simple-statistics";
import { type DayNumber, weekIndex } from "../journal/calendar.ts";
import { type AttemptRecord, compareText, type Manner } from "./record.ts";
import { signTest } from "./sign-test.ts";
import { CHANCE_OF_A_DIFFERENCE, COMPARED_WITHIN, LEAST_WEEKS_COMPARED, WORTH_SAYING } from "./thresholds.ts";

/** Two ways of playing an exercise, all else equal, of which one is the slower. */
export interface Comparison {
  /** The slower one: `tongued`. */
  readonly of: string;
  /** The other: `slurred`. */
  readonly with: string;
  /** In how many weeks both reached a tempo. */
  readonly weeks: number;
  /** In how many of them `of` was lower, and in how many higher. */
  readonly lower: number;
  readonly higher: number;
  /** The median, over all those weeks, of the best of `of` as a part of that of `with`. */
  readonly ratio: number;
  /** How likely chance alone makes so many of them differ one way. */
  readonly chance: number;
  /** The keys of the strands that they belong to, that of `of` first. */
  readonly strands: readonly string[];
}

type Compared = Pick<
  AttemptRecord,
  "day" | "rate" | "reached" | "strandKey" | "unit" | "reach" | "tonguing" | "rhythm" | "direction" | "byHeart"
>;

/** A condition that is compared, and the pairs of its values; in sentences as a player says them. */
interface Condition {
  readonly sayIn: (manner: Pick<Manner, "tonguing" | "rhythm" | "direction" | "byHeart">) => string;
  /** Whether two of its values are held against each other. */
  readonly isPair: (a: string, b: string) => boolean;
}

const SAID: Readonly<Record<string, string>> = { single: "tongued", "down and up": "top down" };
const DIRECTIONS = ["up", "down", "top down"];
const EVEN = "even";

const CONDITIONS: readonly Condition[] = [
  { sayIn: ({ tonguing }) => SAID[tonguing] ?? tonguing, isPair: (a, b) => areThese(a, b, "slurred", "tongued") },
  { sayIn: ({ rhythm }) => rhythm ?? EVEN, isPair: (a, b) => (a === EVEN) !== (b === EVEN) },
  {
    sayIn: ({ direction = "" }) => SAID[direction] ?? direction,
    isPair: (a, b) => a !== b && DIRECTIONS.includes(a) && DIRECTIONS.includes(b),
  },
  { sayIn: ({ byHeart }) => (byHeart ? "by heart" : "with the music"), isPair: (a, b) => a !== b },
];

function areThese(a: string, b: string, one: string, other: string): boolean {
  return (a === one && b === other) || (a === other && b === one);
}

/**
 * The ways of playing one exercise that differ, of one reach or place and all else equal, over the 52 weeks up to a
 * day: slurred and tongued, even and an uneven rhythm, up and down and top down, by heart and not. The least likely by
 * chance first, then the greatest difference; each pair once.
 *
 * @param records of one exercise, in any order
 */
export function comparisonsOf(records: readonly Compared[], day: DayNumber): readonly Comparison[] {
  const found = [...groupsOf(records, day).values()].flatMap((ways) => comparedIn(ways));
  found.sort(tellingFirst);
  return found.filter((each, i) => found.findIndex((other) => isSamePair(each, other)) === i);
}

/** One way of playing, and the best of each week in which it reached a tempo, by the week's running number. */
interface Way {
  readonly values: readonly string[];
  readonly strandKey: string;
  readonly bests: Map<number, number>;
}

/** The ways of each reach or place, by it. */
function groupsOf(records: readonly Compared[], day: DayNumber): ReadonlyMap<string, Map<string, Way>> {
  const groups = new Map<string, Map<string, Way>>();
  const last = weekIndex(day);
  for (const record of records) {
    const { rate, reached } = record;
    const week = weekIndex(record.day);
    if (rate === null || reached !== true || record.day > day || week <= last - COMPARED_WITHIN) continue;
    const way = wayIn(groups, record);
    way.bests.set(week, Math.max(way.bests.get(week) ?? 0, rate));
  }
  return groups;
}

function wayIn(groups: Map<string, Map<string, Way>>, record: Compared): Way {
  const { unit, reach, strandKey } = record;
  const group = unit === "beats" ? strandKey : (reach ?? "");
  const ways = groups.get(group) ?? new Map<string, Way>();
  groups.set(group, ways);
  const values = CONDITIONS.map(({ sayIn }) => sayIn(record));
  const key = values.join("\n");
  const way = ways.get(key) ?? { values, strandKey, bests: new Map() };
  ways.set(key, way);
  return way;
}

function comparedIn(ways: ReadonlyMap<string, Way>): Comparison[] {
  const all = [...ways.entries()].sort(([a], [b]) => compareText(a, b)).map(([, way]) => way);
  return all.flatMap((a, i) => all.slice(i + 1).flatMap((b) => compared(a, b) ?? []));
}

/** Undefined where more than one condition differs, or nothing can be said. */
function compared(a: Way, b: Way): Comparison | undefined {
  const differing = CONDITIONS.flatMap((_, i) => (a.values[i] === b.values[i] ? [] : [i]));
  const [at] = differing;
  if (at === undefined || differing.length > 1 || !CONDITIONS[at]!.isPair(a.values[at]!, b.values[at]!))
    return undefined;
  return belowIn(a, b, at) ?? belowIn(b, a, at);
}

/** Rates that differ by less than a double can hold of a tempo are equal. */
const EQUAL = 1e-9;

/** Undefined unless the one is clearly below the other. */
function belowIn(one: Way, other: Way, condition: number): Comparison | undefined {
  const ratios = [...one.bests].flatMap(([week, best]) => {
    const against = other.bests.get(week);
    return against === undefined ? [] : [best / against];
  });
  const lower = ratios.filter((ratio) => ratio < 1 - EQUAL).length;
  const higher = ratios.filter((ratio) => ratio > 1 + EQUAL).length;
  if (lower <= higher || lower + higher < LEAST_WEEKS_COMPARED) return undefined;
  const chance = signTest(higher, lower + higher);
  const ratio = median(ratios);
  if (chance > CHANCE_OF_A_DIFFERENCE || ratio > WORTH_SAYING + EQUAL) return undefined;
  return {
    of: one.values[condition]!,
    with: other.values[condition]!,
    weeks: ratios.length,
    lower,
    higher,
    ratio,
    chance,
    strands: [one.strandKey, other.strandKey],
  };
}

function tellingFirst(a: Comparison, b: Comparison): number {
  return a.chance - b.chance || a.ratio - b.ratio || compareText(a.of, b.of) || compareText(a.with, b.with);
}

function isSamePair(a: Comparison, b: Comparison): boolean {
  return areThese(a.of, a.with, b.of, b.with);
}
