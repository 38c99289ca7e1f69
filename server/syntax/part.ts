import type { Item, Meaning } from "./meaning.ts";
import { amountAt, clockAt, countAt, dateAt, signatureAt, spanAt, timesAt, triesAt } from "./quantity-words.ts";
import { longest, scaleAt, subjectAt } from "./subject-words.ts";
import { goalAt, numberAt, tempoAt } from "./tempo-words.ts";
import { articulationAt, freeWordsAt, instrumentAt, placeAt, rhythmAt, stepsAt } from "./term-words.ts";
import { tokenise } from "./token.ts";
import type { Vocabulary } from "./vocabulary.ts";
import { type Found, Words } from "./words.ts";

/**
 * What the words of one part of a line mean, from left to right: at each word the longest known phrase is taken, the
 * earlier in `recognise` where two are of one length. A part is what stands between commas, colons and `>`.
 * Columns count from the beginning of the part. Depends on nothing but its arguments.
 */
export function readPart(text: string, vocabulary: Vocabulary): readonly Item[] {
  const tokens = tokenise(text);
  const words = new Words(tokens, vocabulary, text, 0);
  const items: Item[] = [];
  for (let i = 0; i < tokens.length; ) {
    const found = recognise(words, i, items.at(-1)?.meaning);
    push(items, found.meaning, tokens[i]!.start, tokens[i + found.length - 1]!.end, text);
    i += found.length;
  }
  return items;
}

function recognise(words: Words, i: number, before: Meaning | undefined): Found {
  if (before?.type === "outcome") {
    const tries = triesAt(words, i);
    if (tries) return tries;
  }
  const found = longest<Found>(startsWithDigit(words.typed(i)) ? quantities(words, i) : termsAndSubjects(words, i));
  return found ?? { length: 1, meaning: { type: "unknown", words: words.typed(i) } };
}

function startsWithDigit(word: string): boolean {
  const code = word.charCodeAt(0);
  return code >= 48 && code <= 57;
}

/** What may begin with figures. Number words begin with letters, so the other half asks for quantities too. */
function quantities(words: Words, i: number): (Found | undefined)[] {
  return [
    tempoAt(words, i),
    amountAt(words, i),
    words.phrase(i, "pattern"),
    spanAt(words, i),
    placeAt(words, i),
    signatureAt(words, i),
    countAt(words, i),
    timesAt(words, i),
    clockAt(words, i),
    words.phrase(i, ...PHRASES, ...NAMES),
    numberAt(words, i),
  ];
}

function termsAndSubjects(words: Words, i: number): (Found | undefined)[] {
  const counted = words.whole(i) !== undefined ? quantities(words, i) : [];
  return [
    subjectAt(words, i),
    instrumentAt(words, i),
    tempoAt(words, i),
    goalAt(words, i),
    amountAt(words, i),
    evenAt(words, i),
    words.phrase(i, "pattern"),
    spanAt(words, i),
    articulationAt(words, i),
    rhythmAt(words, i),
    placeAt(words, i),
    stepsAt(words, i),
    timesAt(words, i),
    dateAt(words, i),
    lastNoteAt(words, i),
    freeWordsAt(words, i),
    words.phrase(i, ...PHRASES),
    noteItem(words, i),
    quotedAt(words, i),
    ...counted,
  ];
}

/** Declared names, which may begin with a figure. */
const NAMES = ["title", "activity", "instrument"] as const;

const PHRASES = [
  "chord kind",
  "direction",
  "span",
  "rhythm",
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
  "place",
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

/** The scale that a text names and nothing else; for the keys of pieces and the ends of chains. */
export function scaleIn(text: string, vocabulary: Vocabulary): ReturnType<typeof scaleAt> {
  const tokens = tokenise(text);
  const found = scaleAt(new Words(tokens, vocabulary, text, 0), 0);
  return found?.length === tokens.length ? found : undefined;
}
