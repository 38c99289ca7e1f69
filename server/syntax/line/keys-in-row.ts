import { AND, ON_NOTE } from "../lexicon/note-leads.ts";
import { fold, phraseKey } from "../words/fold.ts";
import type { Columns, Item, Meaning, MeaningOf, SingleSubject, WrittenNote } from "../words/meaning.ts";
import type { Vocabulary } from "../words/vocabulary.ts";
import type { Part } from "./cut.ts";

/** Keys in a row, and the items that told what they are. */
export interface KeysInRow {
  readonly subject: Item<MeaningOf<"several">>;
  readonly told: readonly Item[];
}

/** What all the letters of a row are, as far as it is told before them. */
interface Kinds {
  readonly kind?: string;
  readonly chord?: MeaningOf<"chord kind">;
  readonly scales?: true;
}

interface Placed {
  readonly item: Item;
  /** The sign before its part, for the first of one; missing within a part. */
  readonly after?: string;
}

/**
 * Letters in a row where what they are is said before them: `scales, hands together: C, G, D`, `harmonic minors: d g
 * c`, `maj scales: C108 F108`, and `D96 A92` by itself. Nothing where a tonic stands before them.
 */
export function keysInRow(parts: readonly Part[], vocabulary: Vocabulary): KeysInRow | undefined {
  const placed = parts.flatMap(({ items, after }) =>
    items.map((item, i): Placed => (i === 0 ? { item, after } : { item })),
  );
  const from = placed.findIndex(({ item }) => item.meaning.type === "note");
  if (from < 0) return undefined;
  const row = letters(placed, from);
  const isByItself = haveTempos(placed, from, row) || areFifthsApart(placed, from, row);
  const kinds = isByItself ? ONLY_TONICS : kindsBefore(placed, from, vocabulary);
  if (!kinds || (kinds !== ONLY_TONICS && !isLed(placed, from, vocabulary))) return undefined;
  if (!isRow(row.notes, placed[from]!.after)) return undefined;
  const subjects = row.notes.map(({ meaning }) => subjectOn(meaning.note, kinds));
  const { start } = placed[from]!.item;
  const at = columnsFrom(start, row.notes);
  const subject = { start, end: row.end, meaning: { type: "several", subjects, at } } as const;
  const told = placed.slice(0, from).filter(({ item }) => kindsOf(item, vocabulary) && isWhole(item, vocabulary));
  return { subject, told: told.map(({ item }) => item) };
}

/** Where subjects stand in a row that begins at a column. */
export function columnsFrom(from: number, stretches: readonly Columns[]): readonly Columns[] {
  return stretches.map(({ start, end }) => ({ start: start - from, end: end - from }));
}

const ONLY_TONICS: Kinds = {};

/** `D96 A92` at the beginning: each letter with its tempo. */
function haveTempos(placed: readonly Placed[], from: number, { notes }: ReturnType<typeof letters>): boolean {
  if (from > 0) return false;
  const numbers = placed.filter(({ item }) => item.meaning.type === "number");
  return notes.length > 1 && notes.every(({ end }) => numbers.some(({ item }) => item.start === end));
}

/** `Bb Eb Ab Db, 1 octave`: three tonics or more, each a fifth or a fourth from the next, and how they were played. */
function areFifthsApart(placed: readonly Placed[], from: number, { notes, end }: ReturnType<typeof letters>): boolean {
  if (from > 0 || notes.length < 3 || notes.some(({ meaning }) => meaning.lower)) return false;
  const behind = placed.find(({ item }) => item.start >= end)?.item.meaning.type ?? "unknown";
  if (!AFTER_KEYS.includes(behind)) return false;
  const fifths = notes.map(({ meaning }) => fifthsOf(meaning.note));
  return fifths.every((each, i) => i === 0 || Math.abs(each - fifths[i - 1]!) === 1);
}

const AFTER_KEYS: readonly Meaning["type"][] = [
  "span",
  "articulation",
  "note value",
  "number",
  "tempo",
  "direction",
  "pattern",
];

/** Along the line of fifths, C at 0. */
function fifthsOf({ letter, alter }: WrittenNote): number {
  return "FCGDAEB".indexOf(letter) - 1 + 7 * alter;
}

/** Where a tonic, a title or the like stands before the letters, these belong to that. */
const OF_THEIR_OWN: readonly Meaning["type"][] = [
  "scale",
  "chord",
  "chain",
  "figure",
  "title",
  "quoted",
  "faulty subject",
];

function kindsBefore(placed: readonly Placed[], to: number, vocabulary: Vocabulary): Kinds | undefined {
  let kinds: Kinds | undefined;
  for (const { item } of placed.slice(0, to)) {
    if (OF_THEIR_OWN.includes(item.meaning.type)) return undefined;
    const said = kindsOf(item, vocabulary);
    if (said) kinds = { ...kinds, ...said };
  }
  return kinds;
}

function kindsOf({ meaning }: Item, vocabulary: Vocabulary): Kinds | undefined {
  switch (meaning.type) {
    case "kind":
      return { kind: meaning.id };
    case "part of a kind":
      return meaning.offers.length === 1 ? { kind: meaning.offers[0]! } : undefined;
    case "chord kind":
      return { chord: meaning };
    case "several":
      return setKinds(meaning);
    case "unknown":
      return wordsOf(meaning).some((word) => isScaleWord(word, vocabulary)) ? { scales: true } : undefined;
    default:
      return undefined;
  }
}

/** `circle of fifths harmonic minor`, `major scales`: what each of a set is. */
function setKinds({ subjects, called }: MeaningOf<"several">): Kinds | undefined {
  const [first] = subjects;
  if (called === undefined || !first) return undefined;
  if (first.type === "scale") return { kind: first.kind };
  return first.type === "chord" ? { chord: { type: "chord kind", id: first.chord, broken: first.broken } } : undefined;
}

/** All its words tell what the letters are. */
function isWhole({ meaning }: Item, vocabulary: Vocabulary): boolean {
  return meaning.type !== "unknown" || wordsOf(meaning).every((word) => isScaleWord(word, vocabulary));
}

function isScaleWord(word: string, vocabulary: Vocabulary): boolean {
  return word === "scale" || word === "scales" || vocabulary.standard(phraseKey(word)) === "scale";
}

function wordsOf({ words }: MeaningOf<"unknown">): readonly string[] {
  return fold(words).split(/\s+/);
}

/** Behind a colon, or with nothing between that is not known. */
function isLed(placed: readonly Placed[], from: number, vocabulary: Vocabulary): boolean {
  if (placed[from]!.after === ":") return true;
  const said = placed.slice(0, from).findIndex(({ item }) => kindsOf(item, vocabulary) !== undefined);
  return placed.slice(said + 1, from).every(({ item }) => item.meaning.type !== "unknown" || isLeadWord(item.meaning));
}

function isLeadWord(meaning: MeaningOf<"unknown">): boolean {
  return wordsOf(meaning).every((word) => ON_NOTE.includes(word) || word === "in" || word === "of");
}

/** The notes from one on, and where they end with the tempos between them. */
function letters(
  placed: readonly Placed[],
  from: number,
): { readonly notes: readonly Item<MeaningOf<"note">>[]; readonly end: number } {
  const notes: Item<MeaningOf<"note">>[] = [];
  for (let i = from; i < placed.length; i++) {
    const { item, after } = placed[i]!;
    if (i > from && after !== undefined && after !== ",") break;
    if (item.meaning.type === "note") notes.push(item as Item<MeaningOf<"note">>);
    else if (item.meaning.type !== "number" && !isJoint(item.meaning)) break;
  }
  return { notes, end: notes.at(-1)!.end };
}

function isJoint(meaning: Meaning): boolean {
  return meaning.type === "unknown" && wordsOf(meaning).every((word) => AND.includes(word) || /^[-–/]$/.test(word));
}

/** Two capitals, or three letters behind a colon; a note with an octave is no tonic. */
function isRow(notes: readonly Item<MeaningOf<"note">>[], after: string | undefined): boolean {
  if (notes.some(({ meaning }) => meaning.note.octave !== undefined)) return false;
  return notes.some(({ meaning }) => meaning.lower) ? notes.length > 2 && after === ":" : notes.length > 1;
}

function subjectOn(note: WrittenNote, { kind, chord }: Kinds): SingleSubject {
  if (chord) {
    const isMinor = chord.id === "major" && kind !== undefined && kind.endsWith("minor");
    return { type: "chord", root: note, chord: isMinor ? "minor" : chord.id, broken: chord.broken };
  }
  const scale = { type: "scale", tonic: note, kind: kind ?? "major", declared: false } as const;
  return kind === undefined ? { ...scale, unsaid: "major" } : scale;
}
