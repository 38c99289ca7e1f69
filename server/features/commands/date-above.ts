import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import { parseLine } from "../../syntax/line/parse-line.ts";
import { isAsked } from "../explain/action-kinds.ts";
import { datedDays, dayOn } from "../explain/dated-days.ts";
import type { CodeAction, Range } from "../types.ts";
import { commandTexts } from "./command-texts.ts";
import { dayLine } from "./today-line.ts";

/**
 * Today's date above lines that were written before any day, as on somebody's first evening: offered on the first of
 * them and on all below it down to the first day. None where the journal has today already.
 *
 * @param only as in `codeActionsIn`
 */
export function dateAboveIn(
  journal: Journal,
  uri: string,
  { start }: Range,
  today: DayNumber,
  only?: readonly string[],
): readonly CodeAction[] {
  const document = journal.files.get(uri);
  const head = document?.blocks[0];
  if (!isAsked("quickfix", only) || !document || !head || head.day || dayOn(journal, uri, today)) return [];
  const first = head.lines.findIndex((text) =>
    WITHOUT_DAY.has(parseLine(text, { ...journal.partContext, head: true }).type),
  );
  if (first < 0 || start.line < first || start.line >= head.lines.length) return [];
  const at = { line: first, character: 0 };
  const day = dayLine(journal, document, datedDays(uri, document), today);
  return [
    {
      title: commandTexts.dateLines(day.trim()),
      kind: "quickfix",
      edits: [{ range: { start: at, end: at }, newText: day + (head.ends[first] || "\n") }],
      preferred: true,
      diagnostics: [],
    },
  ];
}

/** What is reported as `no-day`. */
const WITHOUT_DAY: ReadonlySet<string> = new Set(["entry", "phase", "session", "break"]);
