import { instrumentsMeant } from "../../journal/instrument-names.ts";
import { chordById } from "../../music/chords/chord.ts";
import { PATTERNS, patternById } from "../../music/patterns/pattern.ts";
import type { EntryLine } from "../../syntax/line/line.ts";
import { nameKey, phraseKey } from "../../syntax/words/fold.ts";
import type { Item, Meaning } from "../../syntax/words/meaning.ts";
import { hasTooManySigns } from "../../syntax/words/note-word.ts";
import { type MeaningType, TERM_TYPES } from "../../syntax/words/term-types.ts";
import { isQuote } from "../../syntax/words/token.ts";
import type { LineContext } from "../context.ts";
import { type Finding, type FindingFix, finding, offered, quoted, replacement, type Stretch } from "../finding.ts";
import { fixTexts } from "../fix-texts.ts";
import { listTexts } from "../list-texts.ts";
import { termTexts } from "./term-texts.ts";

/** Every word of an entry says something that has its place there. */
export function checkEntryTerms(
  line: EntryLine,
  { text, vocabulary }: Pick<LineContext, "text" | "vocabulary">,
): readonly Finding[] {
  const pattern = line.items.find((item) => item.meaning.type === "pattern");
  const counted = { ...line, items: withCountedWords(line.items, text) };
  return counted.items.flatMap((item, i) => {
    if (isOneOfSeveral(item, line)) return [];
    const notes = notesWithoutColon(counted, i, text);
    if (notes) return notes;
    if (i === 0 && !line.subject && item.meaning.type === "unknown")
      return unknownSubject(item, text.slice(item.start, item.end), { vocabulary });
    const isBehindSubject = i === 0 && line.subject !== undefined && item.start - line.subject.end <= 1;
    const types = isBehindSubject ? BEHIND_SUBJECT : TERM_TYPES;
    return termFinding(item, text, line, { pattern, types, vocabulary }) ?? [];
  });
}

/** `E flat major 54 ok, E flat minor 60`: what is practised as well, behind what was said of the first. */
function isOneOfSeveral(item: Item, { subject }: EntryLine): boolean {
  const at = subject?.meaning.type === "several" ? subject.meaning.at : undefined;
  return at?.some(({ start }) => subject!.start + start === item.start) ?? false;
}

/** Right behind a subject a kind of scale or chord may go on with it. */
const BEHIND_SUBJECT: readonly MeaningType[] = [...TERM_TYPES, "kind", "part of a kind", "chord kind"];

function dash(item: Item, text: string): Finding {
  const start = item.start - (/\s/.test(text[item.start - 1] ?? "") ? 1 : 0);
  const fixes = text.slice(0, start).trim() === "" ? [] : [{ start, end: item.end, text: "," }];
  return finding(
    "unknown-term",
    item,
    termTexts.loneDash,
    fixes.map((edit) => ({ title: termTexts.writeComma, safe: true, edits: [edit] })),
  );
}

/** Where the subject belongs stands something else: a piece that is not declared, more often than not. */
function unknownSubject(item: Item, typed: string, context: Pick<LineContext, "vocabulary">): Finding {
  const near = context.vocabulary.nearest(typed, context.vocabulary.subjectNames, SUBJECT_WORDS);
  const found = unknown(item, typed, termTexts.subjectFirst, near === undefined ? [] : [near]);
  const isName = /^\p{Lu}/u.test(typed) && !/["“”„«»]/.test(typed);
  return isName ? { ...found, fixes: [...found.fixes, replacement(termTexts.asTitle, item, `"${typed}"`)] } : found;
}

/** What a subject may begin with beside a tonic. */
const SUBJECT_WORDS = [
  "notes",
  "long tones",
  "trill",
  "chromatic",
  "sight-reading",
  "improvising",
  "tuning",
  "breathing",
  "listening",
  "score study",
  "run-through",
  "rehearsal",
  "dominant seventh",
];

/** Notes right behind the subject without their colon are one finding, with the colon as its fix. */
function notesWithoutColon(line: EntryLine, i: number, text: string): readonly Finding[] | undefined {
  const isNote = (item: Item | undefined): boolean =>
    item?.meaning.type === "note" || (item?.meaning.type === "unknown" && /^[-–|]$/.test(item.meaning.words));
  if (!isNote(line.items[i])) return undefined;
  const first = line.items.findLastIndex((item, k) => k < i && !isNote(item)) + 1;
  const end = line.items.findIndex((item, k) => k > i && !isNote(item));
  const run = line.items.slice(first, end < 0 ? undefined : end);
  const notes = run.filter((item) => item.meaning.type === "note");
  if (notes.length < 2) return undefined;
  if (first < i) return [];
  const subject = line.subject;
  const stretch = { start: notes[0]!.start, end: run.at(-1)!.end };
  const behind = i === 0 && subject && subject.end <= stretch.start && line.claims.length === 0;
  const fixes = behind
    ? [
        {
          title: termTexts.putColon,
          safe: false,
          edits: [{ start: subject.end, end: stretch.start, text: ": " }],
        },
      ]
    : [];
  const named = subject ? quoted(text.slice(subject.start, subject.end)) : "D minor";
  const message = termTexts.colonBeforeNotes(named, quoted(text.slice(stretch.start, stretch.end)));
  return [finding("unknown-term", stretch, message, fixes)];
}

/** A triad has two inversions, a chord of four notes three: one for each note but the root. */
function noSuchInversion(item: Stretch, inversion: number, chord: string): Finding | undefined {
  const notes = chordById(chord)?.degrees.length ?? 0;
  if (inversion < notes) return undefined;
  return finding("arpeggio-note", item, termTexts.twoInversions);
}

function termFinding(
  item: Item,
  text: string,
  line: EntryLine,
  context: Pick<LineContext, "vocabulary"> & {
    readonly pattern: Item | undefined;
    /** What may stand here. */
    readonly types: readonly MeaningType[];
  },
): Finding | undefined {
  const { meaning } = item;
  const { pattern, types } = context;
  const typed = text.slice(item.start, item.end);
  switch (meaning.type) {
    case "unknown":
      if (typed === "-") return dash(item, text);
      if (hasTooManySigns(typed)) return unknown(item, typed, termTexts.atMostTwoSigns, []);
      if (/^on\s+\S/i.test(typed)) return unknownInstrument(item, typed, context);
      return unknown(item, typed, termTexts.termHere, nearestTo(typed, types, context));
    case "quoted":
      return quotedTerm(item, meaning.text, meaning.closed, context);
    case "variant":
      return variant(item, meaning.id, { text, line, pattern });
    case "inversion":
      return line.subject?.meaning.type === "chord"
        ? noSuchInversion(item, meaning.inversion, line.subject.meaning.chord)
        : misplaced(item, typed, termTexts.inversions);
    case "number":
    case "range":
      return finding("unknown-term", item, termTexts.whatIs(typed), [
        replacement(fixTexts.write(`at ${typed}`), item, `at ${typed}`),
      ]);
    case "note":
      return finding("unknown-term", item, termTexts.misplaced(typed, termTexts.notes));
    default: {
      const rule = RULES[meaning.type];
      return rule === undefined ? undefined : misplaced(item, typed, rule, misplacedFixes(item, typed, meaning));
    }
  }
}

/** What a line has one of. */
const SUBJECTS: readonly Meaning["type"][] = [
  "scale",
  "chord",
  "title",
  "figure",
  "activity",
  "free",
  "chain",
  "several",
  "faulty subject",
];

/** What is known, but not as a term of an entry. */
const RULES: Partial<Record<Meaning["type"], string>> = {
  ...Object.fromEntries(SUBJECTS.map((type) => [type, termTexts.oneSubject])),
  ...termTexts.rules,
};

/** Words that are known, and go elsewhere: `rule` says where. */
export function misplaced(item: Item, typed: string, rule: string, fixes: readonly FindingFix[] = []): Finding {
  return finding("unknown-term", item, termTexts.misplaced(quoted(typed), rule), fixes);
}

/** After `on`, where the name of an instrument goes. */
function unknownInstrument(item: Item, typed: string, context: Pick<LineContext, "vocabulary">): Finding {
  const named = typed.replace(/^on\s+/i, "");
  const name = named.replace(/^["“”„«»]|["“”„«»]$/g, "");
  const meant = instrumentsMeant(name, context.vocabulary);
  if (meant.length < 2) {
    const offers = meant.map((each) => `on ${each}`);
    const words = name === named ? typed : name;
    return unknown(item, words, termTexts.instrumentAfterOn, offers);
  }
  const fixes = meant.map((each) => changeTo(item, `on ${each}`));
  return finding("unknown-term", item, termTexts.whichInstrument(quoted(name), listTexts.or(meant)), fixes);
}

function misplacedFixes(item: Item, typed: string, meaning: Meaning): readonly FindingFix[] {
  if (meaning.type !== "bars") return [];
  const bars = `bars ${typed.replace(/\D+/g, "")}`;
  return [replacement(fixTexts.write(bars), item, bars)];
}

/** Words that are not known, what can go there in a sentence without its stop, and what may have been meant. */
export function unknown(item: Item, typed: string, expected: string, offers: readonly string[]): Finding {
  const guess = offers[0] === undefined ? "" : fixTexts.didYouMean([offered(offers[0])]);
  const message = termTexts.unknown(quoted(typed), expected) + guess;
  return finding(
    "unknown-term",
    item,
    message,
    offers.map((each) => changeTo(item, each)),
  );
}

function changeTo(stretch: Stretch, words: string): FindingFix {
  return replacement(fixTexts.changeTo(offered(words)), stretch, words);
}

/** What is counted on a journal's lines. */
const UNITS = ["minutes", "hours", "notes", "octaves", "bars", "times", "sharps", "flats", "in a row"];

/** A number and the unknown word behind it are one slip: `50 minuts`. */
export function withCountedWords(items: readonly Item[], text: string): readonly Item[] {
  return items.flatMap((item, i): Item[] => {
    const before = items[i - 1];
    const next = items[i + 1];
    if (item.meaning.type === "number" && next?.meaning.type === "unknown" && next.start - item.end <= 1) {
      return [
        { start: item.start, end: next.end, meaning: { type: "unknown", words: text.slice(item.start, next.end) } },
      ];
    }
    const taken = item.meaning.type === "unknown" && before?.meaning.type === "number" && item.start - before.end <= 1;
    return taken ? [] : [item];
  });
}

/**
 * The nearest phrase, or where each word is near another one, those.
 *
 * @param types what may stand there; of the same place the same array
 */
export function nearestTo(
  typed: string,
  types: readonly MeaningType[],
  { vocabulary }: Pick<LineContext, "vocabulary">,
): readonly string[] {
  if (types.includes("steps") && /^[TSWHA](?:\s?[TSWHA]){4,}$/.test(typed)) return [`steps ${typed}`];
  const name = types.includes("quoted") ? (vocabulary.pattern(typed) ?? vocabulary.title(typed)) : undefined;
  if (name !== undefined) return [`"${name}"`];
  const counted = /^(\d\S*)\s+(\p{L}+)$/u.exec(typed);
  const unit = counted && vocabulary.nearest(counted[2]!, UNITS);
  if (unit) return isSame(unit, counted[2]!) ? [] : [`${counted[1]} ${unit}`];
  const known = vocabulary.wordsFor(types);
  const whole = vocabulary.nearest(typed, known) ?? vocabulary.nearest(typed.replace(/[-‐‑]/g, " "), known);
  if (whole !== undefined) return isSame(whole, typed) ? [] : [whole];
  const words = typed.split(/\s+/);
  if (words.length < 2 || words.length > 4 || words.some((word) => word.length < 4)) return [];
  const each = new Set(words.map((word) => vocabulary.nearest(word, known)));
  return each.size === words.length && !each.has(undefined) ? [[...each].join(", ")] : [];
}

/** What stands there already is no offer. */
function isSame(near: string, typed: string): boolean {
  return phraseKey(near) === phraseKey(typed);
}

function quotedTerm(
  item: Item,
  name: string,
  closed: boolean,
  { vocabulary }: Pick<LineContext, "vocabulary">,
): Finding | undefined {
  if (!closed) return unclosedQuote(item);
  if (vocabulary.pattern(name) !== undefined) return undefined;
  const near = vocabulary.nearest(nameKey(name), vocabulary.declared.patterns);
  const help =
    near === undefined ? termTexts.declarePattern(quoted(name)) : fixTexts.didYouMean([fixTexts.quoted(near)]);
  const fixes = near === undefined ? [] : [replacement(fixTexts.changeTo(fixTexts.quoted(near)), item, `"${near}"`)];
  return finding("unknown-pattern", item, termTexts.noPattern(quoted(name)) + help, fixes);
}

export function unclosedQuote(item: { readonly start: number; readonly end: number }): Finding {
  return finding("unclosed-quote", item, fixTexts.closingQuoteMissing, [
    { title: fixTexts.closeQuote, safe: false, edits: [{ start: item.end, end: item.end, text: '"' }] },
  ]);
}

/** Whether a stretch of a line begins with a quote that does not close. */
export function isUnclosed(text: string, { start, end }: { readonly start: number; readonly end: number }): boolean {
  if (!isQuote(text[start] ?? "")) return false;
  return end - start < 2 || ![...text.slice(start + 1, end)].some(isQuote);
}

/** A variant is one of its pattern's; the fixes are those that the pattern has, or the pattern as it is. */
function variant(
  item: Item,
  id: string,
  { text, line, pattern }: { readonly text: string; readonly line: EntryLine; readonly pattern: Item | undefined },
): Finding | undefined {
  if (pattern?.meaning.type !== "pattern") {
    const having = PATTERNS.filter(({ variants }) => isAmong(variants, id)).map(({ names }) => names[0]!);
    const message = termTexts.variantAlone(id, listTexts.or(having));
    return finding("unknown-term", item, message, [withoutTerm(item, text, line)]);
  }
  const { names, variants } = patternById(pattern.meaning.id)!;
  if (isAmong(variants, id)) return undefined;
  const offers = variants.map((each) => replacement(fixTexts.changeTo(each), item, each));
  return finding("unknown-pattern", item, termTexts.noVariant(names[0]!, id, variants), [
    ...offers,
    withoutTerm(item, text, line),
  ]);
}

function isAmong(variants: readonly string[], id: string): boolean {
  return variants.includes(id);
}

/** The line without a term, and without the comma before it; its bullet stays. */
function withoutTerm({ start, end }: Item, text: string, line: EntryLine): FindingFix {
  const before = text.slice(line.start, start).replace(/[\s,]+$/u, "");
  const from = before === "" ? start : line.start + before.length;
  return replacement(fixTexts.takeOut(quoted(text.slice(start, end))), { start: from, end }, "");
}
