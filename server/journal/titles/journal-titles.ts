import { type Block, changedBlocks, type Document } from "../../syntax/document/document.ts";
import type { TitleMatch } from "../../syntax/line/known-title.ts";
import { BoundedMemo } from "../../syntax/words/bounded-memo.ts";
import type { Vocabulary } from "../../syntax/words/vocabulary.ts";
import type { DayNumber } from "../calendar.ts";
import { dayOfBlock } from "../day-of-block.ts";
import type { DayVisitor, DayWalk, KnownTitles } from "../day-walk.ts";
import { type DatedTitle, TitleIndex } from "./title-index.ts";
import { type DayTitles, NO_TITLES, TitleReading } from "./title-reading.ts";

/** What is kept between states of a journal; see `Memo`. */
interface Kept {
  of<T extends object>(object: object, name: string, make: () => T): T;
}

/** One state of a journal, as far as its titles go. */
interface Titled {
  readonly files: ReadonlyMap<string, Document>;
  readonly memo: Kept;
  readonly vocabulary: Vocabulary;
  readonly dayWalk: DayWalk;
}

/** The index of the latest state, what it was made of, and since when it says other things than the one before. */
interface Indexed {
  readonly files: ReadonlyMap<string, Document>;
  readonly taught: ReadonlyMap<string, readonly DatedTitle[]>;
  readonly index: TitleIndex;
  readonly before: number;
  readonly number: number;
  readonly since: DayNumber;
}

/** What was found out with one vocabulary. */
class Found {
  /** The keys of words and titles that were met lately. */
  readonly keys = new BoundedMemo<string>(KEY_BYTES);
  readonly days = new WeakMap<Block, DayTitles>();
  readonly taught = new WeakMap<Document, readonly DatedTitle[]>();
  readonly known = new WeakMap<Block, Resolved>();
  last: Indexed | undefined;
}

const KEY_BYTES = 1_000_000;

function foundIn({ memo, vocabulary }: Pick<Titled, "memo" | "vocabulary">): Found {
  return memo.of(vocabulary, "titles", () => new Found());
}

/** What the lines of a block, read by themselves, have to do with titles. */
function dayTitles(titled: Titled, block: Block): DayTitles {
  const { days } = foundIn(titled);
  const known = days.get(block);
  if (known) return known;
  const titles = block.day ? readTitles(titled, block, (also) => titled.dayWalk.go(block, also)) : NO_TITLES;
  days.set(block, titles);
  return titles;
}

/** Has a day looked through for titles while somebody else goes over it: `go` does so, with whoever looks on. */
export function titlesAlongside(titled: Titled, block: Block, go: (also: readonly DayVisitor[]) => void): void {
  if (hasTitles(titled, block)) go([]);
  else foundIn(titled).days.set(block, readTitles(titled, block, go));
}

/** Whether a block was looked through. */
export function hasTitles(titled: Pick<Titled, "memo" | "vocabulary">, block: Block): boolean {
  return foundIn(titled).days.has(block);
}

function readTitles(titled: Titled, block: Block, go: (also: readonly DayVisitor[]) => void): DayTitles {
  if (!block.day) {
    go([]);
    return NO_TITLES;
  }
  const reading = new TitleReading(titled.vocabulary, foundIn(titled).keys);
  go([reading]);
  const day = dayOfBlock(block);
  // below a date that cannot be read the declared titles are known, and nothing is learnt
  return day === undefined ? { ...reading.take(EVER), taught: [] } : reading.take(day);
}

/** Reads all days for their titles that were not read yet, a day at each step: then the index costs little. */
export function* readForTitles(titled: Titled): Generator<void, void> {
  for (const { blocks } of titled.files.values()) {
    for (const block of blocks) {
      if (!block.day || hasTitles(titled, block)) continue;
      dayTitles(titled, block);
      yield;
    }
  }
}

/**
 * The titles that a journal knows, the same object while nothing teaches others. What a block teaches hangs on the
 * block: after an edit only what came is read.
 */
export function titleIndex(titled: Titled): TitleIndex {
  return indexed(titled).index;
}

/** Whether the days of an earlier state were all read for their titles, so that few are to be read now. */
export function isReadForTitles(titled: Pick<Titled, "memo" | "vocabulary">): boolean {
  return foundIn(titled).last !== undefined;
}

function indexed(titled: Titled): Indexed {
  const { files, vocabulary } = titled;
  const found = foundIn(titled);
  const { last } = found;
  if (last?.files === files) return last;
  const taught = new Map<string, readonly DatedTitle[]>();
  let same = last?.taught.size === files.size;
  for (const [uri, document] of files) {
    const titles = found.taught.get(document) ?? taughtAgain(titled, document, last?.files.get(uri));
    found.taught.set(document, titles);
    taught.set(uri, titles);
    same &&= sameTitles(titles, last?.taught.get(uri));
  }
  found.last = same && last ? { ...last, files, taught } : next(last, files, taught, vocabulary);
  return found.last;
}

function next(
  last: Indexed | undefined,
  files: Indexed["files"],
  taught: Indexed["taught"],
  vocabulary: Vocabulary,
): Indexed {
  const index = new TitleIndex(vocabulary, [...taught.values()].flat().sort(inOrder));
  const before = last?.number ?? 0;
  return { files, taught, index, before, number: before + 1, since: last ? firstOther(last.index, index) : EVER };
}

const EVER = Number.NEGATIVE_INFINITY;

/** The first day from which on two indices may know other titles. */
function firstOther({ taught: a }: TitleIndex, { taught: b }: TitleIndex): DayNumber {
  let i = 0;
  while (i < a.length && i < b.length && isSame(a[i]!, b[i]!)) i++;
  return Math.min(a[i]?.day ?? Number.POSITIVE_INFINITY, b[i]?.day ?? Number.POSITIVE_INFINITY);
}

/** What a file teaches; what it taught before where the days that an edit touched teach what they did. */
function taughtAgain(titled: Titled, now: Document, before: Document | undefined): readonly DatedTitle[] {
  const known = before && foundIn(titled).taught.get(before);
  if (!before || !known) return taughtIn(titled, now);
  const changed = changedBlocks(before, now);
  const gone = datedIn(titled, before.blocks.slice(changed.from, changed.before));
  const come = datedIn(titled, now.blocks.slice(changed.from, changed.after));
  return sameTitles(gone, come) ? known : taughtIn(titled, now);
}

function datedIn(titled: Titled, blocks: readonly Block[]): DatedTitle[] {
  return blocks.flatMap((block) => {
    const { day, taught } = dayTitles(titled, block);
    return taught.map((each): DatedTitle => ({ ...each, day: day! }));
  });
}

/** What a file teaches: of each title the first place in it. */
function taughtIn(titled: Titled, { blocks }: Document): readonly DatedTitle[] {
  const first = new Map<string, DatedTitle>();
  for (const each of datedIn(titled, blocks).sort(inOrder)) if (!first.has(each.key)) first.set(each.key, each);
  return [...first.values()];
}

/** By date and line; of titles that agree in both by what they say, never by their file. */
function inOrder(a: DatedTitle, b: DatedTitle): number {
  return a.day - b.day || a.line - b.line || (a.title < b.title ? -1 : a.title > b.title ? 1 : 0);
}

function sameTitles(a: readonly DatedTitle[], b: readonly DatedTitle[] | undefined): boolean {
  return a === b || (a.length === b?.length && a.every((each, i) => isSame(each, b[i]!)));
}

function isSame(a: DatedTitle, b: DatedTitle): boolean {
  return a.day === b.day && a.line === b.line && a.title === b.title;
}

/** What was last found out of a block, by which index. */
interface Resolved {
  number: number;
  known: KnownTitles | undefined;
  key: string;
}

/**
 * The titles that lines of a block name and that are known by then; undefined where none does, which mostly is told
 * without a look at other blocks. The same object while it says the same.
 */
export function knownTitles(titled: Titled, block: Block): KnownTitles | undefined {
  if (!block.day) return undefined;
  const found = foundIn(titled);
  const { day, candidates } = found.days.get(block) ?? dayTitles(titled, block);
  if (day === undefined || candidates.count === 0) return undefined;
  const { index, number, before, since } = found.last?.files === titled.files ? found.last : indexed(titled);
  let last = found.known.get(block);
  if (!last) {
    last = { number: 0, known: undefined, key: "[]" };
    found.known.set(block, last);
  }
  if (last.number === number) return last.known;
  if (last.number !== before || last.number === 0 || day >= since) {
    const lines: [number, readonly TitleMatch[]][] = [];
    for (const line of candidates.lines()) {
      const matches = index.matches(line, day);
      if (matches) lines.push([line.line, matches]);
    }
    const key = JSON.stringify(lines);
    if (key !== last.key) {
      last.key = key;
      last.known = lines.length > 0 ? new Map(lines) : undefined;
    }
  }
  last.number = number;
  return last.known;
}
