import type { Palette } from "../../../shared/protocol.ts";
import { type Ceiling, ceilingOn } from "../../history/ceiling.ts";
import { factsOfStrandInWords, sinceLately, sinceOfStrand } from "../../history/journal-facts.ts";
import { countOfMinutes } from "../../history/minute-words.ts";
import { standingOf, startTempo } from "../../history/start-tempo.ts";
import type { Strand } from "../../history/strands.ts";
import { BEGIN_AT } from "../../history/thresholds.ts";
import { LATELY, type Trend, trendOf, weeksWithin } from "../../history/trend.ts";
import { bestWithNote, metronomeOf, type Notation, trendInWords, weekRows } from "../../history/trend-words.ts";
import type { Week } from "../../history/weeks.ts";
import { type DayNumber, weekIndex } from "../../journal/calendar.ts";
import { dateInWords, shortDate } from "../../journal/date-words.ts";
import type { Journal } from "../../journal/journal.ts";
import { numberTexts } from "../../music/notes/number-texts.ts";
import { careSentence } from "../../plan/care-words.ts";
import { sentenceCase } from "../explain/explain.ts";
import { escapedExtract, markdownTable } from "../explain/markdown.ts";
import { startTexts } from "../explain/start-texts.ts";
import { easyStartInWords, startInWords, startOf } from "../explain/start-words.ts";
import { chartInMarkdown } from "./chart.ts";
import { historyTexts } from "./history-texts.ts";
import { easeAskedLastTime } from "./last-time.ts";
import { otherWays } from "./ways.ts";

/** The most rows of the table: the latest weeks. */
const TABLE_WEEKS = 12;

/** A strand, and how it is told. */
export interface Told {
  readonly journal: Journal;
  /** Nothing of it lies ahead. */
  readonly strand: Strand;
  readonly others: readonly Strand[];
  readonly weeks: readonly Week[];
  readonly notation: Notation;
  /** As the player writes it: `D melodic minor, thirds`. */
  readonly title: string;
  readonly today: DayNumber;
  /** The colours of a picture; without them there is none. */
  readonly palette?: Palette;
}

/** Paragraphs of Markdown: what is read first, and what is below the notes. */
export interface HistoryInMarkdown {
  readonly first: readonly string[];
  readonly below: readonly string[];
}

/** Where to start today, the picture and the trend of a strand; below its weeks and other ways. */
export function historyInMarkdown(told: Told): HistoryInMarkdown {
  const { journal, strand, others, weeks, notation, today } = told;
  const ways = otherWays(journal, others, strand, notation, today);
  // What has no tempo by nature: long tones, slow work.
  if (strand.records.every(({ rate }) => rate === null))
    return { first: [...careOf(told), daysAndMinutes(told)], below: ways };
  const latest = weeksWithin(weeks, { lastWeeks: LATELY });
  const trend = trendOf(latest, sinceOfStrand(journal, strand, today));
  const { title, palette } = told;
  const chart = palette && chartInMarkdown(strand, weeks, { title, notation, trend, palette });
  return {
    first: [
      ...startSentence(told),
      ...(chart ? [chart] : []),
      `${sentenceCase(trendInWords(trend, latest, notation))}.`,
    ],
    below: [...factsIn(told), ...tableOf(latest, notation, today), [...slopeOf(trend, notation), ...ways].join(" ")],
  };
}

/** What is known beside the trend, a line each. */
function factsIn({ journal, strand, notation, today }: Told): readonly string[] {
  const said = factsOfStrandInWords(journal, strand, notation, today);
  return said.length === 0 ? [] : [said.map((each) => escapedExtract(each)).join("  \n")];
}

/** The sentence of care on a day on which nothing is proposed. */
function careOf({ journal, today, strand }: Told): readonly string[] {
  const { kind, said } = ceilingOn(journal, today, strand.records.at(-1)!.instrument);
  return kind === "without instrument" && said ? [careSentence(journal, said, today)] : [];
}

/** What to say of where to start; one tempo, or a sentence in its place. */
function startSentence({ journal, strand, notation, today }: Told): readonly string[] {
  const { records } = strand;
  const ceiling = ceilingOn(journal, today, records.at(-1)!.instrument);
  if (ceiling.kind === "without instrument" && ceiling.said) return [careSentence(journal, ceiling.said, today)];
  const standing = standingOf(records, today, sinceLately(journal, strand, today));
  if (standing.practisedOn === null) return [];
  const perBeat = 1 / metronomeOf(1, notation);
  const tempo = startTempo(standing, today, perBeat, ceiling);
  if (tempo === undefined) return [startTexts.nothingReached];
  const limit = limitInWords(ceiling, today);
  if (limit !== undefined) return [historyTexts.startAndStay(numberTexts.decimal(tempo), limit)];
  const ease = easeAskedLastTime(journal, records, today);
  if (ease === undefined) return [startInWords(startOf(tempo, standing, perBeat))];
  const easy = startTempo(standing, today, perBeat, { kind: "easing", share: BEGIN_AT });
  return [easyStartInWords(easy ?? tempo, ease)];
}

/** Why the day asks for a low tempo; undefined where it does not. */
function limitInWords({ kind, said }: Ceiling, today: DayNumber): string | undefined {
  if (kind === "return") return historyTexts.backAfterPause;
  return kind !== "usual" && said ? historyTexts.hurtOn(dateInWords(said.day, today)) : undefined;
}

/** `14 days, 70 minutes in 26 weeks.` */
function daysAndMinutes({ strand, weeks }: Told): string {
  const latest = weeksWithin(weeks, { lastWeeks: LATELY });
  const first = latest[0]?.index ?? 0;
  const days = new Set(strand.records.map(({ day }) => day).filter((day) => weekIndex(day) >= first)).size;
  const minutes = countOfMinutes(latest);
  return historyTexts.days(days, minutes, weeks[0]?.index === first ? undefined : LATELY);
}

function tableOf(weeks: readonly Week[], notation: Notation, today: DayNumber): readonly string[] {
  const latest = weeks.slice(-TABLE_WEEKS).reverse();
  const timed = latest.some(({ minutes }) => Math.round(minutes) > 0);
  const { week, best, usual, reached, minutes } = historyTexts.columns;
  const rows = weekRows(latest, notation).map((row) => [
    shortDate(row.monday, today),
    bestWithNote(row),
    row.usual,
    row.reached,
    ...(timed ? [row.minutes === "0" ? "–" : row.minutes] : []),
  ]);
  return [markdownTable([week, best, usual, reached, ...(timed ? [minutes] : [])], rows)];
}

/** `Slope 0.80 a week (0.63 to 1.00).`, in beats a minute as the player counts; nothing while it is too early. */
function slopeOf({ slope, low, high, verdict }: Trend, notation: Notation): readonly string[] {
  if (verdict === "too early" || slope === null || low === null || high === null) return [];
  const [middle, least, most] = [slope, low, high].map((each) => inHundredths(metronomeOf(each, notation)));
  return [historyTexts.slope(middle!, least!, most!)];
}

function inHundredths(value: number): string {
  const size = Math.abs(value).toFixed(2);
  return size === "0.00" ? "0" : `${value < 0 ? "−" : ""}${numberTexts.decimal(size)}`;
}
