import { swappedOutcomes } from "../../journal/conditions.ts";
import { readDeclaration } from "../../journal/declarations/declaration.ts";
import type { Line } from "../../syntax/line/line.ts";
import { parseLine } from "../../syntax/line/parse-line.ts";
import type { ReadingContext } from "./missing-commas.ts";

const COLUMNS: ReadonlySet<string> = new Set(["start", "end", "dateEnd", "wordEnd"]);

/**
 * Whether a line says the same in another layout: everything that is read on it, apart from columns and runs of spaces.
 */
export function readsTheSame(
  before: { readonly text: string; readonly line: Line },
  after: string,
  context: ReadingContext & { readonly head: boolean },
): boolean {
  const again = parseLine(after, context);
  return same(before.line, again) && same(told(before.text, before.line, context), told(after, again, context));
}

/**
 * What is read of a line only later: which tempo an outcome belongs to goes by columns, a declaration has its own
 * reader.
 */
function told(text: string, line: Line, context: ReadingContext): unknown {
  if (line.type === "entry") return swappedOutcomes(line.items);
  if (line.type !== "declaration") return undefined;
  const { declared, faults } = readDeclaration(text, line, context);
  const work = declared?.type === "aim" || declared?.type === "set" ? declared.entry : undefined;
  return { declared, faults, swapped: work && swappedOutcomes(work.items) };
}

function same(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a === "string" && typeof b === "string") return a.replace(/\s+/g, " ") === b.replace(/\s+/g, " ");
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  const [left, right] = [a as Record<string, unknown>, b as Record<string, unknown>];
  const keys = Object.keys(left).filter((key) => !COLUMNS.has(key));
  const others = Object.keys(right).filter((key) => !COLUMNS.has(key));
  return keys.length === others.length && keys.every((key) => key in right && same(left[key], right[key]));
}
