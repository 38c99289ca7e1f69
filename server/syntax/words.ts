import { phraseKey, wholeNumberOf } from "./fold.ts";
import type { Meaning, MeaningOf } from "./meaning.ts";
import { type NoteRun, noteAt } from "./note-word.ts";
import type { Token } from "./token.ts";
import { LONGEST_PHRASE, type Vocabulary } from "./vocabulary.ts";

/** What the words from one token on mean, and how many tokens they are. */
export interface Found<M extends Meaning = Meaning> {
  readonly length: number;
  readonly meaning: M;
}

/** The tokens of one part, with the questions that every recogniser asks of them. */
export class Words {
  constructor(
    readonly tokens: readonly Token[],
    readonly vocabulary: Vocabulary,
    private readonly source: string,
    private readonly offset: number,
  ) {}

  /** The word at a token, lower-case; "" past the end and for a quoted text. */
  word(i: number): string {
    const token = this.tokens[i];
    return token && !token.quote ? token.text.toLowerCase() : "";
  }

  /** The word at a token as typed; "" past the end and for a quoted text. */
  typed(i: number): string {
    const token = this.tokens[i];
    return token && !token.quote ? token.text : "";
  }

  is(i: number, ...words: readonly string[]): boolean {
    return words.includes(this.word(i));
  }

  whole(i: number): number | undefined {
    return wholeNumberOf(this.typed(i));
  }

  note(i: number): NoteRun | undefined {
    return noteAt(this.tokens, i);
  }

  quoted(i: number): Token | undefined {
    return this.tokens[i]?.quote ? this.tokens[i] : undefined;
  }

  /** The text of the tokens from `i` up to `to`, as typed. */
  text(i: number, to: number): string {
    return this.source.slice(this.tokens[i]!.start - this.offset, this.tokens[to - 1]!.end - this.offset);
  }

  /** The longest known phrase from a token on that has a meaning of one of the types. */
  phrase<T extends Meaning["type"]>(i: number, ...types: readonly T[]): Found<MeaningOf<T>> | undefined {
    let key = "";
    let found: Found<MeaningOf<T>> | undefined;
    for (let n = 1; n <= LONGEST_PHRASE; n++) {
      const token = this.tokens[i + n - 1];
      if (!token || token.quote || token.text === "=" || token.text === "|") break;
      key += phraseKey(token.text);
      const meaning = this.vocabulary.meanings(key)?.find((each) => (types as readonly string[]).includes(each.type));
      if (meaning) found = { length: n, meaning: meaning as MeaningOf<T> };
    }
    return found;
  }
}
