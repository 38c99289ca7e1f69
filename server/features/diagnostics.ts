import { checkBlock } from "../checks/block.ts";
import { CODES } from "../checks/codes.ts";
import type { LineFinding } from "../checks/context.ts";
import type { FindingEdit, FindingFix } from "../checks/finding.ts";
import {
  checkDayOrder,
  type DatedDay,
  declarationKey,
  duplicateDeclaration,
  pastAim,
} from "../checks/journal-order.ts";
import type { Conventions } from "../journal/conventions.ts";
import type { Journal } from "../journal/journal.ts";
import type { DayNumber } from "../journal/model.ts";
import { isDayLine } from "../syntax/day-line.ts";
import type { Block, Document } from "../syntax/document.ts";
import type { Diagnostic, Fix, TextEdit } from "./types.ts";

/** The most diagnostics that are given for one file; the last says how many more there are. */
export const MOST_DIAGNOSTICS = 1000;

const NONE: readonly Diagnostic[] = [];
const RANK = { error: 0, warning: 1, information: 2, hint: 3 } as const;

/**
 * Everything found in one file, by place; over the limit errors first, then warnings, then advice. The same array while
 * neither the file, nor what the journal declares, nor the day has changed.
 */
export function diagnosticsOf(journal: Journal, uri: string, today: DayNumber): readonly Diagnostic[] {
  const document = journal.files.get(uri);
  if (!document) return NONE;
  const conventions = journal.conventions(uri);
  const declaredBefore = declarationsBefore(journal, uri);
  const bearing = [conventions, today, declaredBefore.join("\n")] as const;
  const cell = journal.memo.of(
    document,
    "diagnostics",
    (): { bearing?: readonly unknown[]; diagnostics: readonly Diagnostic[] } => ({ diagnostics: NONE }),
  );
  if (cell.bearing && bearing.every((each, i) => each === cell.bearing![i])) return cell.diagnostics;
  cell.bearing = bearing;
  cell.diagnostics = collect(journal, document, conventions, declaredBefore, today);
  return cell.diagnostics;
}

function collect(
  journal: Journal,
  document: Document,
  conventions: Conventions,
  declaredBefore: readonly string[],
  today: DayNumber,
): readonly Diagnostic[] {
  const found: Diagnostic[] = [];
  for (const [i, block] of document.blocks.entries()) {
    for (const finding of blockFindings(journal, block, conventions))
      found.push(diagnostic(finding, document.starts[i]!, document));
  }
  const crossing = [
    ...dayFindings(journal, document, today),
    ...declarationFindings(journal, document, declaredBefore, today),
  ];
  if (crossing.length) {
    found.push(...crossing);
    found.sort((a, b) => a.range.start.line - b.range.start.line || a.range.start.character - b.range.start.character);
  }
  return found.length > MOST_DIAGNOSTICS ? limited(found) : found;
}

/** What the checks of one block found; kept on the block while the journal's conventions last. */
function blockFindings(journal: Journal, block: Block, conventions: Conventions): readonly LineFinding[] {
  const cell = journal.memo.of(
    block,
    "findings",
    (): { conventions?: Conventions; findings: readonly LineFinding[] } => ({ findings: [] }),
  );
  if (cell.conventions !== conventions) {
    cell.conventions = conventions;
    cell.findings = checkBlock({
      texts: block.lines,
      model: journal.model(block),
      vocabulary: journal.vocabulary,
      conventions,
    });
  }
  return cell.findings;
}

function dayFindings(journal: Journal, document: Document, today: DayNumber): readonly Diagnostic[] {
  const days: DatedDay[] = [];
  const blocks: number[] = [];
  for (const [i, block] of document.blocks.entries()) {
    const day = journal.memo.of(block, "dated day", () => datedDay(journal, block));
    if (!day) continue;
    days.push(day);
    blocks.push(i);
  }
  return checkDayOrder(days, today).map(({ day, finding }) =>
    diagnostic({ ...finding, line: 0 }, document.starts[blocks[day]!]!, document),
  );
}

function datedDay(journal: Journal, block: Block): DatedDay | undefined {
  const { day, entries } = journal.model(block);
  if (day?.date === undefined) return undefined;
  return {
    date: day.date,
    line: day.line,
    planned: day.planned || (entries.length > 0 && entries.every((entry) => entry.planned)),
  };
}

/** The keys of what the files before this one declare, in the order in which declarations count. */
function declarationsBefore(journal: Journal, uri: string): readonly string[] {
  const keys: string[] = [];
  for (const address of journal.addresses) {
    if (address === uri) break;
    keys.push(...declarationsOf(journal, journal.files.get(address)!).flatMap(({ key }) => key ?? []));
  }
  return keys;
}

interface PlacedDeclaration {
  readonly key: string | undefined;
  readonly line: number;
  readonly declaration: Parameters<typeof duplicateDeclaration>[0];
  readonly text: string;
}

function declarationsOf(journal: Journal, document: Document): readonly PlacedDeclaration[] {
  const placed: PlacedDeclaration[] = [];
  for (const [i, block] of document.blocks.entries()) {
    for (const { line, declaration, key } of journal.memo.of(block, "declarations", () => keyed(journal, block))) {
      placed.push({ key, declaration, line: document.starts[i]! + line, text: block.lines[line]! });
    }
  }
  return placed;
}

function keyed(journal: Journal, block: Block): readonly Omit<PlacedDeclaration, "text">[] {
  return journal
    .model(block)
    .declarations.map(({ line, declaration }) => ({ line, declaration, key: declarationKey(declaration) }));
}

function declarationFindings(
  journal: Journal,
  document: Document,
  before: readonly string[],
  today: DayNumber,
): readonly Diagnostic[] {
  const seen = new Set(before);
  return declarationsOf(journal, document).flatMap(({ key, line, declaration, text }) => {
    const again = key !== undefined && seen.has(key) ? duplicateDeclaration(declaration, text) : undefined;
    if (key !== undefined) seen.add(key);
    return [again, pastAim(declaration, today)].flatMap((finding) =>
      finding ? [diagnostic({ ...finding, line: 0 }, line, document)] : [],
    );
  });
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
    fixes: fixes.map((fix) => placedFix(fix, at, first, document)),
  };
}

function placedFix({ title, safe, edits, head }: FindingFix, at: number, first: number, document: Document): Fix {
  const placed = edits.map((edit) => placedEdit(edit, at, first));
  return { title, safe, edits: head === undefined ? placed : [...placed, headInsertion(head, document)] };
}

function placedEdit({ line, endLine, start, end, text }: FindingEdit, at: number, first: number): TextEdit {
  const from = line === undefined ? at : first + line;
  const to = endLine === undefined ? from : first + endLine;
  return { range: { start: { line: from, character: start }, end: { line: to, character: end } }, newText: text };
}

/** A line of its own behind the last line of the head that says something; before the first day where there is no head. */
function headInsertion(text: string, document: Document): TextEdit {
  const head = document.blocks[0]!;
  const end = head.ends.find((each) => each !== "") ?? "\n";
  const last = isDayLine(head.lines[0]!) ? -1 : head.lines.findLastIndex((line) => line.trim() !== "");
  if (last < 0)
    return { range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } }, newText: `${text}${end}` };
  const character = head.lines[last]!.length;
  return { range: { start: { line: last, character }, end: { line: last, character } }, newText: `${end}${text}` };
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
