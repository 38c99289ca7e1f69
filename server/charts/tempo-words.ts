import { trendInWords } from "../history/trend-words.ts";
import { spanLabels, weekCount } from "../history/week-span.ts";
import { isRate, shownRate, type TempoChart, type TempoFrame, written } from "./tempo-data.ts";

/** What the marks of a tempo chart mean, for a caption. */
export const TEMPO_MARKS =
  "Filled dot: reached; open dot: not. Line: best of the week; a tick at its foot: worked below best. Shaded: where the trend lies.";

/** What a tempo chart shows, in sentences. `left` is how many attempts have no dot of their own. */
export function describeTempo(data: TempoChart, frame: TempoFrame, left = 0): string {
  return [
    spanOf(frame),
    ...bestsOf(data, frame),
    ...attemptsOf(frame, left),
    trendOf(data, frame),
    ...aimOf(data, frame),
  ]
    .map((sentence) => `${sentence[0]!.toUpperCase()}${sentence.slice(1)}.`)
    .join(" ");
}

function spanOf({ told }: TempoFrame): string {
  const [first, last] = spanLabels(told);
  return first === last ? `week ${first}` : `weeks ${first} to ${last}`;
}

function bestsOf(data: TempoChart, { told, weeks }: TempoFrame): string[] {
  const bests = weeks.flatMap(({ week, bestClean }) => (isRate(bestClean) ? [{ week, rate: bestClean }] : []));
  const first = bests[0];
  const last = bests.at(-1);
  if (!first || !last) return ["no tempo was reached"];
  const highest = bests.reduce((best, each) => (each.rate > best.rate ? each : best));
  const below = weeks.filter(({ bestClean, tested }) => isRate(bestClean) && !tested).length;
  const range =
    first === last
      ? `best reached ${written(first.rate, data)} (${first.week})`
      : `weekly best from ${written(first.rate, data)} (${first.week}) to ${shownRate(last.rate, data.notation)} (${last.week})`;
  const top =
    highest.rate > last.rate && highest !== first
      ? `, highest ${shownRate(highest.rate, data.notation)} (${highest.week})`
      : "";
  const without = weekCount(told) - bests.length;
  return [
    `${range}${top}`,
    ...(below ? [`${countOf(below, "week")} worked below best`] : []),
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
  const thinned = left ? `, ${left} without a dot, as a higher one stands close by` : "";
  return [`${countOf(attempts.length, "attempt")}, ${each}${thinned}`];
}

function trendOf({ trend, notation }: TempoChart, { weeks }: TempoFrame): string {
  return `trend: ${trendInWords(trend, weeks, notation)}`;
}

function aimOf(data: TempoChart, { aim }: TempoFrame): string[] {
  return aim ? [`aim: ${written(aim.rate, data)} by ${aim.date}`] : [];
}

function countOf(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}
