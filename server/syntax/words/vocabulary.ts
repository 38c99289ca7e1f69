import { distance } from "fastest-levenshtein";
import { nameKey, phraseKey } from "./fold.ts";
import type { Meaning } from "./meaning.ts";
import { MOST_TAKEN_OFF, NameIndex, type Near, slipsOf } from "./nearest-name.ts";
import type { NoteReading } from "./note-word.ts";
import type { MeaningType } from "./term-types.ts";
import type { Phrase } from "./terms.ts";

/** The most words that one phrase is made of. */
export const LONGEST_PHRASE = 6;

/** No nearest word is sought for longer words. */
const LONGEST_GUESS = 40;
const MOST_SLIPS = 3;
/** Letters in another order are one slip and a half at most by `slipsOf`, a letter more that begins alike is not. */
const BETWEEN_SLIPS = 0.6;

/** Names that a journal declares, in the form they were given. */
export interface DeclaredNames {
  /** The title, and its short name where it has one. Studies, pieces and movements alike. */
  readonly titles: readonly { readonly title: string; readonly short?: string }[];
  readonly patterns: readonly string[];
  readonly scales: readonly string[];
  readonly phases: readonly string[];
  readonly activities: readonly string[];
  readonly instruments: readonly string[];
}

export const NO_NAMES: DeclaredNames = {
  titles: [],
  patterns: [],
  scales: [],
  phases: [],
  activities: [],
  instruments: [],
};

/** Every phrase that is known at one place: the language's own and the journal's. Immutable. */
export class Vocabulary {
  private readonly phrases = new Map<string, readonly Meaning[]>();
  private readonly titles = new Map<string, string>();
  private readonly patterns = new Map<string, string>();
  private readonly scales = new Map<string, string>();
  private readonly instruments = new Map<string, string>();
  private readonly lists: Partial<Record<"titles" | "subjects" | "instruments", readonly string[]>> = {};
  private readonly words = new WeakMap<readonly MeaningType[], readonly string[]>();
  /** Null for a list that was gone through once. */
  private readonly indices = new WeakMap<readonly string[], NameIndex | null>();
  /** The numbers in declared names that may stand without quotes: elsewhere, too, they may belong to one. */
  readonly numbersInNames: ReadonlySet<string>;

  constructor(
    readonly own: readonly Phrase[],
    /** How this journal names notes. */
    readonly notes: NoteReading,
    readonly declared: DeclaredNames = NO_NAMES,
  ) {
    const unquoted = [
      ...declared.phases,
      ...declared.activities,
      ...declared.instruments,
      ...declared.titles.flatMap(({ short }) => short ?? []),
    ];
    this.numbersInNames = new Set(unquoted.flatMap((name) => name.match(/\d+/g) ?? []));
    for (const { words, meaning } of own) for (const word of words) this.add(word, meaning);
    for (const { title, short } of declared.titles) {
      this.titles.set(nameKey(title), title);
      if (!short) continue;
      this.titles.set(nameKey(short), title);
      this.add(short, { type: "title", title, declared: true });
    }
    for (const name of declared.patterns) this.patterns.set(nameKey(name), name);
    for (const name of declared.scales) this.scales.set(nameKey(name), name);
    for (const id of declared.phases) this.add(id, { type: "phase", id });
    for (const name of declared.activities) this.add(name, { type: "activity", name });
    for (const name of declared.instruments) this.instruments.set(nameKey(name), name);
    for (const id of declared.instruments) this.add(id, { type: "instrument", id, declared: true });
  }

  /** What a phrase means, by its key (see `phraseKey`). Declared meanings stand first. */
  meanings(key: string): readonly Meaning[] | undefined {
    return this.phrases.get(key);
  }

  /** The declared form of a quoted name; undefined where the journal declares none. */
  title(quoted: string): string | undefined {
    return this.titles.get(nameKey(quoted));
  }
  pattern(quoted: string): string | undefined {
    return this.patterns.get(nameKey(quoted));
  }
  scale(quoted: string): string | undefined {
    return this.scales.get(nameKey(quoted));
  }
  instrument(quoted: string): string | undefined {
    return this.instruments.get(nameKey(quoted));
  }

  /**
   * The known word nearest to one that is not known, where one is near enough to be meant: a third of its letters may
   * be slips, three at most, or one more where all letters are there in another order. Of several, one with the same
   * letters, then one that begins alike. Long lists are best given as the same array each
   * time.
   *
   * @param among what may stand at its place, as `wordsFor` has it or names
   */
  nearest(word: string, ...among: readonly (readonly string[])[]): string | undefined {
    if (word.length > LONGEST_GUESS) return undefined;
    const key = nameKey(word);
    let least = Math.min(MOST_SLIPS, Math.floor(key.length / 3)) + BETWEEN_SLIPS;
    if (least < 1) return undefined;
    let found: string | undefined;
    for (const names of among) {
      const near = this.nearestIn(names, key, least);
      if (!near) continue;
      least = near.slips;
      found = names[near.index];
    }
    return found;
  }

  /**
   * The words in the journal's language and in English that mean something of these types. Given the same array, it is
   * the same list.
   */
  wordsFor(types: readonly MeaningType[]): readonly string[] {
    const known = this.words.get(types);
    if (known) return known;
    const { titles, phases, activities, instruments } = this.declared;
    const names = (type: MeaningType, of: readonly string[]) => (types.includes(type) ? of.map(nameKey) : []);
    const words = [
      ...this.own.flatMap(({ words, meaning, foreign }) => (foreign || !fits(meaning, types) ? [] : words)),
      ...names(
        "title",
        titles.flatMap(({ short }) => short ?? []),
      ),
      ...names("phase", phases),
      ...names("activity", activities),
      ...names("instrument", instruments),
    ];
    this.words.set(types, words);
    return words;
  }

  /** Every title that is declared. */
  get titleNames(): readonly string[] {
    this.lists.titles ??= this.declared.titles.map(({ title }) => title);
    return this.lists.titles;
  }

  /** What may be practised by a declared name, by the keys of the names. */
  get subjectNames(): readonly string[] {
    const { titles, activities } = this.declared;
    this.lists.subjects ??= [
      ...titles.flatMap(({ title, short }) => [nameKey(title), ...(short ? [nameKey(short)] : [])]),
      ...activities.map(nameKey),
    ];
    return this.lists.subjects;
  }

  /** Every name of an instrument, the journal's own last. */
  get instrumentNames(): readonly string[] {
    this.lists.instruments ??= [
      ...this.own.filter(({ meaning }) => meaning.type === "instrument").flatMap(({ words }) => words),
      ...this.declared.instruments.map(nameKey),
    ];
    return this.lists.instruments;
  }

  /** A list that comes again is worth an index. */
  private nearestIn(names: readonly string[], key: string, least: number): Near | undefined {
    const index = this.indices.get(names);
    if (index) return index.nearest(key, least);
    if (index === null) this.indices.set(names, new NameIndex(names.map(nameKey)));
    else this.indices.set(names, null);
    return nearestOf(names, key, least);
  }

  private add(words: string, meaning: Meaning): void {
    const key = phraseKey(words);
    if (key) this.phrases.set(key, [meaning, ...(this.phrases.get(key) ?? [])]);
  }
}

/** An instrument whose name alone means something else has its place behind `on`. */
function fits(meaning: Meaning, types: readonly MeaningType[]): boolean {
  return types.includes(meaning.type) && !(meaning.type === "instrument" && meaning.behindOn);
}

function nearestOf(names: readonly string[], word: string, least: number): Near | undefined {
  let best: Near | undefined;
  for (const [index, name] of names.entries()) {
    const most = best?.slips ?? least;
    const key = nameKey(name);
    const longer = Math.abs(key.length - word.length);
    if (longer >= least || longer - MOST_TAKEN_OFF > most) continue;
    const slips = slipsOf(word, key, distance(word, key));
    if (slips < most) best = { index, slips };
  }
  return best;
}
