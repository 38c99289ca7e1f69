import { LETTERS, type Letter, type NoteName, printName } from "./note.ts";

/** A language whose names of notes a journal may use. */
export type NamesId = "english" | "german" | "dutch" | "french" | "italian" | "spanish";

/**
 * How a player spells: with signs as on a plain keyboard (`fa#`), with music signs (`fa♯`), or in words (`fa dièse`).
 */
export type Spelling = "plain" | "signs" | "words";

/** What one language calls notes and the two modes. Octave numbers are scientific in all of them. */
export interface NoteNames {
  readonly id: NamesId;
  /** What speakers call the language, in lower case; it may be asked for by that, too. */
  readonly called: readonly string[];
  /**
   * Every single word that names a note, without an octave; in lower case, without accents, with plain signs. Null for
   * English, whose letters and signs are read by a rule of their own.
   */
  readonly words: ReadonlyMap<string, NoteName> | null;
  /** The words that may follow a note's name, in semitones; in lower case, without accents, spaces and hyphens. */
  readonly accidentals: ReadonlyMap<string, number>;
  /** What major and minor are called; the first is shown. */
  readonly major: readonly string[];
  readonly minor: readonly string[];
  /** What the forms of a minor scale are called, by their English words. */
  readonly forms: Readonly<Record<"natural" | "harmonic" | "melodic", string>>;
  /** A hyphen joins the tonic with the mode, and tonics of minor keys are in lower case: `fis-Moll`. */
  readonly hyphened: boolean;
  /** A name as in a list of notes: `Fis`, `fa#`. */
  readonly name: (name: NoteName, spelling?: Spelling) => string;
  /**
   * A tonic and English words for what is on it: `fis-Moll melodisch` for F# and `melodic minor`. The mode goes first
   * where it is not English; `tonic` is how the tonic is spelled, where not as usual.
   */
  readonly key: (name: NoteName, words: string, tonic?: string) => string;
}

/** What each language is told by; `key` follows from it. */
type Spoken = Omit<NoteNames, "key">;

type Stems = Readonly<Record<Letter, string>>;

/** Without accents, which may be left out. */
const SYLLABLES: Stems = { C: "do", D: "re", E: "mi", F: "fa", G: "sol", A: "la", B: "si" };
const FRENCH_SYLLABLES: Stems = { ...SYLLABLES, D: "ré" };
const DUTCH_LETTERS: Stems = { C: "c", D: "d", E: "e", F: "f", G: "g", A: "a", B: "b" };
const GERMAN_LETTERS: Stems = { ...DUTCH_LETTERS, B: "h" };

/** Names by their English ones, the one to show first, where they are not formed as the others are. */
type Irregular = Readonly<Record<string, readonly string[]>>;

/** A German `B` is B flat however it came to stand there, and `Bb` can only mean the same. */
const GERMAN_IRREGULAR: Irregular = { Abb: ["asas", "ases"], Bb: ["b", "bb"] };
const NONE: Irregular = {};

/** Signs behind a name, `𝄪` as two sharps: see `noteOf` in syntax/words/note-word.ts. */
const SIGN_WORDS: readonly (readonly [string, number])[] = [
  ["", 0],
  ["#", 1],
  ["##", 2],
  ["b", -1],
  ["bb", -2],
];
/** Behind a letter a double sharp may be a cross; behind a syllable it makes other words: `six`, `mix`. */
const LETTER_SIGNS: typeof SIGN_WORDS = [...SIGN_WORDS, ["x", 2]];

export const ENGLISH_NAMES: NoteNames = {
  id: "english",
  called: [],
  words: null,
  accidentals: new Map([
    ["sharp", 1],
    ["flat", -1],
    ["natural", 0],
    ["doublesharp", 2],
    ["doubleflat", -2],
  ]),
  major: ["major"],
  minor: ["minor"],
  forms: { natural: "natural", harmonic: "harmonic", melodic: "melodic" },
  hyphened: false,
  name: printName,
  key: (name, words, tonic = printName(name)) => [tonic, words].join(" ").trimEnd(),
};

/**
 * The names of notes by language, as players write them. Spellings: test/reference/note-names.json (LilyPond 2.24.1),
 * but for those of its that only serve engraving: syllables with letters for signs (`fad`, `solss`, `six`), Dutch
 * `ees`, `aes`. German capitals for major and small letters for minor, H and B: common practice; `becuadro` and `doble`
 * in Spanish, and case outside German, are from memory.
 */
export const NOTE_NAMES: readonly NoteNames[] = [
  ENGLISH_NAMES,
  withKeys({
    id: "german",
    called: ["deutsch"],
    words: germanicWords(GERMAN_LETTERS, GERMAN_IRREGULAR),
    accidentals: new Map(),
    major: ["Dur"],
    minor: ["Moll"],
    forms: { natural: "natürlich", harmonic: "harmonisch", melodic: "melodisch" },
    hyphened: true,
    name: (name) => capital(germanicNames(name, GERMAN_LETTERS, GERMAN_IRREGULAR)[0]!),
  }),
  withKeys({
    id: "dutch",
    called: ["nederlands"],
    words: germanicWords(DUTCH_LETTERS, NONE),
    accidentals: new Map(),
    major: ["majeur", "groot", "grote terts"],
    minor: ["mineur", "klein", "kleine terts"],
    forms: { natural: "natuurlijk", harmonic: "harmonisch", melodic: "melodisch" },
    hyphened: false,
    name: (name) => capital(germanicNames(name, DUTCH_LETTERS, NONE)[0]!),
  }),
  syllabic("french", {
    called: ["français", "francais"],
    stems: FRENCH_SYLLABLES,
    words: { sharp: "dièse", flat: "bémol", twice: "double" },
    bare: { sharp: "diese", flat: "bemol", natural: "becarre" },
    further: [["ut", { letter: "C", alter: 0 }]],
    major: "majeur",
    minor: "mineur",
    forms: { natural: "naturel", harmonic: "harmonique", melodic: "mélodique" },
  }),
  syllabic("italian", {
    called: ["italiano"],
    stems: SYLLABLES,
    words: { sharp: "diesis", flat: "bemolle", twice: "doppio" },
    bare: { sharp: "diesis", flat: "bemolle", natural: "bequadro" },
    major: "maggiore",
    minor: "minore",
    forms: { natural: "naturale", harmonic: "armonica", melodic: "melodica" },
  }),
  syllabic("spanish", {
    called: ["español", "espanol", "castellano"],
    stems: SYLLABLES,
    words: { sharp: "sostenido", flat: "bemol", twice: "doble" },
    bare: { sharp: "sostenido", flat: "bemol", natural: "becuadro" },
    major: "mayor",
    minor: "menor",
    forms: { natural: "natural", harmonic: "armónica", melodic: "melódica" },
  }),
];

/** The names of a language, by its name in English or its own, in lower case. */
export function namesById(id: string): NoteNames | undefined {
  return NOTE_NAMES.find((names) => names.id === id || names.called.includes(id));
}

/** A note with its octave number: `Fis4`, `fa#4`, `E𝄳4` for one between the keys. */
export function noteText(note: NoteName & { readonly octave?: number }, names: NoteNames): string {
  return `${nameBetween(note, names)}${note.octave ?? ""}`;
}

/** Quarter tones sharp and flat (Unicode 1D132, 1D133). */
const HALF_SHARP = "𝄲";
const HALF_FLAT = "𝄳";

/** The name to the nearest quarter tone: `E𝄳` is halfway from E flat to E, `F𝄲` from F to F sharp. */
export function nameBetween({ letter, alter, off = 0 }: NoteName, names: NoteNames): string {
  const quarters = 2 * alter + Math.round(off / 50);
  const whole = Math.trunc(quarters / 2);
  const sign = quarters % 2 === 0 ? "" : quarters > 0 ? HALF_SHARP : HALF_FLAT;
  return names.name({ letter, alter: whole }) + sign;
}

function withKeys(spoken: Spoken): NoteNames {
  const key: NoteNames["key"] = (name, words, tonic = spoken.name(name, "words")) => {
    const mode = MODE.exec(words)?.[0];
    if (mode === undefined || !spoken.hyphened) return [tonic, kindText(words, spoken)].join(" ").trimEnd();
    return `${mode === "minor" ? tonic.toLowerCase() : capital(tonic)}-${kindText(words, spoken)}`;
  };
  return { ...spoken, key };
}

/**
 * The key as `key` tells it, with each further word that the language has for its mode: `es klein` beside `es mineur`.
 */
export function keysInOtherWords(
  name: NoteName,
  words: string,
  tonic: string | undefined,
  names: NoteNames,
): readonly string[] {
  const mode = MODE.exec(words)?.[0] as "major" | "minor" | undefined;
  if (mode === undefined) return [];
  return names[mode].slice(1).map((said) => withKeys({ ...names, [mode]: [said] }).key(name, words, tonic));
}

/** A kind of scale or chord without its tonic, by its English words: `Moll melodisch` for `melodic minor`. */
export function kindText(
  words: string,
  { id, major, minor, forms }: Pick<NoteNames, "id" | "major" | "minor" | "forms">,
): string {
  const mode = id === "english" ? undefined : MODE.exec(words)?.[0];
  if (mode === undefined) return words;
  const rest = words
    .replace(MODE, "")
    .replace(FORM, (form) => forms[form as keyof typeof forms])
    .replace(/\s+/g, " ")
    .trim();
  return `${(mode === "major" ? major : minor)[0]!} ${rest}`.trimEnd();
}

/**
 * English words for a kind of scale or chord with major and minor in the language: `melodic minor` is also `Moll
 * melodisch`, as it is shown, and `melodic Moll`.
 */
export function inLanguage(words: string, names: NoteNames): readonly string[] {
  const { id, major, minor } = names;
  const mode = MODE.exec(words)?.[0];
  if (id === "english" || mode === undefined) return [words];
  const said = (mode === "major" ? major : minor).map((each) => words.replace(MODE, each));
  return [...new Set([kindText(words, names), ...said, words])];
}

const MODE = /\b(?:major|minor)\b/;
const FORM = /\b(?:natural|harmonic|melodic)\b/;

function capital(text: string): string {
  return text[0]!.toUpperCase() + text.slice(1);
}

/** `fis`, `fisis`, `fes`, `feses`, and as many more as it takes; the one to show first. */
function germanicNames({ letter, alter }: NoteName, stems: Stems, irregular: Irregular): readonly string[] {
  const own = irregular[printName({ letter, alter })];
  if (own) return own;
  const stem = stems[letter];
  if (alter >= 0) return [stem + "is".repeat(alter)];
  const shortened = stem === "e" || stem === "a"; // `es` and `as` swallow a vowel
  return [stem + (shortened ? "s" : "es") + "es".repeat(-alter - 1)];
}

function germanicWords(stems: Stems, irregular: Irregular): ReadonlyMap<string, NoteName> {
  const words = new Map<string, NoteName>();
  for (const letter of LETTERS)
    for (const [sign, alter] of LETTER_SIGNS)
      for (const word of [stems[letter] + sign, ...germanicNames({ letter, alter }, stems, irregular)])
        words.set(word, { letter, alter });
  return words;
}

interface Syllabic {
  readonly called: readonly string[];
  readonly stems: Stems;
  readonly words: { readonly sharp: string; readonly flat: string; readonly twice: string };
  /** The same without accents, as it is read. */
  readonly bare: { readonly sharp: string; readonly flat: string; readonly natural: string };
  readonly further?: readonly (readonly [string, NoteName])[];
  readonly major: string;
  readonly minor: string;
  readonly forms: NoteNames["forms"];
}

function syllabic(id: NamesId, { called, stems, words, bare, further = [], major, minor, forms }: Syllabic): NoteNames {
  const spelled = new Map<string, NoteName>(further);
  for (const letter of LETTERS)
    for (const [sign, alter] of SIGN_WORDS) spelled.set(SYLLABLES[letter] + sign, { letter, alter });
  const { sharp, flat, twice } = words;
  const accidentals = new Map([
    [bare.sharp, 1],
    [bare.flat, -1],
    [twice + bare.sharp, 2],
    [twice + bare.flat, -2],
    [bare.natural, 0],
  ]);
  const name = ({ letter, alter }: NoteName, spelling: Spelling = "plain"): string => {
    const many = Math.abs(alter);
    if (spelling === "words" && many > 0 && many <= 2)
      return `${stems[letter]} ${many === 2 ? `${twice} ` : ""}${alter > 0 ? sharp : flat}`;
    const signs = spelling === "signs" ? ["♯", "♭"] : ["#", "b"];
    return stems[letter] + signs[alter > 0 ? 0 : 1]!.repeat(many);
  };
  return withKeys({
    id,
    called,
    words: spelled,
    accidentals,
    major: [major],
    minor: [minor],
    forms,
    hyphened: false,
    name,
  });
}
