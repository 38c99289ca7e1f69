import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import type { BlockModel } from "../../journal/model.ts";
import type { Block } from "../../syntax/document/document.ts";
import type { Item } from "../../syntax/words/meaning.ts";
import { daysOfJournal } from "./dated-days.ts";
import { INDENT } from "./indentation.ts";

/** The phases that a session went through. */
export interface SessionPhases {
  /** A line for each: `groundwork, 15 min`. */
  readonly lines: readonly string[];
  /** What entries below them are indented by. */
  readonly indent: string;
}

/**
 * The phases of the last session before a day that had phases; plans are none. Undefined where there was no such
 * session.
 */
export function lastPhases(journal: Journal, before: DayNumber): SessionPhases | undefined {
  const earlier = daysOfJournal(journal)
    .filter(({ date }) => date < before)
    .sort((a, b) => b.date - a.date);
  for (const { document, index } of earlier) {
    const block = document.blocks[index]!;
    const found = phasesIn(block, journal.ownModel(block));
    if (found) return found;
  }
  return undefined;
}

/** Those of the last session of a day; undefined where it has none, or is a plan. */
export function phasesIn(block: Block, model: BlockModel): SessionPhases | undefined {
  if (model.day?.planned) return undefined;
  const phases = model.phases.filter(({ phase }) => phase !== undefined);
  const session = phases.filter(({ sitting }) => sitting === phases.at(-1)!.sitting);
  const lines = session.map(({ line }) => phaseLine(block.lines[line]!, model.lines[line]!));
  return lines.length === 0 ? undefined : { lines, indent: indentBelowPhase(block, model) };
}

/** The phase and its minutes; what else was said of it was said of that day. */
function phaseLine(text: string, line: BlockModel["lines"][number]): string {
  const items: readonly Item[] = line.type === "phase" ? line.items : [];
  const told = items.filter(
    ({ meaning }) => meaning.type === "phase" || (meaning.type === "amount" && meaning.possible),
  );
  return told.map(({ start, end }) => text.slice(start, end)).join(", ");
}

/** As the last entry of a day that stands below a phase has it; the usual step where none does. */
export function indentBelowPhase(block: Block, { entries }: BlockModel): string {
  const entry = entries.findLast(({ phase }) => phase !== undefined);
  return entry ? indentOf(block.lines[entry.place.line]!) : INDENT;
}

/** The white space that a line begins with. */
export function indentOf(text: string): string {
  return /^[^\S\uFEFF]*/.exec(text)![0];
}
