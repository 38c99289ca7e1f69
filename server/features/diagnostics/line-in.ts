import type { FindingFix } from "../../checks/finding.ts";
import { attemptsOf } from "../../journal/conditions.ts";
import { declaredNamesIn, gathered } from "../../journal/declarations/declared-names.ts";
import type { Journal } from "../../journal/journal.ts";
import { blockIndexAt, createDocument, type Document } from "../../syntax/document/document.ts";
import type { TitleMatch } from "../../syntax/line/known-title.ts";
import type { EntryLine, Line } from "../../syntax/line/line.ts";
import { LineReader, LONGEST_LINE } from "../../syntax/line/line-reader.ts";
import { parseLine } from "../../syntax/line/parse-line.ts";
import type { Item } from "../../syntax/words/meaning.ts";
import type { CodeAction, Range } from "../types.ts";
import { placedFix } from "./placed-fix.ts";

/** A line below a day, as it reads by itself: so other words in its place can be read as it is. */
export interface LineIn {
  readonly journal: Journal;
  readonly document: Document;
  /** From 0, within the file. */
  readonly at: number;
  readonly text: string;
  readonly line: Line;
  /** What it may name of what days before have. */
  readonly titles: readonly TitleMatch[] | undefined;
}

export type EntryIn = LineIn & { readonly line: EntryLine };

/** Undefined for several lines, for one above the first day, and for one that is read for what stands above it. */
export function lineIn(journal: Journal, uri: string, { start, end }: Range): LineIn | undefined {
  const document = journal.files.get(uri);
  const at = start.line;
  if (!document || at !== end.line || at < 0 || at >= document.lineCount) return undefined;
  const index = blockIndexAt(document, at);
  const block = document.blocks[index]!;
  const within = at - document.starts[index]!;
  if (!block.day || journal.model(block).lines[within]?.follows) return undefined;
  const place = { journal, titles: journal.titlesOf(block)?.get(within) };
  const text = block.lines[within]!;
  const line = readAs(place, text);
  return line && { ...place, document, at, text, line };
}

/** A line in the place of another, perhaps with one more declaration; undefined where it would be too long. */
export function readAs(
  { journal, titles }: Pick<LineIn, "journal" | "titles">,
  text: string,
  declaration?: string,
): Line | undefined {
  if (text.length > LONGEST_LINE) return undefined;
  if (declaration === undefined) return parseLine(text, { ...journal.partContext, head: false, titles });
  const [head] = createDocument(declaration).blocks;
  const vocabulary = journal.vocabulary.with(gathered(declaredNamesIn(head!)));
  return parseLine(text, { vocabulary, memo: new LineReader(vocabulary), head: false, titles });
}

/** The entry that a fix makes of the line; undefined where it makes none. */
export function entryWith(at: EntryIn, { edits, head }: FindingFix): EntryLine | undefined {
  const text = [...edits]
    .sort((a, b) => b.start - a.start)
    .reduce((before, { start, end, text }) => before.slice(0, start) + text + before.slice(end), at.text);
  const line = readAs(at, text, head);
  return line?.type === "entry" ? line : undefined;
}

/** All that an entry says but for some of its items, and its attempts: two that say the same are equal here. */
export function saidBeside(
  { subject, items, claims, start, end }: EntryLine,
  isLeftOut: (item: Item) => boolean,
): string {
  const others = items.filter((item) => !isLeftOut(item)).map(({ meaning }) => meaning);
  const tempos = attemptsOf(items, 0, { start, end }).map(({ tempo = null }) => tempo);
  return JSON.stringify([subject?.meaning, others, claims.map(({ type }) => type), tempos]);
}

/** A stretch of the line touches a range in it, also at its ends. */
export function touchesRange({ start, end }: Pick<Item, "start" | "end">, range: Range): boolean {
  return range.start.character <= end && start <= range.end.character;
}

/** A fix that mends no diagnostic: it is offered where the cursor is, and nothing is marked. */
export function actionOf(fix: FindingFix, { at, document }: Pick<LineIn, "at" | "document">): CodeAction {
  const { title, edits } = placedFix(fix, at, document);
  return { title, kind: "quickfix", edits, preferred: false, diagnostics: [] };
}
