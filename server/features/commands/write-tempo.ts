import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import type { Position } from "../../syntax/document/document.ts";
import { cutLine } from "../../syntax/line/cut.ts";
import { termType } from "../../syntax/words/term-types.ts";
import { type EntryUnderCursor, entryUnderCursor } from "../explain/line-under-cursor.ts";
import { separatorsOf } from "../explain/separators.ts";
import type { CommandAnswer, CommandDone } from "./command-answer.ts";
import { goesOnToday, isPast } from "./into-today.ts";
import { repeatedLine } from "./repeated-line.ts";

export interface TempoPlayed {
  readonly today: DayNumber;
  /** Beats a minute, in the beat of the line. */
  readonly bpm: number;
}

/**
 * A tempo that was just played, written where its outcome is to follow: behind that tempo where today's entry has it
 * and says nothing of it yet, else at the end of the entry. An entry of an earlier day goes on today. The cursor goes
 * behind the tempo and a space.
 */
export function writeTempo(
  journal: Journal,
  uri: string,
  position: Position,
  { today, bpm }: TempoPlayed,
): CommandAnswer {
  const found = entryUnderCursor(journal, uri, position);
  if (!found.ok) return found;
  if (!isPast(found, today)) return behindTempo(uri, found, bpm) ?? atEnd(uri, found, bpm);
  const { entry, text } = found;
  const attempt = entry.attempts.findIndex(({ tempo }) => tempo);
  const line =
    attempt >= 0 ? repeatedLine(text, entry, attempt, bpm) : { text: played(text, entry) + added(text, entry, bpm) };
  const cursor = "tempoEnd" in line ? line.tempoEnd : line.text.length;
  const spaced = `${line.text.slice(0, cursor)} ${line.text.slice(cursor)}`.trimEnd();
  return goesOnToday(journal, uri, found, { text: spaced.padEnd(cursor + 1), cursor: cursor + 1 }, today);
}

/** Where the entry names the tempo already, and nothing was said of it. */
function behindTempo(
  uri: string,
  { entry, text, first, line }: EntryUnderCursor,
  bpm: number,
): CommandDone | undefined {
  const waiting = entry.attempts.find(({ tempo, outcomes }) => tempo?.bpm === bpm && outcomes.length === 0);
  return waiting && inserted(uri, { line: first + line, character: waiting.place.end }, text, " ");
}

function atEnd(uri: string, { entry, text, first, line }: EntryUnderCursor, bpm: number): CommandDone {
  const end = text.slice(0, entry.source.end).trimEnd().length;
  return inserted(uri, { line: first + line, character: end }, text, `${added(text, entry, bpm)} `);
}

/** A space that stands there already is gone behind. */
function inserted(uri: string, at: Position, text: string, words: string): CommandDone {
  const spaced = text[at.character] === " " && words.endsWith(" ");
  const newText = spaced ? words.slice(0, -1) : words;
  const cursor = { line: at.line, character: at.character + words.length };
  return { ok: true, uri, edits: newText === "" ? [] : [{ range: { start: at, end: at }, newText }], cursor };
}

/** `, 66` behind other tempos, else `, at 66`; without the comma where the line has none. */
function added(text: string, { source, attempts }: Entry, bpm: number): string {
  const { cuts } = cutLine(text.slice(0, source.end), source.start);
  const hasCommas = separatorsOf(text, cuts).some(({ sign }) => sign === ",");
  const comma = hasCommas || source.items.length === 0 ? "," : "";
  return `${comma} ${attempts.some(({ tempo }) => tempo) ? "" : "at "}${bpm}`;
}

/** What of an entry says what is played and how, up to where it tells how it went. */
function played(text: string, { source }: Entry): string {
  const result = source.items.find(({ meaning }) => termType(meaning.type)?.tells === "result");
  return text.slice(source.start, result?.start ?? source.end).replace(/[\s,]+$/, "");
}
