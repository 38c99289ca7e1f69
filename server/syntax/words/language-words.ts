import type { OutcomeWords } from "../lexicon/outcomes/outcome-words.ts";
import { outcomeWords } from "../lexicon/outcomes.ts";
import { BodyWordsNear } from "./body-words-near.ts";
import { phraseKey } from "./fold.ts";
import type { Meaning, MeaningOf } from "./meaning.ts";
import { OutcomeTable } from "./outcome-table.ts";
import { StandardWords } from "./standard-words.ts";
import type { Phrase } from "./terms.ts";
import type { WordClass } from "./word-classes.ts";

/** What a journal's languages have beside their phrases. */
export interface WordTables {
  /** What says how it went, in whole phrases. */
  readonly outcomes: readonly OutcomeWords[];
  /** What tells the kinds of lines: by the keys of words, a table for each language. */
  readonly classes: readonly ReadonlyMap<string, readonly WordClass[]>[];
  /** Single words that stand for others of the phrases: see `StandardWords`. */
  readonly otherWords: ReadonlyMap<string, string>;
}

/** The words of the languages of a journal, whatever it declares. Immutable, and the same for every journal of them. */
export class LanguageWords {
  readonly outcomes: readonly OutcomeWords[];
  readonly classes: WordTables["classes"];
  readonly standards: StandardWords;
  readonly bodyNear: BodyWordsNear;
  private readonly byKey = new Map<string, readonly Meaning[]>();
  private outcomeTable: OutcomeTable | undefined;

  constructor(
    readonly phrases: readonly Phrase[],
    { outcomes = outcomeWords("english"), classes = [], otherWords = new Map() }: Partial<WordTables> = {},
  ) {
    this.outcomes = outcomes;
    this.classes = classes;
    this.bodyNear = new BodyWordsNear(classes);
    this.standards = new StandardWords(phrases, otherWords);
    for (const { words, meaning } of phrases)
      for (const word of words) {
        const key = phraseKey(word);
        const known = this.byKey.get(key);
        this.byKey.set(key, known ? [meaning, ...known] : [meaning]);
      }
    this.byKey.delete("");
  }

  /** What a phrase means, by its key (see `phraseKey`). */
  meanings(key: string): readonly Meaning[] | undefined {
    return this.byKey.get(key);
  }

  /**
   * What says how it went, in whole phrases.
   *
   * @param declared what a journal declares, which counts before all others; most declare nothing, and share a table
   */
  outcomesBeside(declared: readonly MeaningOf<"outcome">[]): OutcomeTable {
    if (declared.length > 0) return this.tableOf(declared);
    this.outcomeTable ??= this.tableOf([]);
    return this.outcomeTable;
  }

  private tableOf(declared: readonly MeaningOf<"outcome">[]): OutcomeTable {
    return new OutcomeTable(this.outcomes, [
      ...declared.map((outcome) => [outcome.id, outcome] as const),
      ...this.phrases.flatMap(outcomesOf),
    ]);
  }
}

/** An outcome of the format, under each of its names. */
function outcomesOf({ words, meaning }: Phrase): readonly (readonly [string, MeaningOf<"outcome">])[] {
  return meaning.type === "outcome" ? words.map((name) => [name, meaning] as const) : [];
}
