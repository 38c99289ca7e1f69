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
  private readonly keys: string[] = [];
  private readonly standardKeys: string[] = [];
  private readonly phrases: (readonly Phrases[])[] = [];
  private readonly lower: string[] = [];
  /** Null where none begins. */
  private readonly notes: (NoteRun | null)[] = [];

  constructor(
    readonly tokens: readonly Token[],
    readonly vocabulary: Vocabulary,
    private readonly source: string,
    private readonly offset: number,
  ) {}

  /** The word at a token, lower-case; "" past the end and for a quoted text. */
  word(i: number): string {
    const token = this.tokens[i];
    if (!token || token.quote) return "";
    this.lower[i] ??= token.text.toLowerCase();
    return this.lower[i];
  }

  /** The word at a token as typed; "" past the end and for a quoted text. */
  typed(i: number): string {
    const token = this.tokens[i];
    return token && !token.quote ? token.text : "";
  }

  /** The word at a token, or the word of the tables that it stands for: `scale` for `Tonleiter`. */
  standard(i: number): string {
    const token = this.tokens[i];
    if (!token || token.quote) return "";
    return this.standardKey(i, this.key(i, token));
  }

  is(i: number, ...words: readonly string[]): boolean {
    return words.includes(this.word(i));
  }

  whole(i: number): number | undefined {
    return wholeNumberOf(this.typed(i));
  }

  note(i: number): NoteRun | undefined {
    const known = this.notes[i];
    if (known !== undefined) return known ?? undefined;
    const found = noteAt(this.tokens, i, this.vocabulary.notes);
    this.notes[i] = found ?? null;
    return found;
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
    for (const { length, meanings } of this.phrasesAt(i)) {
      const meaning = firstOf(meanings, types);
      if (meaning) return { length, meaning: meaning as MeaningOf<T> };
    }
    return undefined;
  }

  /** Every known phrase from a token on, the longest first; looked up once for all that ask. */
  private phrasesAt(i: number): readonly Phrases[] {
    const known = this.phrases[i];
    if (known) return known;
    const found: Phrases[] = [];
    let key = "";
    let standardKey = "";
    for (let n = 1; n <= LONGEST_PHRASE; n++) {
      const token = this.tokens[i + n - 1];
      if (!token || token.quote || token.text === "=" || token.text === "|") break;
      const own = this.key(i + n - 1, token);
      if (own === "") break; // a dash by itself joins no phrase
      key += own;
      standardKey += this.standardKey(i + n - 1, own);
      const meanings = this.vocabulary.meanings(key);
      const others = standardKey === key ? undefined : this.vocabulary.meanings(standardKey);
      const amounts = this.amountsBeforeStop(key);
      if (meanings || others || amounts)
        found.unshift({ length: n, meanings: [...(meanings ?? []), ...(others ?? []), ...(amounts ?? [])] });
    }
    this.phrases[i] = found;
    return found;
  }

  /** `half an hour.`, `mezz'ora!`: amounts end sentences. */
  private amountsBeforeStop(key: string): readonly Meaning[] | undefined {
    const plain = key.replace(/[.!?]+$/, "");
    if (plain === key) return undefined;
    const amounts = this.vocabulary.meanings(plain)?.filter(({ type }) => type === "amount") ?? [];
    return amounts.length > 0 ? amounts : undefined;
  }

  private standardKey(i: number, key: string): string {
    this.standardKeys[i] ??= this.vocabulary.standard(key) ?? key;
    return this.standardKeys[i];
  }

  private key(i: number, { text }: Token): string {
    this.keys[i] ??= phraseKey(text);
    return this.keys[i];
  }
}

/** The meaning whose type stands first among the types. */
function firstOf(meanings: readonly Meaning[], types: readonly string[]): Meaning | undefined {
  let best = types.length;
  let found: Meaning | undefined;
  for (const meaning of meanings) {
    const rank = types.indexOf(meaning.type);
    if (rank < 0 || rank >= best) continue;
    best = rank;
    found = meaning;
  }
  return found;
}

interface Phrases {
  readonly length: number;
  readonly meanings: readonly Meaning[];
}

/** `scale` or `mode` behind a kind is welcome: the length with it. */
export function withScaleWord(words: Words, i: number, length: number): number {
  return words.standard(i + length) === "scale" || words.is(i + length, "mode") ? length + 1 : length;
}

/** The first of the longest. */
export function longest<F extends Found>(found: readonly (F | undefined)[]): F | undefined {
  return found.reduce((best, each) => (each && (!best || each.length > best.length) ? each : best), undefined);
}
