import { CODES } from "../../checks/codes.ts";
import type { LineFinding } from "../../checks/context.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import { isReadForTitles, titleIndex } from "../../journal/titles/journal-titles.ts";
import type { TitleIndex } from "../../journal/titles/title-index.ts";
import { type Block, changedBlocks, type Document } from "../../syntax/document/document.ts";
import type { Diagnostic } from "../types.ts";
import { type FileFindings, fileFindings } from "./file-findings.ts";
import { farAimFindings, type HistoryFinding, leapFindings } from "./history-findings.ts";
import { placedFix } from "./placed-fix.ts";
import { withTitleHints } from "./title-hints.ts";

/** The most diagnostics that are given for one file; the last says how many more there are. */
export const MOST_DIAGNOSTICS = 1000;

const NONE: readonly Diagnostic[] = [];
const RANK = { error: 0, warning: 1, information: 2, hint: 3 } as const;

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
  const findings = fileFindings(journal, uri, today, { earlier: last?.findings, history });
  const told = history ? historyFindings(journal, uri, findings, today) : stillTold(last, findings.document);
  const titles = history || isReadForTitles(journal) ? titleIndex(journal) : undefined;
  if (last?.findings === findings && last.titles === titles && sameHistory(last.told, told)) return last.diagnostics;
  const now = placed(journal, findings, told, titles !== undefined);
  const diagnostics = last && sameDiagnostics(last.diagnostics, now) ? last.diagnostics : now;
  journal.memo.setLatest<Latest>("diagnostics", uri, { findings, told, titles, diagnostics });
  return diagnostics;
}

/**
 * What is underlined of it: hints are kept for whoever asks at the cursor. The same array while it says the same.
 */
export function underlinedOf(
  journal: Journal,
  uri: string,
  today: DayNumber,
  options: { readonly history?: boolean } = {},
): readonly Diagnostic[] {
  const all = diagnosticsOf(journal, uri, today, options);
  const last = journal.memo.latest<Underlined>("underlined", uri);
  if (last?.all === all) return last.underlined;
  const now = all.some(({ severity }) => severity === "hint") ? all.filter(({ severity }) => severity !== "hint") : all;
  const underlined = last && sameDiagnostics(last.underlined, now) ? last.underlined : now;
  journal.memo.setLatest<Underlined>("underlined", uri, { all, underlined });
  return underlined;
}

interface Underlined {
  readonly all: readonly Diagnostic[];
  readonly underlined: readonly Diagnostic[];
}

/**
 * Reads a file of several that will be asked for: its days once, for their findings and for the history. Without, the
 * first that is asked for would have the days of all others read for the history alone.
 */
export function readAhead(journal: Journal, uri: string, today: DayNumber): void {
  if (!journal.files.has(uri) || journal.memo.latest<Latest>("diagnostics", uri)) return;
  const findings = fileFindings(journal, uri, today, { history: true });
  const diagnostics = placed(journal, findings, NO_HISTORY, false);
  journal.memo.setLatest<Latest>("diagnostics", uri, { findings, told: NO_HISTORY, diagnostics });
}

/** The findings of a file's latest state, and the diagnostics that were made of them. */
interface Latest {
  readonly findings: FileFindings;
  readonly told: readonly HistoryFinding[];
  /** Undefined where the days of all files were not read for them yet. */
  readonly titles?: TitleIndex;
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
  { document, blocks, told, crossing, bearing: { uri } }: FileFindings,
  history: readonly HistoryFinding[],
  titled: boolean,
): readonly Diagnostic[] {
  const found: Diagnostic[] = [];
  const byBlock = new Map<Block, LineFinding[]>();
  for (const { block, finding } of history) byBlock.set(block, [...(byBlock.get(block) ?? []), finding]);
  for (const index of byBlock.size ? toldAlso(document, told, byBlock) : told) {
    const block = document.blocks[index]!;
    const others = [...(crossing.get(block) ?? []), ...(byBlock.get(block) ?? [])];
    const own = blocks[index]!.findings;
    const findings = titled ? withTitleHints(journal, uri, block, own) : own;
    const all = others.length
      ? [...findings, ...others].sort((a, b) => a.line - b.line || a.start - b.start || a.end - b.end)
      : findings;
    for (const each of placedBlock(journal, block, all, document.starts[index]!, document)) found.push(each);
  }
  return found.length > MOST_DIAGNOSTICS ? limited(found) : found;
}

/** The blocks with something to tell, those of which the history tells among them. */
function toldAlso(
  { blocks }: Document,
  told: readonly number[],
  history: ReadonlyMap<Block, unknown>,
): readonly number[] {
  const also = [...history.keys()].map((block) => blocks.indexOf(block)).filter((index) => index >= 0);
  return [...new Set([...told, ...also])].sort((a, b) => a - b);
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
    findings.map((finding) => {
      const place = (): Diagnostic => diagnostic(finding, first, document);
      const isLast = first + finding.line === document.lineCount - 1; // its fixes may go by the line before it
      return isLast ? place() : journal.memo.from(finding, "placed", [first, head], place);
    }),
  );
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

function limited(found: readonly Diagnostic[]): readonly Diagnostic[] {
  const ranked = found
    .map((each, i) => ({ each, i }))
    .sort((a, b) => RANK[a.each.severity] - RANK[b.each.severity] || a.i - b.i);
  const kept = ranked.slice(0, MOST_DIAGNOSTICS).map(({ each }) => each);
  const last = kept[MOST_DIAGNOSTICS - 1]!;
  kept[MOST_DIAGNOSTICS - 1] = {
    ...last,
    message: `${last.message} (And ${found.length - MOST_DIAGNOSTICS} more in this file.)`,
  };
  return kept;
}
