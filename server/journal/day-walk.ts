import type { Block } from "../syntax/document/document.ts";
import { type Line, type LineSort, sortOf } from "../syntax/line/line.ts";
import { AFTER_ARROW } from "../syntax/line/line-cuts.ts";
import { LineReader } from "../syntax/line/line-reader.ts";
import { lineRead } from "../syntax/line/parse-line.ts";
import type { PartContext } from "../syntax/line/parts.ts";
import { BoundedMemo } from "../syntax/words/bounded-memo.ts";
import { type DayNumber, parseIsoDate, weekday } from "./calendar.ts";
import { DaySkeleton } from "./day-skeleton.ts";
import { takeFrame } from "./read-block.ts";
import { entryCount } from "./read-entry.ts";

/** Where a line stands in its day. */
export interface LinePlace {
  /** Counted from the block's first. */
  readonly line: number;
  /** An entry that is planned, and not done. */
  readonly planned: boolean;
}

/** Looks at the lines of a day as they are gone over. */
export interface DayVisitor {
  /** A day begins. Its lines are put into the skeleton each before it is shown. */
  begin(skeleton: DaySkeleton): void;
  /** A day line that says its date, its own weekday and minutes at most. Columns are those of the date. */
  day(date: DayNumber, start: number, end: number): void;
  /**
   * An entry whose pieces can be looked at each by itself: those that the reader holds now, by offsets in `text`, in
   * which the line goes from `from` up to `to`.
   */
  entry(reader: LineReader, text: string, from: number, to: number, place: LinePlace): void;
  /**
   * A line that was read as a whole. Phases, remarks and blank lines in which nothing can be at fault are passed over.
   */
  line(line: Line, text: string, place: LinePlace): void;
}

/** In about so many bytes: lines whose pieces bear on each other. */
const MOST_BYTES = 4_000_000;
const LINE_BYTES = 1500;

/**
 * Goes over days, a line at a time: what its lines open is kept in a skeleton, and what they say is shown to whoever
 * looks on. It lasts as long as the words that it was made for.
 */
export class DayWalk {
  private readonly reader: LineReader;
  private readonly whole = new BoundedMemo<Line>(MOST_BYTES, () => LINE_BYTES);
  private readonly place = { line: 0, planned: false };

  constructor(private readonly context: PartContext) {
    this.reader = new LineReader(context.vocabulary, context.memo.table);
  }

  /** Goes down a day, from its day line to its end. */
  go({ text }: Block, visitors: readonly DayVisitor[]): DaySkeleton {
    const skeleton = new DaySkeleton();
    for (const visitor of visitors) visitor.begin(skeleton);
    eachLine(text, (from, to, line) => this.takeLine(skeleton, text, from, to, line, visitors));
    return skeleton;
  }

  /** What each line of a day is to those around it. */
  sortsOf({ text, lineCount }: Block): readonly LineSort[] {
    const sorts = new Array<LineSort>(lineCount).fill("blank");
    eachLine(text, (from, to, line) => {
      const kind = this.reader.read(text, from, to);
      sorts[line] = sortOf(kind === "open" ? this.lineRead(text.slice(from, to)).type : kind);
    });
    return sorts;
  }

  private takeLine(
    skeleton: DaySkeleton,
    text: string,
    from: number,
    to: number,
    line: number,
    visitors: readonly DayVisitor[],
  ): void {
    const { reader, place } = this;
    const kind = reader.read(text, from, to);
    if (kind === "blank" || kind === "remark") return;
    if (kind === "day" && this.takeDay(skeleton, text, from, visitors)) return;
    place.line = line;
    place.planned = false;
    if (kind === "phase") skeleton.openPhase(line, reader.pieces[0]!.phase!, reader.minutes, false);
    else if (kind === "entry" && !reader.tangled) {
      place.planned = skeleton.addEntry(line, reader);
      for (const visitor of visitors) visitor.entry(reader, text, from, to, place);
    } else this.takeWhole(skeleton, text.slice(from, to), visitors);
  }

  /** A day line in which nothing can be at fault; false for any other. */
  private takeDay(skeleton: DaySkeleton, text: string, from: number, visitors: readonly DayVisitor[]): boolean {
    const { cuts, pieces, dateStart, start } = this.reader;
    const date = parseIsoDate(text.slice(dateStart, start));
    if (date === undefined) return false;
    let minutes: number | undefined;
    for (let i = 0; i < cuts.count; i++) {
      const [item, more] = pieces[i]!.items;
      if (!item) continue;
      const { meaning } = item;
      const isOwnWeekday = i === 0 && meaning.type === "weekday" && meaning.day === weekday(date);
      const isMinutes = i > 0 && minutes === undefined && meaning.type === "amount" && meaning.possible;
      if (more || cuts.after[i] === AFTER_ARROW || !(isOwnWeekday || isMinutes)) return false;
      if (isMinutes) minutes = this.reader.minutesAt(i);
      if (minutes === 0) return false;
    }
    skeleton.openDay(0, minutes, false, false);
    for (const visitor of visitors) visitor.day(date, dateStart - from, start - from);
    return true;
  }

  private takeWhole(skeleton: DaySkeleton, text: string, visitors: readonly DayVisitor[]): void {
    const { place } = this;
    const line = this.lineRead(text);
    takeFrame(skeleton, line, place.line);
    if (line.type === "entry") place.planned = skeleton.addEntry(place.line, entryCount(line));
    for (const visitor of visitors) visitor.line(line, text, place);
  }

  /** The line that the reader has just read, as a whole: one whose pieces bear on each other is kept by its text. */
  private lineRead(text: string): Line {
    const { reader, context } = this;
    const read = (own: string): Line => lineRead(reader, own, { ...context, head: false });
    return reader.kind === "entry" || reader.kind === "open" ? this.whole.of(text, read) : read(text);
  }
}

/** Tells where each line of a text begins and ends, without its line end. */
function eachLine(text: string, take: (from: number, to: number, line: number) => void): void {
  const loneReturns = text.includes("\r") && LONE_RETURN.test(text);
  for (let from = 0, line = 0; from < text.length; line++) {
    const end = endOfLine(text, from, loneReturns);
    const to = !loneReturns && end > from && text.charCodeAt(end - 1) === RETURN ? end - 1 : end;
    take(from, to, line);
    from = loneReturns && text.startsWith("\r\n", end) ? end + 2 : end + 1;
  }
}

const RETURN = 13;
const LONE_RETURN = /\r(?!\n)/;

function endOfLine(text: string, from: number, loneReturns: boolean): number {
  const newline = text.indexOf("\n", from);
  const end = newline < 0 ? text.length : newline;
  if (!loneReturns) return end;
  const back = text.indexOf("\r", from);
  return back < 0 ? end : Math.min(end, back);
}
