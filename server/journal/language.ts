import { CHORD_SYMBOLS } from "../music/chords/chord-dictionary.ts";
import { CHORDS } from "../music/chords/chord-kinds.ts";
import { INSTRUMENTS } from "../music/instruments/instruments.ts";
import { NAMES_IN_LANGUAGES } from "../music/instruments/names-in-languages.ts";
import { inLanguage, type NamesId, NOTE_NAMES, type NoteNames } from "../music/notes/note-names.ts";
import { PATTERNS, VARIANTS } from "../music/patterns/pattern.ts";
import { KINDS } from "../music/scales/kinds.ts";
import { outcomeWords } from "../syntax/lexicon/outcomes.ts";
import { withoutAccents } from "../syntax/words/fold.ts";
import { symbolKey } from "../syntax/words/joined-key.ts";
import { keySetPhrases } from "../syntax/words/key-sets.ts";
import { LanguageWords } from "../syntax/words/language-words.ts";
import { lexiconPhrases } from "../syntax/words/lexicon-phrases.ts";
import type { MeaningOf } from "../syntax/words/meaning.ts";
import { merged } from "../syntax/words/phrase.ts";
import { type Phrase, TERMS } from "../syntax/words/terms.ts";
import { type WordClass, wordClasses } from "../syntax/words/word-classes.ts";
import { SUBJECT_WORDS } from "./subject-language.ts";

/** Words that belong to a kind of scale and do not name one by themselves, or name it in another language. */
const PARTS_OF_KINDS: readonly (readonly [string, readonly string[]])[] = [
  ["harmonic", ["harmonic minor"]],
  ["melodic", ["melodic minor"]],
  ["natural", ["natural minor"]],
  ["pentatonic", ["major pentatonic", "minor pentatonic"]],
  ["diminished scale", ["half-whole", "whole-half"]],
  ["symmetric diminished", ["half-whole", "whole-half"]],
  ["diminished", ["diminished arpeggio", "diminished seventh", "half-whole", "whole-half"]],
  ["dominant", ["dominant seventh", "mixolydian"]],
  ["ascending melodic minor", ["melodic minor, up", "jazz minor"]],
  ["harmonisch", ["harmonic minor"]],
  ["melodisch", ["melodic minor"]],
  ...NOTE_NAMES.flatMap(({ major, minor }) => [
    ...major.map((said) => [said, ["major"]] as const),
    ...minor.map((said) => [said, ["minor"]] as const),
  ]),
];

const TRIADS = ["major", "minor", "augmented", "diminished"];
/** Triads that need no further word, as no scale is called so. */
const BY_THEMSELVES = ["augmented", "aug", "dim"];
/** Triads that are called common chords. */
const COMMON = ["major", "minor"];

/** Words that are made when they are first asked for. */
class WordsToCome {
  private made: LanguageWords | undefined;

  constructor(private readonly names: NoteNames) {}

  get words(): LanguageWords {
    this.made ??= new LanguageWords(languagePhrases(this.names), {
      outcomes: outcomeWords(this.names.id),
      classes: languageClasses(this.names),
      otherWords: otherWords(this.names),
    });
    return this.made;
  }
}

const BY_NAMES = new Map(NOTE_NAMES.map((names) => [names, new WordsToCome(names)]));

/** English, and the language in which notes are named: the same object for every journal of these. */
export function languageWords(names: NoteNames): LanguageWords {
  return BY_NAMES.get(names)!.words;
}

/**
 * Every phrase of the language itself: the terms of the format, and the names in the tables of `music/`. Major and
 * minor are called as notes are named, and in English; other terms likewise, where the lexicon has them.
 */
function languagePhrases(names: NoteNames): readonly Phrase[] {
  const terms = names.id === "english" ? TERMS : merged([...TERMS, ...lexiconPhrases(names.id)]);
  const isPattern = ({ meaning }: Phrase): boolean => meaning.type === "pattern";
  return [
    ...terms.filter((each) => !isPattern(each)),
    ...kinds(names),
    ...partsOfKinds(names),
    ...chordPhrases(names),
    ...symbols(),
    ...figures(names),
    ...inOtherWords(names),
    ...keySets(names),
    minorArpeggios(),
    ...merged([...patterns(), ...terms.filter(isPattern)]),
    ...variants(),
    ...instruments(),
    ...instrumentsIn(names.id),
  ];
}

/** What tells the kinds of lines, in English and as notes are named. */
function languageClasses({ id }: NoteNames): readonly ReadonlyMap<string, readonly WordClass[]>[] {
  return id === "english" ? [wordClasses("english")] : [wordClasses("english"), wordClasses(id)];
}

function kinds(noteNames: NoteNames): Phrase[] {
  return KINDS.flatMap(({ id, names, sentence }) =>
    names.map((name): Phrase => {
      const unsaid = name === "minor" ? "natural" : id === "octatonic" ? "octatonic" : undefined;
      const words = inLanguage(name, noteNames);
      return { words, meaning: { type: "kind", id, ...(unsaid ? { unsaid } : {}) }, sentence };
    }),
  );
}

function partsOfKinds({ major, minor }: NoteNames): Phrase[] {
  const own = ["major", "minor", ...major, ...minor];
  const foreign = ["harmonisch", "melodisch", ...NOTE_NAMES.flatMap((names) => [...names.major, ...names.minor])];
  return PARTS_OF_KINDS.filter(([word]) => !own.includes(word)).map(([word, offers]) => ({
    words: [word],
    meaning: { type: "part of a kind", offers },
    ...(foreign.includes(word) ? { foreign: true } : {}),
  }));
}

/** `minor arpeggio`, `arpeggio` alone for major, `broken chord`; a seventh chord needs no further word. */
export function chordPhrases(noteNames: NoteNames): Phrase[] {
  return CHORDS.flatMap(({ id, names, shortNames = [], sentence }) => {
    const triad = TRIADS.includes(id);
    const shapes = [...names, ...shortNames, ...(id === "major" ? [""] : [])];
    const whole = shapes.flatMap((name) =>
      [
        ...((triad && !BY_THEMSELVES.includes(name)) || shortNames.includes(name) ? [] : [name]),
        `${name} arpeggio`,
        `${name} arpeggios`,
        `${name} arp`,
        `${name} chord`,
        `${name} triad`,
        ...(COMMON.includes(id) ? [`${name} common chord`] : []),
      ].flatMap((words) => inLanguage(words.trim(), noteNames)),
    );
    const broken = shapes.flatMap((name) =>
      ["broken chord", "broken arpeggio"].flatMap((shape) => inLanguage(`${name} ${shape}`.trim(), noteNames)),
    );
    return [
      { words: whole, meaning: { type: "chord kind", id, broken: false }, sentence },
      { words: broken, meaning: { type: "chord kind", id, broken: true }, sentence },
    ] satisfies Phrase[];
  });
}

/** Chords by their symbols, and those that only the dictionary has by their names. */
function symbols(): Phrase[] {
  return CHORD_SYMBOLS.flatMap(({ chord, symbols: written }): Phrase[] => {
    const { id, sentence } = chord;
    const meaning = { type: "chord kind", id, broken: false } as const;
    const bySymbol: Phrase = { words: written.map(symbolKey), meaning, sentence, foreign: true };
    if (CHORDS.includes(chord)) return [bySymbol];
    const words = [id, `${id} arpeggio`, `${id} chord`];
    return [bySymbol, { words, meaning, sentence, foreign: true }];
  });
}

function figures({ id }: NoteNames): Phrase[] {
  return languagesOf(id).flatMap((language) =>
    Object.entries(SUBJECT_WORDS[language].figures).map(
      ([figure, words]): Phrase => ({
        words: words.split(" | "),
        meaning: { type: "figure word", figure: figure as Figure },
        foreign: true,
      }),
    ),
  );
}

/** `C harmonic minor arpeggio`: of the key, whichever the scale. */
function minorArpeggios(): Phrase {
  const kinds = KINDS.filter(({ id }) => id.endsWith(" minor")).flatMap(({ names }) => names);
  const words = kinds.filter((name) => name !== "minor").flatMap((name) => [`${name} arpeggio`, `${name} arp`]);
  return { words, meaning: { type: "chord kind", id: "minor", broken: false }, foreign: true };
}

/** Singulars as well: plurals stand for them, in whatever words. */
function keySets({ id }: NoteNames): Phrase[] {
  return languagesOf(id)
    .flatMap((language) => keySetPhrases(SUBJECT_WORDS[language].sets))
    .map((phrase) => ({ ...phrase, words: phrase.words.flatMap((each) => [each, each.replace(/s$/, "")]) }));
}

type Figure = MeaningOf<"figure word">["figure"];

/** Names of kinds in several words that have no such word in English: `7e de dominante`. */
function inOtherWords(names: NoteNames): Phrase[] {
  const known = [...kinds(names), ...chordPhrases(names)];
  return languagesOf(names.id).flatMap((language) =>
    Object.entries(SUBJECT_WORDS[language].standard).flatMap(([standard, words]) => {
      const several = words.split(" | ").filter((each) => each.includes(" "));
      const meaning = known.find((phrase) => phrase.words.includes(standard))?.meaning;
      return several.length > 0 && meaning ? [{ words: several, meaning, foreign: true } satisfies Phrase] : [];
    }),
  );
}

/** Single words that stand for others in names of scales and chords: abbreviations, and the journal's language. */
function otherWords({ id }: NoteNames): ReadonlyMap<string, string> {
  return new Map(
    languagesOf(id).flatMap((language) =>
      Object.entries(SUBJECT_WORDS[language].standard).flatMap(([standard, words]) =>
        words
          .split(" | ")
          .filter((word) => !word.includes(" "))
          .map((word) => [word, standard] as const),
      ),
    ),
  );
}

/** English words are known in every journal; where both have one, the journal's language says what it means. */
function languagesOf(id: NamesId): readonly NamesId[] {
  return id === "english" ? ["english"] : ["english", id];
}

function patterns(): Phrase[] {
  return PATTERNS.map(({ id, names, sentence }) => ({ words: names, meaning: { type: "pattern", id }, sentence }));
}

function variants(): Phrase[] {
  return VARIANTS.map(({ id, names, sentence }) => ({ words: names, meaning: { type: "variant", id }, sentence }));
}

/** `piano` by itself is how softly it is played; a treble is a clef, and a descant a part of a hymn. */
const BEHIND_ON = ["piano", "pianoforte", "treble", "descant"];

/** Of a name with a flat in it also the form in words: `clarinet in B flat`. */
function instruments(): Phrase[] {
  return INSTRUMENTS.flatMap(({ id, names }) => {
    const words = [...names, ...names.filter((name) => FLAT.test(name)).map((name) => name.replace(FLAT, "$1 flat"))];
    const meaning = { type: "instrument", id, declared: false } as const;
    const behind = words.filter((word) => BEHIND_ON.includes(word));
    const free = words.filter((word) => !BEHIND_ON.includes(word));
    return [
      ...(free.length > 0 ? [{ words: free, meaning }] : []),
      ...(behind.length > 0 ? [{ words: behind, meaning: { ...meaning, behindOn: true as const } }] : []),
    ];
  });
}

/** What instruments are called in the journal's language; short names mean other things too often. */
function instrumentsIn(language: NamesId): Phrase[] {
  if (language === "english") return [];
  return Object.entries(NAMES_IN_LANGUAGES[language]).flatMap(([id, names]) => {
    const words = names.split(" | ").flatMap((name) => [name, withoutAccents(name)]);
    const meaning = { type: "instrument", id, declared: false } as const;
    const clear = words.filter((word) => word.length >= CLEAR);
    const behind = words.filter((word) => word.length < CLEAR);
    return [
      { words: clear, meaning, foreign: true as const },
      { words: behind, meaning: { ...meaning, behindOn: true as const }, foreign: true as const },
    ].filter((phrase) => phrase.words.length > 0);
  });
}

/** In letters: a name as long as this is nothing else. */
const CLEAR = 10;

const FLAT = /\b([A-G])b\b/;
