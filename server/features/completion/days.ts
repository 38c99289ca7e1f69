import { type DayNumber, isoDate, parseIsoDate, weekday } from "../../journal/calendar.ts";
import { dayOfBlock } from "../../journal/day-of-block.ts";
import type { Journal } from "../../journal/journal.ts";
import type { BlockModel } from "../../journal/model.ts";
import type { Document } from "../../syntax/document/document.ts";
import { DECLARATION_WORDS } from "../../syntax/line/declaration-word.ts";
import type { Item } from "../../syntax/words/meaning.ts";
import { WEEKDAY_NAMES } from "../explain/explain.ts";
import { termKey } from "../explain/term-key.ts";
import { completionTexts } from "./completion-texts.ts";
import type { Candidate } from "./rank.ts";
import type { Usage } from "./usage.ts";

/** How many days at either end of a file are looked through for today. */
const ENDS = 8;

/** `2026-03-09 Mon`: today and tomorrow, where no other day of the file is theirs. */
export function newDays({ blocks }: Document, own: number | undefined, today: DayNumber, fit: number): Candidate[] {
  const near = blocks.filter((_, i) => i !== own && (i < ENDS || i >= blocks.length - ENDS));
  const taken = near.map(dayOfBlock);
  return [today, today + 1]
    .filter((day) => !taken.includes(day))
    .map((day) => ({
      label: dayText(day),
      kind: "date",
      detail: day === today ? completionTexts.today : completionTexts.tomorrow,
      fit,
      resolve: { topic: "date", key: isoDate(day) },
    }));
}

function dayText(day: DayNumber): string {
  return `${isoDate(day)} ${shortWeekday(day)}`;
}

function shortWeekday(day: DayNumber): string {
  return WEEKDAY_NAMES[weekday(day) - 1]!.slice(0, 3);
}

/**
 * Whether a new day may begin on a line: nothing but empty lines follow in the file, or, where the newest day stands
 * first, nothing but empty lines stand between it and the first day.
 *
 * @param line from 0, within its block
 */
export function mayBeginDay(document: Document, block: number, line: number): boolean {
  const isEmpty = (text: string): boolean => text.trim() === "";
  if (!document.blocks[block]!.lines.slice(line + 1).every(isEmpty)) return false;
  const { blocks } = document;
  if (block === blocks.length - 1) return true;
  if (block !== 0 || blocks.length < 3 || blocks[0]!.day) return false;
  const day = (at: number): DayNumber => dayOfBlock(blocks.at(at)!) ?? 0;
  return day(1) > day(-1);
}

/** What else a day line says: its weekday, minutes, a plan or a rest. */
export function dayLineCandidates(date: string, items: readonly Item[], usage: Usage): Candidate[] {
  const day = parseIsoDate(date);
  const known =
    day === undefined
      ? []
      : [{ label: shortWeekday(day), alternatives: [WEEKDAY_NAMES[weekday(day) - 1]!], kind: "date" as const, fit: 0 }];
  const weekdays = items.some(({ meaning }) => meaning.type === "weekday") ? [] : known;
  const words = items.some(({ meaning }) => meaning.type === "line word")
    ? []
    : [lineWord("rest", 3), lineWord("plan", 3)];
  return [...weekdays, ...amounts("day", items, usage, 1), ...words];
}

/** What else a session, a phase or a break says. */
export function frameCandidates(
  type: "session" | "phase" | "break",
  items: readonly Item[],
  usage: Usage,
): Candidate[] {
  const isPlan = items.some(({ meaning }) => meaning.type === "line word" && meaning.id === "plan");
  return [...amounts(type, items, usage, 0), ...(type === "phase" && !isPlan ? [lineWord("plan", 2)] : [])];
}

const AMOUNTS = [5, 10, 15, 20, 30, 45];

function amounts(line: string, items: readonly Item[], { used }: Usage, fit: number): Candidate[] {
  if (items.some(({ meaning }) => meaning.type === "amount")) return [];
  const own = [...used].flatMap(([key, { text, type }]): Candidate[] =>
    type === "amount" && key.startsWith(`${line} amount `)
      ? [{ label: text, kind: "term", fit, usage: key, identity: key.slice(line.length + 1) }]
      : [],
  );
  return [
    ...own,
    ...AMOUNTS.map(
      (minutes): Candidate => ({ label: `${minutes} min`, kind: "term", fit, identity: `amount ${minutes}` }),
    ),
  ];
}

function lineWord(word: string, fit: number): Candidate {
  return { label: word, kind: "phase", fit, usage: `line word ${word}`, resolve: { topic: "term", key: word } };
}

/** The lines that frame others: phases first that the day does not have yet. */
export function frameLineCandidates({ vocabulary }: Journal, model: BlockModel, fit: number): Candidate[] {
  const had = model.phases.map(({ phase }) => phase);
  const phases = vocabulary.own.flatMap(({ words, meaning }) =>
    meaning.type === "phase" ? [{ id: meaning.id, words }] : [],
  );
  const declared = vocabulary.declared.phases.map((id) => ({ id, words: [id] }));
  const offered = [...phases, ...declared].map(
    ({ id, words }): Candidate => ({
      label: words[0]!,
      alternatives: words.slice(1),
      kind: "phase",
      fit: had.includes(id) ? fit + 3 : fit,
      usage: termKey({ type: "phase", id }),
      resolve: { topic: "term", key: words[0]! },
    }),
  );
  return [...offered, ...["session", "break", "rest", "plan"].map((word) => lineWord(word, fit + 3))];
}

/** The words that open a declaration. */
export function declarationWords(fit: number, words: readonly string[] = DECLARATION_WORDS): Candidate[] {
  return words.map((word) => ({
    label: word,
    insert: `${word} `,
    kind: "declaration",
    fit,
    resolve: { topic: "declaration", key: word },
  }));
}
