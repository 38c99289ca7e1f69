import type { Item, Meaning } from "../words/meaning.ts";
import { isSubjectType } from "../words/term-types.ts";
import { isBareValue } from "./numbers.ts";
import type { Known } from "./piece.ts";
import { isJoint } from "./several.ts";

const SUBJECTS: readonly Meaning["type"][] = [
  "scale",
  "chord",
  "several",
  "figure",
  "title",
  "quoted",
  "free",
  "faulty subject",
];
const KIND_WORDS: readonly Meaning["type"][] = ["scale", "chord", "several", "kind", "chord kind", "faulty subject"];
/** Enough behind a comma for a line to be an entry, whatever stands before. */
const STRONG: readonly Meaning["type"][] = ["tempo", "place", "amount"];
/** The outcomes of the format, which are known wherever they stand. */
const OWN_OUTCOMES = ["easy", "clean", "nearly", "uneven", "rushed", "slips", "tense", "broke down"];
/** Known to other lines than entries, or to no line by themselves. */
const NO_TERMS: readonly Meaning["type"][] = [
  "unknown",
  "weekday",
  "clock",
  "date",
  "days",
  "goal",
  "line word",
  "last note",
  "part of a kind",
  "phase",
];

/** What may open an entry beside subjects. */
const OPENERS: readonly Meaning["type"][] = ["quoted", "note", "faulty subject"];

/** What the items of a piece say for the rule. */
export function knownOf(items: readonly Item[]): Known {
  const first = items[0]?.meaning.type;
  return {
    alone: areKnown(items, false) && !isPhraseAlone(items[0]?.meaning) && !isNamedPlace(items[0]!.meaning),
    behindTempo: areKnown(items, true),
    counts: items.some(({ meaning }) => meaning.type === "tempo" || meaning.type === "place"),
    lowerNote: items.length === 1 && items[0]!.meaning.type === "note" && items[0]!.meaning.lower,
    empty: first === undefined,
    opensSubject: first !== undefined && SUBJECTS.includes(first),
    opensEntry: first !== undefined && (isSubjectType(first) || OPENERS.includes(first)),
    namesKind: items.some(({ meaning }) => KIND_WORDS.includes(meaning.type)),
    strong: first !== undefined && STRONG.includes(first) && !isNamedPlace(items[0]!.meaning),
  };
}

/** `coda`, `complete`: a place by its name alone is a word of prose, too. */
function isNamedPlace(meaning: Meaning): boolean {
  return meaning.type === "place" && meaning.word === "named";
}

/**
 * Entry or prose: a line is an entry when every word of its first part is known; or when its first part opens with a
 * title, a figure or a tonic and kind, or holds a kind word, and a later part is all known; or when a later part is a
 * tempo, a place or an amount. A part stands between commas, colons and `>`, and is one piece or several.
 */
export class EntryRule {
  private part = -1;
  private pieces = 0;
  private known = false;
  private counts = false;
  private strong = false;
  private loneNote = false;
  private first = false;
  private opens = false;
  private later = false;
  private laterStrong = false;
  private filled = false;

  reset(): void {
    this.part = -1;
    this.pieces = 0;
    this.first = false;
    this.opens = false;
    this.later = false;
    this.laterStrong = false;
    this.filled = false;
  }

  /** The next piece; `joined` goes on with the part before. */
  take(known: Known, joined: boolean): void {
    if (!joined || this.part < 0) {
      this.endPart();
      this.part++;
      this.pieces = 0;
      this.known = !known.empty;
      this.counts = false;
      this.strong = known.strong;
      this.loneNote = known.lowerNote;
      if (this.part === 0) {
        this.filled = !known.empty;
        this.opens = known.opensSubject;
      }
    }
    this.known &&= this.counts ? known.behindTempo : known.alone || known.lowerNote;
    this.counts ||= known.counts;
    if (this.part === 0) this.opens ||= known.namesKind;
    this.pieces++;
    this.loneNote ||= known.lowerNote;
  }

  get isEntry(): boolean {
    this.endPart();
    this.pieces = 0;
    return this.filled && (this.first || (this.opens && this.later) || this.laterStrong);
  }

  private endPart(): void {
    if (this.pieces === 0) return;
    const known = this.known && !(this.loneNote && this.pieces > 1);
    if (this.part === 0) this.first = known;
    else if (known) {
      this.later = true;
      this.laterStrong ||= this.strong;
    }
  }
}

/** The same for parts that are read already. */
export function isEntry(parts: readonly { readonly items: readonly Item[] }[]): boolean {
  const rule = new EntryRule();
  for (const { items } of parts) rule.take(knownOf(items), false);
  return rule.isEntry;
}

/** A phrase of the tables opens no entry: `late`, `well, then`. */
function isPhraseAlone(first: Meaning | undefined): boolean {
  return first?.type === "outcome" && !OWN_OUTCOMES.includes(first.id);
}

/** @param behindTempo a tempo or a place stands before, which a bare number goes on with */
function areKnown(items: readonly Item[], behindTempo: boolean): boolean {
  let counts = behindTempo;
  return (
    items.length > 0 &&
    items.every((item, i) => {
      counts ||= item.meaning.type === "tempo" || item.meaning.type === "place" || isTempoBetween(items, i);
      return (
        isKnownItem(item, items[i + 1], items.length === 1, counts) ||
        (GOING_ON.includes(item.meaning.type) && isBehindJoint(items, i))
      );
    })
  );
}

/** `slurred 60 clean`: behind how it is played and in front of how it went. */
function isTempoBetween(items: readonly Item[], i: number): boolean {
  const [before, { meaning }, behind] = [items[i - 1], items[i]!, items[i + 1]];
  if (!before || !behind || meaning.type !== "number" || !isBareValue(meaning.value)) return false;
  return WAYS.includes(before.meaning.type) && (behind.meaning.type === "outcome" || behind.meaning.type === "tries");
}

const WAYS: readonly Meaning["type"][] = ["articulation", "pattern", "note value", "rhythm", "span", "direction"];

function isKnownItem({ meaning }: Item, next: Item | undefined, alone: boolean, counts: boolean): boolean {
  if (meaning.type === "note") return !meaning.lower || alone;
  if (meaning.type === "number" || meaning.type === "range") return counts;
  if (!NO_TERMS.includes(meaning.type)) return true;
  if (meaning.type !== "unknown" || !next) return false;
  // readable: a dash where a comma belongs, `thirds in D minor`, `C and G major`, `D natural/harmonic`
  const isJoined = KIND_WORDS.includes(next.meaning.type) || next.meaning.type === "part of a kind";
  const isTonic = next.meaning.type === "note" && !next.meaning.lower && next.meaning.note.octave === undefined;
  if (/^in$/i.test(meaning.words)) return isJoined || isTonic;
  return meaning.words === "-" || (isJoint(meaning) && (isJoined || / (?:from|on)$/i.test(meaning.words)));
}

/** What goes on with a scale behind `/` or `and`: another kind, or the same from another note. */
const GOING_ON: readonly Meaning["type"][] = ["part of a kind", "note"];

function isBehindJoint(items: readonly Item[], i: number): boolean {
  return (
    i > 1 && isJoint(items[i - 1]!.meaning) && KIND_WORDS.concat("part of a kind").includes(items[i - 2]!.meaning.type)
  );
}
