import { patternOfRecord } from "../../history/exercise-name.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { dayOfBlock } from "../../journal/day-of-block.ts";
import { eachSubject, hasSeveral } from "../../journal/each-subject.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry, NoteValue, Tempo } from "../../journal/model.ts";
import { subjectKey } from "../../journal/subject-text.ts";
import type { Block, Document } from "../../syntax/document/document.ts";
import type { EntryLine } from "../../syntax/line/line.ts";
import type { Item } from "../../syntax/words/meaning.ts";
import type { MeaningType } from "../../syntax/words/term-types.ts";
import { termKey } from "../explain/term-key.ts";
import { LATEST_DAYS, weightAfter } from "./lately.ts";

/** Something that the journal used: its words as they were last typed, and its weight. */
export interface Used {
  readonly text: string;
  readonly type: MeaningType;
  readonly score: number;
}

/** The latest tempo that was reached in an exercise. */
export interface ReachedTempo {
  readonly exercise: string;
  /** `72`, `1/4.=52`: as it was written, without `at`. */
  readonly text: string;
  readonly tempo: Tempo;
  readonly noteValue?: NoteValue;
  readonly place: string;
  readonly day: DayNumber;
}

/** What the latest days of a journal used. */
export interface Usage {
  /** Terms by `termKey`, subjects by `subjectKey`; amounts of other lines than entries by `phase amount 15`. */
  readonly used: ReadonlyMap<string, Used>;
  /** The terms that stood beside one subject. */
  readonly beside: (subjectKey: string) => ReadonlyMap<string, Used>;
  /** Latest first. */
  readonly reached: readonly ReachedTempo[];
}

interface Count {
  readonly text: string;
  readonly type: MeaningType;
  readonly count: number;
}

type Counts = Map<string, Count>;

/** What one day used. */
interface DayUsage {
  readonly day?: DayNumber;
  readonly used: readonly (readonly [string, Count])[];
  /** By the subject that they stood beside. */
  readonly beside: ReadonlyMap<string, readonly (readonly [string, Count])[]>;
  readonly reached: readonly ReachedTempo[];
}

/** A line that does not count: the one that is being typed. */
export interface TypedLine {
  readonly block: Block;
  /** From 0, within the block. */
  readonly line: number;
}

/**
 * What the last hundred days that a journal has written used, from all of its files; the day that is being edited too,
 * without the line that is being typed. Each day is read once and kept with its block; here they are only added up, so
 * that ten years cost no more than one.
 */
export function usageOf(journal: Journal, typed: TypedLine): Usage {
  const days = latestDays(journal, typed);
  return {
    used: addedUp(days, ({ used }) => used),
    beside: (subject) => addedUp(days, ({ beside }) => beside.get(subject)),
    reached: days.flatMap(({ reached }) => reached),
  };
}

function addedUp(
  days: readonly DayUsage[],
  countsOf: (day: DayUsage) => readonly (readonly [string, Count])[] | undefined,
): ReadonlyMap<string, Used> {
  const newest = days[0]?.day ?? 0;
  const sum = new Map<string, { text: string; type: MeaningType; score: number }>();
  for (const each of days) {
    const weight = weightAfter(newest - each.day!);
    for (const [key, { text, type, count }] of countsOf(each) ?? []) {
      const known = sum.get(key);
      if (known) known.score += weight * count;
      else sum.set(key, { text, type, score: weight * count });
    }
  }
  return sum;
}

/** The latest days of all files, the newest first. Files are taken to run one way, whichever it is. */
function latestDays(journal: Journal, typed: TypedLine): DayUsage[] {
  const files = journal.addresses.map((uri) => newestFirst(journal, journal.files.get(uri)!));
  files.sort((a, b) => b.newest - a.newest); // of files as new the first, whichever became known first
  const days: DayUsage[] = [];
  for (const { blocks } of files) {
    if (days.length >= LATEST_DAYS) break;
    for (const block of blocks(LATEST_DAYS - days.length)) {
      const usage = block === typed.block ? readUsage(journal, block, typed.line) : dayUsage(journal, block);
      if (usage.day !== undefined) days.push(usage);
    }
  }
  return days.sort((a, b) => b.day! - a.day!);
}

interface NewestFirst {
  readonly newest: DayNumber;
  /** At most so many blocks from the newer end. */
  readonly blocks: (most: number) => readonly Block[];
}

/** Once for each state of a file. */
function newestFirst({ memo }: Journal, document: Document): NewestFirst {
  return memo.of(document, "newest first", () => {
    const { blocks } = document;
    const dateOf = (block: Block | undefined): DayNumber => (block && dayOfBlock(block)) ?? Number.NEGATIVE_INFINITY;
    const first = Math.max(dateOf(blocks[0]), dateOf(blocks[1]));
    const last = dateOf(blocks.at(-1));
    if (first > last) return { newest: first, blocks: (most: number) => blocks.slice(0, most + 1) };
    return { newest: last, blocks: (most: number) => blocks.slice(-most).toReversed() };
  });
}

function dayUsage(journal: Journal, block: Block): DayUsage {
  return journal.memo.from(block, "usage", [journal.titlesOf(block)], () => readUsage(journal, block));
}

function readUsage(journal: Journal, block: Block, except?: number): DayUsage {
  const model = journal.model(block);
  const day = model.day?.date;
  const used: Counts = new Map();
  const beside = new Map<string, Counts>();
  if (day === undefined) return { used: [], beside: new Map(), reached: [] };
  for (const [i, line] of model.lines.entries()) {
    if (i === except) continue;
    if (line.type === "entry") countEntry(line, block.lines[i]!, used, beside);
    else if ("items" in line) countItems(line.items, block.lines[i]!, used, `${line.type} `);
  }
  const reached = model.entries
    .filter(({ place }) => place.line !== except)
    .flatMap((entry) => reachedIn(entry, block.lines[entry.place.line]!, day))
    .toReversed();
  return { day, used: [...used], beside: new Map([...beside].map(([key, counts]) => [key, [...counts]])), reached };
}

function countEntry(line: EntryLine, text: string, used: Counts, beside: Map<string, Counts>): void {
  countItems(line.items, text, used);
  const { start, end, meaning } = line.subject ?? { start: 0, end: 0, meaning: undefined };
  if (!meaning || meaning.type === "faulty subject" || meaning.type === "free") return;
  const key = subjectKey(meaning);
  count(used, key, text.slice(start, end), meaning.type);
  if (meaning.type === "scale") count(used, `kind ${meaning.kind}`, meaning.kind, "kind");
  if (meaning.type === "chord")
    count(used, `chord kind ${meaning.chord}${meaning.broken ? " broken" : ""}`, meaning.chord, "chord kind");
  const terms = beside.get(key) ?? new Map<string, Count>();
  countItems(line.items, text, terms);
  beside.set(key, terms);
}

/** Amounts of days and phases are others than those of entries. */
function countItems(items: readonly Item[], text: string, counts: Counts, ofAmounts = ""): void {
  for (const { start, end, meaning } of items) {
    const key = termKey(meaning);
    const named = key !== undefined && meaning.type === "amount" ? ofAmounts + key : key;
    if (named !== undefined) count(counts, named, text.slice(start, end), meaning.type);
  }
}

function count(counts: Counts, key: string, text: string, type: MeaningType): void {
  counts.set(key, { text: text.replace(/\s+/g, " "), type, count: (counts.get(key)?.count ?? 0) + 1 });
}

/**
 * Each reached tempo of an entry, for all its subjects together and for each by itself. A number that goes on from a
 * tempo with a beat is written with that beat.
 */
function reachedIn(entry: Entry, line: string, day: DayNumber): ReachedTempo[] {
  if (!entry.subject) return [];
  const singly = hasSeveral(entry.subject) ? eachSubject(entry) : [];
  let beat = "";
  return entry.attempts.flatMap(({ tempo, reached, conditions, place }, i) => {
    if (!tempo) return [];
    const typed = /^(?:at|@)?\s*(.*=)?/is.exec(line.slice(place.start, place.end))![1] ?? "";
    if (typed || !tempo.beat) beat = typed;
    if (!reached) return [];
    const found = {
      text: `${beat}${tempo.bpm}`,
      tempo,
      noteValue: conditions.noteValue,
      place: entry.where?.text ?? "",
      day,
    };
    const played = [entry, ...singly.flatMap((one) => (one.attempts.includes(i) ? [one.entry] : []))];
    return played.map((one) => ({ ...found, exercise: exerciseKey(one) }));
  });
}

/** What makes two entries the same exercise here, whatever the instrument. */
export function exerciseKey(entry: Pick<Entry, "subject" | "pattern" | "inversion">): string {
  return `${subjectKey(entry.subject!)}\n${patternOfRecord(entry) ?? ""}`;
}
