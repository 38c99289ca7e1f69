import { type Conventions, instrumentOf } from "../journal/conventions.ts";
import type { Journal } from "../journal/journal.ts";
import type { Attempt, BlockModel, Entry } from "../journal/model.ts";
import { subjectKey, subjectText } from "../journal/subject-text.ts";
import { type Block, blockIndexAt } from "../syntax/document.ts";
import { patternOfRecord } from "./exercise-name.ts";
import { sharedMinutes } from "./minutes.ts";
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
  for (const [i, entry] of model.entries.entries()) {
    if (entry.planned || !isExercise(entry)) continue;
    const share = minutes[i]!;
    const line = {
      day,
      minutes: share.minutes / entry.attempts.length,
      about: share.about,
      uri: place.uri,
      line: place.first + entry.place.line,
      ...lineOfRecord(journal, entry, place.conventions),
    };
    for (const attempt of entry.attempts)
      records.push({ ...line, order: records.length, ...attemptOfRecord(entry, attempt, place.conventions) });
  }
  return records;
}

function isExercise({ subject }: Entry): boolean {
  return subject !== undefined && subject.type !== "activity" && subject.type !== "free";
}

/** What all attempts of an entry share. */
function lineOfRecord(
  journal: Journal,
  entry: Entry,
  conventions: Conventions,
): Pick<AttemptRecord, "instrument" | "subject" | "subjectKey" | "pattern" | "movement" | "where" | "unit"> {
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
    movement: title ? (entry.where?.movement ?? null) : null,
    where: title ? entry.where?.text || null : null,
    unit: title ? "beats" : "notes",
  };
}

function attemptOfRecord(
  entry: Entry,
  attempt: Attempt,
  conventions: Conventions,
): Pick<AttemptRecord, "reach" | "tonguing" | "evenness" | "rate" | "noteValue" | "beat" | "reached" | "count"> {
  const { conditions } = attempt;
  const silent = conditions.manner.some((manner) => WITHOUT_RATE.includes(manner));
  return {
    reach: entry.subject?.type === "title" ? null : reachClassOf(entry, conditions, conventions),
    tonguing: conditions.articulation?.tonguing ?? conventions.usualTonguing,
    evenness: conditions.rhythm && !conditions.rhythm.even ? "uneven" : "even",
    rate: silent || !attempt.tempo ? null : rateOf(entry, attempt.tempo, conditions.noteValue, conventions),
    ...notationOf(entry, attempt, conventions),
    reached: attempt.reached,
    count: attempt.tries.count,
  };
}

function notationOf(
  entry: Entry,
  { conditions, tempo }: Attempt,
  conventions: Conventions,
): Pick<AttemptRecord, "noteValue" | "beat"> {
  if (entry.subject?.type === "title") return { beat: goalBeat(entry, conventions) };
  const noteValue = conditions.noteValue ?? conventions.noteValue;
  return { ...(noteValue ? { noteValue } : {}), ...(tempo?.beat ? { beat: tempo.beat } : {}) };
}

function nameOfInstrument(entry: Entry, conventions: Conventions): string | null {
  const id = entry.instrument ?? conventions.instrument;
  return instrumentOf(id, conventions)?.id ?? id ?? null;
}
