import { type Ceiling, ceilingOn } from "../../history/ceiling.ts";
import { sinceLately } from "../../history/journal-facts.ts";
import { journalHistory } from "../../history/journal-history.ts";
import { playedEntry } from "../../history/played.ts";
import { countingOf } from "../../history/rate.ts";
import { type Standing, standingOf } from "../../history/start-tempo.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { type Conventions, instrumentOf } from "../../journal/conventions.ts";
import { exerciseToPlay } from "../../journal/entry-exercise.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import { QUARTER } from "../../music/notes/note-value.ts";
import { CONCERT_TUNING } from "../../music/tuning/temperament.ts";
import type { HeardBy } from "../../sound/heard.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import { entryUnderCursor } from "../explain/line-under-cursor.ts";

/** All that bears on what is heard beside a line. */
export interface HeardAt {
  /** Missing where no entry stands there. */
  readonly entry?: Entry;
  readonly conventions: Conventions;
  readonly by: HeardBy;
  readonly ceiling: Ceiling;
  /** How what is practised stands before today; missing where it has no history. */
  readonly standing?: Standing;
}

export function heardAt(journal: Journal, uri: string, line: number, today: DayNumber): HeardAt {
  const conventions = journal.conventions(uri);
  const found = entryUnderCursor(journal, uri, { line, character: 0 });
  const entry = found.ok ? found.entry : undefined;
  const instrument = entry?.instrument ?? conventions.instrument ?? null;
  return {
    ...(entry ? { entry, standing: standingOfEntry(journal, entry, conventions, today) } : {}),
    conventions,
    by: heardBy(entry, conventions, today),
    ceiling: ceilingOn(journal, today, instrument),
  };
}

function standingOfEntry(
  journal: Journal,
  entry: Entry,
  conventions: Conventions,
  today: DayNumber,
): Standing | undefined {
  const manner = playedEntry(entry, conventions).attempts[0]?.manner;
  const strand = manner && journalHistory(journal).strandOf(manner);
  return strand && standingOf(strand.records, today, sinceLately(journal, strand, today));
}

/** The same where an entry is at hand; `today` draws the order of leaps. */
export function heardBy(entry: Entry | undefined, conventions: Conventions, today: DayNumber): HeardBy {
  const attempt = entry?.attempts[0];
  const conditions = attempt?.conditions;
  const counting = entry && conditions ? countingOf(entry, conditions, attempt.tempo ?? {}, conventions) : undefined;
  const tonguing = conditions?.articulation?.tonguing ?? conventions.usualTonguing;
  return {
    exercise: entry && exerciseToPlay(entry, conditions, conventions, today),
    key: keyOf(entry, conventions),
    instrument: instrumentOf(entry?.instrument ?? conventions.instrument, conventions),
    tuning: conventions.tuning ?? CONCERT_TUNING,
    beat: counting?.beat ?? QUARTER,
    noteValue: counting?.value ?? conventions.noteValue ?? QUARTER,
    rhythm: conditions?.rhythm?.text,
    slurred: tonguing === "slurred",
  };
}

/** Of a piece that says its key. */
function keyOf(entry: Entry | undefined, { piecesByTitle }: Conventions): HeardBy["key"] {
  if (entry?.subject?.type !== "title") return undefined;
  const key = piecesByTitle.get(nameKey(entry.subject.title))?.find((piece) => piece.key)?.key;
  return key && { tonic: key.tonic, minor: /minor/.test(key.kind) };
}
