import { attemptsOf } from "../journal/conditions.ts";
import { readDeclaration } from "../journal/declaration.ts";
import type { Line } from "../syntax/line.ts";
import { parseLine } from "../syntax/parse-line.ts";
import type { ReadingContext } from "./missing-commas.ts";

const COLUMNS = new Set(["start", "end", "dateEnd", "wordEnd", "place", "length", "line"]);

/** Whether a line says the same in another layout: everything that is read on it, apart from columns and runs of spaces. */
export function readsTheSame(
  before: { readonly text: string; readonly line: Line },
  after: string,
  context: ReadingContext & { readonly head: boolean },
): boolean {
  const again = parseLine(after, context);
  return reading(before.text, before.line, context) === reading(after, again, context);
}

function reading(text: string, line: Line, context: ReadingContext): string {
  return JSON.stringify({ ...line, ...told(text, line, context) }, withoutColumns);
}

/** What columns decide, and what is read of a line only later. */
function told(text: string, line: Line, context: ReadingContext): object {
  if (line.type === "entry") return { attempts: attemptsOf(line.items, 0, line) };
  if (line.type !== "declaration") return {};
  const { declared, faults } = readDeclaration(text, line, context);
  const work = declared?.type === "aim" || declared?.type === "set" ? declared.entry : undefined;
  return { declared, faults, attempts: work && attemptsOf(work.items, 0, work) };
}

function withoutColumns(key: string, value: unknown): unknown {
  if (COLUMNS.has(key)) return undefined;
  return typeof value === "string" ? value.replace(/\s+/g, " ") : value;
}
