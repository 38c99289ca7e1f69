import type { Journal } from "../../journal/journal.ts";
import type { BlockModel, Entry, Sitting } from "../../journal/model.ts";
import { subjectText } from "../../journal/subject-text.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import type { Block } from "../../syntax/document/document.ts";
import { dateWord } from "../../syntax/line/day-line.ts";
import { type DeclarationLine, type LineOf, sortOf } from "../../syntax/line/line.ts";
import { plainText } from "../../syntax/words/plain-text.ts";
import { tokenise } from "../../syntax/words/token.ts";
import { lastLineOf } from "../explain/dated-days.ts";
import { endOfLine, type Section, sectionsOf } from "../explain/sections.ts";
import type { DocumentSymbol, Range } from "../types.ts";
import { latestBlocks } from "./latest-days.ts";
import { outlineTexts } from "./outline-texts.ts";

/**
 * The outline of a file: days with their sessions, phases and entries, each inside the one that it stands in, and
 * declarations where they stand; of a long file, days before the latest by themselves (`latestBlocks`). A range goes to
 * the last line that is not blank and covers all children.
 */
export function documentSymbols(journal: Journal, uri: string): readonly DocumentSymbol[] {
  const document = journal.files.get(uri);
  if (!document) return [];
  const latest = latestBlocks(uri, document);
  return document.blocks.flatMap((block, i) => {
    const firstLine = document.starts[i]!;
    return latest.has(i) || !block.day ? blockSymbols(journal, block, firstLine) : [dayAlone(block, firstLine)];
  });
}

/**
 * A day without what it holds, so that its lines need not be read: its name is all that stands before a comma or a
 * remark.
 */
function dayAlone(block: Block, firstLine: number): DocumentSymbol {
  const [line] = block.lines;
  const { start } = dateWord(line!)!;
  const [name] = /^(?:(?!,|--).)*/s.exec(line!.slice(start).trimEnd())!;
  const end = start + name.trimEnd().length;
  const lastLine = lastLineOf(block);
  return {
    name: shown(line!.slice(start, end)),
    kind: "day",
    range: {
      start: { line: firstLine, character: start },
      end: { line: firstLine + lastLine, character: endOfLine(block, lastLine) },
    },
    selection: { start: { line: firstLine, character: start }, end: { line: firstLine, character: end } },
    children: [],
  };
}

/** Kept on the model of the block as long as it stands on the same lines. */
function blockSymbols(journal: Journal, block: Block, firstLine: number): readonly DocumentSymbol[] {
  const model = journal.modelAtHand(block);
  return journal.memo.from(model, "symbols", [firstLine], () =>
    new Outline(block, model, firstLine, journal.names).symbols(),
  );
}

/** The symbols of one block. */
class Outline {
  constructor(
    private readonly block: Block,
    private readonly model: BlockModel,
    private readonly firstLine: number,
    private readonly names: NoteNames,
  ) {}

  symbols(): readonly DocumentSymbol[] {
    return nested([
      ...sectionsOf(this.model.lines.map(({ type }) => sortOf(type))).map((section) => this.section(section)),
      ...this.entries(),
      ...this.declarations(),
    ]);
  }

  private section({ kind, line, lastLine }: Section): DocumentSymbol {
    const read = this.model.lines[line] as LineOf<Section["kind"]>;
    const start = read.type === "day" ? read.dateEnd - read.date.length : read.start;
    const name = this.nameOf(read);
    return {
      name: this.typed(line, name.start, name.end),
      ...detailed(minutesText(this.minutesAt(line))),
      kind,
      range: this.range(line, start, lastLine),
      selection: this.stretch(line, name.start, name.end),
      children: [],
    };
  }

  /** The date and its weekday; the time of a session; the word of a phase. */
  private nameOf(line: LineOf<Section["kind"]>): { readonly start: number; readonly end: number } {
    if (line.type === "day") {
      const weekday = line.items[0]?.meaning.type === "weekday" ? line.items[0] : undefined;
      return { start: line.dateEnd - line.date.length, end: weekday?.end ?? line.dateEnd };
    }
    const clock = line.type === "session" && line.items[1]?.meaning.type === "clock" ? line.items[1] : undefined;
    return { start: line.items[0]!.start, end: (clock ?? line.items[0]!).end };
  }

  private minutesAt(line: number): number | undefined {
    const framed: readonly Pick<Sitting, "line" | "minutes">[] = [...this.model.phases, ...this.model.sittings];
    return framed.find((each) => each.line === line && each.minutes !== undefined)?.minutes;
  }

  private entries(): DocumentSymbol[] {
    return this.model.entries.map((entry) => {
      const { line, start, end } = entry.place;
      const { subject } = entry.source;
      const name = subject ?? { start, end };
      return {
        name: this.meantBy(entry) ?? this.typed(line, name.start, name.end),
        ...detailed(patternText(entry)),
        kind: "entry",
        range: this.range(line, start, line + this.remarksBelow(line)),
        selection: this.stretch(line, name.start, name.end),
        children: [],
      };
    });
  }

  /** What `same` stands for. */
  private meantBy({ source, subject }: Entry): string | undefined {
    return source.same && subject ? subjectText(subject, this.names) : undefined;
  }

  /** How many lines of remarks stand right under an entry: they belong to it. */
  private remarksBelow(line: number): number {
    let count = 0;
    while (this.model.lines[line + 1 + count]?.type === "remark") count++;
    return count;
  }

  private declarations(): DocumentSymbol[] {
    return this.model.declarations.map(({ line, declaration }) => {
      const name = this.declaredName(line, declaration.line);
      return {
        name: name.text,
        ...detailed(name.start > declaration.line.start ? declaration.line.word : undefined),
        kind: "declaration",
        range: this.range(line, declaration.line.start, line),
        selection: this.stretch(line, name.start, name.end),
        children: [],
      };
    });
  }

  /** The name in quotes, or all that is said; the word itself where nothing is. */
  private declaredName(
    line: number,
    { start, wordEnd, end }: DeclarationLine,
  ): { readonly start: number; readonly end: number; readonly text: string } {
    const first = tokenise(this.block.lines[line]!.slice(wordEnd, end), wordEnd)[0];
    if (first?.quote?.closed && first.text.trim())
      return { start: first.start, end: first.end, text: shown(first.text) };
    const name = first ? { start: first.start, end } : { start, end: wordEnd };
    return { ...name, text: this.typed(line, name.start, name.end) };
  }

  /** Words as they are shown. */
  private typed(line: number, start: number, end: number): string {
    return shown(this.block.lines[line]!.slice(start, end));
  }

  private range(line: number, start: number, lastLine: number): Range {
    return {
      start: { line: this.firstLine + line, character: start },
      end: { line: this.firstLine + lastLine, character: endOfLine(this.block, lastLine) },
    };
  }

  private stretch(line: number, start: number, end: number): Range {
    const at = this.firstLine + line;
    return { start: { line: at, character: start }, end: { line: at, character: end } };
  }
}

/** As typed, with single spaces, and without what would steer how the outline is written; a name is never empty. */
function shown(words: string): string {
  return plainText(words.replace(/\s+/g, " ")).trim() || "…";
}

function detailed(detail: string | undefined): { readonly detail?: string } {
  return detail === undefined ? {} : { detail };
}

function minutesText(minutes: number | undefined): string | undefined {
  return minutes === undefined ? undefined : `${minutes} min`;
}

function patternText({ pattern }: Entry): string | undefined {
  if (pattern?.type === "declared") return shown(pattern.name);
  return pattern && outlineTexts.pattern(pattern.id, pattern.variant);
}

/** Symbols of one block, each put into the innermost one that covers it. */
function nested(symbols: readonly DocumentSymbol[]): readonly DocumentSymbol[] {
  const top: DocumentSymbol[] = [];
  const open: { readonly symbol: DocumentSymbol; readonly children: DocumentSymbol[] }[] = [];
  const byLine = [...symbols].sort((a, b) => a.range.start.line - b.range.start.line);
  for (const each of byLine) {
    while (open.length && open.at(-1)!.symbol.range.end.line < each.range.start.line) open.pop();
    const children: DocumentSymbol[] = [];
    const symbol = { ...each, children };
    (open.at(-1)?.children ?? top).push(symbol);
    if (each.kind !== "entry" && each.kind !== "declaration") open.push({ symbol, children });
  }
  return top;
}
