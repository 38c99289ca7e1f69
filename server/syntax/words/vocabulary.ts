import { distance } from "fastest-levenshtein";
import { fold, nameKey, phraseKey } from "./fold.ts";
import type { LanguageWords } from "./language-words.ts";
import type { Meaning, MeaningOf, Verdict } from "./meaning.ts";
import { MOST_TAKEN_OFF, NameIndex, type Near, slipsOf } from "./nearest-name.ts";
import type { NoteReading } from "./note-word.ts";
import type { OutcomeTable } from "./outcome-table.ts";
import type { MeaningType } from "./term-types.ts";
import type { Phrase } from "./terms.ts";
import type { WordClass } from "./word-classes.ts";

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
  readonly articulations: readonly (Pick<MeaningOf<"articulation">, "tonguing"> & { readonly name: string })[];
  readonly instruments: readonly string[];
  readonly outcomes: readonly { readonly words: string; readonly says: Verdict }[];
}

export const NO_NAMES: DeclaredNames = {
  titles: [],
  patterns: [],
  scales: [],
  phases: [],
  activities: [],
  articulations: [],
  instruments: [],
  outcomes: [],
};

/** Every phrase that is known at one place: the language's own and the journal's. Immutable. */
export class Vocabulary {
  /** The declared phrases by their keys, with what else these mean. */
  private readonly phrases = new Map<string, readonly Meaning[]>();
  private readonly titles = new Map<string, string>();
  private readonly patterns = new Map<string, string>();
  private readonly scales = new Map<string, string>();
  private readonly instruments = new Map<string, string>();
  private readonly lists: Partial<Record<"titles" | "subjects" | "instruments", readonly string[]>> = {};
  private readonly words = new WeakMap<readonly MeaningType[], readonly string[]>();
  private readonly declaredWords: ReadonlySet<string>;
  /** Null for a list that was gone through once. */
  private readonly indices = new WeakMap<readonly string[], NameIndex | null>();
  /** The numbers in declared names that may stand without quotes: elsewhere, too, they may belong to one. */
  readonly numbersInNames: ReadonlySet<string>;
  private outcomeTable: OutcomeTable | undefined;

  constructor(
    private readonly language: LanguageWords,
    /** How this journal names notes. */
    readonly notes: NoteReading,
    readonly declared: DeclaredNames = NO_NAMES,
  ) {
    const unquoted = [
      ...declared.phases,
      ...declared.activities,
      ...declared.articulations.map(({ name }) => name),
      ...declared.instruments,
      ...declared.outcomes.map(({ words: name }) => name),
      ...declared.titles.flatMap(({ short }) => short ?? []),
    ];
    this.numbersInNames = new Set(unquoted.flatMap((name) => name.match(/\d+/g) ?? []));
    this.declaredWords = wordsOf(declared);
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
    for (const { name, tonguing } of declared.articulations)
      this.add(name, { type: "articulation", id: name, tonguing, declared: true });
    for (const name of declared.instruments) this.instruments.set(nameKey(name), name);
    for (const id of declared.instruments) this.add(id, { type: "instrument", id, declared: true });
    for (const outcome of this.declaredOutcomes()) this.add(outcome.id, outcome);
  }

  /** The same words, and names that are declared beside those. */
  with(names: DeclaredNames): Vocabulary {
    const types = Object.keys(names) as (keyof DeclaredNames)[];
    const both = types.map((type) => [type, [...this.declared[type], ...names[type]]]);
    return new Vocabulary(this.language, this.notes, Object.fromEntries(both) as unknown as DeclaredNames);
  }

  /** The phrases of the language itself. */
  get own(): readonly Phrase[] {
    return this.language.phrases;
  }

  /** What says how it went, in whole phrases. */
  get outcomes(): OutcomeTable {
    this.outcomeTable ??= this.language.outcomesBeside(this.declaredOutcomes());
    return this.outcomeTable;
  }

  private declaredOutcomes(): readonly MeaningOf<"outcome">[] {
    return this.declared.outcomes.map(({ words: id, says }) => ({ type: "outcome", id, says }));
  }

  /** What a phrase means, by its key (see `phraseKey`). Declared meanings stand first. */
  meanings(key: string): readonly Meaning[] | undefined {
    return this.phrases.get(key) ?? this.language.meanings(key);
  }

  /** What a word, or a phrase, by its key says of the kind of its line. */
  classes(key: string): readonly WordClass[] | undefined {
    let found: readonly WordClass[] | undefined;
    for (const table of this.language.classes) {
      const own = table.get(key);
      if (own) found = found ? [...found, ...own] : own;
    }
    return found;
  }

  /**
   * The same of a single word; also of one that is made of a part of the body and its trouble (`rugpijn`), or that is
   * such a part behind an apostrophe (`ear's`).
   */
  classesOfWord(key: string): readonly WordClass[] | undefined {
    const known = this.classes(key);
    if (known?.some((each) => each.class === "body-trouble")) return known;
    const trouble = this.language.bodyNear.byEnding(key);
    if (trouble) return [...(known ?? []), ...trouble];
    if (known || !key.endsWith("'s")) return known;
    const parts = this.classes(key.slice(0, -2))?.filter((each) => each.class === "body-part");
    return parts && parts.length > 0 ? parts : undefined;
  }

  /** Whether a word that says nothing else is one slip away from a word of trouble of the body. */
  isNearTrouble(key: string): boolean {
    return !this.meanings(key) && !this.classes(key) && this.language.bodyNear.isNear(key);
  }

  /** The key of the word that another one stands for; undefined where it stands for itself (see `StandardWords`). */
  standard(key: string): string | undefined {
    return this.declaredWords.has(key) ? undefined : this.language.standards.of(key);
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
    if (key) this.phrases.set(key, [meaning, ...(this.meanings(key) ?? [])]);
  }
}

/** Every word in a declared name, in the form of keys: a slip is no slip where the journal has the word. */
function wordsOf({ titles, outcomes, articulations, ...others }: DeclaredNames): ReadonlySet<string> {
  const names = [
    ...titles.flatMap(({ title, short = "" }) => [title, short]),
    ...outcomes.map(({ words }) => words),
    ...articulations.map(({ name }) => name),
    ...Object.values(others).flat(),
  ];
  return new Set(names.flatMap((name) => fold(name).split(/[\s-]+/)));
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
