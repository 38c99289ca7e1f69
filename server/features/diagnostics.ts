import { CODES } from "../checks/codes.ts";
import type { LineFinding } from "../checks/context.ts";
import type { FindingFix } from "../checks/finding.ts";
import {
  checkDayOrder,
  type DatedDay,
  declarationKey,
  duplicateDeclaration,
  pastAim,
} from "../checks/journal-order.ts";
import { Survey } from "../checks/survey.ts";
import type { Conventions } from "../journal/conventions.ts";
import type { Declaration } from "../journal/declaration.ts";
import type { Journal } from "../journal/journal.ts";
import type { DayNumber } from "../journal/model.ts";
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
  const before = declaredBefore(journal, uri);
  const bearing = `${today} ${before.join("\n")}`;
  const cell = journal.memo.of(document, "diagnostics", (): Cell => ({ diagnostics: NONE }));
  if (cell.conventions === conventions && cell.bearing === bearing) return cell.diagnostics;
  cell.conventions = conventions;
  cell.bearing = bearing;
  cell.diagnostics = collect(journal, document, conventions, before, today);
  return cell.diagnostics;
}

/** The last answer for one state of a file, and what else bore on it. */
interface Cell {
  conventions?: Conventions;
  bearing?: string;
  diagnostics: readonly Diagnostic[];
}

function collect(
  journal: Journal,
  document: Document,
  conventions: Conventions,
  before: readonly string[],
  today: DayNumber,
): readonly Diagnostic[] {
  const survey = journal.memo.of(conventions, "survey", () => new Survey(journal.partContext, conventions));
  const found: Diagnostic[] = [];
  const days: DatedDay[] = [];
  const blocks: number[] = [];
  const seen = new Set(before);
  const declares = false;
  for (const [i, block] of document.blocks.entries()) {
    const first = document.starts[i]!;
    const facts = blockFacts(journal, block, survey);
    for (const finding of facts.findings) found.push(diagnostic(finding, first, document));
    if (facts.day) {
      days.push(facts.day);
      blocks.push(first);
    }
    for (const declaration of facts.declarations)
      found.push(...declarationFindings(declaration, seen, today, first, document));
  }
  const inOrder = found.length;
  const crossing = checkDayOrder(days, today);
  for (const { day, finding } of crossing) found.push(diagnostic({ ...finding, line: 0 }, blocks[day]!, document));
  if (found.length > inOrder || declares) {
    found.sort((a, b) => a.range.start.line - b.range.start.line || a.range.start.character - b.range.start.character);
  }
  return found.length > MOST_DIAGNOSTICS ? limited(found) : found;
}

/** What one block shows by itself, and what of it bears on others. */
interface BlockFacts {
  readonly findings: readonly LineFinding[];
  readonly day?: DatedDay;
  readonly declarations: readonly PlacedDeclaration[];
}

interface PlacedDeclaration {
  readonly key: string | undefined;
  readonly line: number;
  readonly declaration: Declaration;
  readonly text: string;
}

function blockFacts(journal: Journal, block: Block, survey: Survey): BlockFacts {
  const cell = journal.memo.of(block, "facts", (): { survey?: Survey; facts?: BlockFacts } => ({}));
  if (cell.survey === survey) return cell.facts!;
  const { findings, day, declares } = survey.block(block);
  cell.survey = survey;
  cell.facts = { findings, day, declarations: declares ? declarationsOf(journal, block) : NO_DECLARATIONS };
  return cell.facts;
}

const NO_DECLARATIONS: readonly PlacedDeclaration[] = [];

function declarationsOf(journal: Journal, block: Block): readonly PlacedDeclaration[] {
  return journal.model(block).declarations.map(({ line, declaration }) => ({
    line,
    declaration,
    key: declarationKey(declaration),
    text: block.lines[line]!,
  }));
}

/** The keys of what the files before this one declare, in the order in which declarations count. */
function declaredBefore(journal: Journal, uri: string): readonly string[] {
  const keys: string[] = [];
  for (const address of journal.addresses) {
    if (address === uri) break;
    for (const block of journal.files.get(address)!.blocks) {
      if (journal.mayDeclare(block)) keys.push(...declarationsOf(journal, block).flatMap(({ key }) => key ?? []));
    }
  }
  return keys;
}

function declarationFindings(
  { key, line, declaration, text }: PlacedDeclaration,
  seen: Set<string>,
  today: DayNumber,
  first: number,
  document: Document,
): Diagnostic[] {
  const again = key !== undefined && seen.has(key) ? duplicateDeclaration(declaration, text) : undefined;
  if (key !== undefined) seen.add(key);
  return [again, pastAim(declaration, today)].flatMap((finding) =>
    finding ? [diagnostic({ ...finding, line }, first, document)] : [],
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

function placedFix({ title, safe, edits, head }: FindingFix, line: number, document: Document): Fix {
  const placed = edits.map(
    ({ start, end, further = 0, text }): TextEdit => ({
      range: { start: { line, character: start }, end: { line: line + further, character: end } },
      newText: text,
    }),
  );
  return { title, safe, edits: head === undefined ? placed : [...placed, headInsertion(head, document)] };
}

/** A line of its own behind the last line of the head that says something; before the first day where there is no head. */
function headInsertion(text: string, document: Document): TextEdit {
  const head = document.blocks[0]!;
  const end = head.ends.find((each) => each !== "") ?? "\n";
  const last = head.day ? -1 : head.lines.findLastIndex((line) => line.trim() !== "");
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
