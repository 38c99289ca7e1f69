import type { DayNumber } from "../../journal/calendar.ts";
import type { Conventions } from "../../journal/conventions.ts";
import type { Journal } from "../../journal/journal.ts";
import type { BlockModel, Entry } from "../../journal/model.ts";
import { readEntry } from "../../journal/read-entry.ts";
import { subjectKey } from "../../journal/subject-text.ts";
import { type Block, blockIndexAt, type Document, type Position } from "../../syntax/document/document.ts";
import { dateWord } from "../../syntax/line/day-line.ts";
import { declarationWordAt } from "../../syntax/line/declaration-word.ts";
import type { EntryLine, Line } from "../../syntax/line/line.ts";
import { LONGEST_LINE } from "../../syntax/line/line-reader.ts";
import { parseLine } from "../../syntax/line/parse-line.ts";
import type { Item } from "../../syntax/words/meaning.ts";
import { termType } from "../../syntax/words/term-types.ts";
import { isQuote } from "../../syntax/words/token.ts";
import type { CompletionItem } from "../types.ts";
import { claimCandidates } from "./claims.ts";
import {
  dayLineCandidates,
  declarationWords,
  frameCandidates,
  frameLineCandidates,
  mayBeginDay,
  newDays,
} from "./days.ts";
import { declarationCandidates } from "./declarations.ts";
import { blankDeclarations, blankEntry, dayWithPhases } from "./habits.ts";
import { practisedCandidates } from "./practised.ts";
import { type Candidate, completing, ranked } from "./rank.ts";
import { lastItem } from "./situation.ts";
import { keyCandidates, subjectCandidates } from "./subjects.ts";
import { termCandidates } from "./terms.ts";
import { type Typing, typingAt } from "./typing.ts";
import { type Usage, usageOf } from "./usage.ts";

export { explainCompletion } from "./explanation.ts";

/** The line that is being typed, and everything around it that decides what may be offered. */
interface Scene {
  readonly journal: Journal;
  readonly uri: string;
  readonly conventions: Conventions;
  readonly usage: Usage;
  readonly document: Document;
  readonly block: number;
  /** From 0, within the block. */
  readonly line: number;
  readonly typing: Typing;
  /** Above the first day. */
  readonly head: boolean;
  readonly today: DayNumber;
  readonly snippets: boolean;
  /** `aim` or `set` with the column where its work begins: from there on the line is read as an entry. */
  readonly work?: { readonly word: "aim" | "set"; readonly from: number };
}

/**
 * What may stand at a position, best first by `sortText`: what fits the place, then what this journal used most and
 * latest. Each item replaces the phrase that is being typed. Remarks and prose get nothing. `today` is a day number;
 * with `snippets` there are also lines to be filled in.
 */
export function completionsAt(
  journal: Journal,
  uri: string,
  position: Position,
  today: number,
  { snippets } = { snippets: false },
): readonly CompletionItem[] {
  const document = journal.files.get(uri);
  if (!document || position.line < 0 || position.line >= document.lineCount) return [];
  const block = blockIndexAt(document, position.line);
  const { lines } = document.blocks[block]!;
  const line = position.line - document.starts[block]!;
  const text = lines[line]!;
  const cursor = Math.max(0, Math.min(position.character, text.length));
  const date = dateWord(text);
  const typing = typingAt(text, cursor, date && cursor > date.end ? date.end : bodyStart(text, cursor));
  if (!typing || text.length > LONGEST_LINE) return []; // it is not read either
  const head = !document.blocks[block]!.day;
  const scene: Scene = {
    journal,
    uri,
    conventions: journal.conventions(uri),
    usage: usageOf(journal, { block: document.blocks[block]!, line }),
    document,
    block,
    line,
    typing,
    head,
    today,
    snippets,
  };
  const whole = wholeTermAt(scene);
  const starts = typing.starts.filter((at) => !whole || at <= whole.start || at >= whole.end);
  const offers = starts.flatMap((start) => completing(candidatesAt(scene, start, date), typing, start));
  return ranked(offers, typing, position.line, (key) => scene.usage.used.get(key)?.score ?? 0);
}

/** Behind the indentation and a list mark; for a cursor in the indentation the cursor itself. */
function bodyStart(text: string, cursor: number): number {
  return Math.min(cursor, /^[\s\uFEFF]*(?:[-*•]\s+)?/.exec(text)![0].length);
}

/**
 * The term that what is typed ends with, where that stands in full: `5 min`, which may go on, but not as `5 minims`. A
 * title, and other free words, are whole at every letter.
 */
function wholeTermAt({ journal, typing, head }: Scene): Item | undefined {
  const line = read(journal, typing.text.slice(0, typing.typedTo), head);
  const items = line.type === "entry" ? [...line.items, ...(line.subject ? [line.subject as Item] : [])] : [];
  return items.find(({ start, end, meaning }) => {
    const words = termType(meaning.type)?.words ?? (WHOLE_SUBJECTS.includes(meaning.type) ? "fixed" : "free");
    return start < typing.typedTo && end === typing.typedTo && words !== "free";
  });
}

const WHOLE_SUBJECTS: readonly string[] = ["scale", "chord", "technique", "activity"];

type DateWord = ReturnType<typeof dateWord>;

/** What may begin at a column of the line. */
function candidatesAt(scene: Scene, start: number, date: DateWord): Candidate[] {
  const { typing, head } = scene;
  if (date) return dateLine(scene, start, date);
  const from = bodyStart(typing.text, typing.cursor);
  const declared = declarationWordAt(typing.text, from, typing.remark);
  if (declared && start > declared.end && typing.cursor > declared.end) {
    const { word, end } = declared;
    if (word === "aim" || word === "set") return entryCandidates({ ...scene, work: { word, from: end } }, start, end);
    const quoted = isQuote(typing.text.slice(end).trim()[0] ?? "");
    if (head || quoted) return declarationCandidates({ ...scene, word, wordEnd: end, start });
  }
  return entryCandidates(scene, start, from);
}

function dateLine(
  { document, block, typing, today, usage, journal }: Scene,
  start: number,
  date: NonNullable<DateWord>,
): Candidate[] {
  if (typing.cursor <= date.end)
    return typing.cursor === date.end && start === date.start ? newDays(document, block, today, 0) : [];
  if (start < date.end) return [];
  const rest = withoutWord(typing, date.start, start);
  const line = read(journal, rest, false);
  if (line.type !== "day" || line.items.some(({ meaning }) => meaning.type === "unknown")) return [];
  return line.items.some(({ meaning }) => meaning.type === "line word" && meaning.id === "rest")
    ? []
    : dayLineCandidates(date.text, line.items, usage);
}

/** The line without what is being typed, its columns kept up to there; nothing before `from`. */
function withoutWord({ text, end, remark }: Typing, from: number, start: number): string {
  const before = " ".repeat(from) + text.slice(from, start).replace(/[\s,:>→]+$/, "");
  const behind = text.slice(end, remark).replace(/^[\s,:>→]+/, "");
  return behind.trim() === "" ? before : before.trim() === "" ? before + behind : `${before}, ${behind}`;
}

function read({ partContext }: Journal, text: string, head: boolean): Line {
  return parseLine(text, { ...partContext, head });
}

/** What may stand at a column of a line that is, or is to be, an entry, a phase or another line of a day. */
function entryCandidates(scene: Scene, start: number, from: number): Candidate[] {
  const { typing, journal, work } = scene;
  const whole = withoutWord(typing, from, start);
  const line = whole.trim() === "" ? undefined : read(journal, whole, false);
  if (line?.type === "prose") return innerScale(scene, start, from);
  const before = withoutWord({ ...typing, end: typing.remark }, from, start);
  if (before.trim() === "") return lineStart(scene, start);
  const written = line && before === whole ? line : read(journal, before, false);
  if (written.type === "entry") return inEntry(scene, start, written, line?.type === "entry" ? line : written);
  if (work) return [];
  if (written.type === "session" || written.type === "phase" || written.type === "break")
    return frameCandidates(written.type, written.items, scene.usage);
  return written.type === "prose" ? innerScale(scene, start, from) : [];
}

/** What a line may open with, the same whether it is indented or not. */
function lineStart(scene: Scene, start: number): Candidate[] {
  const { journal, uri, conventions, usage, typing, head, work, document, block, line, today } = scene;
  const typed = typing.text.slice(start, typing.cursor);
  if (work) return subjectCandidates({ journal, usage, typed, fit: 0 });
  const day = document.blocks[block]!;
  const model = journal.model(day);
  const isToday = model.day?.date === today;
  const days = mayBeginDay(document, block, line)
    ? newDays(document, undefined, today, isToday ? LAST : daysFit(day, line, typed))
    : [];
  const begun = [...days, ...dayWithPhases(journal, document, { days, today, typed, fit: 2 })];
  const blank = scene.snippets ? { journal, uri, today, block: day, line, fit: 2 } : undefined;
  if (head) return [...begun, ...declarationWords(1), ...(blank ? blankDeclarations(blank) : [])];
  const takesWholeLine = typing.text.slice(typing.end, typing.remark).trim() === "";
  return [
    ...begun,
    ...(takesWholeLine ? practisedCandidates({ journal, uri, conventions, day, line, typed, today, fit: 0 }) : []),
    ...subjectCandidates({ journal, usage, typed, fit: 1, had: subjectsOn(model, line) }),
    ...frameLineCandidates(journal, model, 1),
    ...(blank && typed === "" ? blankEntry(blank) : []),
    ...declarationWords(6, ["aim", "set"]),
  ];
}

/** Behind all else. */
const LAST = 9;

/** What a day has on its other lines. */
function subjectsOn({ entries }: BlockModel, line: number): ReadonlySet<string> {
  return new Set(entries.flatMap(({ place, subject }) => (subject && place.line !== line ? subjectKey(subject) : [])));
}

/** After an empty line a new day is the likeliest thing, otherwise one more line of this day. */
function daysFit({ lines }: Block, line: number, typed: string): number {
  return typed !== "" || (lines[line - 1] ?? "").trim() === "" ? 0 : 5;
}

/** `long tones on D mi`, `improvising on D mi`: the words before `on` are an entry, and a scale goes on with it. */
function innerScale({ journal, usage, typing }: Scene, start: number, from: number): Candidate[] {
  const before = " ".repeat(from) + typing.text.slice(from, start);
  const main = /^(.*\S)\s+(?:on|in)\s+$/is.exec(before)?.[1];
  const line = main === undefined ? undefined : read(journal, main, false);
  const subject = line?.type === "entry" && line.items.length === 0 ? line.subject?.meaning : undefined;
  const takesScale =
    subject?.type === "activity" ||
    (subject?.type === "figure" && subject.figure === "long tones" && subject.notes.length === 0);
  return takesScale ? keyCandidates({ journal, usage, typed: typing.text.slice(start, typing.cursor), fit: 0 }) : [];
}

function inEntry(scene: Scene, start: number, written: EntryLine, whole: EntryLine): Candidate[] {
  const { journal, conventions, usage, typing, today, work } = scene;
  const entry = entryOf(written, scene);
  const separator = /[,:>→]\s*$/.exec(typing.text.slice(0, start))?.[0].trim() ?? "";
  if (separator === ":")
    return written.claims.some(({ type }) => type === "notes")
      ? []
      : claimCandidates(entry, typing.text, conventions, dayOf(scene));
  if (separator === ">" || separator === "→")
    return keyCandidates({ journal, usage, typed: typing.text.slice(start, typing.cursor), fit: 0 });
  if (!mayGoOn(written, separator !== "")) return [];
  if (written.claims.some(({ type, end }) => type === "notes" && typing.text.slice(end, start).trim() === ""))
    return [];
  const items = whole.subject && whole !== written ? [...whole.items] : written.items;
  const terms = termCandidates({
    journal,
    conventions,
    usage,
    entry,
    items,
    separated: separator !== "",
    typed: typing.text.slice(start, typing.typedTo),
    today,
    work: work?.word,
  });
  return isLoneTonic(written) && separator === ""
    ? terms.map((each) => ({ ...each, fit: Math.min(9, each.fit + LATER) }))
    : terms;
}

/** Behind a tonic alone a kind comes first. */
const LATER = 4;

function isLoneTonic({ subject, items }: EntryLine): boolean {
  return subject?.meaning.type === "scale" && subject.meaning.unsaid === "major" && items.length === 0;
}

/** A stretch with words that nothing knows, and one in free words, goes on in words of its own. */
function mayGoOn({ items, subject }: EntryLine, separated: boolean): boolean {
  if (separated) return true;
  if (!subject) return false;
  const { type } = (lastItem(items) ?? subject).meaning;
  return type !== "unknown" && type !== "focus" && type !== "with" && type !== "sore" && type !== "faulty subject";
}

/** The day that the line stands on; above the first one, where aims are set, today. */
function dayOf({ journal, document, block, today }: Scene): DayNumber | undefined {
  const { day } = journal.ownModel(document.blocks[block]!);
  return day ? day.date : today;
}

function entryOf(line: EntryLine, { journal, document, block, line: at }: Scene): Entry {
  const model = journal.model(document.blocks[block]!);
  const planned = model.entries.find(({ place }) => place.line === at)?.planned ?? false;
  return { ...readEntry(line, at, journal.vocabulary), planned };
}
