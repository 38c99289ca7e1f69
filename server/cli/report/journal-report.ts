import { dayMinutes } from "../../history/day-minutes.ts";
import { journalHistory } from "../../history/journal-history.ts";
import { linesNotPlayed, linesOfPlanRemarks, phasesNotPlayed } from "../../history/not-played.ts";
import { bodySaidIn } from "../../journal/body-said.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { type DatedBlock, datedBlocks } from "../../journal/dated-blocks.ts";
import { type DeclaredAim, declaredLines, ofType } from "../../journal/declared-lines.ts";
import type { Journal } from "../../journal/journal.ts";
import { nameOfJournal } from "../../journal/journal-name.ts";
import { linesWithoutBody } from "../../journal/without-body.ts";
import { shownAims } from "../../plan/aims.ts";
import { type Spoken, setBetween, spokenIn } from "../../plan/lesson.ts";
import type { SetWork } from "../../plan/set-work.ts";
import type { Block } from "../../syntax/document/document.ts";
import type { Around } from "../whole-journals.ts";
import type { DaysAsked } from "./days-asked.ts";
import { exercisesPlayed, type PlayedExercises } from "./exercises-played.ts";
import { piecesWorked, type WorkedPiece } from "./pieces-worked.ts";
import { type PracticeTime, practiceTime } from "./practice-time.ts";

/** What a report says of a journal. Texts are as they were written: whoever shows them makes them safe. */
export interface JournalReport {
  readonly around: Around;
  readonly name: string;
  readonly days: DaysAsked;
  readonly asked: readonly Spoken[];
  readonly said: readonly Spoken[];
  readonly set: readonly SetWork[];
  readonly time: PracticeTime;
  readonly exercises: PlayedExercises;
  readonly aims: readonly DeclaredAim[];
  readonly pieces: readonly WorkedPiece[];
  /** Whether what was written of the body is told. */
  readonly withBody: boolean;
  /** None where it is not told. */
  readonly body: readonly BodyWords[];
  readonly lines: readonly DayLines[];
}

export interface BodyWords {
  readonly day: DayNumber;
  readonly text: string;
}

/** The lines of a day, its day line the first. */
export interface DayLines {
  readonly day: DayNumber;
  readonly lines: readonly string[];
}

export interface ReportAsked {
  readonly days: DaysAsked;
  readonly withBody: boolean;
}

export function journalReport(around: Around, { days, withBody }: ReportAsked): JournalReport {
  const { journal } = around;
  const { since, until } = days;
  journalHistory(journal);
  const declared = declaredLines(journal).filter(({ day = until }) => day <= until);
  const period = { from: since, to: until };
  const blocks = [...datedBlocks(journal, since, until)].sort((a, b) => a.day - b.day);
  return {
    around,
    name: nameOnPage(journal),
    days,
    asked: spokenIn(journal, "asked", period),
    said: spokenIn(journal, "said", period),
    set: setBetween(journal, ofType(declared, "set"), period),
    time: practiceTime(journal, days),
    exercises: exercisesPlayed(journal, days),
    aims: shownAims(ofType(declared, "aim"), until),
    pieces: piecesWorked(journal, days),
    withBody,
    body: withBody ? blocks.flatMap((each) => bodyWords(around, each)) : [],
    lines: blocks.flatMap(({ day, block }) => {
      const lines = linesPlayed(journal, block, withBody);
      return lines.length === 0 ? [] : [{ day, lines }];
    }),
  };
}

/** Text from standard input has no name but that of its player. */
export function nameOnPage(journal: Journal): string {
  const name = nameOfJournal(journal);
  return name === STANDARD_INPUT ? "Practice" : name;
}

const STANDARD_INPUT = "-";

function bodyWords({ journal }: Around, { day, block }: DatedBlock): readonly BodyWords[] {
  return bodySaidIn(journal, block).map(({ words }) => ({ day, text: words }));
}

/**
 * A day's own lines without what was only planned, and without the plan's own remarks. None where nothing but the day
 * line is left, and that tells of no time played and of no rest.
 */
function linesPlayed(journal: Journal, block: Block, withBody: boolean): readonly string[] {
  const model = journal.model(block);
  const notPlayed = linesNotPlayed(model);
  const gone = new Set([...notPlayed, ...phasesNotPlayed(model, notPlayed), ...linesOfPlanRemarks(model)]);
  const kept = withBody ? block.lines.filter((_, at) => !gone.has(at)) : linesWithoutBody(journal, block, gone);
  const lines = trimmed(kept);
  const isOnlyPlanned = (gone.size > 0 || model.day?.planned) && dayMinutes(model).phases.length === 0;
  return lines.length === 1 && isOnlyPlanned && model.day?.rest === undefined && !model.lines[0]!.remark ? [] : lines;
}

/** Without blank lines at the end. */
function trimmed(lines: readonly string[]): readonly string[] {
  return lines.slice(0, lines.findLastIndex((line) => line.trim() !== "") + 1);
}
