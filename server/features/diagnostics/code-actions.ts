import type { Position } from "../../syntax/document/document.ts";
import { isAsked } from "../explain/action-kinds.ts";
import type { CodeAction, Diagnostic, Fix, Range, TextEdit } from "../types.ts";
import { diagnosticsTexts } from "./diagnostics-texts.ts";

/**
 * The mends offered at a place: one quick fix for each fix of each diagnostic that touches the range (an empty range
 * right behind a word touches it), and one action for all safe fixes of the file, when it is asked for, or when nothing
 * is asked for in particular and there are two or more.
 *
 * @param diagnostics those of the file, as the editor shows them.
 * @param only kinds of actions; a kind stands for all below it, as in the protocol: `source` for `source.fixAll`, ""
 *   for all.
 */
export function codeActionsIn(
  diagnostics: readonly Diagnostic[],
  range: Range,
  only?: readonly string[],
): readonly CodeAction[] {
  const actions: CodeAction[] = [];
  if (isAsked("quickfix", only)) {
    for (const diagnostic of diagnostics) if (touch(diagnostic.range, range)) actions.push(...quickFixes(diagnostic));
  }
  if (isAsked("source.fixAll", only)) {
    const safe = safeFixes(diagnostics);
    if (safe.length >= (only ? 1 : 2)) actions.push(fixAll(safe));
  }
  return actions;
}

/** The edits of all safe fixes, in the order of the file. Where two would overlap the one found first is taken. */
export function safeFixEdits(diagnostics: readonly Diagnostic[]): readonly TextEdit[] {
  return editsOf(safeFixes(diagnostics));
}

interface SafeFix {
  readonly diagnostic: Diagnostic;
  readonly fix: Fix;
}

/** The first safe fix of each diagnostic, as long as it leaves those before it alone. */
function safeFixes(diagnostics: readonly Diagnostic[]): readonly SafeFix[] {
  const taken: SafeFix[] = [];
  const edits: TextEdit[] = [];
  for (const diagnostic of diagnostics) {
    const fix = diagnostic.fixes.find((each) => each.safe && each.edits.length > 0);
    if (!fix || fix.edits.some((edit) => edits.some((other) => collide(edit.range, other.range)))) continue;
    taken.push({ diagnostic, fix });
    edits.push(...fix.edits);
  }
  return taken;
}

function fixAll(safe: readonly SafeFix[]): CodeAction {
  return {
    title: diagnosticsTexts.fixAll,
    kind: "source.fixAll",
    edits: editsOf(safe),
    preferred: false,
    diagnostics: safe.map(({ diagnostic }) => diagnostic),
  };
}

function editsOf(safe: readonly SafeFix[]): readonly TextEdit[] {
  return safe.flatMap(({ fix }) => fix.edits).sort((a, b) => compare(a.range.start, b.range.start));
}

function quickFixes(diagnostic: Diagnostic): readonly CodeAction[] {
  return diagnostic.fixes.map(({ title, safe, edits }) => ({
    title,
    kind: "quickfix",
    edits,
    preferred: safe || diagnostic.fixes.length === 1,
    diagnostics: [diagnostic],
  }));
}

/** Whether two ranges share a place between two characters. */
function touch(a: Range, b: Range): boolean {
  return compare(a.start, b.end) <= 0 && compare(b.start, a.end) <= 0;
}

/** Whether two edits cannot both be made: they share text, or an insertion stands at the rim of the other. */
function collide(a: Range, b: Range): boolean {
  const either = compare(a.start, a.end) === 0 || compare(b.start, b.end) === 0;
  return either ? touch(a, b) : compare(a.start, b.end) < 0 && compare(b.start, a.end) < 0;
}

function compare(a: Position, b: Position): number {
  return a.line - b.line || a.character - b.character;
}
