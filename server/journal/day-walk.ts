import type { Block } from "../syntax/document/document.ts";
import { remarkText } from "../syntax/line/cut.ts";
import type { TitleMatch } from "../syntax/line/known-title.ts";
import { type Line, type LineSort, sortOf } from "../syntax/line/line.ts";
import { AFTER_ARROW } from "../syntax/line/line-cuts.ts";
import { type LineKind, LineReader } from "../syntax/line/line-reader.ts";
import { lineRead } from "../syntax/line/parse-line.ts";
import type { PartContext } from "../syntax/line/parts.ts";
import { BoundedMemo } from "../syntax/words/bounded-memo.ts";
import { type DayNumber, parseIsoDate, weekday } from "./calendar.ts";
import { DayCarry } from "./day-carry.ts";
import { DaySkeleton } from "./day-skeleton.ts";
import { formOfEntry, formOfRemark, type PlanForm } from "./plan-form.ts";
import { openHeading } from "./read-block.ts";
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
  day(date: DayNumber, start: number, end: number, minutes: number | undefined): void;
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

/** By the line of a day. */
export type KnownTitles = ReadonlyMap<number, readonly TitleMatch[]>;

/** What a line does to its day. */
interface LineEffect {
  kind: LineKind;
  /** The line, where it was read as a whole. */
  whole: Line | undefined;
  minutes: number | undefined;
  /** Of an entry: it has an outcome or was done. */
  counted: boolean;
  /** Of an entry or a remark: what it tells of itself below `plan`. */
  form: PlanForm | undefined;
  phase: string | undefined;
}

/** So many lines make a day long enough that an edit should not have all of it looked at again. */
export const LONG_DAY = 100;

/** A day of very many lines as it was gone over, so that an edit costs what its lines cost. */
export interface LongDay {
  readonly lines: readonly string[];
  readonly effects: readonly LineEffect[];
  readonly skeleton: DaySkeleton;
  /** The lines that were shown: from one up to another. Those behind stood so many lines further up. */
  readonly from: number;
  readonly to: number;
  readonly shift: number;
}

/**
 * Goes over days, a line at a time: what its lines open is kept in a skeleton, and what they say is shown to whoever
 * looks on. It lasts as long as the words that it was made for.
 */
export class DayWalk {
  private readonly reader: LineReader;
  private readonly whole = new BoundedMemo<Line>(MOST_BYTES, () => LINE_BYTES);
  private readonly place = { line: 0, planned: false };
  private readonly carry: DayCarry;
  private readonly effect: LineEffect = {
    kind: "blank",
    whole: undefined,
    minutes: undefined,
    counted: false,
    form: undefined,
    phase: undefined,
  };
  /** Of the day line that was read last. */
  private date = 0;
  /** On the line that is read. */
  private titles: readonly TitleMatch[] | undefined;

  constructor(private readonly context: PartContext) {
    this.reader = new LineReader(context.vocabulary, context.memo.table);
    this.carry = new DayCarry(context, (text) => this.readByItself(text));
  }

  /**
   * Goes down a day, from its day line to its end.
   *
   * @param titles those that its lines name and that are known by then
   */
  go({ text }: Block, visitors: readonly DayVisitor[], titles?: KnownTitles): DaySkeleton {
    const skeleton = this.begin(visitors);
    eachLine(text, (from, to, line) => {
      this.titles = titles?.get(line);
      this.takeLine(skeleton, text, from, to, line, visitors);
    });
    this.titles = undefined;
    return skeleton;
  }

  /** The same, of which the lines that stood in an earlier state of the day are not shown again. */
  goAgain({ lines }: Block, before: LongDay | undefined, visitors: readonly DayVisitor[]): LongDay {
    const skeleton = this.begin(visitors);
    const { from, to: changed, shift } = changedLines(before?.lines ?? [], lines);
    let to = lastFollowing(before?.effects ?? [], changed - shift) + shift;
    const effects = lines.map((text, i): LineEffect => {
      const known =
        i < from
          ? before!.effects[i]
          : i >= to && !(i === to && this.carry.isOpen)
            ? before!.effects[i - shift]
            : undefined;
      if (!known) {
        to = Math.max(to, i + 1); // what a line above opens now goes on here
        return { ...this.takeLine(skeleton, text, 0, text.length, i, visitors) };
      }
      this.passed(known, text);
      applied(skeleton, known, i);
      return known;
    });
    return { lines, effects, skeleton, from, to, shift };
  }

  private begin(visitors: readonly DayVisitor[]): DaySkeleton {
    const skeleton = new DaySkeleton();
    this.carry.begin();
    for (const visitor of visitors) visitor.begin(skeleton);
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
  ): LineEffect {
    const { place } = this;
    const effect = this.effectOf(text, from, to);
    place.line = line;
    place.planned = applied(skeleton, effect, line);
    for (let i = 0; i < visitors.length; i++) this.show(effect, text, from, to, visitors[i]!);
    return effect;
  }

  private show(
    { kind, whole, minutes }: LineEffect,
    text: string,
    from: number,
    to: number,
    visitor: DayVisitor,
  ): void {
    const { reader, place } = this;
    if (kind === "entry" && !whole) visitor.entry(reader, text, from, to, place);
    else if (kind === "day" && !whole) visitor.day(this.date, reader.dateStart - from, reader.start - from, minutes);
    else if (whole) visitor.line(whole, text.slice(from, to), place);
  }

  /** What a line does to its day; the object is used again for the next line. */
  private effectOf(text: string, from: number, to: number): LineEffect {
    const { reader, effect } = this;
    const kind = reader.read(text, from, to);
    effect.kind = kind;
    effect.whole = undefined;
    effect.minutes = undefined;
    effect.counted = false;
    effect.form = undefined;
    effect.phase = undefined;
    if (kind === "blank" || kind === "phase") this.carry.end();
    if (kind === "remark") effect.form = formOfRemark(remarkText(text.slice(from, to), reader.start - from));
    if (kind === "blank" || kind === "remark") return effect;
    if (kind === "phase") {
      effect.phase = reader.pieces[0]!.phase!;
      effect.minutes = reader.minutes;
    } else if (kind === "entry" && !reader.tangled && !this.carry.isOpen) {
      this.carry.pass(text, from, to);
      effect.minutes = reader.minutes;
      effect.counted = reader.counted;
      effect.form = formOfEntry(text.slice(reader.start, reader.contentEnd()));
    } else if (kind !== "day" || !this.takeDay(text)) this.takeWhole(text.slice(from, to));
    return effect;
  }

  /** The same of a line that needs not be looked at again. */
  private passed({ kind, whole }: LineEffect, text: string): void {
    if (whole) this.carry.read(whole, text);
    else if (kind === "entry") this.carry.pass(text, 0, text.length);
    else if (kind !== "remark") this.carry.end();
  }

  private takeWhole(text: string): void {
    const { effect } = this;
    const whole = this.carry.read(this.lineRead(text), text);
    effect.kind = whole.type;
    effect.whole = whole;
    if (whole.type !== "entry") return;
    const { minutes, counted } = entryCount(whole);
    effect.minutes = minutes;
    effect.counted = counted;
    effect.form = formOfEntry(text.slice(whole.start, whole.remark?.start));
  }

  /** A day line in which nothing can be at fault; false for any other. */
  private takeDay(text: string): boolean {
    const { cuts, pieces, dateStart, start } = this.reader;
    const date = parseIsoDate(text.slice(dateStart, start));
    if (date === undefined) return false;
    let minutes: number | undefined;
    for (let i = 0; i < cuts.count; i++) {
      const [item, more] = pieces[i]!.items();
      if (!item) continue;
      const { meaning } = item;
      const isOwnWeekday = i === 0 && meaning.type === "weekday" && meaning.day === weekday(date);
      const isMinutes = i > 0 && minutes === undefined && meaning.type === "amount" && meaning.possible;
      if (more || cuts.after[i] === AFTER_ARROW || !(isOwnWeekday || isMinutes)) return false;
      if (isMinutes) minutes = this.reader.minutesAt(i);
      if (minutes === 0) return false;
    }
    this.date = date;
    this.effect.minutes = minutes;
    return true;
  }

  /** An entry above that needed no titles, read when a line goes on with it. */
  private readByItself(text: string): Line {
    const { titles } = this;
    this.titles = undefined;
    this.reader.read(text, 0, text.length);
    const line = this.lineRead(text);
    this.titles = titles;
    return line;
  }

  /** The line that the reader has just read, as a whole: one whose pieces bear on each other is kept by its text. */
  private lineRead(text: string): Line {
    const { reader, context, titles } = this;
    if (titles) return lineRead(reader, text, { ...context, head: false, titles });
    const read = (own: string): Line => lineRead(reader, own, { ...context, head: false });
    return reader.kind === "entry" || reader.kind === "open" ? this.whole.of(text, read) : read(text);
  }
}

/** One past the last line, from one on, that is read as it is for what stands above it. */
function lastFollowing(effects: readonly LineEffect[], from: number): number {
  return Math.max(from, 1 + effects.findLastIndex(({ whole }) => whole?.follows));
}

/** Puts a line into the skeleton of its day; whether it is an entry that is planned. */
function applied(skeleton: DaySkeleton, effect: LineEffect, line: number): boolean {
  const { kind, whole, form } = effect;
  if (form === "end") skeleton.endPlan(line);
  if (kind === "entry") return skeleton.addEntry(line, effect);
  if (whole) openHeading(skeleton, whole, line);
  else if (kind === "phase") skeleton.openPhase(line, effect.phase!, effect.minutes, false);
  else if (kind === "day") skeleton.openDay(line, effect.minutes, false, false);
  return false;
}

/** Which lines of a text are others than before, and by how much those behind them moved. */
function changedLines(before: readonly string[], now: readonly string[]): Pick<LongDay, "from" | "to" | "shift"> {
  const shorter = Math.min(before.length, now.length);
  let from = 0;
  while (from < shorter && before[from] === now[from]) from++;
  let same = 0;
  while (same < shorter - from && before[before.length - 1 - same] === now[now.length - 1 - same]) same++;
  return { from, to: now.length - same, shift: now.length - before.length };
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
