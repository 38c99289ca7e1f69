import type { DayNumber } from "../journal/calendar.ts";
import { type DatedBlock, datedBlocks } from "../journal/dated-blocks.ts";
import type { DeclaredSet } from "../journal/declared-lines.ts";
import type { Journal } from "../journal/journal.ts";
import { setInWords } from "./set-in-words.ts";
import { isSetOn, type SetWork, setWorkDone } from "./set-work.ts";

/** How far back a lesson is looked for, and what was said where there was none, in days. */
const LOOKED_BACK = 26 * 7;
/** The same for a teacher, whose pupil may have been away. */
export const LOOKED_BACK_FOR_TEACHERS = 104 * 7;
const SAID_BACK = 4 * 7;

/** A lesson: its day, and the line in it that opens the phase. */
export interface Lesson extends DatedBlock {
  readonly line: number;
}

/** A question, or the teacher's words, and where they stand. */
export interface Spoken extends DatedBlock {
  /** As written, without the word that opens the line and the remark that ends it. */
  readonly text: string;
  /** Within the block. */
  readonly line: number;
}

/** Days between lessons: both ends are in it. */
export interface LessonPeriod {
  readonly from: DayNumber;
  readonly to: DayNumber;
  /** The one that it begins with. */
  readonly lesson?: Lesson;
  /** The one that it ends with. */
  readonly next?: Lesson;
}

/** What was set, said and asked in such days. */
export interface BetweenLessons extends LessonPeriod {
  readonly set: readonly SetWork[];
  readonly said: readonly Spoken[];
  readonly asked: readonly Spoken[];
}

/** From the last lesson on; where none is noted in half a year, or in so many days, the last four weeks. */
export function periodNow(journal: Journal, today: DayNumber, back = LOOKED_BACK): LessonPeriod {
  const [lesson] = lastLessons(journal, today, { back, most: 1 });
  return { from: lesson?.day ?? today - SAID_BACK, to: today, lesson };
}

/** What is set on a day, and what was said and asked since the last lesson; `back` as in `periodNow`. */
export function sinceLastLesson(
  journal: Journal,
  sets: readonly DeclaredSet[],
  today: DayNumber,
  back = LOOKED_BACK,
): BetweenLessons {
  const period = periodNow(journal, today, back);
  return between(journal, period, setOn(journal, sets, period), today);
}

/** The same between the last two lessons; undefined where there are not two. */
export function beforeLastLesson(
  journal: Journal,
  sets: readonly DeclaredSet[],
  today: DayNumber,
): BetweenLessons | undefined {
  const [next, lesson] = lastLessons(journal, today, { back: LOOKED_BACK, most: 2 });
  if (!next || !lesson) return undefined;
  const period = { from: lesson.day, to: next.day, lesson, next };
  const own = sets.filter(({ day }) => day !== undefined && day >= period.from && day < period.to);
  return between(journal, period, [...own, ...setInWords(journal, period.from, period.to - 1)], today);
}

/** The work that is set on a day. */
export function setNow(journal: Journal, sets: readonly DeclaredSet[], today: DayNumber): readonly SetWork[] {
  return setWorkDone(journal, setOn(journal, sets, periodNow(journal, today)), { until: today, today });
}

/** What of the declared work is set on the last day of a period, and what is set in words in it. */
function setOn(journal: Journal, sets: readonly DeclaredSet[], { from, to }: LessonPeriod): readonly DeclaredSet[] {
  return [...sets.filter((work) => isSetOn(to, work, from)), ...setInWords(journal, from, to)];
}

function between(
  journal: Journal,
  period: LessonPeriod,
  works: readonly DeclaredSet[],
  today: DayNumber,
): BetweenLessons {
  return {
    ...period,
    set: setWorkDone(journal, works, { until: period.to, today }),
    said: spokenIn(journal, "said", period),
    asked: spokenIn(journal, "asked", period),
  };
}

/**
 * The questions or the teacher's words of some days, the oldest first. What was asked on a lesson's day before it
 * belongs to it, and so does what was said in it.
 */
export function spokenIn(
  journal: Journal,
  type: "asked" | "said",
  { from, to, lesson, next }: LessonPeriod,
): readonly Spoken[] {
  const days = [...datedBlocks(journal, from, to)].sort((a, b) => a.day - b.day);
  return days.flatMap((day) => {
    const first = type === "asked" && day.day === lesson?.day ? lesson.line : 0;
    const end = next && day.day === next.day ? (type === "asked" ? next.line : 0) : Number.POSITIVE_INFINITY;
    return spokenOf(journal, day, type, { first, end });
  });
}

interface Stretch {
  /** From this line of the day on, up to that one. */
  readonly first: number;
  readonly end: number;
}

function spokenOf(
  journal: Journal,
  dated: DatedBlock,
  type: "asked" | "said",
  { first, end }: Stretch,
): readonly Spoken[] {
  const { block } = dated;
  return journal.model(block).lines.flatMap((read, line) => {
    if (line < first || line >= end || read.type !== type) return [];
    const text = block.lines[line]!.slice(read.from, read.end).trim();
    return text === "" ? [] : [{ ...dated, text, line }];
  });
}

/** What every word for a lesson has in it, in whichever language (`lexicon/signs/`): few other days are read. */
const MAY_BE_LESSON =
  /lesson|clase|lezione|stunde|unterricht|cours|le[cç]|(?:muziek|piano|viool|fluit|gitaar)les|(?<!\p{L})les(?!\p{L})/iu;

/** The last ones up to a day, the latest first. */
function lastLessons(
  journal: Journal,
  today: DayNumber,
  { back, most }: { readonly back: number; readonly most: number },
): readonly Lesson[] {
  const found: Lesson[] = [];
  for (const day of datedBlocks(journal, today - back, today)) {
    const lesson = found.at(-1)?.day === day.day ? undefined : lessonIn(journal, day);
    if (lesson) found.push(lesson);
    if (found.length === most) break;
  }
  return found;
}

function lessonIn(journal: Journal, day: DatedBlock): Lesson | undefined {
  const { block } = day;
  if (!MAY_BE_LESSON.test(block.text)) return undefined;
  const model = journal.model(block);
  const phase = model.phases.find((each) => each.phase === "lesson" && !each.planned);
  return phase && { ...day, line: phase.line };
}

/**
 * What was set for some of these days, declared or in words, and when it was done, up to the last of them. Work without
 * a day is set until the next lesson; where none is noted, for four weeks.
 */
export function setBetween(
  journal: Journal,
  sets: readonly DeclaredSet[],
  { from, to }: Pick<LessonPeriod, "from" | "to">,
): readonly SetWork[] {
  const all = [...sets, ...setInWords(journal, from - SAID_BACK, to)];
  const first = Math.min(...all.map(({ day = to }) => day));
  const lessons = [...datedBlocks(journal, first, to)]
    .flatMap((day) => (lessonIn(journal, day) ? [day.day] : []))
    .reverse();
  return all.flatMap((work) => {
    const { day = to, declared } = work;
    const next = lessons.find((lesson) => lesson > day) ?? day + SAID_BACK;
    const end = declared.by ?? (work.day === undefined ? to : next);
    return day > to || end < from ? [] : setWorkDone(journal, [work], { until: Math.min(end, to), today: to });
  });
}
