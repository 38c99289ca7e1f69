import { distance } from "fastest-levenshtein";

/** A name near to a word. */
export interface Near {
  /** Its place in the list. */
  readonly index: number;
  /**
   * How many letters were put in, taken out or changed; less for the same letters in another order, and for a like
   * beginning.
   */
  readonly slips: number;
}

const SAME_LETTERS = 0.5;
const BEGINS_ALIKE = 0.25;
export const MOST_TAKEN_OFF = SAME_LETTERS + BEGINS_ALIKE;

/** @param distance how many letters were put in, taken out or changed */
export function slipsOf(word: string, name: string, distance: number): number {
  return distance - (haveSameLetters(word, name) ? SAME_LETTERS : 0) - (word[0] === name[0] ? BEGINS_ALIKE : 0);
}

function haveSameLetters(a: string, b: string): boolean {
  return a.length === b.length && sumOf(a) === sumOf(b) && inOrder(a) === inOrder(b);
}

function inOrder(word: string): string {
  return [...word].sort().join("");
}

/** The same for the same letters in whatever order, and seldom for others: the letters are scattered first. */
function sumOf(word: string): number {
  let sum = 0;
  for (let i = 0; i < word.length; i++) {
    const scattered = Math.imul(word.charCodeAt(i) + 1, 0x9e3779b1);
    sum += Math.imul(scattered ^ (scattered >>> 15), 0x85ebca6b) >>> 8;
  }
  return sum;
}

/** From so many changes on most names of a list come into question by how they begin, and their letters tell more. */
const FAR = 3;

/**
 * A list of names in which the one nearest to a word is sought, for lists of thousands and as many words. How several
 * names begin is compared once, and those that cannot be near are told by the letters they hold.
 */
export class NameIndex {
  private readonly all: SortedNames;
  private readonly letters: LetterSets;
  /** The names' places in the list by the sums of their letters. */
  private readonly anagrams = new Map<number, number[]>();

  constructor(private readonly names: readonly string[]) {
    const order = [...names.keys()].sort((a, b) => (names[a]! < names[b]! ? -1 : names[a]! > names[b]! ? 1 : a - b));
    const alike = order.map((at, i) => (i === 0 ? 0 : lengthAlike(names[order[i - 1]!]!, names[at]!)));
    this.all = sortedNames(order, alike);
    this.letters = new LetterSets(order.map((at) => names[at]!));
    for (const [at, name] of names.entries()) {
      const sum = sumOf(name);
      const known = this.anagrams.get(sum);
      if (known) known.push(at);
      else this.anagrams.set(sum, [at]);
    }
  }

  /**
   * The name with the fewest slips, fewer than `least` and longer or shorter by less; of several the first of the list.
   */
  nearest(word: string, least: number): Near | undefined {
    const furthest = Math.ceil(least + MOST_TAKEN_OFF) - 1;
    let best: Near = { index: -1, slips: least };
    for (const at of this.anagrams.get(sumOf(word)) ?? [])
      best = this.nearerOf(best, at, word, distance(word, this.names[at]!));
    let among = this.all;
    for (let most = 1; most <= furthest && best.slips >= most - BEGINS_ALIKE; most++) {
      if (most === FAR) among = this.possible(word, least, furthest);
      best = this.nearestOf(among, word, { most, longer: least }, best);
    }
    return best.index < 0 ? undefined : best;
  }

  /** The names that so many changes at most may lead to. */
  private possible(word: string, longer: number, changes: number): SortedNames {
    const { order, alike } = this.all;
    const own = new LetterSets([word]);
    const found = { order: [] as number[], alike: [] as number[] };
    let alikeSince = 0;
    for (let i = 0; i < order.length; i++) {
      if (alike[i]! < alikeSince) alikeSince = alike[i]!;
      if (!this.letters.mayBecome(i, own, longer, changes)) continue;
      found.order.push(order[i]!);
      found.alike.push(alikeSince);
      alikeSince = Number.POSITIVE_INFINITY;
    }
    return sortedNames(found.order, found.alike);
  }

  /** The nearest of some names within reach, where it is nearer than the best so far. */
  private nearestOf({ order, alike, less }: SortedNames, word: string, { most, longer }: Reach, best: Near): Near {
    const table = new ChangesTable(word, most);
    let near = best;
    for (let i = 0; i < order.length; ) {
      const index = order[i]!;
      const name = this.names[index]!;
      const depth = table.fill(name, alike[i]!);
      i++;
      if (depth < name.length) {
        while (i < order.length && alike[i]! > depth) i = less[i]!;
        continue;
      }
      const changes = table.changes(name);
      if (changes <= most && Math.abs(name.length - word.length) < longer)
        near = this.nearerOf(near, index, word, changes);
    }
    return near;
  }

  /** The name at a place, where it is nearer than the best so far. */
  private nearerOf(best: Near, index: number, word: string, changes: number): Near {
    if (changes - MOST_TAKEN_OFF > best.slips) return best;
    const slips = slipsOf(word, this.names[index]!, changes);
    return slips < best.slips || (slips === best.slips && index < best.index) ? { index, slips } : best;
  }
}

/** At most so many changes, and longer or shorter by less than that. */
interface Reach {
  readonly most: number;
  readonly longer: number;
}

/** Names, by their places in the list, in the order of their texts: those that begin alike stand together. */
interface SortedNames {
  readonly order: readonly number[];
  /** How many letters each begins with as the one before it does. */
  readonly alike: readonly number[];
  /** Where the next one stands that is alike in fewer letters than this one. */
  readonly less: readonly number[];
}

function sortedNames(order: readonly number[], alike: readonly number[]): SortedNames {
  const less = new Array<number>(order.length);
  for (let i = order.length - 1; i >= 0; i--) {
    let next = i + 1;
    while (next < order.length && alike[next]! >= alike[i]!) next = less[next]!;
    less[i] = next;
  }
  return { order, alike, less };
}

function lengthAlike(a: string, b: string): number {
  const shorter = Math.min(a.length, b.length);
  let i = 0;
  while (i < shorter && a[i] === b[i]) i++;
  return i;
}

/**
 * How many letters are put in, taken out or changed between a word and names that come in the order of their texts, as
 * far as there are no more than `most` (Wagner and Fischer 1974; Ukkonen 1985 for the band). One row for each letter of
 * a name.
 */
class ChangesTable {
  private readonly rows: Uint8Array[];
  /** So many rows are filled. */
  private depth = 0;

  constructor(
    private readonly word: string,
    private readonly most: number,
  ) {
    this.rows = [Uint8Array.from({ length: word.length + 2 }, (_, j) => Math.min(j, most + 1))];
  }

  /**
   * Fills the rows of a name, of which `alike` are those of the name before, and returns how many are: fewer than it
   * has letters where no word that goes on like this is within reach.
   */
  fill(name: string, alike: number): number {
    for (this.depth = Math.min(this.depth, alike); this.depth < name.length; this.depth++)
      if (this.fillRow(this.depth + 1, name.charCodeAt(this.depth)) > this.most) break;
    return this.depth;
  }

  /** Of a name whose rows are all filled. */
  changes({ length }: string): number {
    return Math.abs(length - this.word.length) > this.most ? this.most + 1 : this.rows[length]![this.word.length]!;
  }

  /** Returns the least of the row. */
  private fillRow(i: number, letter: number): number {
    const { rows, word, most } = this;
    const above = rows[i - 1]!;
    rows[i] ??= new Uint8Array(word.length + 2);
    const row = rows[i];
    const [from, to] = [Math.max(1, i - most), Math.min(word.length, i + most)];
    row[from - 1] = from === 1 ? Math.min(i, most + 1) : most + 1;
    let least = row[from - 1]!;
    for (let j = from; j <= to; j++) {
      const changed = above[j - 1]! + (word.charCodeAt(j - 1) === letter ? 0 : 1);
      const changes = Math.min(changed, above[j]! + 1, row[j - 1]! + 1, most + 1);
      row[j] = changes;
      if (changes < least) least = changes;
    }
    row[to + 1] = most + 1;
    return least;
  }
}

/**
 * The letters of words, and the pairs of letters side by side, each as one bit of 32 or 64: two words are soon
 * compared.
 */
class LetterSets {
  private readonly lengths: Uint32Array;
  private readonly letters: Int32Array;
  private readonly pairs: Int32Array;
  private readonly otherPairs: Int32Array;

  constructor(words: readonly string[]) {
    this.lengths = Uint32Array.from(words, ({ length }) => length);
    this.letters = new Int32Array(words.length);
    this.pairs = new Int32Array(words.length);
    this.otherPairs = new Int32Array(words.length);
    for (const [at, word] of words.entries()) this.add(word, at);
  }

  private add(word: string, at: number): void {
    for (let i = 0; i < word.length; i++) {
      const letter = word.charCodeAt(i);
      this.letters[at]! |= 1 << letter;
      if (i === 0) continue;
      const pair = Math.imul(letter * 31 + word.charCodeAt(i - 1), 0x9e3779b1) >>> 26;
      (pair < 32 ? this.pairs : this.otherPairs)[at]! |= 1 << pair;
    }
  }

  /**
   * Whether so many changes may lead to another word, longer or shorter by less than `longer`: none adds or takes more
   * than one letter and two pairs.
   */
  mayBecome(at: number, word: LetterSets, longer: number, changes: number): boolean {
    const more = this.lengths[at]! - word.lengths[0]!;
    if (more >= longer || -more >= longer) return false;
    const [a, b] = [this.letters[at]!, word.letters[0]!];
    if (bitsIn(a & ~b) > changes || bitsIn(b & ~a) > changes) return false;
    const [c, d] = [this.pairs[at]!, word.pairs[0]!];
    const [e, f] = [this.otherPairs[at]!, word.otherPairs[0]!];
    return bitsIn(c & ~d) + bitsIn(e & ~f) <= 2 * changes && bitsIn(d & ~c) + bitsIn(f & ~e) <= 2 * changes;
  }
}

/** How many bits of 32 are set (Warren, Hacker's Delight, 5-1). */
function bitsIn(bits: number): number {
  const twos = bits - ((bits >>> 1) & 0x55555555);
  const fours = (twos & 0x33333333) + ((twos >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}
