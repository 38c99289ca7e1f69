import type { Item, Meaning } from "../words/meaning.ts";
import { cutLine, type Part } from "./cut.ts";
import { entryOf } from "./entry-words.ts";
import { knownTitleIn, type TitleMatch } from "./known-title.ts";
import type { EntryLine } from "./line.ts";
import { LineWords } from "./line-words.ts";
import { type PartContext, partsOf } from "./parts.ts";

// What stands in front of what is practised, with a sign behind it: which instrument, who, where. It is kept as words.

interface LabelContext extends PartContext {
  readonly titles?: readonly TitleMatch[];
}

/** `[own]`, `tenor:`, `A |`, `[own] T:`, of at most two words each. */
const LABEL = /^(?:\[[^\][\d]{1,20}\]\s+)?(?:\p{L}[\p{L}'’.]*(?:\s\p{L}[\p{L}'’.]*)?\s*[:|])?\s*/u;

/** Words that say what kind of line it is, or who speaks. */
const NO_LABELS = [
  "teacher",
  "teacher-verb",
  "set-work",
  "question",
  "total",
  "rest",
  "negation",
  "intention",
  "sentence-sign",
  "body-trouble",
  "before-time",
] as const;

/** What is practised itself. */
const PRACTISED: readonly Meaning["type"][] = [
  "scale",
  "chord",
  "several",
  "figure",
  "technique",
  "activity",
  "chain",
  "kind",
  "chord kind",
  "title",
];

const IS_NO_LABEL: readonly Meaning["type"][] = [...PRACTISED, "instrument", "tempo", "place"];

/** The German `Alt` is short for a scale as well. */
function isNoLabel(words: LineWords, i: number): boolean {
  const type = words.found(i)?.meaning.type ?? "unknown";
  return IS_NO_LABEL.includes(type) && !(type === "kind" && words.is(i, "instrument"));
}

/**
 * `A | F major | 92 | clean`, `tenor: long tones, 8 min`, `[own] G major`: an entry by what stands behind the label
 * alone. Undefined where the line has no label, or tells of no practice behind it.
 */
export function entryBehindLabel(words: LineWords, context: LabelContext): EntryLine | undefined {
  const { text, start, end } = words;
  const length = LABEL.exec(text.slice(start, end))![0].length || instrumentLength(words);
  if (length === 0 || start + length >= end) return undefined;
  const count = words.words.filter((word) => word.start < start + length).length;
  if (words.first(0, count, ...NO_LABELS) >= 0 || words.titleOf(text.slice(start, start + length)) !== undefined)
    return undefined;
  for (let i = 0; i < count; i++) if (isNoLabel(words, i)) return undefined;
  const behind = wordsFrom(text, start + length, end, context);
  if (behind.found(0)?.meaning.type === "quoted") return undefined; // what somebody said
  const titles = (context.titles ?? []).map((match) => ({ ...match, from: match.from - count, to: match.to - count }));
  const known = knownTitleIn(
    behind,
    titles.filter(({ from }) => from >= 0),
  );
  const entry = entryOf(behind, context, known);
  return entry && isSaidOfPractice(entry, behind) ? withLabel(entry, text, start, start + length) : undefined;
}

/** `Treble. Long tones, 5 min`, `TENOR - Pavan, 92`: behind the name of an instrument other signs part as well. */
function instrumentLength(words: LineWords): number {
  const count = words.lengthOf(0, "instrument");
  const sign = count > 0 && count < words.count ? /^(?:\.|[–-])/.exec(words.before(count).trimStart()) : null;
  return sign ? words.words[count]!.start - words.start : 0;
}

/** Words before an amount (`walked 20 min`) name no practice behind what may be anybody's name. */
function isSaidOfPractice({ subject }: EntryLine, words: LineWords): boolean {
  if (!subject) return false;
  return subject.meaning.type !== "activity" || words.found(0)?.meaning.type === "activity";
}

function wordsFrom(text: string, from: number, end: number, context: PartContext): LineWords {
  const parts = partsOf(text, cutLine(text.slice(0, end), from).cuts, context).filter(({ items }) => items.length > 0);
  const [first, ...others] = parts;
  return new LineWords(text, from, end, first ? [{ ...first, after: "" }, ...others] : [], context.vocabulary);
}

function withLabel(entry: EntryLine, text: string, start: number, end: number): EntryLine {
  const typed = text.slice(start, end).replace(/[\s:|=–-]+$/, "");
  const label: Item = { start, end: start + typed.length, meaning: { type: "unknown", words: typed } };
  return { ...entry, start, items: [label, ...entry.items] };
}

/**
 * `warm-up: long tones, 5 min`, `warmup buzzing 3 min`: a heading with what is practised on the same line is an entry.
 * Undefined where nothing that is practised opens what stands behind it, and of a lesson, which is no practice.
 */
export function entryBehindHeading(
  text: string,
  start: number,
  end: number,
  parts: readonly Part[],
  context: PartContext,
): EntryLine | undefined {
  const heading = parts[0]?.items[0];
  if (heading?.meaning.type !== "phase" || heading.meaning.id === "lesson") return undefined;
  const length = /^[\s:=–-]*/.exec(text.slice(heading.end, end))![0].length;
  const behind = wordsFrom(text, heading.end + length, end, context);
  if (!PRACTISED.includes(behind.found(0)?.meaning.type ?? "unknown")) return undefined;
  const entry = entryOf(behind, context);
  return entry?.subject && withLabel(entry, text, start, heading.end + length);
}
