import { phraseKey, withoutAccents } from "./fold.ts";
import type { Meaning } from "./meaning.ts";
import { ORDINARY_WORDS } from "./ordinary-words.ts";
import type { Phrase } from "./terms.ts";

/** Shorter words are too like each other for a slip to be told. */
const SHORTEST = 5;
const LONGEST = 24;
const LETTERS = /^\p{L}+$/u;

/**
 * Which word of the tables another one stands for: an abbreviation with or without its point, a plural, a word of the
 * journal's language, or one slip of spelling (a letter too many, too few, changed, or two in each other's place).
 */
export class StandardWords {
  private readonly known = new Map<string, string>();
  /** Made when the first unknown word comes. */
  private index: SlipIndex | undefined;

  constructor(
    private readonly phrases: readonly Phrase[],
    /** Keys of words, and of what they stand for. */
    others: ReadonlyMap<string, string>,
  ) {
    for (const [word, standard] of others) this.known.set(withoutAccents(word), phraseKey(standard));
  }

  /**
   * @param key of a word as typed
   * @returns the key of the word that it stands for; undefined where it stands for itself
   */
  of(key: string): string | undefined {
    const plain = withoutAccents(key);
    const known = this.known.get(plain) ?? (plain.endsWith(".") ? this.known.get(plain.slice(0, -1)) : undefined);
    if (known !== undefined) return known;
    if (plain.length < SHORTEST || plain.length > LONGEST || !LETTERS.test(plain)) return undefined;
    const near = this.nearest(plain);
    return near === undefined ? undefined : (this.known.get(near) ?? near);
  }

  private nearest(word: string): string | undefined {
    if (ORDINARY_WORDS.has(word)) return undefined;
    this.index ??= slipIndex(this.phrases, this.known.keys());
    if (this.index.all.has(word)) return undefined;
    let found: string | undefined;
    for (const length of [word.length - 1, word.length, word.length + 1]) {
      for (const near of this.index.trade.get(shapeOf(word, length)) ?? []) {
        if (isPlural(near, word) || !isOneSlip(near, word)) continue;
        if (found !== undefined && this.standardOf(found) !== this.standardOf(near)) return undefined;
        found = near;
      }
    }
    return found;
  }

  private standardOf(word: string): string {
    return this.known.get(word) ?? word;
  }
}

/** The meanings in whose words a slip of spelling is passed over. */
const TRADE: readonly Meaning["type"][] = [
  "kind",
  "part of a kind",
  "chord kind",
  "figure word",
  "pattern",
  "inversion",
  "articulation",
  "rhythm",
  "note value",
];

/** Names of techniques by one word, of at least so many letters; words beside others are everyday ones too often. */
const SHORTEST_TECHNIQUE = 6;

/** A number stands before these, which is read with the word as it is typed. */
const COUNTED = ["octave", "octaves"];

interface SlipIndex {
  /** The trade's words by their shapes: a slip in the first letter is none. */
  readonly trade: ReadonlyMap<string, readonly string[]>;
  /** Every word of the language, without accents. */
  readonly all: ReadonlySet<string>;
}

function slipIndex(phrases: readonly Phrase[], others: Iterable<string>): SlipIndex {
  const all = new Set<string>();
  const trade = new Set(others);
  for (const { words, meaning, foreign } of phrases) {
    const isTrade = !foreign && TRADE.includes(meaning.type);
    for (const phrase of words) {
      if (meaning.type === "technique" && !foreign && isLongWord(phrase)) trade.add(withoutAccents(phrase));
      for (const word of withoutAccents(phrase).split(/[ -]/)) {
        all.add(word);
        if (isTrade) trade.add(word);
      }
    }
  }
  for (const word of COUNTED) trade.delete(word);
  const byShape = new Map<string, string[]>();
  for (const word of trade) {
    if (word.length < SHORTEST || !LETTERS.test(word)) continue;
    const shape = shapeOf(word, word.length);
    const words = byShape.get(shape);
    if (words) words.push(word);
    else byShape.set(shape, [word]);
  }
  return { trade: byShape, all };
}

function isLongWord(phrase: string): boolean {
  return phrase.length >= SHORTEST_TECHNIQUE && LETTERS.test(phrase);
}

function shapeOf(word: string, length: number): string {
  return `${word[0]}${length}`;
}

function isPlural(a: string, b: string): boolean {
  return a === `${b}s` || b === `${a}s`;
}

/** Whether no more than one slip lies between two words whose lengths differ by one letter at most. */
export function isOneSlip(a: string, b: string): boolean {
  let first = 0;
  while (first < a.length && a[first] === b[first]) first++;
  if (a.length > b.length) return a.slice(first + 1) === b.slice(first);
  if (b.length > a.length) return b.slice(first + 1) === a.slice(first);
  if (a.slice(first + 1) === b.slice(first + 1)) return true;
  return a[first] === b[first + 1] && a[first + 1] === b[first] && a.slice(first + 2) === b.slice(first + 2);
}
