import { trendInWords } from "../history/trend-words.ts";
import { weekCount } from "../history/week-span.ts";
import { mondayOf } from "../journal/calendar.ts";
import { shortDate } from "../journal/date-words.ts";
import { isRate, shownRate, type TempoChart, type TempoFrame } from "./tempo-data.ts";
import { isSlow } from "./tempo-marks.ts";

/** What a tempo chart shows, in sentences. `left` is how many attempts have no dot of their own. */
export function describeTempo(data: TempoChart, frame: TempoFrame, left = 0): string {
  return [...bestsOf(data, frame), ...attemptsOf(frame, left), ...trendOf(data, frame), ...aimOf(data, frame)]
    .map((sentence) => `${sentence[0]!.toUpperCase()}${sentence.slice(1)}.`)
    .join(" ");
}

function bestsOf({ notation }: TempoChart, { told, weeks }: TempoFrame): string[] {
  const bests = weeks.flatMap(({ index, bestClean }) => (isRate(bestClean) ? [{ index, rate: bestClean }] : []));
  const first = bests[0];
  const last = bests.at(-1);
  if (!first || !last) return ["no tempo was reached"];
  const highest = bests.reduce((best, each) => (each.rate > best.rate ? each : best));
  const slow = weeks.filter(isSlow).length;
  const when = ({ index }: { readonly index: number }) => `week of ${shortDate(mondayOf(index), mondayOf(told.last))}`;
  const range =
    first === last
      ? `best reached ${shownRate(first.rate, notation)} (${when(first)})`
      : `weekly best from ${shownRate(first.rate, notation)} (${when(first)}) to ${shownRate(last.rate, notation)} (${when(last)})`;
  const top =
    highest.rate > last.rate && highest !== first
      ? `, highest ${shownRate(highest.rate, notation)} (${when(highest)})`
      : "";
  const without = weekCount({ first: told.first, last: weeks.at(-1)!.index }) - bests.length;
  return [
    `${range}${top}`,
    ...(slow ? [`${countOf(slow, "week")} of slow work`] : []),
    ...(without ? [`${countOf(without, "week")} without a tempo reached`] : []),
  ];
}

function attemptsOf({ attempts }: TempoFrame, left: number): string[] {
  if (attempts.length === 0) return [];
  const reached = attempts.filter((attempt) => attempt.reached).length;
  const each =
    reached === attempts.length
      ? reached === 1
        ? "reached"
        : "all reached"
      : `${reached === 0 ? "none" : reached} reached`;
  const thinned = left ? `, ${left} without a dot, as a higher one is close by` : "";
  return [`${countOf(attempts.length, "attempt")}, ${each}${thinned}`];
}

function trendOf({ trend, notation }: TempoChart, { weeks }: TempoFrame): string[] {
  return trend ? [`trend: ${trendInWords(trend, weeks, notation)}`] : [];
}

function aimOf({ notation }: TempoChart, { aim, told }: TempoFrame): string[] {
  if (!aim) return [];
  return [
    `aim: ${shownRate(aim.rate, notation)}${aim.day === undefined ? "" : ` by ${shortDate(aim.day, mondayOf(told.last))}`}`,
  ];
}

function countOf(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}
