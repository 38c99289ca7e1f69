import { type Conventions, instrumentOf } from "../journal/conventions.ts";
import type { Journal } from "../journal/journal.ts";
import type { Attempt, BlockModel, Entry } from "../journal/model.ts";
import { subjectKey, subjectText } from "../journal/subject-text.ts";
import type { Block } from "../syntax/document.ts";
import { patternOfRecord } from "./exercise-name.ts";
import { sharedMinutes } from "./minutes.ts";
import { goalBeat, rateOf } from "./rate.ts";
import { reachClassOf } from "./reach-class.ts";
import type { AttemptRecord } from "./record.ts";

/** A record as a block knows it: its line counts from the block's first. */
type BlockRecord = Omit<AttemptRecord, "uri">;

/** Playing in these manners is practice without a rate. */
const WITHOUT_RATE = ["sung", "silent", "mental"];

/** Every attempt of a journal that counts: planned lines, days without a date, and activities do not. */
export function attemptsOfJournal(journal: Journal): readonly AttemptRecord[] {
  const records: AttemptRecord[] = [];
  for (const uri of journal.addresses) {
    const document = journal.files.get(uri)!;
    const conventions = journal.conventions(uri);
    for (const [i, block] of document.blocks.entries()) {
      const first = document.starts[i]!;
      for (const record of recordsOfBlock(journal, block, conventions))
        records.push({ ...record, uri, line: first + record.line });
    }
  }
  return records;
}

/** The records of the entry on one line of a file; none where no entry that counts stands there. */
export function recordsAt(journal: Journal, uri: string, line: number): readonly AttemptRecord[] {
  const document = journal.files.get(uri);
  if (!document) return [];
  const index = document.starts.findLastIndex((start) => start <= line);
  const first = document.starts[index] ?? 0;
  const records = recordsOfBlock(journal, document.blocks[index]!, journal.conventions(uri));
  return records.filter((record) => first + record.line === line).map((record) => ({ ...record, uri, line }));
}

function recordsOfBlock(journal: Journal, block: Block, conventions: Conventions): readonly BlockRecord[] {
  const cell = journal.memo.of(
    block,
    "attempts",
    (): { conventions?: Conventions; records: readonly BlockRecord[] } => ({ records: [] }),
  );
  if (cell.conventions !== conventions) {
    cell.conventions = conventions;
    cell.records = blockRecords(journal.model(block), conventions);
  }
  return cell.records;
}

function blockRecords(model: BlockModel, conventions: Conventions): readonly BlockRecord[] {
  const day = model.day?.date;
  if (day === undefined) return [];
  const minutes = sharedMinutes(model);
  let order = 0;
  return model.entries.flatMap((entry, i) => {
    if (entry.planned || !isExercise(entry)) return [];
    const share = { minutes: minutes[i]!.minutes / entry.attempts.length, about: minutes[i]!.about };
    return entry.attempts.map((attempt) => ({
      day,
      order: order++,
      ...recordOf(entry, attempt, conventions),
      ...share,
    }));
  });
}

function isExercise({ subject }: Entry): boolean {
  return subject !== undefined && subject.type !== "activity" && subject.type !== "free";
}

function recordOf(
  entry: Entry,
  attempt: Attempt,
  conventions: Conventions,
): Omit<BlockRecord, "day" | "order" | "minutes" | "about"> {
  const subject = entry.subject!;
  const { conditions } = attempt;
  const title = subject.type === "title";
  const silent = conditions.manner.some((manner) => WITHOUT_RATE.includes(manner));
  return {
    instrument: nameOfInstrument(entry, conventions),
    subject: subjectText(subject),
    subjectKey: subjectKey(subject),
    pattern: patternOfRecord(entry),
    movement: title ? (entry.where?.movement ?? null) : null,
    where: title ? entry.where?.text || null : null,
    reach: title ? null : reachClassOf(entry, conditions, conventions),
    tonguing: conditions.articulation?.tonguing ?? conventions.usualTonguing,
    evenness: conditions.rhythm && !conditions.rhythm.even ? "uneven" : "even",
    unit: title ? "beats" : "notes",
    rate: silent || !attempt.tempo ? null : rateOf(entry, attempt.tempo, conditions.noteValue, conventions),
    ...notationOf(entry, attempt, conventions),
    reached: attempt.reached,
    count: attempt.tries.count,
    line: entry.place.line,
  };
}

function notationOf(
  entry: Entry,
  { conditions, tempo }: Attempt,
  conventions: Conventions,
): Pick<BlockRecord, "noteValue" | "beat"> {
  if (entry.subject?.type === "title") return { beat: goalBeat(entry, conventions) };
  const noteValue = conditions.noteValue ?? conventions.noteValue;
  return { ...(noteValue ? { noteValue } : {}), ...(tempo?.beat ? { beat: tempo.beat } : {}) };
}

function nameOfInstrument(entry: Entry, conventions: Conventions): string | null {
  const id = entry.instrument ?? conventions.instrument;
  return instrumentOf(id, conventions)?.id ?? id ?? null;
}
