import { patternOfRecord } from "../history/exercise-name.ts";
import { parseIsoDate } from "../journal/calendar.ts";
import type { Journal } from "../journal/journal.ts";
import type { DayNumber, Entry, NoteValue, Tempo } from "../journal/model.ts";
import { subjectKey } from "../journal/subject-text.ts";
import type { Block, Document } from "../syntax/document.ts";
import { dateWord } from "../syntax/day-line.ts";
import type { Meaning } from "../syntax/meaning.ts";
import { termKey } from "./term-key.ts";

/** How many days of the journal count: the latest that are written. Older ones say little of what is played now. */
const DAYS = 100;
/** A use counts half as much after so many days. */
const HALF_LIFE = 30;

/** Something that the journal used: its words as they were last typed, and its weight. */
export interface Used {
  readonly text: string;
  readonly type: Meaning["type"];
  readonly score: number;
}

/** The latest tempo that was reached in an exercise. */
export interface ReachedTempo {
  readonly exercise: string;
  /** `72`, `1/4.=52`: as it was written, without `at`. */
  readonly text: string;
  readonly tempo: Tempo;
  readonly noteValue?: NoteValue;
  readonly place: string;
  readonly day: DayNumber;
}

/** What the latest days of a journal used. */
export interface Usage {
  /** Terms by `termKey`, subjects by `subjectKey`. */
  readonly used: ReadonlyMap<string, Used>;
  /** Latest first. */
  readonly reached: readonly ReachedTempo[];
}

/** What one day used. */
interface DayUsage {
  readonly day?: DayNumber;
  readonly used: ReadonlyMap<string, { readonly text: string; readonly type: Meaning["type"]; readonly count: number }>;
  readonly reached: readonly ReachedTempo[];
}

/**
 * What the last hundred days that a journal has written used, from all of its files; the day that is being edited too.
 * Each day is read once and kept with its block; here they are only added up, so that ten years cost no more than one.
 */
export function usageOf(journal: Journal): Usage {
  const days = latestDays(journal);
  const newest = days[0]?.day ?? 0;
  const used = new Map<string, Used>();
  for (const each of days) {
    const weight = 0.5 ** ((newest - each.day!) / HALF_LIFE);
    for (const [key, { text, type, count }] of each.used) {
      const known = used.get(key);
      used.set(key, { text: known?.text ?? text, type, score: (known?.score ?? 0) + weight * count });
    }
  }
  return { used, reached: days.flatMap(({ reached }) => reached) };
}

/** The latest days of all files, the newest first. Files are taken to run one way, whichever it is. */
function latestDays(journal: Journal): DayUsage[] {
  const files = [...journal.files.values()].map((document) => newestFirst(journal, document));
  files.sort((a, b) => b.newest - a.newest);
  const days: DayUsage[] = [];
  for (const { blocks } of files) {
    if (days.length >= DAYS) break;
    for (const block of blocks(DAYS - days.length)) {
      const usage = dayUsage(journal, block);
      if (usage.day !== undefined) days.push(usage);
    }
  }
  return days.sort((a, b) => b.day! - a.day!);
}

interface NewestFirst {
  readonly newest: DayNumber;
  /** At most so many blocks from the newer end. */
  readonly blocks: (most: number) => readonly Block[];
}

function newestFirst({ memo }: Journal, { blocks }: Document): NewestFirst {
  const dateOf = (block: Block | undefined): DayNumber => {
    const day = block && memo.of(block, "date", () => ({ day: parseIsoDate(dateWord(block.lines[0]!)?.text ?? "") }));
    return day?.day ?? Number.NEGATIVE_INFINITY;
  };
  const first = Math.max(dateOf(blocks[0]), dateOf(blocks[1]));
  const last = dateOf(blocks.at(-1));
  if (first > last) return { newest: first, blocks: (most) => blocks.slice(0, most + 1) };
  return { newest: last, blocks: (most) => blocks.slice(-most).toReversed() };
}

function dayUsage(journal: Journal, block: Block): DayUsage {
  return journal.memo.of(block, "usage", () => readUsage(journal, block));
}

function readUsage(journal: Journal, block: Block): DayUsage {
  const model = journal.model(block);
  const day = model.day?.date;
  if (day === undefined) return { used: new Map(), reached: [] };
  const used = new Map<string, { text: string; type: Meaning["type"]; count: number }>();
  const count = (key: string | undefined, text: string, type: Meaning["type"]): void => {
    if (key !== undefined) used.set(key, { text, type, count: (used.get(key)?.count ?? 0) + 1 });
  };
  for (const [i, line] of model.lines.entries()) {
    const text = block.lines[i]!;
    if (!("items" in line)) continue;
    for (const { start, end, meaning } of line.items) count(termKey(meaning), text.slice(start, end), meaning.type);
    if (line.type !== "entry" || !line.subject) continue;
    const { start, end, meaning } = line.subject;
    if (meaning.type === "faulty subject" || meaning.type === "free") continue;
    count(subjectKey(meaning), text.slice(start, end), meaning.type);
    if (meaning.type === "scale") count(`kind ${meaning.kind}`, "", "kind");
    if (meaning.type === "chord") count(`chord kind ${meaning.chord}${meaning.broken ? " broken" : ""}`, "", "chord kind");
  }
  const reached = model.entries.flatMap((entry) => reachedIn(entry, block.lines[entry.place.line]!, day)).toReversed();
  return { day, used, reached };
}

/** Each reached tempo of an entry. A number that goes on from a tempo with a beat is written with that beat. */
function reachedIn(entry: Entry, line: string, day: DayNumber): ReachedTempo[] {
  const { subject } = entry;
  if (!subject) return [];
  let beat = "";
  return entry.attempts.flatMap(({ tempo, reached, conditions, place }) => {
    if (!tempo) return [];
    const typed = /^(?:at|@)?\s*(.*=)?/i.exec(line.slice(place.start, place.end))![1] ?? "";
    if (typed || !tempo.beat) beat = typed;
    if (!reached) return [];
    const found = { exercise: exerciseKey(entry), text: `${beat}${tempo.bpm}`, tempo, noteValue: conditions.noteValue, place: entry.where?.text ?? "", day };
    return [found];
  });
}

/** What makes two entries the same exercise here, whatever the instrument. */
export function exerciseKey(entry: Pick<Entry, "subject" | "pattern" | "inversion">): string {
  return `${subjectKey(entry.subject!)}\n${patternOfRecord(entry) ?? ""}`;
}

