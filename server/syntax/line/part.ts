import { DOTTED_BEFORE } from "../lexicon/beats.ts";
import { MINUTES_IN_WORDS } from "../lexicon/minutes-in-words.ts";
import { ON_INSTRUMENT, REGISTERS } from "../lexicon/note-leads.ts";
import { APPROXIMATELY, AT_WORDS, TEMPO_WORDS } from "../lexicon/tempo-marks.ts";
import { VERBS_WITH_UP } from "../lexicon/verbs-with-up.ts";
import { articulationRowAt } from "../words/articulation-rows.ts";
import { articulationAt, looksLikeArticulation } from "../words/articulation-words.ts";
import { wholeNumberOf } from "../words/fold.ts";
import { hasKeyTempos, keysApart } from "../words/joined-key.ts";
import { outcomesApart } from "../words/joined-outcome.ts";
import type { Fraction, Item, Meaning } from "../words/meaning.ts";
import { parted } from "../words/note-word.ts";
import { BEFORE_NO_OUTCOME, isDenied, mayFollow, outcomeAt, outcomeRowAt } from "../words/outcome-words.ts";
import { furtherPlace, looksLikePlace, placeAt } from "../words/place-words.ts";
import {
  ABOUT_OPENERS,
  amountAt,
  clockAt,
  countAt,
  dateAt,
  signatureAt,
  spanAt,
  timesAt,
  triesAt,
} from "../words/quantity-words.ts";
import { subjectAt } from "../words/subject-words.ts";
import { practisedOnNotes, techniqueAt } from "../words/technique-words.ts";
import { tempoRowAt } from "../words/tempo-rows.ts";
import { goalAt, numberAt, tempoAt } from "../words/tempo-words.ts";
import { termType } from "../words/term-types.ts";
import { freeWordsAt, instrumentAt, rhythmAt, stepsAt } from "../words/term-words.ts";
import { BEATS } from "../words/terms.ts";
import { type Token, tokenise } from "../words/token.ts";
import type { Vocabulary } from "../words/vocabulary.ts";
import { type Found, Words } from "../words/words.ts";

/**
 * What the words of one part of a line mean, from left to right: at each word the longest known phrase is taken. A part
 * is what stands between commas, colons and `>`. Columns count from the beginning of the part. Depends on nothing but
 * its arguments.
 */
export function readPart(text: string, vocabulary: Vocabulary): readonly Item[] {
  const tokens = tokensOf(text, vocabulary);
  const words = new Words(tokens, vocabulary, text, 0);
  const items: Item[] = [];
  for (let i = 0; i < tokens.length; ) {
    const before = items.at(-1)?.meaning;
    const row = rowAt(words, i, before);
    if (row) {
      items.push(...row.items);
      i += row.length;
      continue;
    }
    const found = recognise(words, i, before);
    push(items, found.meaning, tokens[i]!.start, tokens[i + found.length - 1]!.end, text);
    i += found.length;
  }
  return items;
}

/** The words of a part; what is written as one and means several things is parted. */
function tokensOf(text: string, vocabulary: Vocabulary): readonly Token[] {
  return outcomesApart(keysApart(parted(tokenise(text), vocabulary.notes), vocabulary), vocabulary);
}

/**
 * What stands first in a part, and where the word behind it begins: what is read from there on does not depend on what
 * stands before. Undefined where it does, as of tries behind an outcome and of unknown words, or where nothing follows.
 */
export function firstOfPart(text: string, vocabulary: Vocabulary): { first: Item; next: number } | undefined {
  const tokens = tokensOf(text, vocabulary);
  if (tokens.length < 2 || hasKeyTempos(text)) return undefined;
  const words = new Words(tokens, vocabulary, text, 0);
  if (rowAt(words, 0, undefined)) return undefined;
  const { meaning, length } = recognise(words, 0, undefined);
  const next = tokens[length];
  if (words.is(length, "mm")) return undefined; // tempo or measures: what stands before tells
  if (hasNumberBefore(words, length) && hasNumberBefore(words, tokens.length, length)) return undefined;
  if (!next || BEARS_ON_NEXT.includes(meaning.type) || isWrittenOut(next, text) || LEANING.test(next.text))
    return undefined;
  const { end } = tokens[length - 1]!;
  if (text.slice(end, next.start).trim() !== "" || next.start === end) return undefined; // `66(ok)`: one word as typed
  return { first: { start: tokens[0]!.start, end, meaning }, next: next.start };
}

/** What is read behind them depends on them. */
const BEARS_ON_NEXT: readonly Meaning["type"][] = ["outcome", ...BEFORE_NO_OUTCOME];

/** A letter that stands for a kind does so behind a tonic only. */
function isWrittenOut({ start, end, text: meant, quote }: Token, text: string): boolean {
  return !quote && text.slice(start, end) !== meant;
}

/** What may mean another thing behind what stands before: `in 4s` behind a tempo, `mm` behind a scale, `gave up`. */
const LEANING = /^(?:[/&+]|v|in|mm\.?|bb|up|down|\d(?:\+\d)+)$/i;

/**
 * In words, `4 of 5`, `5 in a row`, tries are told wherever they stand; `5x` and `3 times` may be an amount of the
 * line.
 */
const SPOKEN_TRIES = 3;

function spokenTriesAt(words: Words, i: number): Found | undefined {
  const tries = triesAt(words, i);
  return tries && tries.length >= SPOKEN_TRIES ? tries : undefined;
}

type Recogniser = (words: Words, i: number) => Found | undefined;

/** Several meanings that are written as one row. */
function rowAt(
  words: Words,
  i: number,
  before: Meaning | undefined,
): { readonly length: number; readonly items: readonly Item[] } | undefined {
  const tempos = before?.type === "outcome" && triesAt(words, i) ? undefined : tempoRowAt(words, i);
  return tempos ?? (mayFollow(before) ? outcomeRowAt(words, i) : undefined) ?? articulationRowAt(words, i);
}

/**
 * What the words from one token on mean; words that nothing else takes may say as a whole how it went. Behind a number
 * they may do so in front of the next, where a line is cut.
 */
function recognise(words: Words, i: number, before: Meaning | undefined): Found {
  const known = termAt(words, i, before);
  if (known?.meaning.type === "outcome" && isDenied(words, i, known.length, before)) return unknownAt(words, i);
  if (known?.meaning.type !== "tries" && mayFollow(before)) {
    const isKnown = (next: number): boolean =>
      isTerm(termAt(words, next, OUTCOME)?.meaning) ||
      (NEXT_NUMBER.test(words.typed(next)) && hasNumberBefore(words, i));
    const outcome = outcomeAt(words, i, isKnown);
    if (outcome && outcome.length > (known?.length ?? 0)) return outcome;
  }
  return known ?? numberAt(words, i) ?? unknownAt(words, i);
}

function unknownAt(words: Words, i: number): Found {
  return { length: 1, meaning: { type: "unknown", words: words.typed(i) } };
}

const NEXT_NUMBER = /^[1-9]\d\d?$/;
const OUTCOME = { type: "outcome", id: "", says: "not" } as const;

function hasNumberBefore({ tokens }: Words, end: number, start = 0): boolean {
  return tokens.slice(start, end).some(({ text }) => NEXT_NUMBER.test(text));
}

/** What may stand behind an outcome and leave it whole: terms of an entry. */
function isTerm(meaning: Meaning | undefined): boolean {
  return meaning !== undefined && (termType(meaning.type) !== undefined || meaning.type === "scale");
}

/** What the language and the journal know from one token on: the recogniser that takes most, the earlier of two. */
function termAt(words: Words, i: number, before: Meaning | undefined): Found | undefined {
  const tries = before?.type === "outcome" ? triesAt(words, i) : undefined;
  if (tries) return tries;
  const division = before?.type === "tempo" && before.beat ? divisionAt(words, i, before.beat) : undefined;
  if (division) return division;
  let best: Found | undefined;
  for (const recogniser of recognisersOf(words, i)) {
    if (recogniser === placeAt && isTempoSign(words, i, before)) continue;
    const found = recogniser(words, i);
    if (found && (!best || found.length > best.length)) best = found;
  }
  const phrase = phraseAt(words, i);
  if (phrase && (!best || phrase.length > best.length)) best = phrase;
  return best;
}

/** `crotchet 60 in 4s`: how many notes to the beat. */
function divisionAt(words: Words, i: number, { numerator, denominator }: Fraction): Found | undefined {
  const parts = words.is(i, "in") ? DIVISIONS.get(words.word(i + 1)) : undefined;
  if (parts === undefined) return undefined;
  const shared = numerator % parts === 0;
  const value = shared
    ? { numerator: numerator / parts, denominator }
    : { numerator, denominator: denominator * parts };
  return { length: 2, meaning: { type: "note value", value } };
}

const DIVISIONS: ReadonlyMap<string, number> = new Map(
  "2s twos 3s threes 4s fours 5s fives 6s sixes".split(" ").map((word, n) => [word, 2 + Math.floor(n / 2)] as const),
);

/** `mm 60-72` behind what is played by notes: a tempo, no bars. */
function isTempoSign(words: Words, i: number, before: Meaning | undefined): boolean {
  return before !== undefined && words.is(i, "mm", "mm.") && PLAYED_BY_NOTES.includes(before.type);
}

const PLAYED_BY_NOTES: readonly Meaning["type"][] = [
  "scale",
  "chord",
  "kind",
  "note",
  "pattern",
  "articulation",
  "span",
  "note value",
  "rhythm",
  "direction",
];

/** Asking every recogniser at every word is slow, and most words say by their look which ones can answer. */
function recognisersOf(words: Words, i: number): readonly Recogniser[] {
  const word = words.word(i);
  if (word === "") return QUOTED;
  const code = word.charCodeAt(0);
  if (code >= 48 && code <= 57) return QUANTITIES;
  const opened = OPENERS.get(word);
  if (opened) return opened;
  if (wholeNumberOf(word) !== undefined) return QUANTITIES;
  if (TONIC.test(words.typed(i)) || (words.vocabulary.notes.words !== null && words.note(i))) return TONICS;
  if (SHAPED.test(words.typed(i)) || looksLikeArticulation(words.typed(i))) return SHAPES;
  if (words.phrase(i, "place word") || looksLikePlace(words.typed(i)) || word.endsWith(".")) return PLACES;
  return words.standard(i) === "scale" ? SUBJECTS : NO_RECOGNISERS;
}

const QUANTITIES: readonly Recogniser[] = [
  tempoAt,
  spokenTriesAt,
  amountAt,
  spanAt,
  articulationAt,
  placeAt,
  signatureAt,
  countAt,
  timesAt,
  clockAt,
];
/** A letter with or without accidentals, or what is meant as one: `Bb`, `F-sharp`, `Bflat`, `Fis`, `H`, `f'`. */
const TONIC = /^(?![xX]\d)[A-Za-z](?:$|[#♯b♭x𝄪𝄫'’-]|\d$|flat$|sharp$)|^[A-Ha-h](?:is|es|s)(?:is|es)?\d?$/u;
const TONICS: readonly Recogniser[] = [subjectAt, articulationAt, placeAt, spanAt, amountAt, noteItem, tempoAt];
/** Syllables, long-short words, signs of note values. */
const SHAPED = /[-‐‑]|^[LS]+$|^[^A-Za-z]|^[xX]\d/u;
const PLACES: readonly Recogniser[] = [placeAt, articulationAt, spanAt, amountAt];
const SHAPES: readonly Recogniser[] = [
  subjectAt,
  practisedOnNotes,
  articulationAt,
  rhythmAt,
  tempoAt,
  timesAt,
  spanAt,
  amountAt,
  placeAt,
];
const QUOTED: readonly Recogniser[] = [subjectAt, quotedAt];
const SUBJECTS: readonly Recogniser[] = [subjectAt];
const NO_RECOGNISERS: readonly Recogniser[] = [];

/** Short for a beat, and a note or the beginning of another word: `e`, `h`. */
const NOTES_TOO = /^[a-pr-z]$/;
/** The words that open what no table of phrases holds. */
const OPENERS: ReadonlyMap<string, readonly Recogniser[]> = byOpening([
  ["at @", [tempoAt, clockAt]],
  [[...BEATS.keys()].filter((name) => !NOTES_TOO.test(name)).join(" "), [tempoAt]],
  [[...TEMPO_WORDS, ...AT_WORDS, ...APPROXIMATELY, ...DOTTED_BEFORE, "~"].join(" "), [tempoAt]],
  [["~", ...[...MINUTES_IN_WORDS.keys()].filter((word) => wholeNumberOf(word) === undefined)].join(" "), [amountAt]],
  ["goal", [goalAt]],
  ["from range", [spanAt, dateAt, placeAt]],
  ["to up", [spanAt, placeAt]],
  ["tenth ninth twelfth", [spanAt]],
  ["by due", [dateAt]],
  ["until", [dateAt, placeAt]],
  ["on", [instrumentAt, dateAt]],
  [ON_INSTRUMENT.filter((word) => word !== "on").join(" "), [instrumentAt]],
  ["last", [lastNoteAt, placeAt]],
  ["focus with sore", [freeWordsAt]],
  ["steps step", [stepsAt]],
  ["once twice", [timesAt]],
  ["straight", [evenAt]],
  ["slur slurs slurred slurring sl sl. slr tongue tongued geb geb. gebunden", [articulationAt, rhythmAt]],
  ["done all", [subjectAt]],
  [REGISTERS.join(" "), [subjectAt]],
  ["upbeat pickup pick-up anacrusis", [placeAt]],
  [ABOUT_OPENERS.join(" "), [amountAt]],
  ["mm mm.", [placeAt]],
]);

/** A word may open several things. */
function byOpening(
  rows: readonly (readonly [opening: string, recognisers: readonly Recogniser[]])[],
): ReadonlyMap<string, readonly Recogniser[]> {
  const all = new Map<string, readonly Recogniser[]>();
  for (const [opening, recognisers] of rows)
    for (const word of opening.split(" ")) all.set(word, [...(all.get(word) ?? []), ...recognisers]);
  return all;
}

/**
 * The longest phrase of the tables, and what may go on behind it. Where it means several things, the first of `ORDER`.
 */
function phraseAt(words: Words, i: number): Found | undefined {
  const phrase = words.phrase(i, ...ORDER);
  switch (phrase?.meaning.type) {
    case "activity":
      return subjectAt(words, i);
    case "kind":
    case "chord kind":
      return subjectAt(words, i) ?? (MINUTES.includes(words.word(i)) ? undefined : phrase);
    case "several":
    case "figure word":
      return subjectAt(words, i) ?? techniqueAt(words, i);
    case "articulation":
      return practisedOnNotes(words, i) ?? articulationAt(words, i);
    case "technique":
      return techniqueAt(words, i);
    case "place":
      if (phrase.length === 1 && SECTION.test(phrase.meaning.text)) return undefined; // `apart` is no `A part`
      return furtherPlace(words, i, { length: phrase.length, meaning: phrase.meaning });
    case "amount":
      return amountAt(words, i) ?? phrase; // `an hour and twenty`
    case "direction":
      return phrase.length === 1 && endsVerb(words, i) ? undefined : phrase;
    case "instrument":
      return phrase.meaning.behindOn ? undefined : phrase;
    default:
      return phrase;
  }
}

/** A section by its letter, which is a word of its own. */
const SECTION = /^\p{L} /u;

/** No kind where no tonic stands before. */
const MINUTES = ["min", "min."];

const ORDER = [
  "title",
  "several",
  "figure word",
  "activity",
  "instrument",
  "pattern",
  "span",
  "articulation",
  "rhythm",
  "technique",
  "chord kind",
  "direction",
  "note value",
  "without click",
  "outcome",
  "manner",
  "variant",
  "inversion",
  "phase",
  "line word",
  "done",
  "amount",
  "place",
  "signature",
  "weekday",
  "kind",
  "part of a kind",
] as const;

/** `gave up`, `slowed down`, `up to 80`: no way of playing. */
function endsVerb(words: Words, i: number): boolean {
  const isUpTo = words.is(i, "up", "down") && words.is(i + 1, "to") && /^\d/.test(words.typed(i + 2));
  return isUpTo || (words.is(i, "up", "down") && VERBS_WITH_UP.has(words.word(i - 1)));
}

/** `straight 8ths`: before a note value it is the even rhythm, not the pattern. */
function evenAt(words: Words, i: number): Found | undefined {
  if (!words.is(i, "straight") || !words.phrase(i + 1, "note value")) return undefined;
  return { length: 1, meaning: { type: "rhythm", id: "even", even: true } };
}

function noteItem(words: Words, i: number): Found | undefined {
  const run = words.note(i);
  return run && { length: run.length, meaning: { type: "note", note: run.note, lower: run.lower } };
}

function quotedAt(words: Words, i: number): Found | undefined {
  const quoted = words.quoted(i);
  return quoted && { length: 1, meaning: { type: "quoted", text: quoted.text, closed: quoted.quote!.closed } };
}

/** `last note D` of a piece. */
function lastNoteAt(words: Words, i: number): Found | undefined {
  const run = words.is(i, "last") && words.is(i + 1, "note") ? words.note(i + 2) : undefined;
  return run && { length: 2 + run.length, meaning: { type: "last note", note: run.note } };
}

/** Unknown words side by side are one item, so that they are one finding. */
function push(items: Item[], meaning: Meaning, start: number, end: number, text: string): void {
  const before = items.at(-1);
  if (meaning.type !== "unknown" || before?.meaning.type !== "unknown") {
    items.push({ start, end, meaning });
    return;
  }
  items[items.length - 1] = {
    start: before.start,
    end,
    meaning: { type: "unknown", words: text.slice(before.start, end) },
  };
}
