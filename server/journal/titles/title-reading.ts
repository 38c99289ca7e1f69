import { isCounting } from "../../syntax/line/known-title.ts";
import type { Line } from "../../syntax/line/line.ts";
import type { LineReader } from "../../syntax/line/line-reader.ts";
import { keysOf, LineWords } from "../../syntax/line/line-words.ts";
import { firstWord } from "../../syntax/line/title.ts";
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
  readonly candidates: readonly CandidateLine[];
}

export const NO_TITLES: DayTitles = { taught: [], candidates: [] };

/** A title stands near the head of its line. */
const MOST_WORDS = 24;

/** Looks for titles in the lines of a day that was read without any that others know. */
export class TitleReading implements DayVisitor {
  private taught: TaughtTitle[] = [];
  private candidates: CandidateLine[] = [];

  constructor(private readonly vocabulary: Vocabulary) {}

  begin(): void {
    this.taught = [];
    this.candidates = [];
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
    const { taught, candidates } = this;
    return taught.length + candidates.length === 0 ? NO_TITLES : { day, taught, candidates };
  }

  private learn(title: string, items: readonly Item[], line: number): void {
    if (items.some(isCounting) && this.vocabulary.title(title) === undefined)
      this.taught.push({ title, key: nameKey(title), line });
  }

  private addCandidate({ start, end }: Stretch, text: string, line: number, subject?: Stretch): void {
    const words = new LineWords(text, start, end, [], this.vocabulary);
    const keys = keysOf(words, MOST_WORDS);
    if (keys.length === 0) return;
    const first = firstWord(words);
    const named = words.isCapital(first) || words.isCapital(first + 1);
    this.candidates.push({ line, keys, first, named, ...(subject ? { own: ownOf(words, subject) } : {}) });
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
