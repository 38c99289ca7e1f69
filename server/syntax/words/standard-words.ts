import { phraseKey, withoutAccents } from "./fold.ts";
import { ORDINARY_WORDS } from "./ordinary-words.ts";

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
  /** The trade's words by themselves and without any one of their letters. */
  private shortened: Map<string, string[]> | undefined;
  private all: ReadonlySet<string> = new Set();

  constructor(
    /** Keys of words, and of what they stand for. */
    others: ReadonlyMap<string, string>,
    /** The words in which a slip is passed over, and every word that is known. */
    private readonly words: () => { readonly trade: Iterable<string>; readonly all: ReadonlySet<string> },
  ) {
    for (const [word, standard] of others) this.known.set(withoutAccents(word), phraseKey(standard));
  }

  /**
   * @param key of a word as typed
   * @returns the key of the word that it stands for; undefined where it stands for itself
   */
  of(key: string): string | undefined {
    const plain = withoutAccents(key);
    const known = this.known.get(plain) ?? (plain.endsWith(".") ? this.pointed(plain.slice(0, -1)) : undefined);
    if (known !== undefined) return known;
    if (plain.length < SHORTEST || plain.length > LONGEST || !LETTERS.test(plain)) return undefined;
    const near = this.nearest(plain);
    return near === undefined ? undefined : (this.known.get(near) ?? near);
  }

  private pointed(word: string): string | undefined {
    return this.known.get(word);
  }

  private nearest(word: string): string | undefined {
    if (ORDINARY_WORDS.has(word)) return undefined;
    this.shortened ??= this.allShortened();
    if (this.all.has(word)) return undefined;
    let found: string | undefined;
    for (const form of shorterForms(word)) {
      for (const near of this.shortened.get(form) ?? []) {
        if (near === found || near[0] !== word[0] || isPlural(near, word) || !isOneSlip(near, word)) continue;
        if (found !== undefined && this.standardOf(found) !== this.standardOf(near)) return undefined;
        found = near;
      }
    }
    return found;
  }

  private standardOf(word: string): string {
    return this.known.get(word) ?? word;
  }

  private allShortened(): Map<string, string[]> {
    const shortened = new Map<string, string[]>();
    const { trade, all } = this.words();
    this.all = all;
    for (const word of [...trade, ...this.known.keys()]) {
      const plain = withoutAccents(word);
      if (plain.length < SHORTEST || !LETTERS.test(plain)) continue;
      for (const form of shorterForms(plain)) {
        const words = shortened.get(form);
        if (!words) shortened.set(form, [plain]);
        else if (!words.includes(plain)) words.push(plain);
      }
    }
    return shortened;
  }
}

/** A word, and the same without any one of its letters. */
function shorterForms(word: string): readonly string[] {
  const forms = [word];
  for (let i = 0; i < word.length; i++) forms.push(word.slice(0, i) + word.slice(i + 1));
  return forms;
}

function isPlural(a: string, b: string): boolean {
  return a === `${b}s` || b === `${a}s`;
}

/** Of two words that have a shorter form in common: whether no more than one slip lies between. */
function isOneSlip(a: string, b: string): boolean {
  if (a.length !== b.length) return true;
  let first = 0;
  while (a[first] === b[first]) first++;
  let last = a.length - 1;
  while (last > first && a[last] === b[last]) last--;
  return last === first || (last === first + 1 && a[first] === b[last] && a[last] === b[first]);
}
