import { isCounting } from "../../syntax/line/known-title.ts";
import type { Line } from "../../syntax/line/line.ts";
import type { LineReader } from "../../syntax/line/line-reader.ts";
import { keysOf, LineWords } from "../../syntax/line/line-words.ts";
import { firstWord } from "../../syntax/line/title.ts";
import type { BoundedMemo } from "../../syntax/words/bounded-memo.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import type { Item } from "../../syntax/words/meaning.ts";
import type { Vocabulary } from "../../syntax/words/vocabulary.ts";
import type { DayNumber } from "../calendar.ts";
import type { DayVisitor, LinePlace } from "../day-walk.ts";
import type { CandidateLine, TaughtTitle } from "./title-index.ts";

/** What the lines of a day have to do with titles that are not declared, each read by itself. */
export interface DayTitles {
  readonly day?: DayNumber;
  readonly taught: readonly TaughtTitle[];
  readonly candidates: CandidateLines;
}

/** Figures of one line, side by side with those of the others. */
const LINE = 0;
const FIRST = 1;
const NAMED = 2;
const KEYS = 3;
const OWN_FROM = 4;
const OWN_TO = 5;
const FIGURES = 6;

const NO_OWN = -1;

/** The lines of a day that may name titles, in columns: of a long journal they are very many, and few are looked at. */
export class CandidateLines {
  /**
   * @param figures `FIGURES` for each line
   * @param texts for each line its keys, and then that of its own title where it has one
   */
  constructor(
    private readonly figures: readonly number[],
    private readonly texts: readonly string[],
  ) {}

  get count(): number {
    return this.figures.length / FIGURES;
  }

  *lines(): Generator<CandidateLine, void> {
    const { figures, texts } = this;
    let text = 0;
    for (let at = 0; at < figures.length; at += FIGURES) {
      const keys = texts.slice(text, text + figures[at + KEYS]!);
      text += keys.length;
      const from = figures[at + OWN_FROM]!;
      const own = from === NO_OWN ? undefined : { from, to: figures[at + OWN_TO]!, key: texts[text++]! };
      const [line, first] = [figures[at + LINE]!, figures[at + FIRST]!];
      yield { line, keys, first, named: figures[at + NAMED] === 1, ...(own && { own }) };
    }
  }
}

export const NO_TITLES: DayTitles = { taught: [], candidates: new CandidateLines([], []) };

/** A title stands near the head of its line. */
const MOST_WORDS = 24;

/** Looks for titles in the lines of a day that was read without any that others know. */
export class TitleReading implements DayVisitor {
  private taught: TaughtTitle[] = [];
  private readonly figures: number[] = [];
  private readonly texts: string[] = [];

  /** @param keys those that were met lately, so that the same one is kept once */
  constructor(
    private readonly vocabulary: Vocabulary,
    private readonly keys: BoundedMemo<string>,
  ) {}

  begin(): void {
    this.taught = [];
    this.figures.length = 0;
    this.texts.length = 0;
  }

  day(): void {}

  /** Of lines whose words are all known only one with a title in quotes can teach one. */
  entry(reader: LineReader, _text: string, _from: number, _to: number, { line }: LinePlace): void {
    if (reader.pieces[0]!.opening !== "quoted") return;
    const items = reader.parts().flatMap((part) => part.items);
    const [quoted] = items;
    if (quoted?.meaning.type === "quoted") this.learn(quoted.meaning.text.trim(), items, line);
  }

  line(line: Line, text: string, { line: at }: LinePlace): void {
    if (line.type === "prose") this.addCandidate(line, text, at);
    if (line.type !== "entry") return;
    const { subject, items } = line;
    const meaning = subject?.meaning;
    if (meaning?.type === "activity") this.addCandidate(line, text, at);
    if (meaning?.type !== "title" || meaning.declared) return;
    this.learn(meaning.title, items, at);
    this.addCandidate(line, text, at, subject);
  }

  /** What was found in the day that was gone over last. */
  take(day: DayNumber): DayTitles {
    const { taught, figures, texts } = this;
    if (taught.length + figures.length === 0) return NO_TITLES;
    // Copies are as long as what is in them: an array that grew has room for half as many again.
    return { day, taught: taught.slice(), candidates: new CandidateLines(figures.slice(), texts.slice()) };
  }

  private learn(title: string, items: readonly Item[], line: number): void {
    if (items.some(isCounting) && this.vocabulary.title(title) === undefined)
      this.taught.push({ title, key: this.kept(nameKey(title)), line });
  }

  private addCandidate({ start, end }: Stretch, text: string, line: number, subject?: Stretch): void {
    const words = new LineWords(text, start, end, [], this.vocabulary);
    const keys = keysOf(words, MOST_WORDS);
    if (keys.length === 0) return;
    const first = firstWord(words);
    const named = words.isCapital(first) || words.isCapital(first + 1);
    const own = subject && ownOf(words, subject);
    this.figures.push(line, first, Number(named), keys.length, own?.from ?? NO_OWN, own?.to ?? NO_OWN);
    for (const key of keys) this.texts.push(this.kept(key));
    if (own) this.texts.push(this.kept(own.key));
  }

  private kept(key: string): string {
    return this.keys.of(key, (own) => own);
  }
}

interface Stretch {
  readonly start: number;
  readonly end: number;
}

function ownOf({ words, text }: LineWords, { start, end }: Stretch): NonNullable<CandidateLine["own"]> {
  const from = words.filter((word) => word.start < start).length;
  const to = words.filter((word) => word.start < end).length;
  return { from, to, key: nameKey(text.slice(start, end)) };
}
