import { dayMinutes } from "../../history/day-minutes.ts";
import { isPlanLeft, linesNotPlayed, saysPlan, wordIn, writtenByPlan } from "../../history/not-played.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import type { BlockModel } from "../../journal/model.ts";
import type { Item } from "../../syntax/words/meaning.ts";
import { isAsked } from "../explain/action-kinds.ts";
import type { CodeAction, Range, TextEdit } from "../types.ts";
import { commandTexts } from "./command-texts.ts";
import { linesTakenOut } from "./lines-in-file.ts";

const KIND = "refactor.rewrite";

/**
 * On the line of a day that is over, or on a line below it that says `plan`: takes out what Daystave planned and was
 * not played, with the plan's own remarks, the phases that nothing is left in, and each amount of time that was
 * planned and is not what was played. Where nothing planned is left, the word `plan` goes too. A line that Daystave
 * cannot have written (`writtenByPlan`) stays, and one on which the player wrote anything. None where there is nothing
 * to take out.
 *
 * @param only as in `codeActionsIn`
 */
export function takeOutPlanIn(
  journal: Journal,
  uri: string,
  { start }: Range,
  today: DayNumber,
  only?: readonly string[],
): readonly CodeAction[] {
  const document = journal.files.get(uri);
  if (!isAsked(KIND, only) || !document) return [];
  const index = document.starts.findLastIndex((first) => first <= start.line);
  const block = document.blocks[index];
  if (!block?.day) return [];
  const model = journal.model(block);
  const first = document.starts[index]!;
  const date = model.day?.date;
  if (date === undefined || date >= today || !saysPlan(model.lines[start.line - first])) return [];
  const gone = linesNotPlayed(
    model,
    writtenByPlan(model, (line) => block.lines[line]!),
  );
  if (gone.size === 0) return [];
  const edits = [
    ...wordsTakenOut(model, gone).map(({ line, start, end }) => cut(first + line, start, end)),
    ...linesTakenOut(
      document,
      [...gone].map((line) => first + line),
    ),
  ];
  return [{ title: commandTexts.takeOutPlan, kind: KIND, edits, preferred: false, diagnostics: [] }];
}

interface Stretch {
  readonly line: number;
  readonly start: number;
  readonly end: number;
}

/** `plan`, and the amounts of time that were planned and are not what was played, each with what parts it. */
function wordsTakenOut(model: BlockModel, gone: ReadonlySet<number>): readonly Stretch[] {
  const stays = isPlanLeft(model, gone);
  const isPlannedAt = (line: number) => model.phases.find((phase) => phase.line === line)?.planned ?? false;
  return model.lines.flatMap((line, at) => {
    if (gone.has(at) || (line.type !== "day" && line.type !== "session" && line.type !== "phase")) return [];
    const from = line.type === "day" ? line.dateEnd : line.start;
    const word = line.type === "session" || stays ? undefined : wordIn(line.items, "plan");
    const amount = line.items.find(({ meaning }) => meaning.type === "amount");
    const isFalse = amount && isPlannedAt(at) && !isTrue(model, at, amount);
    return [word, isFalse ? amount : undefined].flatMap((item) =>
      item ? [{ line: at, start: endBefore(line.items, item, from), end: item.end }] : [],
    );
  });
}

function endBefore(items: readonly Item[], { start }: Item, from: number): number {
  return Math.max(from, ...items.filter((each) => each.end <= start).map(({ end }) => end));
}

/** Whether an amount of time is what was played below its line. */
function isTrue(model: BlockModel, line: number, { meaning }: Item): boolean {
  if (meaning.type !== "amount" || !meaning.possible) return false;
  const { sittings, phases, entries } = model;
  const sitting = sittings.findIndex((each) => each.line === line);
  const own = phases.findIndex((each) => each.line === line && (each.phase !== undefined || sitting < 0));
  const isWhole = model.lines[line]!.type === "day";
  const isEmpty = own >= 0 && sitting < 0 && !entries.some(({ stretch }) => stretch === own);
  if (isEmpty) return true; // nobody took anything out of it
  const played = entries.filter(({ planned, stretch }) => {
    if (planned) return false;
    return isWhole || (sitting >= 0 ? phases[stretch]!.sitting === sitting : stretch === own);
  });
  const stated = played.reduce((sum, { minutes }) => sum + (minutes ?? Number.NaN), 0);
  return stated === meaning.minutes && (!isWhole || total(model) === stated);
}

function total(model: BlockModel): number {
  return dayMinutes(model).phases.reduce((sum, { minutes }) => sum + minutes, 0);
}

function cut(line: number, start: number, end: number): TextEdit {
  return { range: { start: { line, character: start }, end: { line, character: end } }, newText: "" };
}
