import { withoutAccents } from "./fold.ts";
import { ORDINARY_WORDS } from "./ordinary-words.ts";
import { isOneSlip } from "./standard-words.ts";
import type { WordClass } from "./word-classes.ts";

/** Words of trouble that are shorter are too like others. */
const SHORTEST = 6;

/** Words of trouble of the body by more than their letters: by how they end, and with a slip of spelling. */
export class BodyWordsNear {
  private readonly endings: readonly (readonly [string, readonly WordClass[]])[];
  /** By their first letter, in which slips are rare. */
  private readonly troubles = new Map<string, string[]>();

  constructor(tables: readonly ReadonlyMap<string, readonly WordClass[]>[]) {
    const all = tables.flatMap((table) => [...table]);
    this.endings = all.flatMap(([ending, classes]) => {
      const own = classes.filter((each) => each.class === "body-trouble-ending");
      return own.length > 0 ? [[ending, own.map(({ meaning }) => ({ class: "body-trouble", meaning }) as const)]] : [];
    });
    for (const [key, classes] of all) {
      if (key.length < SHORTEST || !classes.some((each) => each.class === "body-trouble")) continue;
      const plain = withoutAccents(key);
      this.troubles.set(plain[0]!, [...(this.troubles.get(plain[0]!) ?? []), plain]);
    }
  }

  /** A word made of a part of the body and its trouble: `rugpijn`. */
  byEnding(key: string): readonly WordClass[] | undefined {
    return this.endings.find(([ending]) => key.length > ending.length && key.endsWith(ending))?.[1];
  }

  /** Whether a word is one slip away from a word of trouble, and no other word: `swolen`. */
  isNear(key: string): boolean {
    const word = withoutAccents(key);
    if (word.length < SHORTEST - 1 || ORDINARY_WORDS.has(word)) return false;
    return (this.troubles.get(word[0]!) ?? []).some(
      (trouble) => Math.abs(trouble.length - word.length) <= 1 && isOneSlip(trouble, word),
    );
  }
}
