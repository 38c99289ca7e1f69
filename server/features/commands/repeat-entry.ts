import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import type { BlockModel } from "../../journal/model.ts";
import { METRONOME_STEPS, nearestSteps } from "../../music/notes/note-value.ts";
import type { Block, Position } from "../../syntax/document/document.ts";
import { sortOf } from "../../syntax/line/line.ts";
import { dayOn, lastLineOf, type PlacedDay } from "../explain/dated-days.ts";
import { entryUnderCursor } from "../explain/line-under-cursor.ts";
import { isReadEntry } from "../explain/read-in-full.ts";
import { type Refusal, refusal } from "../explain/refusal.ts";
import { sectionsOf } from "../explain/sections.ts";
import type { CommandAnswer, CommandDone } from "./command-answer.ts";
import { belowEntry, insertedBelow, type NewLine } from "./entry-below.ts";
import { indentBelowPhase, indentOf } from "./phases-before.ts";
import { repeatedLine } from "./repeated-line.ts";

export interface RepeatOptions {
  readonly today: DayNumber;
  readonly step: "faster" | "slower";
}

/**
 * A copy of the entry at a position with its last tempo on the next metronome step: below the entry and its remarks. An
 * entry of an earlier day is repeated today where the journal has today's day: in the same phase, or at its end. The
 * cursor goes behind the tempo.
 */
export function repeatEntry(
  journal: Journal,
  uri: string,
  position: Position,
  { today, step }: RepeatOptions,
): CommandAnswer {
  const found = entryUnderCursor(journal, uri, position);
  if (!found.ok) return found;
  const { entry, text, model } = found;
  if (!entry.subject || !isReadEntry(entry.source)) return UNREADABLE;
  const tempo = entry.attempts.findLast((attempt) => attempt.tempo)?.tempo;
  if (!tempo) return NO_TEMPO;
  const { above, below } = nearestSteps(tempo.bpm);
  const bpm = step === "faster" ? above : below;
  if (bpm === undefined) return beyondSteps(step);
  const { text: repeated, tempoEnd: cursor } = repeatedLine(text, entry, bpm);
  const copy = { text: repeated, cursor };
  const date = model.day?.date;
  const day = date !== undefined && date < today ? dayOn(journal, uri, today) : undefined;
  if (day && entry.source.same) return GOES_ON;
  return day ? repeatedToday(journal, day, copy, entry.phase) : belowEntry(uri, found, copy);
}

const UNREADABLE = refusal(
  "Something on this line cannot be read, and is underlined. Once that is mended the line can be repeated.",
);
const GOES_ON = refusal(
  "This line goes on with the one above it, so that today it would say something else. Repeat the line above instead.",
);
const NO_TEMPO = refusal("This entry has no tempo to go on from. Write one, such as at 60, and try again.");

function beyondSteps(step: RepeatOptions["step"]): Refusal {
  const end = step === "faster" ? METRONOME_STEPS.at(-1)! : METRONOME_STEPS[0]!;
  const words = step === "faster" ? "highest" : "lowest";
  return refusal(
    `There is no metronome step further on: ${end} is the ${words}. Count another beat, such as half=60, or type the tempo.`,
  );
}

function repeatedToday(
  journal: Journal,
  { uri, document, index }: PlacedDay,
  copy: NewLine,
  phase: string | undefined,
): CommandDone {
  const block = document.blocks[index]!;
  const model = journal.model(block);
  const section =
    phase === undefined
      ? undefined
      : sectionsOf(model.lines.map(({ type }) => sortOf(type))).findLast(({ line }) => phaseOf(model, line) === phase);
  const line = section?.lastLine ?? lastLineOf(block);
  return insertedBelow(
    { uri, document, first: document.starts[index]!, block },
    line,
    indentAt(block, model, line),
    copy,
  );
}

function phaseOf({ lines }: BlockModel, at: number): string | undefined {
  const line = lines[at]!;
  const opening = line.type === "phase" ? line.items[0]?.meaning : undefined;
  return opening?.type === "phase" ? opening.id : undefined;
}

/**
 * As the entry before it has it, in the same phase; the usual step where there is none, and none where there is no
 * phase.
 */
function indentAt(block: Block, model: BlockModel, line: number): string {
  const stretch = model.phases.findLast((phase) => phase.line <= line);
  const entry = model.entries.findLast(({ place }) => place.line <= line && place.line > (stretch?.line ?? 0));
  if (entry) return indentOf(block.lines[entry.place.line]!);
  return stretch?.phase === undefined ? "" : indentBelowPhase(block, model);
}
