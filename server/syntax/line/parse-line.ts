import type { Item, Meaning } from "../words/meaning.ts";
import type { Vocabulary } from "../words/vocabulary.ts";
import { cutLine, type Part, remarkText } from "./cut.ts";
import { dayItems } from "./day-items.ts";
import { dateWord } from "./day-line.ts";
import { type DayWords, dayWordsIn, withMinutes } from "./day-words.ts";
import { isDeclaration, nearestDeclarationWord } from "./declaration-rule.ts";
import { declarationWordAt } from "./declaration-word.ts";
import { evidenceIn } from "./entry-evidence.ts";
import { entryOf } from "./entry-words.ts";
import { withHours } from "./hours.ts";
import { knownTitleIn, type TitleMatch } from "./known-title.ts";
import { entryBehindHeading, entryBehindLabel } from "./label.ts";
import type { Line, Remark } from "./line.ts";
import type { LineReader } from "./line-reader.ts";
import { LineWords } from "./line-words.ts";
import { parseEntry } from "./parse-entry.ts";
import { partsOf } from "./parts.ts";
import { parseSame, placeAbove, sameWords } from "./same-line.ts";
import { spokenIn } from "./spoken.ts";
import { asAmount } from "./total-words.ts";

export interface LineContext {
  readonly vocabulary: Vocabulary;
  /** What was read before with this vocabulary: owned by whoever owns that. */
  readonly memo: LineReader;
  /** Above the first day. */
  readonly head: boolean;
  /** What on this line may be a title that is known by then; those that are likelier first. */
  readonly titles?: readonly TitleMatch[];
}

/** Reads one line. Never fails: what cannot be read is an `unknown` item, a `prose` line, or a line of its own kind. */
export function parseLine(text: string, context: LineContext): Line {
  context.memo.read(text, 0, text.length);
  return lineRead(context.memo, text, context);
}

/** The line that a reader has just read. */
export function lineRead(reader: LineReader, text: string, context: LineContext): Line {
  const { kind, from } = reader;
  if (kind === "too long") return { type: "too long", length: text.length };
  if (kind === "blank") return { type: "blank" };
  if (kind === "conflict marker") return { type: "conflict marker", start: 0, end: text.length };
  const start = reader.start - from;
  if (kind === "remark") return { type: "remark", start, remark: { start, text: remarkText(text, start) } };
  const at = reader.cuts.remark - from;
  const remark: Remark | undefined = at < text.length ? { start: at, text: remarkText(text, at) } : undefined;
  const end = reader.contentEnd() - from;
  const parts = kind === "day" ? reader.parts() : withHours(text.slice(0, end), reader.parts(), context.vocabulary);
  if (kind === "day") {
    const date = dateWord(text)!;
    const items = dayItems(text, flat(parts), context.vocabulary);
    return { type: "day", start: date.start, end, date: date.text, dateEnd: date.end, items, remark };
  }
  if (kind === "phase") return { type: "phase", start, end, items: flat(parts), remark };
  if (kind === "entry") return { ...parseEntry(text, start, end, parts, context), remark };
  if (end <= start) return { type: "prose", start: text.search(/\S/), end: text.trimEnd().length, remark };
  if (reader.ditto) {
    const same = context.head ? undefined : parseSame(text, reader.ditto, end, context);
    return same ? { ...same, remark } : readSentence(text, reader.ditto.start, end, remark, context);
  }
  return kind === "open"
    ? readParts(text, start, end, parts, remark, context)
    : readSentence(text, start, end, remark, context);
}

/** A line that only the words of the whole tell. */
function readParts(
  text: string,
  start: number,
  end: number,
  parts: readonly Part[],
  remark: Remark | undefined,
  context: LineContext,
): Line {
  const frame = frameType(parts);
  const underHeading = frame === "phase" ? entryBehindHeading(text, start, end, parts, context) : undefined;
  if (underHeading) return { ...underHeading, remark };
  if (frame) return { type: frame, start, end, items: withMinutes(frameName(parts), flat(parts)), remark };
  const declared = declarationWordAt(text, start, end);
  if (declared && isDeclaration(text, declared, end, context, parts)) {
    return { type: "declaration", start, end, word: declared.word, wordEnd: declared.end, remark };
  }
  const words = new LineWords(text, start, end, parts, context.vocabulary);
  const spoken = spokenIn(words);
  if (spoken) return { start, end, ...spoken, remark };
  const said = context.head ? undefined : dayWordsIn(words);
  if (said) return dayLine(said, words, remark);
  const same = context.head ? undefined : sameWords(words);
  const going = same && parseSame(text, same, end, context);
  if (going) return { ...going, remark };
  const labelled = context.head ? undefined : entryBehindLabel(words, context);
  if (labelled) return { ...labelled, remark };
  const known = context.titles && knownTitleIn(words, context.titles);
  const isTold = words.has("tempo", "place", "outcome");
  const behindDash = known && !isTold ? namedBeforeDash(text, start, remark, context) : undefined;
  if (behindDash) return behindDash;
  const entry = entryOf(words, context, known) ?? (context.head ? undefined : placeAbove(words, context));
  if (entry) return { ...entry, remark };
  return namedBeforeDash(text, start, remark, context) ?? readSentence(text, start, end, remark, context);
}

/**
 * `Slow Freight – head @ 168`: what stands before the dash is no entry by itself, and one with what stands behind it.
 * The dash parts them as a comma does.
 */
function namedBeforeDash(
  text: string,
  start: number,
  remark: Remark | undefined,
  context: LineContext,
): Line | undefined {
  if (!remark || !DASHES.test(text[remark.start]!)) return undefined;
  const line = `${text.slice(0, remark.start)},${text.slice(remark.start + 1)}`;
  const { cuts, remark: next } = cutLine(line, start);
  const end = line.slice(0, next).trimEnd().length;
  const parts = partsOf(line, cuts, context);
  const behind = parts.filter((part) => part.start > remark.start).flatMap(({ items }) => items);
  if (!BEGIN_TERMS.includes(behind[0]?.meaning.type ?? "unknown") && remark.text.split(/\s+/).length > LONGEST_NOTE)
    return undefined;
  const words = new LineWords(line, start, end, parts, context.vocabulary);
  const subject = (context.titles && knownTitleIn(words, context.titles)) ?? evidenceIn(words)?.subject;
  if (!subject) return undefined;
  const further = next < line.length ? { start: next, text: remarkText(line, next) } : undefined;
  return { ...parseEntry(line, start, end, parts, context, subject), remark: further };
}

const DASHES = /^[–—]/;
/** What begins something of a piece; with other things a sentence begins as well. */
const BEGIN_TERMS: readonly Meaning["type"][] = [
  "place",
  "tempo",
  "number",
  "range",
  "tries",
  "times",
  "pattern",
  "articulation",
  "note value",
  "span",
  "direction",
];
/** In words: what is said behind a dash, where nothing is found at its beginning. */
const LONGEST_NOTE = 3;

/** A line about the day or the player, or one that others stand below. */
function dayLine(said: DayWords, words: LineWords, remark: Remark | undefined): Line {
  const { text, start, end } = words;
  const items = said.type === "heading" ? withMinutes(said.name, words.items) : words.items;
  if (said.type === "body") return { start, end, ...said, remark };
  if (said.type === "total") return { start, end, ...said, items: amountsOf(items, said.longer === true), remark };
  if (said.type === "rest") return { type: "rest", start, end, items: items.filter((item) => !isAmount(item)), remark };
  const others = items.filter(({ meaning }) => meaning.type === "amount" || meaning.type === "clock");
  if (said.sitting)
    return { type: "session", start, end, items: [sittingWords(text, start, others, end), ...others], remark };
  const first = items.find(({ meaning }) => meaning.type === "phase");
  if (first) return { type: "phase", start, end, items: [first, ...items.filter((item) => item !== first)], remark };
  const name: Item = { start, end: items[0]?.start ?? end, meaning: { type: "phase", id: said.name } };
  return { type: "phase", start, end, items: [name, ...others], remark };
}

/** In `week 12: 4 h` the number says which week. */
function amountsOf(items: readonly Item[], longer: boolean): readonly Item[] {
  const counted = longer && items.some(isAmount) ? items.filter(isAmount) : items;
  return counted.map((item) => asAmount(item, longer)).filter(isAmount);
}

function isAmount({ meaning }: Item): boolean {
  return meaning.type === "amount";
}

/** `evening session`: the words of a sitting, up to its time of day or its amount. */
function sittingWords(text: string, start: number, [next]: readonly Item[], end: number): Item {
  const words = text.slice(start, next?.start ?? end).replace(/[\s,:;–—-]+$/, "");
  return { start, end: start + words.length, meaning: { type: "line word", id: "session" } };
}

function readSentence(
  text: string,
  start: number,
  end: number,
  remark: Remark | undefined,
  context: LineContext,
): Line {
  const near = context.head ? nearestDeclarationWord(text, start, end, context.vocabulary) : undefined;
  return near ? { type: "near declaration", start, end, ...near, remark } : { type: "prose", start, end, remark };
}

/** A line that frames others: its first part opens with its word and is known throughout. */
function frameType(parts: readonly Part[]): "session" | "phase" | "break" | "plan" | "rest" | undefined {
  const items = parts[0]?.items ?? [];
  const opening = items[0]?.meaning;
  if (!opening || items.some((item) => item.meaning.type === "unknown" || item.meaning.type === "note"))
    return undefined;
  if (opening.type === "phase") return "phase";
  return opening.type === "line word" ? opening.id : undefined;
}

/** The phase that a line opens with; "" where it opens with none. */
function frameName(parts: readonly Part[]): string {
  const opening = parts[0]?.items[0]?.meaning;
  return opening?.type === "phase" ? opening.id : "";
}

function flat(parts: readonly Part[]): Part["items"] {
  return parts.flatMap((part) => part.items);
}
