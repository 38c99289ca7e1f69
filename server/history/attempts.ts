import { type Conventions, instrumentOf } from "../journal/conventions.ts";
import type { Journal } from "../journal/journal.ts";
import type { Attempt, BlockModel, DayNumber, Entry } from "../journal/model.ts";
import { subjectKey, subjectText } from "../journal/subject-text.ts";
import { type Block, blockIndexAt } from "../syntax/document.ts";
import { movementOfRecord, patternOfRecord } from "./exercise-name.ts";
import { type Share, sharedMinutes } from "./minutes.ts";
import { goalBeat, rateOf } from "./rate.ts";
import { reachClassOf } from "./reach-class.ts";
import type { AttemptRecord } from "./record.ts";

/** Playing in these manners is practice without a rate. */
const WITHOUT_RATE = ["sung", "silent", "mental"];

/** Every attempt of a journal that counts: planned lines, days without a date, and activities do not. */
export function attemptsOfJournal(journal: Journal): readonly AttemptRecord[] {
  const records: AttemptRecord[] = [];
  for (const uri of journal.addresses) {
    const document = journal.files.get(uri)!;
    const conventions = journal.conventions(uri);
    for (const [i, block] of document.blocks.entries()) {
      for (const record of recordsOfBlock(journal, block, { conventions, uri, first: document.starts[i]! }))
        records.push(record);
    }
  }
  return records;
}

/** The records of the entry on one line of a file; none where no entry that counts stands there. */
export function recordsAt(journal: Journal, uri: string, line: number): readonly AttemptRecord[] {
  const document = journal.files.get(uri);
  if (!document) return [];
  const index = blockIndexAt(document, line);
  const place = { conventions: journal.conventions(uri), uri, first: document.starts[index]! };
  return recordsOfBlock(journal, document.blocks[index]!, place).filter((record) => record.line === line);
}

/** Where a block stands, and what its entries are read by. */
interface BlockPlace {
  readonly conventions: Conventions;
  readonly uri: string;
  readonly first: number;
}

interface Kept {
  place?: BlockPlace;
  records: readonly AttemptRecord[];
}

/** Kept on the block; one that only moved has its lines counted anew. */
function recordsOfBlock(journal: Journal, block: Block, place: BlockPlace): readonly AttemptRecord[] {
  const kept = journal.memo.of(block, "attempts", (): Kept => ({ records: NONE }));
  const before = kept.place;
  if (before?.conventions === place.conventions) {
    const moved = before.uri !== place.uri || before.first !== place.first;
    if (moved && kept.records.length > 0)
      kept.records = kept.records.map((record) => ({
        ...record,
        uri: place.uri,
        line: record.line - before.first + place.first,
      }));
  } else kept.records = block.day ? blockRecords(journal, journal.readOnce(block), place) : NONE;
  kept.place = place;
  return kept.records;
}

const NONE: readonly AttemptRecord[] = [];

function blockRecords(journal: Journal, model: BlockModel, place: BlockPlace): readonly AttemptRecord[] {
  const day = model.day?.date;
  if (day === undefined) return NONE;
  const minutes = sharedMinutes(model);
  const records: AttemptRecord[] = [];
  for (let i = 0; i < model.entries.length; i++) {
    const entry = model.entries[i]!;
    if (entry.planned || !isExercise(entry)) continue;
    const told = lineOfRecord(journal, entry, minutes[i]!, place);
    for (const attempt of entry.attempts)
      records.push(recordOf(day, records.length, entry, attempt, told, place.conventions));
  }
  return records;
}

function isExercise({ subject }: Entry): boolean {
  return subject !== undefined && subject.type !== "activity" && subject.type !== "free";
}

/** What all attempts of an entry share. */
type LineOfRecord = Pick<
  AttemptRecord,
  "instrument" | "subject" | "subjectKey" | "pattern" | "movement" | "where" | "minutes" | "about" | "uri" | "line"
>;

function lineOfRecord(
  journal: Journal,
  entry: Entry,
  share: Share,
  { conventions, uri, first }: BlockPlace,
): LineOfRecord {
  const subject = entry.subject!;
  const title = subject.type === "title";
  const { text, key } = journal.memo.of(subject, "names", () => ({
    text: subjectText(subject),
    key: subjectKey(subject),
  }));
  return {
    instrument: nameOfInstrument(entry, conventions),
    subject: text,
    subjectKey: key,
    pattern: patternOfRecord(entry),
    movement: title ? movementOfRecord(entry) : null,
    where: title ? entry.where?.text || null : null,
    minutes: share.minutes / entry.attempts.length,
    about: share.about,
    uri,
    line: first + entry.place.line,
  };
}

/** Field by field, as a journal of years has tens of thousands of them. */
function recordOf(
  day: DayNumber,
  order: number,
  entry: Entry,
  attempt: Attempt,
  told: LineOfRecord,
  conventions: Conventions,
): AttemptRecord {
  const { conditions, tempo } = attempt;
  const title = entry.subject!.type === "title";
  const silent = conditions.manner.some((manner) => WITHOUT_RATE.includes(manner));
  return {
    day,
    order,
    instrument: told.instrument,
    subject: told.subject,
    subjectKey: told.subjectKey,
    pattern: told.pattern,
    movement: told.movement,
    where: told.where,
    reach: title ? null : reachClassOf(entry, conditions, conventions),
    tonguing: conditions.articulation?.tonguing ?? conventions.usualTonguing,
    evenness: conditions.rhythm && !conditions.rhythm.even ? "uneven" : "even",
    unit: title ? "beats" : "notes",
    rate: silent || !tempo ? null : rateOf(entry, tempo, conditions.noteValue, conventions),
    noteValue: title ? undefined : (conditions.noteValue ?? conventions.noteValue),
    beat: title ? goalBeat(entry, conventions) : tempo?.beat,
    reached: attempt.reached,
    count: attempt.tries.count,
    minutes: told.minutes,
    about: told.about,
    uri: told.uri,
    line: told.line,
  };
}

function nameOfInstrument(entry: Entry, conventions: Conventions): string | null {
  const id = entry.instrument ?? conventions.instrument;
  return instrumentOf(id, conventions)?.id ?? id ?? null;
}
