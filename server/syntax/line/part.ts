import { wholeNumberOf } from "../words/fold.ts";
import { keysApart } from "../words/joined-key.ts";
import type { Item, Meaning } from "../words/meaning.ts";
import { parted } from "../words/note-word.ts";
import { amountAt, clockAt, countAt, dateAt, signatureAt, spanAt, timesAt, triesAt } from "../words/quantity-words.ts";
import { subjectAt } from "../words/subject-words.ts";
import { goalAt, numberAt, tempoAt } from "../words/tempo-words.ts";
import {
  articulationAt,
  freeWordsAt,
  instrumentAt,
  PLACE_OPENERS,
  placeAt,
  rhythmAt,
  stepsAt,
} from "../words/term-words.ts";
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
  const tokens = keysApart(parted(tokenise(text), vocabulary.notes), vocabulary);
  const words = new Words(tokens, vocabulary, text, 0);
  const items: Item[] = [];
  for (let i = 0; i < tokens.length; ) {
    const found = recognise(words, i, items.at(-1)?.meaning);
    push(items, found.meaning, tokens[i]!.start, tokens[i + found.length - 1]!.end, text);
    i += found.length;
  }
  return items;
}

/**
 * What stands first in a part, and where the word behind it begins: what is read from there on does not depend on what
 * stands before. Undefined where it does, as of tries behind an outcome and of unknown words, or where nothing follows.
 */
export function firstOfPart(text: string, vocabulary: Vocabulary): { first: Item; next: number } | undefined {
  const tokens = keysApart(parted(tokenise(text), vocabulary.notes), vocabulary);
  if (tokens.length < 2) return undefined;
  const { meaning, length } = recognise(new Words(tokens, vocabulary, text, 0), 0, undefined);
  const next = tokens[length];
  if (!next || meaning.type === "unknown" || meaning.type === "outcome" || isWrittenOut(next, text)) return undefined;
  return { first: { start: tokens[0]!.start, end: tokens[length - 1]!.end, meaning }, next: next.start };
}

/** A letter that stands for a kind does so behind a tonic only. */
function isWrittenOut({ start, end, text: meant, quote }: Token, text: string): boolean {
  return !quote && text.slice(start, end) !== meant;
}

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

/** What the words from one token on mean: of all that recognise them the one that takes most, the earlier of two. */
function recognise(words: Words, i: number, before: Meaning | undefined): Found {
  const tries = before?.type === "outcome" ? triesAt(words, i) : undefined;
  if (tries) return tries;
  let best: Found | undefined;
  for (const recogniser of recognisersOf(words, i)) {
    const found = recogniser(words, i);
    if (found && (!best || found.length > best.length)) best = found;
  }
  const phrase = phraseAt(words, i);
  if (phrase && (!best || phrase.length > best.length)) best = phrase;
  return best ?? numberAt(words, i) ?? { length: 1, meaning: { type: "unknown", words: words.typed(i) } };
}

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
  if (SHAPED.test(words.typed(i))) return SHAPES;
  return words.standard(i) === "scale" ? SUBJECTS : NO_RECOGNISERS;
}

const QUANTITIES: readonly Recogniser[] = [
  tempoAt,
  spokenTriesAt,
  amountAt,
  spanAt,
  placeAt,
  signatureAt,
  countAt,
  timesAt,
  clockAt,
];
/** A letter with or without accidentals, or what is meant as one: `Bb`, `F-sharp`, `Bflat`, `Fis`, `H`, `f'`. */
const TONIC = /^[A-Za-z](?:$|[#♯b♭x𝄪𝄫'’-]|\d$|flat$|sharp$)|^[A-Ha-h](?:is|es|s)(?:is|es)?\d?$/u;
const TONICS: readonly Recogniser[] = [subjectAt, articulationAt, noteItem];
/** Syllables, long-short words, signs of note values. */
const SHAPED = /[-‐‑]|^[LS]+$|^[^A-Za-z]/u;
const SHAPES: readonly Recogniser[] = [subjectAt, articulationAt, rhythmAt, tempoAt, timesAt, spanAt];
const QUOTED: readonly Recogniser[] = [subjectAt, quotedAt];
const SUBJECTS: readonly Recogniser[] = [subjectAt];
const NO_RECOGNISERS: readonly Recogniser[] = [];

/** The words that open what no table of phrases holds. */
const OPENERS: ReadonlyMap<string, readonly Recogniser[]> = new Map(
  (
    [
      ["at @", [tempoAt, clockAt]],
      [[...BEATS.keys(), "dotted"].join(" "), [tempoAt]],
      ["goal", [goalAt]],
      ["from range", [spanAt, dateAt]],
      ["by due until", [dateAt]],
      ["on", [instrumentAt, dateAt]],
      ["last", [lastNoteAt]],
      ["focus with sore", [freeWordsAt]],
      ["steps step", [stepsAt]],
      ["once twice", [timesAt]],
      ["straight", [evenAt]],
      ["slur slurs slurred tongue tongued", [articulationAt]],
      ["done all", [subjectAt]],
      [[...PLACE_OPENERS].join(" "), [placeAt]],
    ] as const
  ).flatMap(([opening, recognisers]) => opening.split(" ").map((word) => [word, recognisers] as const)),
);

/**
 * The longest phrase of the tables, and what may go on behind it. Where it means several things, the first of `ORDER`.
 */
function phraseAt(words: Words, i: number): Found | undefined {
  const phrase = words.phrase(i, ...ORDER);
  switch (phrase?.meaning.type) {
    case "activity":
    case "kind":
    case "chord kind":
      return subjectAt(words, i) ?? (MINUTES.includes(words.word(i)) ? undefined : phrase);
    case "several":
    case "figure word":
      return subjectAt(words, i);
    case "articulation":
      return articulationAt(words, i);
    case "instrument":
      return phrase.meaning.behindOn ? undefined : phrase;
    default:
      return phrase;
  }
}

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
  "place",
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
  "signature",
  "weekday",
  "kind",
  "part of a kind",
] as const;

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
