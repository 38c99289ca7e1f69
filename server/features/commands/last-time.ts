import { lineOf, recordsAt } from "../../history/attempts.ts";
import { journalHistory } from "../../history/journal-history.ts";
import { playedEntry } from "../../history/played.ts";
import { type AttemptRecord, inTimeOrder } from "../../history/record.ts";
import { latestOf } from "../../history/strands.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { entryOfSubjectAt } from "../../journal/each-subject.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Position } from "../../syntax/document/document.ts";
import { type EntryUnderCursor, entryUnderCursor } from "../explain/line-under-cursor.ts";
import { refusal } from "../explain/refusal.ts";
import type { CommandAnswer } from "./command-answer.ts";
import { commandTexts } from "./command-texts.ts";

/**
 * Where the exercise at a position, of several on its line the one there or else the first, was last played before that
 * line, in whichever file: the start of the entry.
 */
export function lastTime(
  journal: Journal,
  uri: string,
  position: Position,
  { today }: { readonly today: DayNumber },
): CommandAnswer {
  const found = entryUnderCursor(journal, uri, position);
  if (!found.ok) return found;
  const { entry } = entryOfSubjectAt(found.entry, position.character);
  const key = playedEntry(entry, journal.conventions(uri)).attempts[0]?.manner.exerciseKey;
  if (key === undefined) return NO_EXERCISE;
  const isEarlier = earlierThan(found, recordsAt(journal, uri, position.line)[0], today);
  const last = latestOf(journalHistory(journal).exercises.get(key)?.strands ?? [], isEarlier);
  const line = last && lineOf(journal, last);
  if (!last || line === undefined) return NOT_BEFORE;
  const character = Math.max(0, last.block.lines[last.line]!.search(/[^\s\uFEFF]/));
  return { ok: true, uri: last.uri, edits: [], cursor: { line, character } };
}

const NO_EXERCISE = refusal(commandTexts.notFollowed);
const NOT_BEFORE = refusal(commandTexts.notPlayedBefore);

/**
 * Whether a record is from before the entry: by the entry's own first record, or by its day where it has none, as in a
 * plan.
 */
function earlierThan(
  { block, line, model }: EntryUnderCursor,
  own: AttemptRecord | undefined,
  today: DayNumber,
): (record: AttemptRecord) => boolean {
  const isOther = (record: AttemptRecord): boolean => record.block !== block || record.line !== line;
  if (own) return (record) => isOther(record) && inTimeOrder(record, own) < 0;
  const day = model.day?.date ?? today + 1;
  return (record) => record.day < day || (record.day === day && (record.block !== block || record.line < line));
}
