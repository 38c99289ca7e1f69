import { atOnce } from "../journal/at-once.ts";
import { type DayNumber, parseIsoDate } from "../journal/calendar.ts";
import type { Conventions } from "../journal/conventions.ts";
import { DaySkeleton } from "../journal/day-skeleton.ts";
import type { DayVisitor, LinePlace } from "../journal/day-walk.ts";
import type { Journal } from "../journal/journal.ts";
import { entryCount, readEntry } from "../journal/read-entry.ts";
import { hasTitles, titlesAlongside } from "../journal/titles/journal-titles.ts";
import { type Block, blockIndexAt } from "../syntax/document/document.ts";
import type { EntryLine, Line } from "../syntax/line/line.ts";
import type { LineReader } from "../syntax/line/line-reader.ts";
import { lineRead } from "../syntax/line/parse-line.ts";
import { BoundedMemo } from "../syntax/words/bounded-memo.ts";
import type { Vocabulary } from "../syntax/words/vocabulary.ts";
import { AttemptColumns } from "./attempt-columns.ts";
import { DayAttempts } from "./day-attempt.ts";
import { EntryAttempts } from "./entry-attempts.ts";
import type { TimedEntry } from "./minutes.ts";
import { playedEntry } from "./played.ts";
import type { AttemptRecord, Manner } from "./record.ts";

/** Every attempt of a journal that counts: planned lines, days without a date, and activities do not. */
export function attemptsOfJournal(journal: Journal): readonly AttemptRecord[] {
  return atOnce(attemptsInSteps(journal));
}

/** The same, a day at each step; each day's by `take`. */
export function* attemptsInSteps(
  journal: Journal,
  take = (uri: string, block: Block): readonly AttemptRecord[] => recordsOfBlock(journal, uri, block),
): Generator<void, readonly AttemptRecord[]> {
  const records: AttemptRecord[] = [];
  for (const uri of journal.addresses) {
    for (const block of journal.files.get(uri)!.blocks) {
      if (!block.day || hasTitles(journal, block)) continue;
      readAlongside(journal, uri, block, (also) => journal.dayWalk.go(block, also));
      yield;
    }
  }
  for (const uri of journal.addresses) {
    for (const block of journal.files.get(uri)!.blocks) {
      for (const record of take(uri, block)) records.push(record);
      yield;
    }
  }
  return records;
}

/** The records of the entry on one line of a file; none where no entry that counts stands there. */
export function recordsAt(journal: Journal, uri: string, line: number): readonly AttemptRecord[] {
  const document = journal.files.get(uri);
  if (!document) return NONE;
  const index = blockIndexAt(document, line);
  const below = line - document.starts[index]!;
  return recordsOfBlock(journal, uri, document.blocks[index]!).filter((record) => record.line === below);
}

/** Where an attempt stands in its file now, from 0; undefined where it stands there no more. */
export function lineOf(journal: Journal, { uri, block, line }: AttemptRecord): number | undefined {
  const document = journal.files.get(uri);
  const index = document ? document.blocks.indexOf(block) : -1;
  return index < 0 ? undefined : document!.starts[index]! + line;
}

const NONE: readonly AttemptRecord[] = [];

/** The same array while the block, and what it is read by, stay the same. */
export function recordsOfBlock(journal: Journal, uri: string, block: Block): readonly AttemptRecord[] {
  if (!block.day) return NONE;
  const conventions = journal.conventions(uri);
  const titles = journal.titlesOf(block);
  return journal.memo.from(block, NAME, [conventions, uri, titles], () => {
    const reading = dayReading(journal, conventions);
    journal.dayWalk.go(block, [reading], titles);
    return reading.take(block, uri);
  });
}

/**
 * Has a day read for the history while somebody else goes over it: `go` does so, with others who look on. What titles
 * it teaches is found as well; where it names one that other days know, it is gone over once more when that is asked.
 */
export function readAlongside(journal: Journal, uri: string, block: Block, go: (also: readonly DayVisitor[]) => void) {
  if (!block.day) return go([]);
  const conventions = journal.conventions(uri);
  const reading = dayReading(journal, conventions);
  titlesAlongside(journal, block, (also) => go([reading, ...also]));
  journal.memo.from(block, NAME, [conventions, uri, undefined], () => reading.take(block, uri));
}

const NAME = "attempts";

function dayReading(journal: Journal, conventions: Conventions): DayReading {
  return journal.memo.of(conventions, "day reading", () => new DayReading(journal, conventions));
}

/** In about so many bytes, and what one takes. */
const MOST_BYTES = 4_000_000;
const MANNER_BYTES = 600;

/** Reads days for the history. It lasts as long as the words and the conventions that it was made for. */
class DayReading implements DayVisitor {
  private readonly attempts: EntryAttempts;
  private readonly vocabulary: Vocabulary;
  private readonly columns = new AttemptColumns();
  /** Of lines that were read as a whole: each anew would be most of what is kept of them. */
  private readonly manners = new BoundedMemo<Manner>(MOST_BYTES, () => MANNER_BYTES);
  private entries: TimedEntry[] = [];
  /** Those without minutes of their own, of which there are few different ones, by their stretch. */
  private readonly timeless = { planned: [] as TimedEntry[], played: [] as TimedEntry[] };
  private date: DayNumber | undefined;
  private skeleton = new DaySkeleton();

  constructor(
    journal: Journal,
    private readonly conventions: Conventions,
  ) {
    this.attempts = new EntryAttempts(journal.partContext, conventions);
    this.vocabulary = journal.vocabulary;
  }

  begin(skeleton: DaySkeleton): void {
    this.skeleton = skeleton;
    this.date = undefined;
    this.entries = [];
    this.columns.clear();
  }

  /** The records of the day that was gone over last. */
  take(block: Block, uri: string): readonly AttemptRecord[] {
    const { sittings, phases } = this.skeleton;
    const columns = this.columns.columns();
    this.columns.clear();
    if (this.date === undefined || columns.count === 0) return NONE;
    // Copies are as long as what is in them: an array that grew has room for half as many again.
    const time = { sittings: sittings.slice(), phases: phases.slice(), entries: this.entries.slice() };
    return new DayAttempts(this.date, uri, block, columns, time).records;
  }

  day(date: DayNumber): void {
    this.date = date;
  }

  entry(reader: LineReader, text: string, from: number, to: number, place: LinePlace): void {
    this.open(place, reader.minutes);
    if (place.planned || this.attempts.add(reader, text, from, to, this.columns)) return;
    const line = lineRead(reader, text.slice(from, to), { vocabulary: this.vocabulary, memo: reader, head: false });
    if (line.type === "entry") this.addWhole(line, place);
  }

  line(line: Line, _text: string, place: LinePlace): void {
    if (line.type === "day") this.date ??= parseIsoDate(line.date);
    if (line.type !== "entry") return;
    this.open(place, entryCount(line).minutes);
    if (!place.planned) this.addWhole(line, place);
  }

  private open({ line, planned }: LinePlace, minutes: number | undefined): void {
    this.columns.begin(line, this.entries.length);
    const stretch = this.skeleton.phases.length - 1;
    this.entries.push(minutes === undefined ? this.timelessEntry(planned, stretch) : { minutes, planned, stretch });
  }

  private timelessEntry(planned: boolean, stretch: number): TimedEntry {
    const known = planned ? this.timeless.planned : this.timeless.played;
    known[stretch] ??= { planned, stretch };
    return known[stretch];
  }

  /** An entry that only the whole line tells. */
  private addWhole(line: EntryLine, place: LinePlace): void {
    const entry = readEntry(line, place.line, this.vocabulary);
    for (const { manner, rate, reached, count, got, subject, attempt } of playedEntry(entry, this.conventions)
      .attempts) {
      const { start, end } = entry.attempts[attempt]!.place;
      this.columns.goTo(subject, attempt);
      const kept = this.manners.of(JSON.stringify(manner), () => manner);
      this.columns.add(kept, rate, start, end);
      this.columns.answer(reached, count, got);
    }
  }
}
