import type { PreviewLine, PreviewToday } from "../../../shared/preview.ts";
import { type Ceiling, ceilingOn } from "../../history/ceiling.ts";
import { sinceLately } from "../../history/journal-facts.ts";
import { journalHistory } from "../../history/journal-history.ts";
import { type AttemptRecord, inTimeOrder } from "../../history/record.ts";
import { standingOf, startTempo } from "../../history/start-tempo.ts";
import type { Exercise, Strand } from "../../history/strands.ts";
import { metronomeOf } from "../../history/trend-words.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { dayBack, longDate } from "../../journal/date-words.ts";
import type { Journal } from "../../journal/journal.ts";
import { careToday } from "../../plan/care-today.ts";
import { figure } from "../../plan/figure.ts";
import { daysOfJournal } from "../explain/dated-days.ts";
import { nameOf } from "./exercises.ts";
import { line, placeOfRecord } from "./lines.ts";
import { hasBegun, isAfterPain, NO_PLAN, type PlanPart, type PlanShown, planPart } from "./plan.ts";
import { shownText } from "./text.ts";
import { todayTexts } from "./today-texts.ts";
import { wayInWords } from "./way.ts";

/** So many things that were worked last. */
const TOLD = 3;
/** What was worked longer ago is no longer where to go on. */
const DAYS_BACK = 28;

export interface TodayAsked {
  readonly today: DayNumber;
  /** Null for all. */
  readonly instrument: string | null;
  readonly usualInstrument: string | null;
  readonly set: readonly PreviewLine[];
  /** Null while there is too little to plan from, as while files are being read. */
  readonly plan: PlanShown | null;
}

/**
 * What is set, and a plan; where there is none in sight, what was worked last with where to start. On a day of rest
 * what is set alone; after pain nothing is proposed unasked.
 */
export function todaySection(journal: Journal, asked: TodayAsked): PreviewToday {
  const { today, set } = asked;
  const date = longDate(today);
  const nothing = { isRest: false, care: 0, last: [] };
  if (isRest(journal, today)) return { ...nothing, date, isRest: true, sentences: [todayTexts.rest], set, plan: null };
  const { plan, care, instead } = planned(journal, asked);
  if (isEmpty(journal, today))
    return { ...nothing, date: "", sentences: [todayTexts.firstLine, ...instead], set, plan };
  const ofCare = care.length > 0 ? care : [careToday(journal, today) ?? []].flat();
  const said = [...ofCare, ...instead];
  const base = { ...nothing, date, care: ofCare.length, set };
  if (isFirstEvening(journal, today)) return { ...base, sentences: [...said, todayTexts.firstEvening], plan };
  const isCalm = isAfterPain(journal, today) || instead.length > 0 || (plan && plan.offer === "");
  return { ...base, sentences: said, last: isCalm ? [] : workedLast(journal, asked), plan };
}

/** On the first evening one has just played. */
function planned(journal: Journal, { today, instrument, plan }: TodayAsked): PlanPart {
  const isOver = isFirstEvening(journal, today) && hasBegun(journal, today);
  return plan === null || isOver ? NO_PLAN : planPart(journal, today, instrument, plan);
}

/** Whether no day has come yet. */
function isEmpty(journal: Journal, today: DayNumber): boolean {
  return !daysOfJournal(journal).some(({ date }) => date <= today);
}

/** Whether everything is of one day, which is today or yesterday. */
export function isFirstEvening(journal: Journal, today: DayNumber): boolean {
  const days = new Set(daysOfJournal(journal).flatMap(({ date }) => (date <= today ? [date] : [])));
  return days.size === 1 && [...days][0]! >= today - 1;
}

function isRest(journal: Journal, today: DayNumber): boolean {
  return daysOfJournal(journal).some(
    ({ document, index, date }) => date === today && journal.model(document.blocks[index]!).day?.rest !== undefined,
  );
}

/** What was worked last that has a tempo, one line for each exercise or place in a piece. */
function workedLast(journal: Journal, { today, instrument, usualInstrument }: TodayAsked): PreviewLine[] {
  const ceiling = ceilingOn(journal, today, instrument ?? undefined);
  const found: { exercise: Exercise; strand: Strand; last: AttemptRecord }[] = [];
  for (const exercise of journalHistory(journal).exercises.values()) {
    if (instrument !== null && exercise.instrument !== instrument) continue;
    const latest = exercise.strands.flatMap((strand) => {
      const last = strand.records.findLast(({ day, rate }) => day <= today && rate !== null);
      return last && last.day > today - DAYS_BACK ? [{ exercise, strand, last }] : [];
    });
    const first = latest.sort((a, b) => inTimeOrder(b.last, a.last))[0];
    if (first) found.push(first);
  }
  found.sort((a, b) => inTimeOrder(b.last, a.last));
  return found.slice(0, TOLD).map(({ exercise, strand, last }) => {
    const way = wayInWords(journal, strand);
    return line(
      shownText(nameOf(journal, exercise, usualInstrument)),
      placeOfRecord(journal, last),
      dayBack(last.day, today),
      {
        behind: way === "" ? "" : `, ${way}`,
        facts: [startOf(strand, last, { ceiling, today, since: sinceLately(journal, strand, today) })],
      },
    );
  });
}

/** `start at 72`; empty where no tempo was reached yet. */
function startOf(
  { records, title }: Strand,
  { rate, noteValue, beat }: AttemptRecord,
  { ceiling, today, since }: Starting,
) {
  const perBeat = title || rate === null ? 1 : 1 / metronomeOf(1, { noteValue, beat });
  const tempo = startTempo(standingOf(records, today, since), today, perBeat, ceiling);
  return tempo === undefined ? "" : todayTexts.startAt(figure(tempo));
}

interface Starting {
  readonly ceiling: Ceiling;
  readonly today: DayNumber;
  readonly since?: DayNumber;
}
