import { dayMinutes } from "../history/day-minutes.ts";
import { bodySaidIn } from "../journal/body-said.ts";
import { filesSharingBody } from "../journal/body-shared.ts";
import type { DayNumber } from "../journal/calendar.ts";
import { type DatedBlock, datedBlocks } from "../journal/dated-blocks.ts";
import { declaredLines, ofType } from "../journal/declared-lines.ts";
import { type Journal, MARKER } from "../journal/journal.ts";
import { nameOfJournal, orderOfNames } from "../journal/journal-name.ts";
import { isShared } from "../journal/lending.ts";
import { type Lesson, type LessonPeriod, LOOKED_BACK_FOR_TEACHERS, type Spoken, sinceLastLesson } from "./lesson.ts";
import type { SetWork } from "./set-work.ts";

/** What a teacher reads of one journal, and of no other. */
export interface Pupil {
  readonly journal: Journal;
  /** The player's, else the folder's. */
  readonly name: string;
  /** The last day with practice. Time in a lesson alone is none. */
  readonly last?: DatedBlock;
  /** The last lesson. */
  readonly lesson?: Lesson;
  /** What is set today. */
  readonly set: readonly SetWork[];
  /** Since the last lesson, the oldest first. */
  readonly asked: readonly Spoken[];
  /** What was written of the body since then, as written; only of what has `share body`. */
  readonly body?: readonly Spoken[];
}

/** A pupil for each journal, by name. One that only lends to those below it is nobody's. */
export function pupilsOf(journals: Iterable<Journal>, todayOf: (journal: Journal) => DayNumber): readonly Pupil[] {
  const compare = orderOfNames();
  return [...journals]
    .filter((journal) => !onlyLends(journal))
    .map((journal) => {
      const today = todayOf(journal);
      return journal.memo.from(journal, "pupil", [today], () => pupilOf(journal, today));
    })
    .sort((a, b) => compare(a.name, b.name) || compare(a.journal.root, b.journal.root));
}

/** Whether a journal is there for those below it: it says `shared`, and has no day. */
function onlyLends({ files }: Journal): boolean {
  const documents = [...files];
  return (
    documents.some(([uri, document]) => uri.endsWith(`/${MARKER}`) && isShared(document)) &&
    documents.every(([, { blocks }]) => blocks.every(({ day }) => !day))
  );
}

function pupilOf(journal: Journal, today: DayNumber): Pupil {
  const since = sinceLastLesson(journal, ofType(declaredLines(journal), "set"), today, LOOKED_BACK_FOR_TEACHERS);
  const last = lastPractised(journal, today);
  const sharing = filesSharingBody(journal);
  return {
    journal,
    name: nameOfJournal(journal),
    ...(last && { last }),
    ...(since.lesson && { lesson: since.lesson }),
    set: since.set,
    asked: since.asked,
    ...(sharing.size > 0 && { body: bodyIn(journal, since, sharing) }),
  };
}

function lastPractised(journal: Journal, today: DayNumber): DatedBlock | undefined {
  return datedBlocks(journal, Number.NEGATIVE_INFINITY, today).find(({ block }) => {
    const model = journal.model(block);
    return (
      model.entries.some(({ planned, phase }) => !planned && phase !== LESSON) ||
      dayMinutes(model).phases.some(({ phase, minutes }) => phase !== LESSON && minutes > 0)
    );
  });
}

const LESSON = "lesson";

function bodyIn(journal: Journal, { from, to }: LessonPeriod, files: ReadonlySet<string>): readonly Spoken[] {
  const days = [...datedBlocks(journal, from, to)].sort((a, b) => a.day - b.day);
  const shared = days.filter(({ uri }) => files.has(uri));
  return shared.flatMap((day) =>
    bodySaidIn(journal, day.block).map(({ words, line }) => ({ ...day, text: words, line })),
  );
}
