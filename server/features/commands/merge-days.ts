import type { DayNumber } from "../../journal/calendar.ts";
import { dayOfBlock } from "../../journal/day-of-block.ts";
import type { Journal } from "../../journal/journal.ts";
import { type Block, createDocument } from "../../syntax/document/document.ts";
import type { Line } from "../../syntax/line/line.ts";
import { type Joined, joinedRows } from "./common-row.ts";

/** A line of a file, and where it is there. */
export interface PlacedLine {
  readonly text: string;
  /** Absolute: the same line in two versions of a file has the same place. */
  readonly at: number;
}

export interface MergeOrder {
  /** The file has its newest day first. */
  readonly newestFirst: boolean;
  /** An empty line parts its days. */
  readonly separated: boolean;
}

/**
 * Two versions of some days as one, without a loss: days in the order of the file; in a day of both the sittings, the
 * phases in them, the lines in these and the remarks below them, each once where both versions have it.
 */
export function mergedDays(
  journal: Journal,
  upper: readonly PlacedLine[],
  lower: readonly PlacedLine[],
  order: MergeOrder,
): readonly string[] {
  const [a, b] = [upper, lower].map((lines) => daysIn(journal, lines));
  const days = inDateOrder(joinedRows(a!, b!, isSameDay), order.newestFirst);
  const printer = new Printer(order.separated);
  for (const day of days) printer.day(mergedDay(day));
  return printer.lines;
}

/** A line with what belongs below it. */
interface Branch extends PlacedLine {
  /** Lines of a lower level belong to the last one of a higher level above them. */
  readonly level: number;
  /** What comes below is set, said or asked, up to an empty line. */
  readonly opens: boolean;
  /** It stands for a line of each version. */
  readonly shared?: true;
  /** Empty lines right below it. */
  readonly blanks: readonly string[];
  readonly below: readonly Branch[];
  /** Empty lines below all that belongs to it. */
  readonly gap: readonly string[];
}

interface Growing extends Branch {
  blanks: readonly string[];
  readonly below: Growing[];
  gap: readonly string[];
}

/** A day, or what is above the first one. */
interface DayBranch {
  readonly date: DayNumber | undefined;
  /** Its own line is its first branch; those of a head have none above them. */
  readonly top: Branch;
  readonly isHead: boolean;
}

const DAY = 0;
const SITTING = 1;
const PHASE = 2;
const LINE = 3;
const BESIDE = 4;

function daysIn(journal: Journal, lines: readonly PlacedLine[]): readonly DayBranch[] {
  if (lines.length === 0) return [];
  const { blocks, starts } = createDocument(lines.map(({ text }) => text).join("\n"));
  return blocks.map((block, i) => dayBranch(journal, block, lines.slice(starts[i]!, starts[i]! + block.lineCount)));
}

function dayBranch(journal: Journal, block: Block, placed: readonly PlacedLine[]): DayBranch {
  const { lines } = journal.ownModelOnce(block);
  const top: Growing = { text: "", at: -1, ...(block.day ? placed[0]! : {}), ...grown(DAY) };
  const open: Growing[] = [top];
  let empty: string[] = [];
  for (const [i, line] of lines.entries()) {
    if (i === 0 && block.day) continue;
    if (line.type === "blank") {
      empty.push(placed[i]!.text);
      continue;
    }
    const branch: Growing = { ...placed[i]!, ...grown(levelOf(line)), opens: "opens" in line && line.opens === true };
    let closed: Growing | undefined;
    while (open.at(-1)!.level >= branch.level) closed = open.pop();
    if (closed) closed.gap = empty;
    else open.at(-1)!.blanks = empty;
    empty = [];
    open.at(-1)!.below.push(branch);
    open.push(branch);
  }
  top.gap = empty;
  return { date: dayOfBlock(block), top, isHead: !block.day };
}

function grown(level: number): Pick<Growing, "level" | "opens" | "blanks" | "below" | "gap"> {
  return { level, opens: false, blanks: [], below: [], gap: [] };
}

function levelOf(line: Line): number {
  if (line.type === "session") return SITTING;
  if (line.type === "phase") return PHASE;
  const goesOn = line.follows || (line.type === "entry" && (line.same || line.above));
  return line.type === "remark" || goesOn ? BESIDE : LINE;
}

/** The same day, also where one of its lines says more: `2026-03-02 Mon` and `2026-03-02 Mon, 40 min`. */
function isSameDay(a: DayBranch, b: DayBranch): boolean {
  if (a.isHead || b.isHead) return a.isHead && b.isHead;
  const [short, long] = [a.top.text.trim(), b.top.text.trim()].sort((one, other) => one.length - other.length);
  return long!.startsWith(short!) && /^(?:$|[\s,])/.test(long!.slice(short!.length)) && a.date === b.date;
}

function isSameLine(a: PlacedLine, b: PlacedLine): boolean {
  return a.at === b.at || a.text.trim() === b.text.trim();
}

/**
 * Between days of both versions, those of one alone by their dates. A day without a date stays below the one before.
 */
function inDateOrder(row: readonly Joined<DayBranch>[], newestFirst: boolean): readonly Joined<DayBranch>[] {
  const merged: Joined<DayBranch>[] = [];
  const [a, b]: DayBranch[][] = [[], []];
  const isBefore = (one: DayBranch, other: DayBranch): boolean =>
    one.date === undefined ||
    (other.date !== undefined && (newestFirst ? one.date > other.date : one.date < other.date));
  const flush = (): void => {
    while (a!.length > 0 || b!.length > 0) {
      const takesB = a!.length === 0 || (b!.length > 0 && isBefore(b![0]!, a![0]!));
      merged.push(takesB ? { b: b!.shift()! } : { a: a!.shift()! });
    }
  };
  for (const each of row) {
    if (each.a && each.b) {
      flush();
      merged.push(each);
    } else if (each.a) a!.push(each.a);
    else b!.push(each.b!);
  }
  flush();
  return merged;
}

function mergedDay({ a, b }: Joined<DayBranch>): Branch {
  return once(a && b ? merged(a.top, b.top) : (a ?? b)!.top, new Set());
}

function merged(a: Branch, b: Branch): Branch {
  const below = joinedRows(a.below, b.below, isSameLine).map((each) =>
    each.a && each.b ? merged(each.a, each.b) : (each.a ?? each.b)!,
  );
  const longer = a.text.trim().length >= b.text.trim().length ? a : b;
  const most = (name: "blanks" | "gap") => (a[name].length >= b[name].length ? a : b)[name];
  return { ...longer, opens: a.opens || b.opens, blanks: most("blanks"), below, gap: most("gap"), shared: true };
}

/** A line that was never in a conflict may come below another heading in each version: it stays below the first. */
function once(branch: Branch, seen: Set<number>): Branch {
  const below = branch.below.flatMap((each): readonly Branch[] => {
    const isKnown = !each.shared && seen.has(each.at);
    if (!each.shared) seen.add(each.at);
    const left = once(each, seen);
    return isKnown ? left.below : [left];
  });
  return { ...branch, below };
}

/** Writes days down one after the other. */
class Printer {
  readonly lines: string[] = [];
  /** What is written next would be read as set, said or asked. */
  private isOpen = false;

  constructor(private readonly separated: boolean) {}

  day(day: Branch): void {
    const isHead = day.at < 0;
    if (!isHead && this.separated && this.lines.length > 0 && this.lines.at(-1)!.trim() !== "") this.lines.push("");
    this.isOpen = false;
    if (!isHead) this.lines.push(day.text);
    this.lines.push(...day.blanks);
    for (const each of day.below) this.branch(each);
    this.lines.push(...day.gap);
  }

  private branch({ text, level, opens, blanks, below, gap }: Branch): void {
    if (this.isOpen && level === LINE) this.lines.push("");
    this.lines.push(text, ...blanks);
    if (level <= LINE || blanks.length > 0) this.isOpen = opens && blanks.length === 0;
    for (const each of below) this.branch(each);
    this.lines.push(...gap);
    this.isOpen &&= gap.length === 0;
  }
}
