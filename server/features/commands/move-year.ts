import { orderOf } from "../../checks/file/journal-order.ts";
import { quoted } from "../../checks/finding.ts";
import { civil, type DayNumber, isoDate } from "../../journal/calendar.ts";
import { dayOfBlock } from "../../journal/day-of-block.ts";
import { declarationKey } from "../../journal/declarations/declaration-key.ts";
import { type Journal, MARKER } from "../../journal/journal.ts";
import type { Block, Document } from "../../syntax/document/document.ts";
import { declarationWordAt } from "../../syntax/line/declaration-word.ts";
import { lineEndOf } from "../explain/line-under-cursor.ts";
import { type Refusal, refusal } from "../explain/refusal.ts";
import type { CommandAnswer } from "./command-answer.ts";
import { commandTexts } from "./command-texts.ts";
import { hasMarkers } from "./conflicts.ts";
import { isSeparated, linesReplaced } from "./lines-in-file.ts";

/** A year that is over, and how many of its days a file has. */
export interface YearToMove {
  readonly year: number;
  readonly days: number;
}

/** The years of which a file has days that can move into a file of their own, the first year first. */
export function yearsToMove(journal: Journal, uri: string, today: DayNumber): readonly YearToMove[] {
  const document = journal.files.get(uri);
  if (!document || journal.root === uri) return [];
  const counts = new Map<number, number>();
  for (const { date } of stretchesOf(document)) {
    const year = date === undefined ? undefined : civil(date).year;
    if (year !== undefined && year < civil(today).year && fileOf(uri, year) !== uri)
      counts.set(year, (counts.get(year) ?? 0) + 1);
  }
  return [...counts].map(([year, days]) => ({ year, days })).sort((a, b) => a.year - b.year);
}

/**
 * Moves the days of a year that is over out of a file into `YEAR.practice` beside it, in their order; where that file
 * is there, among its days, if it has none of the same date. What is declared above the days stays, but for a note
 * value, which holds for one file alone and so goes along. The new file is shown.
 */
export function moveYear(
  journal: Journal,
  uri: string,
  { today, year }: { readonly today: DayNumber; readonly year: number | undefined },
): CommandAnswer {
  const document = journal.files.get(uri);
  if (!document || journal.root === uri) return ALONE;
  const years = yearsToMove(journal, uri, today);
  if (years.length === 0) return NO_YEAR;
  if (year === undefined || !years.some((each) => each.year === year)) return refusal(notThere(year));
  const moved = stretchesOf(document).filter((each) => each.date !== undefined && civil(each.date).year === year);
  if (hasMarkers(document)) return CONFLICT;
  const twice = declaredTwice(journal, new Set(moved.flatMap(({ blocks }) => blocks)));
  if (twice !== undefined) return refusal(commandTexts.declaredTwice(quoted(twice), year));
  const target = fileOf(uri, year);
  const there = journal.files.get(target);
  const also = [{ uri, edits: runsOf(moved).flatMap((run) => linesReplaced(document, run, [])) }];
  const cursor = { line: 0, character: 0 };
  if (!there) {
    const eol = lineEndOf(document);
    const created = [...noteValueOf(journal, uri), ...withoutEnd(moved.flatMap(movedLines)), ""].join(eol);
    return { ok: true, uri: target, created, edits: [], cursor, also };
  }
  const merged = mergedInto(there, moved, document, `${year}.practice`);
  if (!merged.ok) return merged;
  return {
    ok: true,
    uri: target,
    edits: linesReplaced(there, { from: 0, to: there.lineCount }, merged.lines),
    cursor,
    also,
  };
}

const ALONE = refusal(commandTexts.fileAlone);
const NO_YEAR = refusal(commandTexts.noEarlierYear);
const CONFLICT = refusal(commandTexts.conflictInFile);

function notThere(year: number | undefined): string {
  return year === undefined ? commandTexts.whichYear : commandTexts.noDaysOf(year);
}

/**
 * What is declared in days that move, and elsewhere: which of the two counts goes by their files, and might be another
 * one afterwards.
 */
function declaredTwice(journal: Journal, moved: ReadonlySet<Block>): string | undefined {
  const own = new Set([...moved].flatMap((block) => (block.mayName ? keysIn(journal, block) : [])));
  if (own.size === 0) return undefined;
  const others = [...journal.files.values()].flatMap(({ blocks }) =>
    blocks.filter((block) => !moved.has(block) && (block.mayName || !block.day)),
  );
  return others.flatMap((block) => keysIn(journal, block)).find((key) => own.has(key));
}

function keysIn(journal: Journal, block: Block): readonly string[] {
  return journal.ownModelOnce(block).declarations.flatMap(({ declaration }) => declarationKey(declaration) ?? []);
}

/** A day with what belongs to no date below it. */
interface Stretch {
  readonly date: DayNumber | undefined;
  readonly blocks: readonly Block[];
  /** Absolute lines, the end excluded. */
  readonly from: number;
  readonly to: number;
}

/** A file as a head and days. A day whose date cannot be read goes with the one above it. */
function stretchesOf({ blocks, starts, lineCount }: Document): readonly Stretch[] {
  const opens = blocks.flatMap((block, i) => (i === 0 || dayOfBlock(block) !== undefined ? [i] : []));
  return opens.map((first, k) => {
    const next = opens[k + 1];
    return {
      date: dayOfBlock(blocks[first]!),
      blocks: blocks.slice(first, next),
      from: starts[first]!,
      to: next === undefined ? lineCount : starts[next]!,
    };
  });
}

/** Days that follow each other, as one stretch of lines. */
function runsOf(days: readonly Stretch[]): readonly { readonly from: number; readonly to: number }[] {
  const runs: { from: number; to: number }[] = [];
  for (const { from, to } of days) {
    const last = runs.at(-1);
    if (last?.to === from) last.to = to;
    else runs.push({ from, to });
  }
  return runs;
}

function linesOf({ blocks }: Stretch): readonly string[] {
  return blocks.flatMap(({ lines }) => lines);
}

/** The same without a byte order mark, which belongs to the file that they come from. */
function movedLines(day: Stretch): readonly string[] {
  return linesOf(day).map((line) => (line.startsWith("\uFEFF") ? line.slice(1) : line));
}

/** Without empty lines at its end. */
function withoutEnd(lines: readonly string[]): readonly string[] {
  return lines.slice(0, lines.findLastIndex((line) => line.trim() !== "") + 1);
}

function fileOf(uri: string, year: number): string {
  return `${uri.slice(0, uri.lastIndexOf("/") + 1)}${year}.practice`;
}

/** A note value above the days of a file that is not the marker. */
function noteValueOf(journal: Journal, uri: string): readonly string[] {
  const head = journal.files.get(uri)!.blocks[0]!;
  if (head.day || uri.endsWith(`/${MARKER}`)) return [];
  const said = head.lines.filter((line) => wordOn(line) === "note value");
  return said.length > 0 ? [...said, ""] : [];
}

function wordOn(line: string): string | undefined {
  return declarationWordAt(line, /^[\s\uFEFF]*(?:[-*•]\s+)?/.exec(line)![0].length, line.length)?.word;
}

/** The lines of a file with days among its own, by their dates. */
function mergedInto(
  there: Document,
  moved: readonly Stretch[],
  from: Document,
  name: string,
): { readonly ok: true; readonly lines: readonly string[] } | Refusal {
  const own = stretchesOf(there);
  const dates = new Set(own.map(({ date }) => date));
  const clash = moved.find(({ date }) => dates.has(date));
  if (clash) return refusal(commandTexts.hasDay(name, isoDate(clash.date!)));
  if (hasMarkers(there)) return CONFLICT;
  if (saysNoteValue(there) || saysNoteValue(from)) return OTHER_VALUE;
  const dated = (each: readonly Stretch[]) => each.flatMap(({ date }) => (date === undefined ? [] : [{ date }]));
  const { newestFirst } = orderOf(dates.size > 2 ? dated(own) : dated(moved));
  const all = [...own];
  for (const day of moved) {
    const isLater = ({ date }: Stretch): boolean =>
      date !== undefined && (newestFirst ? date < day.date! : date > day.date!);
    const at = all.findIndex(isLater);
    all.splice(at < 0 ? all.length : at, 0, day);
  }
  const separated = isSeparated(there);
  const lines: string[] = [];
  for (const each of all) {
    if (separated && each.date !== undefined && (lines.at(-1) ?? "").trim() !== "") lines.push("");
    const isLast = [there, from].some(({ blocks }) => blocks.at(-1) === each.blocks.at(-1));
    const own = moved.includes(each) ? movedLines(each) : linesOf(each);
    lines.push(...(isLast ? withoutEnd(own) : own));
  }
  return { ok: true, lines: [...withoutEnd(lines), ""] };
}

function saysNoteValue({ blocks }: Document): boolean {
  return !blocks[0]!.day && blocks[0]!.lines.some((line) => wordOn(line) === "note value");
}

const OTHER_VALUE = refusal(commandTexts.otherNoteValue);
