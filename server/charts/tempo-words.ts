import { trendInWords } from "../history/trend-words.ts";
import { weekCount } from "../history/week-span.ts";
import { mondayOf } from "../journal/calendar.ts";
import { shortDate } from "../journal/date-words.ts";
import { isRate, shownRate, type TempoChart, type TempoFrame } from "./tempo-data.ts";
import { isSlow } from "./tempo-marks.ts";
import { tempoTexts } from "./tempo-texts.ts";

/** What a tempo chart shows, in sentences. `left` is how many attempts have no dot of their own. */
export function describeTempo(data: TempoChart, frame: TempoFrame, left = 0): string {
  return [...bestsOf(data, frame), ...attemptsOf(frame, left), ...trendOf(data, frame), ...aimOf(data, frame)]
    .map((sentence) => `${sentence[0]!.toUpperCase()}${sentence.slice(1)}${sentence.endsWith(".") ? "" : "."}`)
    .join(" ");
}

function bestsOf({ notation }: TempoChart, { told, weeks }: TempoFrame): string[] {
  const bests = weeks.flatMap(({ index, bestClean }) => (isRate(bestClean) ? [{ index, rate: bestClean }] : []));
  const first = bests[0];
  const last = bests.at(-1);
  if (!first || !last) return [tempoTexts.noTempo];
  const highest = bests.reduce((best, each) => (each.rate > best.rate ? each : best));
  const slow = weeks.filter(isSlow).length;
  const inWeek = ({ index, rate }: (typeof bests)[number]) =>
    tempoTexts.inWeek(shownRate(rate, notation), shortDate(mondayOf(index), mondayOf(told.last)));
  const range = first === last ? tempoTexts.best(inWeek(first)) : tempoTexts.bests(inWeek(first), inWeek(last));
  const isHigher = highest.rate > last.rate && highest !== first;
  const without = weekCount({ first: told.first, last: weeks.at(-1)!.index }) - bests.length;
  return [
    isHigher ? tempoTexts.highest(range, inWeek(highest)) : range,
    ...(slow ? [tempoTexts.slowWeeks(slow)] : []),
    ...(without ? [tempoTexts.weeksWithout(without)] : []),
  ];
}

function attemptsOf({ attempts }: TempoFrame, left: number): string[] {
  if (attempts.length === 0) return [];
  const reached = attempts.filter((attempt) => attempt.reached).length;
  const words = tempoTexts.attempts(attempts.length, reached);
  return [left ? tempoTexts.withoutDot(words, left) : words];
}

function trendOf({ trend, notation }: TempoChart, { weeks }: TempoFrame): string[] {
  return trend ? [tempoTexts.trend(trendInWords(trend, weeks, notation))] : [];
}

function aimOf({ notation }: TempoChart, { aim, told }: TempoFrame): string[] {
  if (!aim) return [];
  const tempo = shownRate(aim.rate, notation);
  return [
    aim.day === undefined ? tempoTexts.aim(tempo) : tempoTexts.aimBy(tempo, shortDate(aim.day, mondayOf(told.last))),
  ];
}
