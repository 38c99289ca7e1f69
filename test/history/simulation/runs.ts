import { attemptsOfJournal } from "../../../server/history/attempts.ts";
import { type HistoryOfStrand, historyOf } from "../../../server/history/history.ts";
import { type Trend, trendOf, type Verdict } from "../../../server/history/trend.ts";
import { weeksOf } from "../../../server/history/weeks.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { randomFrom } from "../random.ts";
import { type Player, practiceOf, type Sitting, withSlowWeeks } from "./player.ts";
import { trueSlope } from "./truth.ts";
import { journalOf, recordsOf } from "./written.ts";

/** What came of many runs of one player. */
export interface Outcome {
  readonly runs: number;
  /** How many runs had each verdict. */
  readonly verdicts: Readonly<Record<Verdict, number>>;
  /** How many runs had an interval and tested weeks enough, and in how many of them it held the true slope. */
  readonly intervals: number;
  readonly covering: number;
}

/** One seed for all, and no other was tried: nobody may look for a lucky one. */
export const SEED = 1968;

/**
 * The courses of a player, the same ones every time. The lowest tempo of a course, in quarters a minute, goes through
 * 54 to 65 from run to run, so that it lies on the marks and between.
 */
export function* courses(player: Player, runs: number) {
  const random = randomFrom(SEED);
  for (let run = 0; run < runs; run++) {
    const lowest = 54 + (run % 12);
    yield { lowest, random, sittings: practiceOf(player, lowest, random) };
  }
}

/** Fits `runs` courses of this player. */
export function outcomeOf(player: Player, runs: number): Outcome {
  const slopes = new Map<number, number>();
  const verdicts = { rising: 0, falling: 0, level: 0, "too early": 0 };
  let intervals = 0;
  let covering = 0;
  for (const { lowest, sittings } of courses(player, runs)) {
    const truth = slopes.get(lowest) ?? trueSlope(player, lowest);
    slopes.set(lowest, truth);
    const { verdict, low, high } = trendFrom(sittings);
    verdicts[verdict]++;
    if (verdict === "too early" || low === null || high === null) continue;
    intervals++;
    if (low <= truth && truth <= high) covering++;
  }
  return { runs, verdicts, intervals, covering };
}

/** In how many of so many runs one to three slow weeks more made a course fall that did not without them. */
export function turnedToFalling(player: Player, runs: number): number {
  let turned = 0;
  for (const { lowest, random, sittings } of courses(player, runs)) {
    const more = withSlowWeeks(sittings, player, lowest, random);
    if (trendFrom(sittings).verdict !== "falling" && trendFrom(more).verdict === "falling") turned++;
  }
  return turned;
}

/** In how many of so many runs the journal, read as text, gives other weeks or another trend than the records do. */
export function differingAsText(player: Player, runs: number): number {
  let differing = 0;
  for (const { sittings } of courses(player, runs)) {
    const written = strandOf(sittings);
    const figures = ({ weeks, trend }: { weeks: HistoryOfStrand["weeks"]; trend: Trend }) =>
      JSON.stringify([
        weeks.map(({ week, bestClean, usual, tested }) => [week, bestClean, usual, tested]),
        [trend.slope, trend.low, trend.high, trend.verdict, trend.weeks],
      ]);
    const weeks = weeksOf(recordsOf(sittings));
    if (figures(written) !== figures({ weeks, trend: trendOf(weeks) })) differing++;
  }
  return differing;
}

const URI = "file:///journal/journal.practice";

/** What the history says of the one exercise of a journal, as the command line prints it. */
function strandOf(sittings: readonly Sitting[]): HistoryOfStrand {
  const journal = new Journal("file:///journal", new Map([[URI, createDocument(journalOf(sittings))]]));
  return historyOf(attemptsOfJournal(journal)).exercises[0]!.strands[0]!;
}

function trendFrom(sittings: readonly Sitting[]) {
  return trendOf(weeksOf(recordsOf(sittings)));
}
