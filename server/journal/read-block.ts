import { isDayLine } from "../syntax/day-line.ts";
import type { Block } from "../syntax/document.ts";
import type { Line, LineOf } from "../syntax/line.ts";
import type { MeaningOf } from "../syntax/meaning.ts";
import { parseLine } from "../syntax/parse-line.ts";
import { parseIsoDate } from "./calendar.ts";
import { type Declaration, type DeclarationContext, readDeclaration } from "./declaration.ts";
import type { BlockModel, DayFrame, Entry, PhaseFrame } from "./model.ts";
import { readEntry } from "./read-entry.ts";

/** Reads a block: every line, and what the lines say together. Depends on the block and the declared names alone. */
export function readBlock(block: Block, context: DeclarationContext): BlockModel {
  const head = !isDayLine(block.lines[0] ?? "");
  const lines = block.lines.map((text) => parseLine(text, { ...context, head }));
  const reader = new BlockReader(context);
  for (const [i, line] of lines.entries()) reader.take(line, i, block.lines[i]!);
  return reader.model(lines);
}

/** Goes down a block once, and remembers what the lines so far opened. */
class BlockReader {
  private day: DayFrame | undefined;
  private readonly sittings: { line: number; minutes?: number; breaks: number[] }[] = [];
  private readonly phases: PhaseFrame[] = [];
  private readonly entries: { entry: Entry; remarks: string[] }[] = [];
  private readonly declarations: { line: number; declaration: Declaration }[] = [];
  private planned = { day: false, phase: false };
  private lastEntryLine = -1;

  constructor(private readonly context: DeclarationContext) {}

  take(line: Line, index: number, text: string): void {
    if (line.type === "day") this.openDay(line, index);
    else if (line.type === "session") this.openSitting(line, index);
    else if (line.type === "phase") this.openPhase(line, index);
    else if (line.type === "entry") this.takeEntry(line, index);
    else if (line.type === "remark") this.takeRemark(line, index);
    else if (line.type === "break") this.sitting(index).breaks.push(index);
    else if (line.type === "plan") this.planned = { ...this.planned, day: true };
    else if (line.type === "rest" && this.day) this.day = { ...this.day, rest: this.day.rest ?? "" };
    else if (line.type === "declaration")
      this.declarations.push({ line: index, declaration: readDeclaration(text, line, this.context) });
  }

  model(lines: readonly Line[]): BlockModel {
    const entries = this.entries.map(({ entry, remarks }) =>
      remarks.length ? { ...entry, remarks: [...entry.remarks, ...remarks] } : entry,
    );
    return {
      lines,
      day: this.day,
      sittings: this.sittings,
      phases: this.phases,
      entries,
      declarations: this.declarations,
    };
  }

  private openDay(line: LineOf<"day">, index: number): void {
    const words = line.items
      .filter((item) => item.meaning.type === "line word")
      .map((item) => (item.meaning as MeaningOf<"line word">).id);
    const planned = words.includes("plan");
    this.planned = { day: planned, phase: false };
    this.day = { date: parseIsoDate(line.date), line, planned, ...(words.includes("rest") ? { rest: "" } : {}) };
    this.sittings.push({ line: index, minutes: minutesOf(line), breaks: [] });
    this.phases.push({ line: index, sitting: 0 });
  }

  private openSitting(line: LineOf<"session">, index: number): void {
    this.sittings.push({ line: index, minutes: minutesOf(line), breaks: [] });
    this.planned = { ...this.planned, phase: false };
    this.phases.push({ line: index, sitting: this.sittings.length - 1 });
  }

  private openPhase(line: LineOf<"phase">, index: number): void {
    this.sitting(index);
    const phase = (line.items[0]!.meaning as MeaningOf<"phase">).id;
    const planned = line.items.some((item) => item.meaning.type === "line word" && item.meaning.id === "plan");
    this.planned = { ...this.planned, phase: planned };
    this.phases.push({ phase, line: index, minutes: minutesOf(line), sitting: this.sittings.length - 1 });
  }

  private takeEntry(line: LineOf<"entry">, index: number): void {
    this.sitting(index);
    const stretch = this.phases.length - 1;
    const frame = {
      line: index,
      stretch,
      phase: this.phases[stretch]?.phase,
      planned: this.planned.day || this.planned.phase,
    };
    this.entries.push({ entry: readEntry(line, frame, this.context.vocabulary), remarks: [] });
    this.lastEntryLine = index;
  }

  /** A remark right under an entry, or under such a remark, belongs to that entry. */
  private takeRemark(line: LineOf<"remark">, index: number): void {
    const entry = this.entries.at(-1);
    if (!entry || index !== this.lastEntryLine + 1 + entry.remarks.length || !line.remark) return;
    entry.remarks.push(line.remark.text);
  }

  /** The open sitting; a head has one too, so that stray entries are read all the same. */
  private sitting(index: number): { line: number; minutes?: number; breaks: number[] } {
    if (!this.sittings.length) {
      this.sittings.push({ line: index, breaks: [] });
      this.phases.push({ line: index, sitting: 0 });
    }
    return this.sittings.at(-1)!;
  }
}

function minutesOf(line: LineOf<"day" | "session" | "phase">): number | undefined {
  const amount = line.items.find((item) => item.meaning.type === "amount")?.meaning as MeaningOf<"amount"> | undefined;
  return amount?.possible ? amount.minutes : undefined;
}
