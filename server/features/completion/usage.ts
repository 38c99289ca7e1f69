import { patternOfRecord } from "../../history/exercise-name.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { dayOfBlock } from "../../journal/day-of-block.ts";
import { eachSubject, hasSeveral } from "../../journal/each-subject.ts";
import type { Journal } from "../../journal/journal.ts";
import { sameItems } from "../../journal/memo.ts";
import type { Entry, NoteValue, Tempo } from "../../journal/model.ts";
import { subjectKey } from "../../journal/subject-text.ts";
import type { Block, Document } from "../../syntax/document/document.ts";
import type { EntryLine } from "../../syntax/line/line.ts";
import { nameKey } from "../../syntax/words/fold.ts";
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
  readonly reached: () => readonly ReachedTempo[];
}

interface Count {
  readonly text: string;
  readonly type: MeaningType;
  readonly count: number;
}

type Counts = Map<string, Count>;

/** What one day used. */
interface DayUsage {
  readonly day: DayNumber;
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
  const { others, own } = latestDays(journal, typed);
  const days = own ? [...others, own].sort((a, b) => b.day - a.day) : others;
  const newest = days[0]?.day ?? 0;
  const ofOthers = usedByOthers(journal, others, newest);
  return {
    used: own ? usedWith(journal, ofOthers, own, newest) : ofOthers,
    beside: (subject) => {
      const sum = new Map<string, Used>();
      for (const { day, beside } of days) add(sum, beside.get(subject) ?? [], weightAfter(newest - day));
      return sum;
    },
    reached: () => days.flatMap(({ reached }) => reached),
  };
}

interface UsedByOthers {
  readonly days: readonly DayUsage[];
  readonly newest: DayNumber;
  readonly used: ReadonlyMap<string, Used>;
}

/** Added up once while the same days stay: from one key to the next only the one that is typed in changes. */
function usedByOthers({ memo }: Journal, days: readonly DayUsage[], newest: DayNumber): ReadonlyMap<string, Used> {
  const last = memo.latest<UsedByOthers>("used by others", "");
  if (last && last.newest === newest && sameItems(last.days, days)) return last.used;
  const used = new Map<string, Used>();
  for (const each of days) add(used, each.used, weightAfter(newest - each.day));
  memo.setLatest<UsedByOthers>("used by others", "", { days, newest, used });
  return used;
}

/** With what the day that is typed in used: added once while that is the same. */
function usedWith(
  { memo }: Journal,
  ofOthers: ReadonlyMap<string, Used>,
  own: DayUsage,
  newest: DayNumber,
): ReadonlyMap<string, Used> {
  return memo.from(own, "used with others", [ofOthers], () => {
    const used = new Map(ofOthers);
    add(used, own.used, weightAfter(newest - own.day), own.day === newest);
    return used;
  });
}

/** @param latest the words of these counts were typed after those of the sum */
function add(
  sum: Map<string, Used>,
  counts: readonly (readonly [string, Count])[],
  weight: number,
  latest = false,
): void {
  for (const [key, { text, type, count }] of counts) {
    const { text: known = text, score = 0 } = sum.get(key) ?? {};
    sum.set(key, { text: latest ? text : known, type, score: score + weight * count });
  }
}

/** Reads what `usageOf` needs, a day between one step and the next, so that the first offer need not wait for it. */
export function* usageInSteps(journal: Journal): Generator<void> {
  for (const { block } of latestBlocks(journal)) {
    dayUsage(journal, block);
    yield;
  }
}

/** What the latest days used, the newest first; that of the day that is typed in apart, where it is one of them. */
function latestDays(
  journal: Journal,
  typed: TypedLine,
): { readonly others: readonly DayUsage[]; readonly own?: DayUsage } {
  const blocks = latestBlocks(journal);
  const others = blocks.flatMap(({ block }) => (block === typed.block ? [] : [dayUsage(journal, block)]));
  const own = blocks.some(({ block }) => block === typed.block) ? usageBeside(journal, typed) : undefined;
  return { others: others.sort((a, b) => b.day - a.day), own };
}

/** The blocks of the latest days, file by file. Files are taken to run one way, whichever it is. */
export function latestBlocks(journal: Journal): readonly { readonly uri: string; readonly block: Block }[] {
  const files = journal.addresses.map((uri) => ({ uri, ...newestFirst(journal, journal.files.get(uri)!) }));
  files.sort((a, b) => b.newest - a.newest); // of files as new the first, whichever became known first
  const latest: { uri: string; block: Block }[] = [];
  for (const { uri, blocks } of files) {
    if (latest.length >= LATEST_DAYS) break;
    for (const block of blocks(LATEST_DAYS - latest.length))
      if (dayOfBlock(block) !== undefined) latest.push({ uri, block });
  }
  return latest;
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

interface UsageBeside {
  readonly readFrom: readonly unknown[];
  readonly usage: DayUsage;
}

/** What the other lines of a day used: the same from one key to the next, while they are read as they were. */
function usageBeside(journal: Journal, { block, line }: TypedLine): DayUsage {
  const { memo } = journal;
  const { lines, entries } = journal.model(block);
  const others = entries.filter(({ place }) => place.line !== line);
  const readFrom = [...block.lines.toSpliced(line, 1), ...lines.toSpliced(line, 1), ...others];
  const last = memo.latest<UsageBeside>("usage beside", "");
  if (last && sameItems(last.readFrom, readFrom)) return last.usage;
  const usage = readUsage(journal, block, line);
  memo.setLatest<UsageBeside>("usage beside", "", { readFrom, usage });
  return usage;
}

function readUsage(journal: Journal, block: Block, except?: number): DayUsage {
  const model = journal.model(block);
  const day = model.day!.date!;
  const used: Counts = new Map();
  const beside = new Map<string, Counts>();
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
  if (line.same) return; // which would say nothing by themselves
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
      place: nameKey(entry.where?.text ?? ""),
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
