import { isUseOf, ORDINARY, type TitleMatch } from "../../syntax/line/known-title.ts";
import { keysOf, LineWords } from "../../syntax/line/line-words.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import type { Vocabulary } from "../../syntax/words/vocabulary.ts";
import type { DayNumber } from "../calendar.ts";

/** A title that a line writes with a tempo or a numbered place, so that it is known from then on. */
export interface TaughtTitle {
  readonly title: string;
  /** What makes two spellings the same title. */
  readonly key: string;
  /** Within its block. */
  readonly line: number;
}

/** A line that may name a title known by then: it was read as none, or as one that is longer. */
export interface CandidateLine {
  readonly line: number;
  /** Its words, as titles are compared. */
  readonly keys: readonly string[];
  /** The word at which its own subject would begin. */
  readonly first: number;
  /** One of its first two words is in a capital, as a short form is. */
  readonly named: boolean;
  /** The title it was read to have, by its words. */
  readonly own?: { readonly from: number; readonly to: number; readonly key: string };
}

/** A title that a line teaches, and the day of that line. */
export interface DatedTitle extends TaughtTitle {
  readonly day: DayNumber;
}

/** A title as it is known from some line on; a declared one, or its short name, from the beginning. */
interface KnownTitle {
  readonly title: string;
  readonly declared: boolean;
  readonly keys: readonly string[];
  readonly day: DayNumber;
  readonly line: number;
}

const NOTHING: readonly KnownTitle[] = [];

/** The titles of a journal by their words, each known from the day and the line on which it was first written. */
export class TitleIndex {
  private readonly byFirst = new Map<string, KnownTitle[]>();
  private readonly byWord = new Map<string, KnownTitle[]>();
  private readonly known = new Set<string>();
  /** Those of `taught` that are no declared title, nor another use of an earlier one: the titles that lines taught. */
  readonly learnt: readonly DatedTitle[];

  /** @param taught what lines teach, the earliest first: of a title that was known by then they teach nothing */
  constructor(
    private readonly vocabulary: Vocabulary,
    readonly taught: readonly DatedTitle[],
  ) {
    const day = Number.NEGATIVE_INFINITY;
    for (const { title, short } of vocabulary.declared.titles)
      for (const name of short ? [title, short] : [title])
        this.add({ title, declared: true, keys: keysOf(wordsOf(name, vocabulary)), day, line: 0 });
    const learnt: DatedTitle[] = [];
    for (const { title: typed, day, line } of taught) {
      const title = withoutSection(typed, vocabulary);
      const words = wordsOf(title, vocabulary);
      const keys = keysOf(words);
      const uses = this.known.has(keys.join(" ")) ? [] : this.matchesIn({ keys, first: 0, named: true, line }, day);
      if (uses.some((match) => isUseOf(words, match))) continue;
      if (this.add({ title, declared: false, keys, day, line })) learnt.push({ title, key: nameKey(title), day, line });
    }
    this.learnt = learnt;
  }

  /** What on a line may be a title that is known there, the likelier first; undefined where the line gains nothing. */
  matches(candidate: CandidateLine, day: DayNumber): readonly TitleMatch[] | undefined {
    const found = this.matchesIn(candidate, day);
    if (found.length === 0) return undefined;
    const { own } = candidate;
    const isOwn = ({ whole, from, to, title, declared }: TitleMatch) =>
      whole && !declared && from === own?.from && to === own.to && nameKey(title) === own.key;
    return found.some(isOwn) ? undefined : found;
  }

  /** The title that words alone name, whole or in short, whenever it was learnt; undefined where none does. */
  named(text: string): string | undefined {
    const keys = keysOf(wordsOf(text, this.vocabulary));
    const found = this.matchesIn({ keys, first: 0, named: true, line: 0 }, Number.POSITIVE_INFINITY);
    return found.find(({ from, to }) => from === 0 && to === keys.length)?.title;
  }

  private matchesIn({ keys, first, named, line }: CandidateLine, day: DayNumber): readonly TitleMatch[] {
    const found: TitleMatch[] = [];
    const isEarlier = (known: KnownTitle) => known.day < day || (known.day === day && known.line <= line);
    for (let from = 0; from < keys.length; from++)
      for (const known of this.byFirst.get(keys[from]!) ?? NOTHING)
        if (isEarlier(known) && known.keys.every((key, i) => keys[from + i] === key))
          found.push(matchOf(known, from, from + known.keys.length, true));
    found.sort((a, b) => a.from - b.from || b.to - a.to);
    const short = named ? this.shortForm(keys, first, isEarlier) : undefined;
    if (short && !found.some(({ from, to }) => from === short.from && to === short.to)) found.push(short);
    return found;
  }

  /** The longest row of words that stand together in titles, where they do in one alone. */
  private shortForm(
    keys: readonly string[],
    first: number,
    isEarlier: (known: KnownTitle) => boolean,
  ): TitleMatch | undefined {
    const at = this.byWord.has(keys[first] ?? "") ? first : first + 1; // `The Frog`
    let among = (this.byWord.get(keys[at] ?? "") ?? NOTHING).filter(
      (known) => isEarlier(known) && known.keys.includes(keys[first]!),
    );
    if (among.length === 0) return undefined;
    let to = at + 1;
    for (; to < keys.length; to++) {
      const more = among.filter((known) => known.keys.includes(keys[to]!));
      if (more.length === 0) break;
      among = more;
    }
    const [known] = among;
    return among.every(({ title }) => title === known!.title) ? matchOf(known!, first, to, false) : undefined;
  }

  /** Words that tell what kind of line they stand on name no piece. */
  private isOrdinary(word: string): boolean {
    const classes = this.vocabulary.classes(word)?.map((each) => each.class) ?? [];
    if (classes.includes("title-kind")) return false;
    return classes.some((each) => (ORDINARY as readonly string[]).includes(each));
  }

  /** False for one that is known already. */
  private add(title: KnownTitle): boolean {
    const key = title.keys.join(" ");
    if (key === "" || this.known.has(key)) return false;
    this.known.add(key);
    push(this.byFirst, title.keys[0]!, title);
    for (const word of new Set(title.keys)) if (!this.isOrdinary(word)) push(this.byWord, word, title);
    return true;
  }
}

function matchOf({ title, declared }: KnownTitle, from: number, to: number, whole: boolean): TitleMatch {
  return { from, to, title, declared, whole };
}

function push(lists: Map<string, KnownTitle[]>, key: string, title: KnownTitle): void {
  const list = lists.get(key);
  if (list) list.push(title);
  else lists.set(key, [title]);
}

/**
 * `Heron's Dance B` is its second section, and a tune that is no kind of piece was only played in a key: `Late Bus Home
 * in Ab`, but `Berceuse in F`.
 */
function withoutSection(title: string, vocabulary: Vocabulary): string {
  const words = wordsOf(title, vocabulary);
  let hasKind = words.is(0, "title-kind");
  for (let i = 1; i < words.count; i++) {
    const isLed = words.is(i - 1, "filler", "title-number");
    const isSection = /^[A-H]$/.test(words.typed(i)) && !isLed && (i > 1 || hasKind);
    const isInKey = i > 1 && !hasKind && ["in", "en"].includes(words.key(i)) && KEY.test(words.typed(i + 1));
    if (isSection || isInKey) return title.slice(0, words.words[i - 1]!.end);
    hasKind ||= words.is(i, "title-kind");
  }
  return title;
}

const KEY = /^[A-H](?:[#b♯♭]|is|e?s)?m?$/;

function wordsOf(title: string, vocabulary: Vocabulary): LineWords {
  return new LineWords(title, 0, title.length, [], vocabulary);
}
