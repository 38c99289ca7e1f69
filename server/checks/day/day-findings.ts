import { type DayNumber, parseIsoDate } from "../../journal/calendar.ts";
import type { Conventions } from "../../journal/conventions.ts";
import type { DaySkeleton } from "../../journal/day-skeleton.ts";
import { type DayVisitor, type DayWalk, type LinePlace, LONG_DAY, type LongDay } from "../../journal/day-walk.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Block } from "../../syntax/document/document.ts";
import type { Line } from "../../syntax/line/line.ts";
import type { LineReader } from "../../syntax/line/line-reader.ts";
import { parseLine } from "../../syntax/line/parse-line.ts";
import type { PartContext } from "../../syntax/line/parts.ts";
import type { Item } from "../../syntax/words/meaning.ts";
import type { LineFinding } from "../context.ts";
import type { DatedDay } from "../file/journal-order.ts";
import type { Finding, Stretch } from "../finding.ts";
import { EntryFindings } from "../line/entry-findings.ts";
import { checkLine } from "../line/line.ts";
import { checkDayMinutes } from "./day-minutes.ts";

/** Everything that a block shows by itself: a day's own findings do not depend on other days. */
export interface BlockFindings {
  readonly findings: readonly LineFinding[];
  readonly day?: DatedDay;
  /** A declaration stands in it. */
  readonly declares: boolean;
}

const NONE: readonly LineFinding[] = [];

/** The checks of days by some conventions, made once for them. */
export function dayFindings(journal: Journal, conventions: Conventions): DayFindings {
  return journal.memo.of(
    conventions,
    "day findings",
    () => new DayFindings(journal.partContext, conventions, journal.dayWalk),
  );
}

/**
 * Runs the checks of single lines and of days over whole blocks. It lasts as long as the words and the conventions that
 * it was made for.
 */
export class DayFindings implements DayVisitor {
  private readonly entries: EntryFindings;
  /** Of lines that were read as a whole: equal ones are one object while that is kept. */
  private readonly whole = new WeakMap<Line, readonly Finding[]>();
  private found: LineFinding[] = [];
  private dated: DatedDay | undefined;
  private declares = false;
  /** The long day that was gone over last, without what its minutes come to. */
  private long:
    | { readonly day: LongDay; readonly found: readonly LineFinding[]; readonly dated?: DatedDay }
    | undefined;

  constructor(
    private readonly context: PartContext,
    private readonly conventions: Conventions,
    private readonly walk: DayWalk,
  ) {
    this.entries = new EntryFindings(context, conventions);
  }

  /** @param others who look at the lines of a day as well, so that they are read once for all */
  of(block: Block, others: readonly DayVisitor[] = []): BlockFindings {
    this.begin();
    const visitors = others.length ? [this, ...others] : [this];
    if (!block.day) this.takeHead(block);
    else if (block.lineCount > LONG_DAY && others.length === 0) this.takeLongDay(block);
    else this.takeMinutes(this.walk.go(block, visitors), block);
    return { findings: this.found.length ? this.found : NONE, day: this.dated, declares: this.declares };
  }

  begin(): void {
    this.found = [];
    this.dated = undefined;
    this.declares = false;
  }

  day(date: DayNumber, start: number, end: number): void {
    this.dated = { date, place: { start, end }, planned: false };
  }

  entry(reader: LineReader, text: string, from: number, to: number, { line }: LinePlace): void {
    const found = this.entries.of(reader, text, from, to);
    if (found.length > 0) this.add(found, line);
  }

  line(read: Line, text: string, { line }: LinePlace): void {
    this.add(this.checkedOnce(read, text), line);
    if (read.type === "declaration") this.declares = true;
    else if (read.type === "day" && line === 0) this.dated = datedBy(read);
  }

  /** A day of very many lines: only those that are others than before are looked at. */
  private takeLongDay(block: Block): void {
    const before = this.long;
    const day = this.walk.goAgain(block, before?.day, [this]);
    const { from, to, shift, effects } = day;
    const own = this.found;
    if (before) {
      const above = before.found.filter(({ line }) => line < from);
      const below = before.found.filter(({ line }) => line >= to - shift);
      const moved = shift === 0 ? below : below.map((each) => ({ ...each, line: each.line + shift }));
      this.found = [...above, ...own, ...moved];
      if (from > 0) this.dated = before.dated;
    }
    this.declares = effects.some(({ kind }) => kind === "declaration");
    this.long = { day, found: this.found, dated: this.dated };
    this.found = [...this.found];
    this.takeMinutes(day.skeleton, block);
  }

  /** Of lines without a day above them the first is marked: one date is missing, however many lines wait for it. */
  private takeHead({ lines }: Block): void {
    let isMarked = false;
    for (const [line, text] of lines.entries()) {
      const read = parseLine(text, { ...this.context, head: true });
      const found = this.checked(read, text, true);
      this.add(isMarked ? found.filter(({ code }) => code !== "no-day") : found, line);
      isMarked ||= found.some(({ code }) => code === "no-day");
      if (read.type === "declaration") this.declares = true;
    }
  }

  private takeMinutes(skeleton: DaySkeleton, block: Block): void {
    if (this.dated && skeleton.allPlanned) this.dated = { ...this.dated, planned: true };
    const minutes = checkDayMinutes(skeleton);
    for (const { line, at } of minutes) this.add([at(this.amountOn(block.lines[line]!))], line);
    if (minutes.length) this.found.sort((a, b) => a.line - b.line || a.start - b.start || a.end - b.end);
  }

  private add(found: readonly Finding[], line: number): void {
    for (const each of found) this.found.push({ ...each, line });
  }

  private checkedOnce(line: Line, text: string): readonly Finding[] {
    const known = this.whole.get(line);
    if (known) return known;
    const found = this.checked(line, text, false);
    this.whole.set(line, found);
    return found;
  }

  private checked(line: Line, text: string, head: boolean): readonly Finding[] {
    return checkLine(line, { ...this.context, conventions: this.conventions, text, head });
  }

  private amountOn(text: string): Stretch {
    const line = parseLine(text, { ...this.context, head: false });
    const items = "items" in line ? (line.items as readonly Item[]) : [];
    return items.find(({ meaning }) => meaning.type === "amount") ?? { start: 0, end: text.length };
  }
}

function datedBy(line: Extract<Line, { readonly type: "day" }>): DatedDay | undefined {
  const date = parseIsoDate(line.date);
  return date === undefined ? undefined : { date, place: { start: line.start, end: line.dateEnd }, planned: false };
}
