import type { Block } from "../syntax/document/document.ts";
import type { TitleMatch } from "../syntax/line/known-title.ts";
import type { Line, LineOf } from "../syntax/line/line.ts";
import { parseLine } from "../syntax/line/parse-line.ts";
import type { MeaningOf } from "../syntax/words/meaning.ts";
import { parseIsoDate } from "./calendar.ts";
import { DayCarry } from "./day-carry.ts";
import { DaySkeleton } from "./day-skeleton.ts";
import { readDeclaration } from "./declarations/declaration.ts";
import type { Declaration, DeclarationContext } from "./declarations/declared.ts";
import type { BlockModel, DayFrame, Entry, Soreness } from "./model.ts";
import { endsPlan, formOfEntry } from "./plan-form.ts";
import { isPlanRemark } from "./plan-remark.ts";
import { entryCount, ownRemarks, readEntry } from "./read-entry.ts";

/**
 * Reads a block: every line, and what the lines say together. Depends on the block and the declared names alone.
 *
 * @param before an earlier state of the same day, by the same names: its lines need not be read again
 */
export function readBlock(block: Block, context: DeclarationContext, before?: ReadBlock): BlockModel {
  const earlier = block.day ? before : undefined;
  const lines = [...readLines(block, context, earlier && linesByText(earlier))];
  const reader = new BlockReader(context, earlier && entriesByLine(earlier.model));
  for (const [i, line] of lines.entries()) reader.take(line, i, block.lines[i]!);
  return reader.model(lines);
}

/**
 * The lines of a block one by one, for whoever needs each of them once: those of a long day are many times its text.
 *
 * @param known lines that were read before, by their text
 */
export function* readLines(
  block: Block,
  context: DeclarationContext,
  known?: ReadonlyMap<string, Line>,
): Generator<Line, void, undefined> {
  const head = !block.day;
  const byItself = (text: string): Line => parseLine(text, { ...context, head });
  const carry = head ? undefined : new DayCarry(context, byItself);
  for (const text of block.lines) {
    const line = known?.get(text) ?? byItself(text);
    yield carry?.read(line, text) ?? line;
  }
}

/** The same model, with the lines read anew that name a title which the journal knows by then. */
export function withTitles(
  { block, model }: ReadBlock,
  titles: ReadonlyMap<number, readonly TitleMatch[]>,
  context: DeclarationContext,
): BlockModel {
  const lines = model.lines.map((line, i) =>
    titles.has(i) ? parseLine(block.lines[i]!, { ...context, head: false, titles: titles.get(i) }) : line,
  );
  const reader = new BlockReader(context, entriesByLine(model));
  for (const [i, line] of lines.entries()) reader.take(line, i, block.lines[i]!);
  return reader.model(lines);
}

interface ReadBlock {
  readonly block: Block;
  readonly model: BlockModel;
}

/** Those that are read the same wherever they stand. */
function linesByText({ block, model }: ReadBlock): ReadonlyMap<string, Line> {
  const lines = new Map<string, Line>();
  for (const [i, text] of block.lines.entries()) if (!model.lines[i]!.follows) lines.set(text, model.lines[i]!);
  return lines;
}

function entriesByLine({ entries }: BlockModel): ReadonlyMap<number, Entry> {
  return new Map(entries.map((entry) => [entry.place.line, entry]));
}

/** Puts a line that stands above others into the skeleton of its day; other lines leave it as it is. */
export function openHeading(skeleton: DaySkeleton, line: Line, index: number): void {
  if (line.type === "day") {
    skeleton.openDay(index, minutesOf(line), says(line, "plan"), says(line, "rest"));
    if (isLessonDay(line) && !says(line, "rest")) skeleton.openPhase(index, "lesson", undefined, false);
  }
  if (line.type === "session") skeleton.openSitting(index, minutesOf(line));
  else if (line.type === "phase") skeleton.openPhase(index, phaseOf(line), minutesOf(line), says(line, "plan"));
  else if (line.type === "total" && !line.longer) skeleton.addTotal(index, minutesOf(line));
  else if (line.type === "body" && line.total) skeleton.addTotal(index, minutesOf({ items: [line.total] }));
  else if (line.type === "break") skeleton.addBreak(index);
  else if (line.type === "plan") skeleton.planDay();
  else if (line.type === "rest") skeleton.rest = true;
  else if (endsPlan(line)) skeleton.endPlan(index);
}

/** `2026-03-02 lesson, 30 min`: what stands below is a lesson, up to another phase. Not beside words: `no lesson`. */
function isLessonDay({ items }: LineOf<"day">): boolean {
  const isAlone = items.every(({ meaning }) => meaning.type !== "unknown");
  return isAlone && items.some(({ meaning }) => meaning.type === "phase" && meaning.id === "lesson");
}

/** The day that a day line opens. */
export function dayFrame(line: LineOf<"day">, text: string): DayFrame {
  return {
    date: parseIsoDate(line.date),
    line,
    planned: says(line, "plan"),
    ...(says(line, "rest") ? { rest: reasonOf(line, text) } : {}),
  };
}

/** What stands behind `rest`, as typed. */
function reasonOf({ items, end }: LineOf<"day" | "rest">, text: string): string {
  const rest = items.find(({ meaning }) => meaning.type === "line word" && meaning.id === "rest");
  return rest
    ? text
        .slice(rest.end, end)
        .replace(/^[\s,:]+/, "")
        .trim()
    : "";
}

function phaseOf(line: LineOf<"phase">): string {
  return (line.items[0]!.meaning as MeaningOf<"phase">).id;
}

function says(line: LineOf<"day" | "phase">, word: "plan" | "rest"): boolean {
  return line.items.some(({ meaning }) => meaning.type === "line word" && meaning.id === word);
}

function minutesOf(line: Pick<LineOf<"day" | "session" | "phase" | "total">, "items">): number | undefined {
  const amount = line.items.find((item) => item.meaning.type === "amount")?.meaning as MeaningOf<"amount"> | undefined;
  return amount?.possible ? amount.minutes : undefined;
}

/** Goes down a block once, and gives each line its place in what the lines so far opened. */
class BlockReader {
  private readonly skeleton = new DaySkeleton();
  private day: DayFrame | undefined;
  private readonly entries: { entry: Entry; remarks: string[] }[] = [];
  private readonly declarations: { line: number; declaration: Declaration }[] = [];
  private readonly sore: Soreness[] = [];
  /** The last line that belongs to the last entry: its own, or a remark right under it. */
  private lastRemarked = -1;

  constructor(
    private readonly context: DeclarationContext,
    /** Those of an earlier state, by their lines. */
    private readonly before?: ReadonlyMap<number, Entry>,
  ) {}

  take(line: Line, index: number, text: string): void {
    openHeading(this.skeleton, line, index);
    if (line.type === "day") this.day = dayFrame(line, text);
    else if (line.type === "rest" && this.day) this.day = { ...this.day, rest: this.day.rest || reasonOf(line, text) };
    else if (line.type === "entry") this.takeEntry(line, index, text);
    else if (line.type === "body") this.takeBody(line, index, text);
    else if (line.type === "remark") this.takeRemark(line, index);
    else if (line.type === "declaration")
      this.declarations.push({ line: index, declaration: readDeclaration(text, line, this.context) });
  }

  model(lines: readonly Line[]): BlockModel {
    const { sittings, phases } = this.skeleton;
    const entries = this.entries.map(({ entry, remarks }) =>
      remarks.length ? { ...entry, remarks: [...entry.remarks, ...remarks] } : entry,
    );
    return { lines, day: this.day, sittings, phases, entries, sore: this.sore, declarations: this.declarations };
  }

  private takeEntry(line: LineOf<"entry">, index: number, text: string): void {
    const form = formOfEntry(text.slice(line.start, line.remark?.start));
    const planned = this.skeleton.addEntry(index, { ...entryCount(line), form });
    const stretch = this.skeleton.phases.length - 1;
    const { phase } = this.skeleton.phases[stretch]!;
    const before = this.before?.get(index);
    const stands = before?.source === line && before.remarks.length === ownRemarks(line).length;
    const entry = stands ? before : readEntry(line, index, this.context.vocabulary);
    this.entries.push({ entry: { ...entry, planned, stretch, phase }, remarks: [] });
    this.lastRemarked = index;
    for (const { start, end, meaning } of line.items)
      if (meaning.type === "sore") this.sore.push({ place: { line: index, start, end }, words: meaning.words });
  }

  /** Being tired or cold is kept as typed, and is no soreness. */
  private takeBody({ start, end, sore }: LineOf<"body">, line: number, text: string): void {
    if (sore) this.sore.push({ place: { line, start, end }, words: text.slice(start, end) });
  }

  /** A remark right under an entry, or under such a remark, belongs to that entry; the plan's own are none of it. */
  private takeRemark(line: LineOf<"remark">, index: number): void {
    const entry = this.entries.at(-1);
    if (!entry || index !== this.lastRemarked + 1 || !line.remark || endsPlan(line)) return;
    this.lastRemarked = index;
    if (!isPlanRemark(line.remark.text)) entry.remarks.push(line.remark.text);
  }
}
