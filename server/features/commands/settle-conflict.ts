import { orderOf } from "../../checks/file/journal-order.ts";
import type { Journal } from "../../journal/journal.ts";
import { blockIndexAt, type Document } from "../../syntax/document/document.ts";
import { isAsked } from "../explain/action-kinds.ts";
import { datedDays } from "../explain/dated-days.ts";
import { refusal } from "../explain/refusal.ts";
import type { CodeAction, Range, TextEdit } from "../types.ts";
import type { CommandAnswer } from "./command-answer.ts";
import { commandTexts } from "./command-texts.ts";
import { type Conflict, conflictsIn, hasMarkers, linesKeeping, type Side, sideOf } from "./conflicts.ts";
import { linesReplaced, linesTakenOut } from "./lines-in-file.ts";
import { mergedDays } from "./merge-days.ts";

/**
 * In a conflict that a merge left: keeps both sides, the days in the order of the file and what both have in a day
 * once; or the upper side, or the lower one. With both sides, every conflict of the same days is settled.
 *
 * @param only as in `codeActionsIn`
 */
export function settleConflictIn(
  journal: Journal,
  uri: string,
  { start, end }: Range,
  only?: readonly string[],
): readonly CodeAction[] {
  const document = journal.files.get(uri);
  if (!isAsked("quickfix", only) || !document) return [];
  const conflicts = journal.memo.of(document, "conflicts", () => conflictsIn(document));
  const conflict = conflicts.find(({ open, close }) => start.line <= close && open <= end.line);
  if (!conflict) return [];
  const group = groupsOf(document, conflicts).find(({ own }) => own.includes(conflict))!;
  const action = (title: string, edits: readonly TextEdit[]): CodeAction => ({
    title,
    kind: "quickfix",
    edits,
    preferred: false,
    diagnostics: [],
  });
  const both =
    group.to - group.from > MOST_LINES
      ? []
      : [action(commandTexts.keepBothSides, keepingBoth(journal, uri, document, group))];
  return [
    ...both,
    action(commandTexts.keepUpperSide, keepingOne(document, conflict, "upper")),
    action(commandTexts.keepLowerSide, keepingOne(document, conflict, "lower")),
  ];
}

/** More take too long to be looked at while the cursor moves; the command settles them. */
const MOST_LINES = 2000;

/** Keeps both sides of every conflict of a file; the cursor goes to the day of the first. */
export function keepBothSides(journal: Journal, uri: string): CommandAnswer {
  const document = journal.files.get(uri);
  if (!document || !hasMarkers(document)) return NO_CONFLICT;
  const groups = groupsOf(document, conflictsIn(document));
  if (groups.length === 0) return NOT_WHOLE;
  const edits = groups.flatMap((group) => keepingBoth(journal, uri, document, group));
  return { ok: true, uri, edits, cursor: { line: groups[0]!.from, character: 0 } };
}

const NO_CONFLICT = refusal(commandTexts.noConflict);
const NOT_WHOLE = refusal(commandTexts.brokenConflict);

/** Conflicts of the same days, with the lines from the first of these days to the end of the last. */
interface Group {
  readonly own: readonly Conflict[];
  readonly from: number;
  readonly to: number;
}

/** A conflict goes on up to the next day line: what is below its end belongs to the last day of each side. */
function groupsOf(document: Document, conflicts: readonly Conflict[]): readonly Group[] {
  const groups: { own: Conflict[]; from: number; to: number }[] = [];
  for (const conflict of conflicts) {
    const from = document.starts[blockIndexAt(document, conflict.open)]!;
    const last = blockIndexAt(document, conflict.close);
    const to = document.starts[last]! + document.blocks[last]!.lineCount;
    const open = groups.at(-1);
    if (open && from < open.to) {
      open.own.push(conflict);
      open.to = to;
    } else groups.push({ own: [conflict], from, to });
  }
  return groups;
}

function keepingBoth(journal: Journal, uri: string, document: Document, group: Group): readonly TextEdit[] {
  const [upper, lower] = (["upper", "lower"] as const).map((side) => linesKeeping(document, group.own, side, group));
  const { newestFirst } = orderOf(datedDays(uri, document));
  const lines = mergedDays(journal, upper!, lower!, { newestFirst, separated: hasGaps(document) });
  return linesReplaced(document, group, lines);
}

function keepingOne(document: Document, conflict: Conflict, side: Side): readonly TextEdit[] {
  const { from, to } = sideOf(conflict, side);
  const gone: number[] = [];
  for (let at = conflict.open; at <= conflict.close; at++) if (at < from || at >= to) gone.push(at);
  return linesTakenOut(document, gone);
}

/** Whether most days that no conflict touches end with an empty line; also where there is none. */
function hasGaps({ blocks }: Document): boolean {
  const days = blocks.slice(0, -1).filter(({ day, text }) => day && !/[<>=]{7}/.test(text));
  return 2 * days.filter(({ text }) => ENDS_EMPTY.test(text)).length >= days.length;
}

const ENDS_EMPTY = /(?:\r\n|\r|\n)[^\S\r\n]*(?:\r\n|\r|\n)$/;
