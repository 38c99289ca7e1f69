import type { PreviewLesson, PreviewLink, PreviewSetWork, PreviewTick } from "../../../shared/preview.ts";
import { DoneEntries, type DoneEntry } from "../../history/aim-met.ts";
import { plannedStretches } from "../../history/day-minutes.ts";
import { type DayNumber, isoDate, shortWeekday } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import { readEntry } from "../../journal/read-entry.ts";
import { daysOfJournal, type PlacedDay } from "../explain/dated-days.ts";
import { daysAhead } from "../explain/days-away.ts";
import type { DeclaredSet } from "../explain/declared-lines.ts";
import { BY_DAY } from "./aims.ts";
import { placeOf, shownText } from "./text.ts";

/** How far back a lesson is looked for, and remarks where there was none, in days. */
const LOOKED_BACK = 26 * 7;
const REMARKS_BACK = 4 * 7;
/** Work is for a week unless a day is named (format.md, Declarations). */
const USUAL_DAYS = 7;
/** The most days to show one by one. */
const MOST_TICKS = 15;

/** The last lesson: its day, and the line in it that opens the phase. */
interface LastLesson {
  readonly day: PlacedDay;
  readonly line: number;
}

/** What was set, asked and said since the last lesson; null where there is nothing of it. */
export function lessonSection(journal: Journal, sets: readonly DeclaredSet[], today: DayNumber): PreviewLesson | null {
  const days = daysOfJournal(journal).filter(({ date }) => date <= today);
  const lesson = lastLesson(journal, days, today);
  const since = lesson?.day.date ?? today - REMARKS_BACK;
  const recent = days.filter(({ date }) => date >= since).sort((a, b) => a.date - b.date);
  const asked = sets.filter(
    (work) => dueOf(work, today) >= today || (work.day !== undefined && work.day >= since && work.day <= today),
  );
  const done = new DoneEntries(entriesWithin(journal, days, asked, today));
  const set = asked.map((work) => setWork(journal, work, done, today));
  const questions = recent.flatMap((day) =>
    spokenOf(journal, day, "asked", day.date === lesson?.day.date ? lesson.line : 0),
  );
  const words = recent.flatMap((day) => spokenOf(journal, day, "said", 0));
  if (set.length + questions.length + words.length === 0) return null;
  const sentence = lesson
    ? `Since the lesson on ${shortWeekday(since)} ${isoDate(since)}.`
    : "From the last four weeks, as no lesson is written.";
  return { since: sentence, set, questions, words };
}

/** U+2028 is no space here: for an expression a line begins behind each. */
const MAY_BE_LESSON = /^[^\S\n\r\u2028\u2029]*(?:[-*•][^\S\n\r]+)?lesson\b/im;

function lastLesson(journal: Journal, days: readonly PlacedDay[], today: DayNumber): LastLesson | undefined {
  const latestFirst = days.filter(({ date }) => date >= today - LOOKED_BACK).sort((a, b) => b.date - a.date);
  for (const day of latestFirst) {
    const block = day.document.blocks[day.index]!;
    if (!MAY_BE_LESSON.test(block.text)) continue;
    const model = journal.model(block);
    const planned = plannedStretches(model);
    const phase = model.phases.find((each, i) => each.phase === "lesson" && !planned[i]);
    if (phase) return { day, line: phase.line };
  }
  return undefined;
}

/** The questions or the teacher's words of a day, from a line on. */
function spokenOf(
  journal: Journal,
  { uri, document, index, date }: PlacedDay,
  type: "asked" | "said",
  first: number,
): PreviewLink[] {
  const block = document.blocks[index]!;
  return journal.model(block).lines.flatMap((line, i) => {
    if (i < first || line.type !== type) return [];
    const text = shownText(block.lines[i]!.slice(line.from, line.end));
    return text === "" ? [] : [{ text, note: isoDate(date), place: placeOf(journal, uri, block, i) }];
  });
}

/** The last day that work is set for. In a head it stands as long as it stands there. */
function dueOf({ declared: { by }, day }: DeclaredSet, today: DayNumber): DayNumber {
  return by ?? (day === undefined ? today : day + USUAL_DAYS);
}

/** The first day that work is set for. */
function fromOf(work: DeclaredSet, today: DayNumber): DayNumber {
  return work.day ?? dueOf(work, today) - USUAL_DAYS + 1;
}

/** The entries of the days that some work is set for. */
function* entriesWithin(
  journal: Journal,
  days: readonly PlacedDay[],
  sets: readonly DeclaredSet[],
  today: DayNumber,
): Generator<DoneEntry> {
  let [first, last] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const work of sets) {
    first = Math.min(first, fromOf(work, today));
    last = Math.max(last, dueOf(work, today));
  }
  for (const { uri, document, index, date } of days) {
    if (date < first || date > last) continue;
    for (const entry of journal.model(document.blocks[index]!).entries)
      yield { entry, day: date, conventions: journal.conventions(uri) };
  }
}

function setWork(journal: Journal, work: DeclaredSet, entries: DoneEntries, today: DayNumber): PreviewSetWork {
  const due = dueOf(work, today);
  const from = fromOf(work, today);
  const { words, entry } = work.declared;
  const done =
    words !== undefined
      ? entries.daysAnsweringWords(words, from, due)
      : entry
        ? entries.daysAnswering(readEntry(entry, 0, journal.vocabulary), from, due)
        : NO_DAYS;
  return {
    text: shownText(work.text.replace(BY_DAY, "")),
    place: placeOf(journal, work.uri, work.block, work.line),
    days: ticks(from, due, done, today),
    sentence: standing(work, done.size, due, today),
  };
}

const NO_DAYS: ReadonlySet<DayNumber> = new Set();
/** The days that it was set for; of a long stretch the latest. */
function ticks(from: DayNumber, due: DayNumber, done: ReadonlySet<DayNumber>, today: DayNumber): PreviewTick[] {
  const last = due - from < MOST_TICKS ? due : Math.min(due, today);
  const first = Math.max(from, last - MOST_TICKS + 1);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, at): PreviewTick => {
    const day = first + at;
    const state = done.has(day) ? "done" : day > today ? "ahead" : "not done";
    return { label: shortWeekday(day), date: isoDate(day), state };
  });
}

function standing(
  { declared: { days, by }, day }: DeclaredSet,
  done: number,
  due: DayNumber,
  today: DayNumber,
): string {
  const count =
    days === undefined
      ? `Done on ${done} ${done === 1 ? "day" : "days"}`
      : `Done on ${done} of ${days} ${days === 1 ? "day" : "days"}`;
  if (by === undefined && day === undefined) return `${count}.`;
  return `${count}; ${due < today ? `it was for ${isoDate(due)}` : `for ${isoDate(due)}, ${daysAhead(due - today)}`}.`;
}
