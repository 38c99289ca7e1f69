import { withoutAccents } from "./fold.ts";
import { ORDINARY_WORDS } from "./ordinary-words.ts";
import { isOneSlip } from "./standard-words.ts";
import type { WordClass } from "./word-classes.ts";

/** Words of trouble that are shorter are too like others. */
const SHORTEST = 6;

/** Words of trouble of the body by more than their letters: by how they end, and with a slip of spelling. */
export class BodyWordsNear {
  /** Made when the first unknown word comes. */
  private words: BodyWords | undefined;

  constructor(private readonly tables: readonly ReadonlyMap<string, readonly WordClass[]>[]) {}

  /** A word made of a part of the body and its trouble: `rugpijn`. */
  byEnding(key: string): readonly WordClass[] | undefined {
    this.words ??= bodyWords(this.tables);
    return this.words.endings.find(([ending]) => key.length > ending.length && key.endsWith(ending))?.[1];
  }

  /** Whether a word is one slip away from a word of trouble, and no other word: `swolen`. */
  isNear(key: string): boolean {
    const word = withoutAccents(key);
    if (word.length < SHORTEST - 1 || ORDINARY_WORDS.has(word)) return false;
    this.words ??= bodyWords(this.tables);
    return (this.words.troubles.get(word[0]!) ?? []).some(
      (trouble) => Math.abs(trouble.length - word.length) <= 1 && isOneSlip(trouble, word),
    );
  }
}

interface BodyWords {
  readonly endings: readonly (readonly [string, readonly WordClass[]])[];
  /** By their first letter, in which slips are rare. */
  readonly troubles: ReadonlyMap<string, readonly string[]>;
}

function bodyWords(tables: readonly ReadonlyMap<string, readonly WordClass[]>[]): BodyWords {
  const endings: [string, readonly WordClass[]][] = [];
  const troubles = new Map<string, string[]>();
  for (const table of tables)
    for (const [key, classes] of table) {
      const own = classes.filter((each) => each.class === "body-trouble-ending");
      if (own.length > 0) endings.push([key, own.map(({ meaning }) => ({ class: "body-trouble", meaning }))]);
      if (key.length < SHORTEST || !classes.some((each) => each.class === "body-trouble")) continue;
      const plain = withoutAccents(key);
      const known = troubles.get(plain[0]!);
      if (known) known.push(plain);
      else troubles.set(plain[0]!, [plain]);
    }
  return { endings, troubles };
}
