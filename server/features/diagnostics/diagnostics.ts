import { CODES } from "../../checks/codes.ts";
import type { LineFinding } from "../../checks/context.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import { isReadForTitles, titleIndex } from "../../journal/titles/journal-titles.ts";
import type { TitleIndex } from "../../journal/titles/title-index.ts";
import { type Block, changedBlocks, type Document } from "../../syntax/document/document.ts";
import type { Diagnostic } from "../types.ts";
import {
  added,
  type BlockFacts,
  CountedBlock,
  type Counts,
  countsOf,
  MOST_DIAGNOSTICS,
  SEVERITIES,
  sumOf,
} from "./block-facts.ts";
import { diagnosticsTexts } from "./diagnostics-texts.ts";
import { type FileFindings, fileFindings } from "./file-findings.ts";
import { farAimFindings, type HistoryFinding, leapFindings } from "./history-findings.ts";
import { placedFix } from "./placed-fix.ts";
import { countedWithTitleHints, withTitleHints } from "./title-hints.ts";

const NONE: readonly Diagnostic[] = [];

/**
 * Everything found in one file, by place; over the limit errors first, then warnings, then advice. The same array while
 * they say the same: then a client that has them need not be sent them again. What only the history tells can wait:
 * then what was told of lines that still stand is told again, and nothing new.
 */
export function diagnosticsOf(
  journal: Journal,
  uri: string,
  today: DayNumber,
  { history = true }: { readonly history?: boolean } = {},
): readonly Diagnostic[] {
  if (!journal.files.has(uri)) return NONE;
  const last = journal.memo.latest<Latest>("diagnostics", uri);
  const { findings, told } = foundIn(journal, uri, today, history, last);
  const titles = history || isReadForTitles(journal) ? titleIndex(journal) : undefined;
  if (last?.findings === findings && last.titles === titles && sameHistory(last.told, told)) return last.diagnostics;
  const now = placed(journal, findings, told, titles ? titled(journal, uri) : AS_FOUND);
  return kept(journal, "diagnostics", uri, { findings, told, titles, diagnostics: now });
}

/**
 * What is underlined of it: hints are looked for when somebody asks at the cursor. The same array while it says the
 * same.
 */
export function underlinedOf(
  journal: Journal,
  uri: string,
  today: DayNumber,
  { history = true }: { readonly history?: boolean } = {},
): readonly Diagnostic[] {
  if (!journal.files.has(uri)) return NONE;
  const last = journal.memo.latest<Latest>("underlined", uri);
  const { findings, told } = foundIn(journal, uri, today, history, last);
  if (last?.findings === findings && sameHistory(last.told, told)) return last.diagnostics;
  const rows = new PlacedRows(findings.document, last?.rows);
  const shown = { ...findings, told: findings.underlined };
  const now = placed(journal, shown, told, { of: (_, own) => underlined(journal, own) }, rows);
  return kept(journal, "underlined", uri, { findings, told, rows, diagnostics: now });
}

/** Everything found on some lines, the first and the last among them, as `diagnosticsOf` tells of them. */
export function diagnosticsOn(
  journal: Journal,
  uri: string,
  today: DayNumber,
  lines: { readonly first: number; readonly last: number },
  { history = true }: { readonly history?: boolean } = {},
): readonly Diagnostic[] {
  if (!journal.files.has(uri)) return NONE;
  const { findings, told } = foundIn(journal, uri, today, history, journal.memo.latest<Latest>("underlined", uri));
  const { starts, blocks } = findings.document;
  const isOn = (index: number) =>
    starts[index]! <= lines.last && starts[index]! + blocks[index]!.lineCount > lines.first;
  const on = { ...findings, told: findings.told.filter(isOn) };
  const here = new Set(blocks.filter((_, index) => isOn(index)));
  const toldOn = told.filter(({ block }) => here.has(block));
  const isTitled = history || isReadForTitles(journal);
  return placed(journal, on, toldOn, isTitled ? titled(journal, uri) : AS_FOUND);
}

/** What is told of the findings of a block. */
interface Telling {
  of(block: Block, own: readonly LineFinding[]): readonly LineFinding[];
  /** How many these are of each severity, where only that is known; without, they are looked for. */
  counts?(block: Block, facts: CountedBlock): Counts;
}

const AS_FOUND: Telling = { of: (_, own) => own, counts: (_, { counts }) => counts };

function titled(journal: Journal, uri: string): Telling {
  return {
    of: (block, own) => withTitleHints(journal, uri, block, own),
    counts: (block, facts) => countedWithTitleHints(journal, uri, block, facts),
  };
}

/** What is told of a file from now on: the same array where it says what the one before said. */
function kept(journal: Journal, name: string, uri: string, now: Latest): readonly Diagnostic[] {
  const before = journal.memo.latest<Latest>(name, uri)?.diagnostics;
  const diagnostics = before && sameDiagnostics(before, now.diagnostics) ? before : now.diagnostics;
  journal.memo.setLatest<Latest>(name, uri, { ...now, diagnostics });
  return diagnostics;
}

/** What is found in a file, and what the history tells of it, by what was found before. */
function foundIn(
  journal: Journal,
  uri: string,
  today: DayNumber,
  history: boolean,
  last: Latest | undefined,
): Pick<Latest, "findings" | "told"> {
  const earlier = journal.memo.latest<FileFindings>("file findings", uri);
  const findings = fileFindings(journal, uri, today, { earlier, history });
  journal.memo.setLatest<FileFindings>("file findings", uri, findings);
  const told = history ? historyFindings(journal, uri, findings, today) : stillTold(last, findings.document);
  return { findings, told };
}

/** Those that are no hints. */
function underlined(journal: Journal, findings: readonly LineFinding[]): readonly LineFinding[] {
  if (findings.length === 0) return findings;
  return journal.memo.of(findings, "underlined", () => findings.filter(({ code }) => CODES[code] !== "hint"));
}

/**
 * Reads a file of several that will be asked for: its days once, for their findings and for the history. Without, the
 * first that is asked for would have the days of all others read for the history alone. What will not be told is only
 * counted.
 */
export function readAhead(journal: Journal, uri: string, today: DayNumber, onDay?: () => void): void {
  if (!journal.files.has(uri) || journal.memo.latest<FileFindings>("file findings", uri)) return;
  const findings = fileFindings(journal, uri, today, { history: true, counted: true, onDay });
  journal.memo.setLatest<FileFindings>("file findings", uri, findings);
}

/** The findings of a file's latest state, and the diagnostics that were made of them. */
interface Latest {
  readonly findings: FileFindings;
  readonly told: readonly HistoryFinding[];
  /** Undefined where the days of all files were not read for them yet. */
  readonly titles?: TitleIndex;
  readonly rows?: PlacedRows;
  readonly diagnostics: readonly Diagnostic[];
}

const NO_HISTORY: readonly HistoryFinding[] = [];

function historyFindings(
  journal: Journal,
  uri: string,
  { aims }: FileFindings,
  today: DayNumber,
): readonly HistoryFinding[] {
  const leaps = leapFindings(journal, uri);
  return aims.length ? [...leaps, ...farAimFindings(journal, uri, aims, today)] : leaps;
}

/** What was told of a file before, as far as it stands on lines that are still there. */
function stillTold(last: Latest | undefined, document: Document): readonly HistoryFinding[] {
  if (!last || last.told.length === 0) return NO_HISTORY;
  const { from, after } = changedBlocks(last.findings.document, document);
  const changed = document.blocks.slice(from, after);
  return last.told.flatMap((each) => {
    if (document.blocks.includes(each.block)) return [each];
    const text = each.block.lines[each.finding.line]!;
    const block = changed.find(({ lines }) => lines.includes(text));
    return block ? [{ ...each, block, finding: { ...each.finding, line: block.lines.indexOf(text) } }] : [];
  });
}

function sameHistory(a: readonly HistoryFinding[], b: readonly HistoryFinding[]): boolean {
  return a.length === b.length && a.every(({ finding }, i) => finding === b[i]!.finding);
}

function placed(
  journal: Journal,
  { document, blocks, told, crossing }: FileFindings,
  history: readonly HistoryFinding[],
  telling: Telling,
  rows?: PlacedRows,
): readonly Diagnostic[] {
  const byBlock = new Map<Block, LineFinding[]>();
  for (const { block, finding } of history) byBlock.set(block, [...(byBlock.get(block) ?? []), finding]);
  const listed: Listed[] = [];
  let count = 0;
  for (const index of byBlock.size ? toldAlso(document, told, byBlock) : told) {
    const block = document.blocks[index]!;
    const others = [...(crossing.get(block) ?? []), ...(byBlock.get(block) ?? [])];
    const each = listedBlock({ block, index, facts: blocks[index]!, others }, telling);
    listed.push(each);
    count += each.count;
  }
  if (count > MOST_DIAGNOSTICS) return limited(journal, listed, count, document);
  const diagnostics: Diagnostic[] = [];
  for (const { index, alone, findings: found } of listed) {
    const findings = found();
    const place = (): readonly Diagnostic[] =>
      findings.length === 0
        ? NONE
        : placedBlock(journal, document.blocks[index]!, findings, document.starts[index]!, document);
    const ofBlock = rows && alone ? rows.of(index, alone, place) : place();
    for (const each of ofBlock) diagnostics.push(each);
  }
  return diagnostics;
}

/** What is to be told of one block. */
interface Listed {
  readonly index: number;
  readonly count: number;
  /** Undefined where the findings are at hand. */
  readonly counts?: Counts;
  readonly findings: () => readonly LineFinding[];
  /** The block's own findings, where nothing else tells of it. */
  readonly alone: readonly LineFinding[] | undefined;
}

/** @param about a block, what it shows by itself, and what others show of it */
function listedBlock(
  about: {
    readonly block: Block;
    readonly index: number;
    readonly facts: BlockFacts;
    readonly others: readonly LineFinding[];
  },
  telling: Telling,
): Listed {
  const { block, index, facts, others } = about;
  const withOthers = (found: readonly LineFinding[]) => (others.length ? [...found, ...others].sort(inOrder) : found);
  if (facts instanceof CountedBlock && telling.counts) {
    const own = telling.counts(block, facts);
    const counts = others.length ? added(own, countsOf(others)) : own;
    const findings = () => withOthers(telling.of(block, facts.findings));
    return { index, count: sumOf(counts), counts, findings, alone: undefined };
  }
  const own = facts.findings;
  const findings = withOthers(telling.of(block, own));
  return { index, count: findings.length, findings: () => findings, alone: others.length === 0 ? own : undefined };
}

function inOrder(a: LineFinding, b: LineFinding): number {
  return a.line - b.line || a.start - b.start || a.end - b.end;
}

interface PlacedRow {
  readonly own: readonly LineFinding[];
  readonly first: number;
  readonly diagnostics: readonly Diagnostic[];
}

/** The diagnostics of each block of a file by its own findings alone: those of blocks that stay are kept. */
class PlacedRows {
  private readonly rows = new Map<Block, PlacedRow>();
  private readonly before: ReadonlyMap<Block, PlacedRow>;
  private readonly head: Block | undefined;

  constructor(
    private readonly document: Document,
    before: PlacedRows | undefined,
  ) {
    // where declarations would be put in goes by the head
    this.head = document.blocks[0];
    this.before = before && before.head === this.head ? before.rows : new Map();
  }

  of(index: number, own: readonly LineFinding[], place: () => readonly Diagnostic[]): readonly Diagnostic[] {
    const { blocks, starts } = this.document;
    if (index === blocks.length - 1) return place(); // its last line's fixes may go by the line before it
    const block = blocks[index]!;
    const first = starts[index]!;
    const known = this.before.get(block);
    const row = known?.own === own && known.first === first ? known : { own, first, diagnostics: place() };
    this.rows.set(block, row);
    return row.diagnostics;
  }
}

/** The blocks with something to tell, those of which the history tells among them. */
function toldAlso(
  { blocks }: Document,
  told: readonly number[],
  history: ReadonlyMap<Block, unknown>,
): readonly number[] {
  const all = new Set(told);
  for (let index = 0; index < blocks.length; index++) if (history.has(blocks[index]!)) all.add(index);
  return [...all].sort((a, b) => a - b);
}

/** Blocks that did not move give the same objects, so that little is left to compare. */
function sameDiagnostics(a: readonly Diagnostic[], b: readonly Diagnostic[]): boolean {
  return a.length === b.length && a.every((each, i) => each === b[i] || JSON.stringify(each) === JSON.stringify(b[i]));
}

/** The diagnostics of one block; the same objects while it has not moved. */
function placedBlock(
  journal: Journal,
  block: Block,
  findings: readonly LineFinding[],
  first: number,
  document: Document,
): readonly Diagnostic[] {
  // Where declarations would be put in goes by the head.
  const head = document.blocks[0];
  return journal.memo.from(block, "placed", [first, head, ...findings], () =>
    findings.map((finding) => placedFinding(journal, finding, first, document)),
  );
}

function placedFinding(journal: Journal, finding: LineFinding, first: number, document: Document): Diagnostic {
  const place = (): Diagnostic => diagnostic(finding, first, document);
  const isLast = first + finding.line === document.lineCount - 1; // its fixes may go by the line before it
  return isLast ? place() : journal.memo.from(finding, "placed", [first, document.blocks[0]], place);
}

function diagnostic(
  { code, line, start, end, message, fixes }: LineFinding,
  first: number,
  document: Document,
): Diagnostic {
  const at = first + line;
  const range = { start: { line: at, character: start }, end: { line: at, character: end } };
  return {
    code,
    severity: CODES[code],
    range,
    message,
    fixes: fixes.map((fix) => placedFix(fix, at, document)),
  };
}

/** Only those that are told are placed: all that are found in a long file take many times as much memory as it. */
function limited(
  journal: Journal,
  listed: readonly Listed[],
  count: number,
  document: Document,
): readonly Diagnostic[] {
  const kept: Diagnostic[] = [];
  for (const severity of SEVERITIES) {
    for (const { index, counts, findings } of listed) {
      if (kept.length === MOST_DIAGNOSTICS) break;
      if (counts?.[severity] === 0) continue;
      for (const finding of findings())
        if (kept.length < MOST_DIAGNOSTICS && CODES[finding.code] === severity)
          kept.push(placedFinding(journal, finding, document.starts[index]!, document));
    }
  }
  const last = kept[MOST_DIAGNOSTICS - 1]!;
  kept[MOST_DIAGNOSTICS - 1] = {
    ...last,
    message: diagnosticsTexts.moreInFile(last.message, count - MOST_DIAGNOSTICS),
  };
  return kept;
}
