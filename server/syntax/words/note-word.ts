import { fold, withoutAccents } from "./fold.ts";
import type { WrittenNote } from "./meaning.ts";
import type { Token } from "./token.ts";

const NOTE = /^([A-Ga-g])(##|#|x|𝄪|♯♯|♯|bb|b|𝄫|♭♭|♭)?(\d|['’‘′]{1,5})?$/u;
const ALTER: Readonly<Record<string, number>> = {
  "#": 1,
  "♯": 1,
  "##": 2,
  "♯♯": 2,
  x: 2,
  "𝄪": 2,
  b: -1,
  "♭": -1,
  bb: -2,
  "♭♭": -2,
  "𝄫": -2,
};
/** How notes are named in a journal's language (`NoteNames` in music/ are such). */
export interface NoteReading {
  /**
   * Single words, without an octave; in lower case, without accents, with plain signs. Null for letters with signs, as
   * in English.
   */
  readonly words: ReadonlyMap<string, Pick<WrittenNote, "letter" | "alter">> | null;
  /** The words that may follow a name, in semitones; in lower case, without accents, spaces and hyphens. */
  readonly accidentals: ReadonlyMap<string, number>;
  readonly major: readonly string[];
  readonly minor: readonly string[];
  /** A tonic, spelled so if it is told, and English words for what is on it. */
  readonly key: (name: Pick<WrittenNote, "letter" | "alter">, words: string, tonic?: string) => string;
}

export interface NoteRun {
  readonly note: WrittenNote;
  /** How many tokens it took. */
  readonly length: number;
  /** Whether its letter is lower-case. */
  readonly lower: boolean;
}

/**
 * The note that begins at a token: `F#`, `B♭4`, `bb` (B flat), `F sharp`, `F double sharp`; `fis`, `fa dièse` where
 * they are named so.
 */
export function noteAt(tokens: readonly Token[], i: number, reading: NoteReading): NoteRun | undefined {
  const token = tokens[i];
  if (!token || token.quote) return undefined;
  const spelled = noteOf(token.text, reading);
  if (!spelled) return hyphenated(token, reading);
  const plain = spelled.note.alter === 0 && spelled.note.octave === undefined && isBare(token.text, reading);
  if (plain) {
    const one = spokenAccidental(tokens[i + 1]?.text, reading);
    if (one !== undefined && !(one === 0 && isKindWord(tokens[i + 2])))
      return { note: { ...spelled.note, alter: one }, lower: spelled.lower, length: 2 };
    const two = spokenAccidental(`${tokens[i + 1]?.text ?? ""}${tokens[i + 2]?.text ?? ""}`, reading);
    if (two !== undefined && tokens[i + 2])
      return { note: { ...spelled.note, alter: two }, lower: spelled.lower, length: 3 };
  }
  return { ...spelled, length: 1 };
}

type Spelled = { readonly note: WrittenNote; readonly lower: boolean };

/**
 * One word as a note, `f'` that of the octave from middle C on. An accidental `b` in English is lower-case only, and
 * strokes stand behind a small letter there.
 */
export function noteOf(word: string, { words }: NoteReading): Spelled | undefined {
  if (words === null) return englishNote(word);
  const [, name = "", octave] = OCTAVE.exec(withoutAccents(word.replaceAll("𝄪", "##"))) ?? [];
  const found = words.get(name);
  // English letters are read everywhere, but for those that mean something else.
  if (!found) return /^[A-G]/.test(word) ? englishNote(word) : undefined;
  const note = { letter: found.letter, alter: found.alter };
  const lower = word[0] !== word[0]!.toUpperCase();
  return { note: { ...note, ...octaveOf(octave) }, lower };
}

/** `4`, or strokes: one from middle C on. */
function octaveOf(text: string | undefined): Pick<WrittenNote, "octave"> {
  if (!text) return {};
  return { octave: /\d/.test(text) ? Number(text) : MIDDLE - 1 + text.length };
}

/** The octave that begins with middle C. */
const MIDDLE = 4;
const OCTAVE = /^(.+?)(\d|'{1,5})?$/su;

/** A single letter, a letter with too many accidentals, or a German note name: meant as a note, but none. */
const NOTE_LIKE = /^(?:[A-Za-z][#♯b♭x𝄪𝄫]{0,6}(?:\d|['’‘′]{1,5})?|[A-H](?:is|es|isis|eses)\d?|(?:As|Es|Ases|Eses)\d?)$/u;
const SIGNS_BEHIND = /[#♯b♭x𝄪𝄫]{1,6}\d?$/u;

/** Whether a word that is no note is meant as one: `H`, `F###`, `fa###`. */
export function isNoteLike(word: string, reading: NoteReading): boolean {
  if (NOTE_LIKE.test(word)) return true;
  return (
    reading.words !== null && SIGNS_BEHIND.test(word) && noteOf(word.replace(SIGNS_BEHIND, ""), reading) !== undefined
  );
}

const TOO_MANY = /(?:^|\s)\p{L}{1,3}(?:[#♯x𝄪]{3,}|[b♭𝄫]{3,})\d?(?=\s|$)/u;

/** Whether a word of a text is a name with more than two sharps or flats: `F###`. */
export function hasTooManySigns(text: string): boolean {
  return TOO_MANY.test(text);
}

/** Nothing but a letter or a syllable, behind which an accidental may be spoken. */
function isBare(word: string, { words }: NoteReading): boolean {
  return words === null ? word.length === 1 : /^\p{L}+$/u.test(word);
}

function englishNote(word: string): Spelled | undefined {
  const match = NOTE.exec(word);
  if (!match) return undefined;
  const letter = match[1]!.toUpperCase() as WrittenNote["letter"];
  const lower = match[1]! >= "a";
  if (!lower && /\D/.test(match[3] ?? "")) return undefined;
  return { note: { letter, alter: match[2] ? ALTER[match[2]]! : 0, ...octaveOf(match[3]) }, lower };
}

/**
 * A key whose tonic and mode are joined by a hyphen, as two tokens: `fis-Moll`. The words behind it stay as they are.
 */
export function parted(tokens: readonly Token[], reading: NoteReading): readonly Token[] {
  if (reading.words === null || !tokens.some(({ text, quote }) => !quote && text.indexOf("-") > 0)) return tokens;
  const modes = [...reading.major, ...reading.minor].map(withoutAccents);
  return tokens.flatMap((token) => {
    const hyphen = token.quote ? -1 : token.text.search(/[-‐‑]/u);
    const [tonic, mode] = [token.text.slice(0, hyphen), token.text.slice(hyphen + 1)];
    if (hyphen <= 0 || !modes.includes(withoutAccents(mode)) || !noteOf(tonic, reading)) return [token];
    return [
      { ...token, end: token.start + hyphen, text: tonic },
      { ...token, start: token.start + hyphen + 1, text: mode },
    ];
  });
}

/** `D natural minor` names a kind, not the note D natural. */
function isKindWord(token: Token | undefined): boolean {
  return token !== undefined && /^minor\b/.test(fold(token.text));
}

function spokenAccidental(word: string | undefined, reading: NoteReading): number | undefined {
  if (word === undefined) return undefined;
  const sign = isSyllabic(reading) ? SIGNS_APART.get(word) : undefined;
  return sign ?? reading.accidentals.get(withoutAccents(word).replaceAll("-", ""));
}

/** Behind a syllable a sign may stand apart: `si b`, `fa #`. */
const SIGNS_APART: ReadonlyMap<string, number> = new Map([
  ["b", -1],
  ["♭", -1],
  ["#", 1],
  ["♯", 1],
]);

/** Whether notes are named by syllables, which small letters suit as well as capitals. */
export function isSyllabic({ words }: NoteReading): boolean {
  return words?.has("sol") ?? false;
}

const IN_ONE = /^([A-Ga-g])(flat|sharp)$/i;

/** `F-sharp`, `B-flat`; `Bflat`. */
function hyphenated(token: Token, reading: NoteReading): NoteRun | undefined {
  const inOne = IN_ONE.exec(token.text);
  if (inOne) {
    const plain = noteOf(inOne[1]!, reading);
    const alter = inOne[2]!.toLowerCase() === "flat" ? -1 : 1;
    return plain && { note: { ...plain.note, alter }, lower: plain.lower, length: 1 };
  }
  const hyphen = token.text.search(/[-‐‑]/u);
  if (hyphen <= 0) return undefined;
  const alter = spokenAccidental(token.text.slice(hyphen + 1), reading);
  const tonic = token.text.slice(0, hyphen);
  const plain = alter !== undefined && isBare(tonic, reading) ? noteOf(tonic, reading) : undefined;
  return plain && alter !== undefined && plain.note.alter === 0
    ? { note: { ...plain.note, alter }, lower: plain.lower, length: 1 }
    : undefined;
}
