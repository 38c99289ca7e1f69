import type { SignClass } from "../lexicon/signs/sign-table.ts";
import { phraseKey } from "../words/fold.ts";
import type { Item } from "../words/meaning.ts";
import { isSpeech } from "../words/speech.ts";
import { type Token, tokenise } from "../words/token.ts";
import { LONGEST_PHRASE, type Vocabulary } from "../words/vocabulary.ts";
import type { WordClass } from "../words/word-classes.ts";
import type { Part } from "./cut.ts";

/** A phrase of the lexicon's classes that begins at a word. */
interface ClassedPhrase {
  readonly length: number;
  readonly classes: readonly WordClass[];
}

/**
 * The words of a line, before its remark: as typed, with what the lexicon says of them beside what was found. What asks
 * how a line is to be understood asks here. Words are counted from 0; past the end nothing is found.
 */
export class LineWords {
  readonly words: readonly Token[];
  /** In the order of the line. */
  readonly items: readonly Item[];
  private readonly phrases: (readonly ClassedPhrase[])[] = [];
  private readonly foundAt: readonly (Item | undefined)[];

  constructor(
    readonly text: string,
    readonly start: number,
    readonly end: number,
    readonly parts: readonly Part[],
    private readonly vocabulary: Vocabulary,
  ) {
    this.words = tokenise(text.slice(start, end), start).flatMap(trimmed);
    this.items = parts.flatMap(({ items }) => items);
    this.foundAt = itemsAt(this.words, this.items);
  }

  get count(): number {
    return this.words.length;
  }

  /** The word as typed; "" past the end. */
  typed(i: number): string {
    return this.words[i]?.text ?? "";
  }

  key(i: number): string {
    return phraseKey(this.typed(i));
  }

  /** Also behind the short form of an article: `l'Air`. */
  isCapital(i: number): boolean {
    return /^(?:\p{Ll}{1,2}['’])?\p{Lu}/u.test(this.typed(i));
  }

  /** What was found where a word stands; undefined for words that are kept as typed. */
  found(i: number): Item | undefined {
    const item = this.foundAt[i];
    return item && item.meaning.type !== "unknown" ? item : undefined;
  }

  has(...types: readonly Item["meaning"]["type"][]): boolean {
    return this.items.some(({ meaning }) => types.includes(meaning.type));
  }

  /** A place by its number: `bars 1-8`, `line 4`. */
  get hasNumberedPlace(): boolean {
    return this.items.some(({ meaning }) => meaning.type === "place" && /\d/.test(meaning.text));
  }

  /** How many words the longest phrase of one of the classes is that begins at a word; 0 where none does. */
  lengthOf(i: number, ...classes: readonly SignClass[]): number {
    return this.phrasesAt(i).find((phrase) => phrase.classes.some((each) => classes.includes(each.class)))?.length ?? 0;
  }

  is(i: number, ...classes: readonly SignClass[]): boolean {
    return this.lengthOf(i, ...classes) > 0;
  }

  /** `scale`, `scales`, `Tonleiter`, `gamme`: a word for scales that says no key. */
  isScaleWord(i: number): boolean {
    const key = this.key(i);
    return key === "scale" || key === "scales" || this.vocabulary.standard(key) === "scale";
  }

  /** Whether words in quotes are what somebody said. */
  isSpeech(quoted: string): boolean {
    return isSpeech(quoted, this.vocabulary);
  }

  /** What the longest phrase of a class that begins at a word means. */
  meaningOf(i: number, wordClass: SignClass): string | undefined {
    for (const { classes } of this.phrasesAt(i))
      for (const each of classes) if (each.class === wordClass) return each.meaning;
    return undefined;
  }

  /** The first word from one on at which a phrase of the classes begins; -1 where none does. */
  first(from: number, to: number, ...classes: readonly SignClass[]): number {
    for (let i = from; i < Math.min(to, this.count); i++) if (this.is(i, ...classes)) return i;
    return -1;
  }

  /** Whether a word is one slip away from a word of trouble of the body. */
  isNearTrouble(i: number): boolean {
    return this.vocabulary.isNearTrouble(this.key(i)) && !this.vocabulary.outcomes.of(this.typed(i));
  }

  /** Whether a word by itself says that something went well. */
  isGood(i: number): boolean {
    return this.vocabulary.outcomes.of(this.typed(i))?.says === "reached";
  }

  /** The title that a journal declares by these words. */
  titleOf(text: string): string | undefined {
    return this.vocabulary.title(text);
  }

  /** The signs between a word and the one before it, or before the first or behind the last; "" further on. */
  before(i: number): string {
    const from = i > 0 ? (this.words[i - 1]?.end ?? this.end) : this.start;
    return this.text.slice(from, this.words[i]?.start ?? this.end).trim();
  }

  /** The first word behind a comma, colon, semicolon or stop, or in a tempo, place or amount; `count` where none is. */
  get firstStop(): number {
    for (let i = 0; i < this.count; i++) {
      const type = this.found(i)?.meaning.type;
      if (type === "tempo" || type === "place" || type === "amount") return i;
      if (i > 0 && /[,:;.|]|(?:^|\s)[–-]+(?:\s|$)/.test(this.before(i))) return i;
    }
    return this.count;
  }

  private phrasesAt(i: number): readonly ClassedPhrase[] {
    const known = this.phrases[i];
    if (known) return known;
    const found: ClassedPhrase[] = [];
    let key = "";
    for (let n = 0; n < LONGEST_PHRASE && i + n < this.count; n++) {
      if (n > 0 && /[^\s'’-]/.test(this.before(i + n))) break;
      const own = this.key(i + n);
      if (n > 0 && own.length === 1 && (key.length === n || /[A-H]/.test(this.typed(i + n)))) break; // steps, or notes
      key += own;
      if (n === 0 && SINGLE_LETTERS.test(this.typed(i))) break;
      const classes = n === 0 ? this.vocabulary.classesOfWord(key) : this.vocabulary.classes(key);
      if (classes) found.unshift({ length: n + 1, classes });
    }
    this.phrases[i] = found;
    return found;
  }
}

/** `i-m`, `p-i-m-a`: fingers, and no `I'm`. */
const SINGLE_LETTERS = /^\p{L}(?:[-‐‑]\p{L})+$/u;

/** The words of a line as they are compared with those of titles. */
export function keysOf(words: LineWords, most = words.count): readonly string[] {
  return Array.from({ length: Math.min(words.count, most) }, (_, i) => words.key(i));
}

/** For each word the item that it is part of; both go from the left to the right. */
function itemsAt(words: readonly Token[], items: readonly Item[]): readonly (Item | undefined)[] {
  let at = 0;
  return words.map(({ start, end }) => {
    while (at < items.length && items[at]!.end <= start) at++;
    const item = items[at];
    return item && item.start < end ? item : undefined;
  });
}

const SIGNS_BEFORE = /^[\s.,;:!?()[\]{}…*~→–—-]+/u;
const SIGNS_BEHIND = /[\s.,;:!?()[\]{}…*~→–—-]+$/u;

/** A word without the signs around it; nothing where it is no more than signs. */
function trimmed(token: Token): readonly Token[] {
  if (token.quote) return [token];
  const text = token.text.replace(SIGNS_BEFORE, "");
  const start = token.start + token.text.length - text.length;
  const word = text.replace(SIGNS_BEHIND, "");
  return word === "" ? [] : [{ start, end: start + word.length, text: word }];
}
