import type { Journal } from "../../journal/journal.ts";
import { type Block, blockIndexAt, type Document, lineAt, type Position } from "../../syntax/document/document.ts";
import { cutLine } from "../../syntax/line/cut.ts";
import { type Line, sortOf } from "../../syntax/line/line.ts";
import { tokenise } from "../../syntax/words/token.ts";
import { lineTokens } from "../colours/token-meanings.ts";
import { lastLineOf } from "../explain/dated-days.ts";
import { type DaysTogether, monthsAndYears } from "../explain/months.ts";
import { sectionsOf } from "../explain/sections.ts";
import type { Range } from "../types.ts";

/**
 * What may be selected around each of some positions, from the innermost to the whole file: the word, the term, the
 * piece between commas, what is said on the line, the line, an entry with the remarks below it, the phase, the session,
 * the day, the month and the year where the file has several. Each holds the position and lies within the next, which
 * is larger.
 *
 * @returns for each position a list that is never empty; none at all where there is no such file
 */
export function selectionRanges(
  journal: Journal,
  uri: string,
  positions: readonly Position[],
): readonly (readonly Range[])[] {
  const document = journal.files.get(uri);
  return document ? positions.map((position) => around(journal, document, within(document, position))) : [];
}

/** The nearest place inside of the file. */
function within(document: Document, { line, character }: Position): Position {
  const at = Math.max(0, Math.min(line, document.lineCount - 1));
  return {
    line: at,
    character: line > at ? lineAt(document, at).length : Math.min(character, lineAt(document, at).length),
  };
}

function around(journal: Journal, document: Document, position: Position): readonly Range[] {
  const index = blockIndexAt(document, position.line);
  const block = document.blocks[index]!;
  const first = document.starts[index]!;
  const below = position.line - first;
  const { lines } = journal.modelAtHand(block);
  const onLine = stretchesOf(block.lines[below]!, lines[below]!, position.character, journal).map(
    ({ start, end }): Range => ({
      start: { line: position.line, character: start },
      end: { line: position.line, character: end },
    }),
  );
  const together = linesTogether(lines, below).map((each) => linesOf(block, first, each));
  const days = daysTogether(journal, document, index).map((each) => daysOf(document, each));
  return nested([...onLine, ...together, ...days, wholeOf(document)], position);
}

/** Columns of one line, the end excluded. */
interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** The shortest first. */
function stretchesOf(text: string, line: Line, character: number, { vocabulary }: Journal): readonly Stretch[] {
  const begin = text.length - text.replace(/^[\s\uFEFF]+/, "").length;
  const body = line.remark?.start ?? text.trimEnd().length;
  const { cuts } = cutLine(text.slice(0, body), line.type === "day" ? line.dateEnd : Math.min(begin, body));
  const stretches: Stretch[] = [
    ...wordsOf(text),
    ...termsOf(line),
    ...lineTokens(text, line, vocabulary),
    ...cuts,
    { start: begin, end: text.slice(0, body).trimEnd().length },
    ...(line.remark ? [{ start: line.remark.start, end: text.trimEnd().length }] : []),
    { start: begin, end: text.trimEnd().length },
    { start: 0, end: text.length },
  ];
  const holding = stretches.filter(({ start, end }) => start < end && start <= character && character <= end);
  return holding.sort((a, b) => a.end - a.start - (b.end - b.start) || b.start - a.start);
}

/** The words of a line; those in quotes too. */
function wordsOf(text: string): readonly Stretch[] {
  return tokenise(text).flatMap(({ start, end, text: quoted, quote }) =>
    quote ? wordsOf(quoted).map((word) => moved(word, start + 1)) : trimmed(text, { start, end }),
  );
}

function moved({ start, end }: Stretch, by: number): Stretch {
  return { start: start + by, end: end + by };
}

/** Without the signs of the language around a word: `thirds` of `thirds,`; `Bb>C` is two words. */
function trimmed(text: string, { start, end }: Stretch): readonly Stretch[] {
  return [...text.slice(start, end).matchAll(/[^,:>→]+/g)].map(({ 0: word, index }) => ({
    start: start + index,
    end: start + index + word.length,
  }));
}

function termsOf(line: Line): readonly Stretch[] {
  if (!("items" in line)) return [];
  if (line.type !== "entry") return line.items;
  const notes = line.claims.flatMap((claim) => (claim.type === "notes" ? claim.notes : []));
  return [...line.items, ...(line.subject ? [line.subject] : []), ...line.claims, ...notes];
}

/** Lines of a block, the last one included. */
interface Lines {
  readonly from: number;
  readonly to: number;
}

/** An entry with its remarks, then the phase, the session and the day that a line stands in. */
function linesTogether(lines: readonly Line[], at: number): readonly Lines[] {
  const sections = sectionsOf(lines.map(({ type }) => sortOf(type)))
    .filter(({ line, lastLine }) => line <= at && at <= lastLine)
    .map(({ line, lastLine }) => ({ from: line, to: lastLine }))
    .reverse();
  return [...entryWithRemarks(lines, at), ...sections];
}

function entryWithRemarks(lines: readonly Line[], at: number): readonly Lines[] {
  let from = at;
  while (lines[from]?.type === "remark") from--;
  if (lines[from]?.type !== "entry") return [];
  let to = from;
  while (lines[to + 1]?.type === "remark") to++;
  return [{ from, to }];
}

/** The month and the year that a block lies in, each only where the file has several. */
function daysTogether(journal: Journal, document: Document, index: number): readonly DaysTogether[] {
  const { months, years } = journal.memo.of(document, "months and years", () => monthsAndYears(document));
  return [months, years].flatMap((each) =>
    each.length > 1 ? each.filter(({ first, last }) => first <= index && index <= last) : [],
  );
}

function linesOf({ lines }: Block, first: number, { from, to }: Lines): Range {
  return {
    start: { line: first + from, character: 0 },
    end: { line: first + to, character: lines[to]!.length },
  };
}

function daysOf({ blocks, starts }: Document, { first, last }: DaysTogether): Range {
  const block = blocks[last]!;
  const line = lastLineOf(block);
  return {
    start: { line: starts[first]!, character: 0 },
    end: { line: starts[last]! + line, character: block.lines[line]!.length },
  };
}

function wholeOf({ blocks, lineCount }: Document): Range {
  return {
    start: { line: 0, character: 0 },
    end: { line: lineCount - 1, character: blocks.at(-1)!.lines.at(-1)!.length },
  };
}

/** Those that hold the position, without what does not lie within the next larger ones. */
function nested(ranges: readonly Range[], position: Position): readonly Range[] {
  const whole = ranges.at(-1)!;
  const kept: Range[] = [];
  for (const range of ranges) {
    const inner = kept.at(-1);
    const isLarger = !inner || (holds(range, inner.start) && holds(range, inner.end) && !isSame(range, inner));
    if (holds(range, position) && isLarger) kept.push(range);
  }
  return kept.length > 0 ? kept : [whole];
}

function holds({ start, end }: Range, position: Position): boolean {
  return compare(start, position) <= 0 && compare(position, end) <= 0;
}

function isSame(a: Range, b: Range): boolean {
  return compare(a.start, b.start) === 0 && compare(a.end, b.end) === 0;
}

function compare(a: Position, b: Position): number {
  return a.line - b.line || a.character - b.character;
}
