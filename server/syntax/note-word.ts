import { fold } from "./fold.ts";
import type { WrittenNote } from "./meaning.ts";
import type { Token } from "./token.ts";

const NOTE = /^([A-Ga-g])(##|#|x|𝄪|♯♯|♯|bb|b|𝄫|♭♭|♭)?(\d)?$/u;
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
const SPOKEN: Readonly<Record<string, number>> = { sharp: 1, flat: -1, natural: 0, doublesharp: 2, doubleflat: -2 };

export interface NoteRun {
  readonly note: WrittenNote;
  /** How many tokens it took. */
  readonly length: number;
  /** Whether its letter is lower-case. */
  readonly lower: boolean;
}

/** The note that begins at a token: `F#`, `B♭4`, `bb` (B flat), `F sharp`, `F double sharp`. */
export function noteAt(tokens: readonly Token[], i: number): NoteRun | undefined {
  const token = tokens[i];
  if (!token || token.quote) return undefined;
  const spelled = noteOf(token.text);
  if (!spelled) return hyphenated(token);
  const plain = spelled.note.alter === 0 && spelled.note.octave === undefined && token.text.length === 1;
  if (plain) {
    const one = spokenAccidental(tokens[i + 1]?.text);
    if (one !== undefined && !(one === 0 && isKindWord(tokens[i + 2])))
      return { note: { ...spelled.note, alter: one }, lower: spelled.lower, length: 2 };
    const two = spokenAccidental(`${tokens[i + 1]?.text ?? ""}${tokens[i + 2]?.text ?? ""}`);
    if (two !== undefined && tokens[i + 2])
      return { note: { ...spelled.note, alter: two }, lower: spelled.lower, length: 3 };
  }
  return { ...spelled, length: 1 };
}

/** One word as a note. An accidental `b` is lower-case only. */
export function noteOf(word: string): { readonly note: WrittenNote; readonly lower: boolean } | undefined {
  const match = NOTE.exec(word);
  if (!match) return undefined;
  const letter = match[1]!.toUpperCase() as WrittenNote["letter"];
  const octave = match[3] === undefined ? {} : { octave: Number(match[3]) };
  return { note: { letter, alter: match[2] ? ALTER[match[2]]! : 0, ...octave }, lower: match[1]! >= "a" };
}

/** `D natural minor` names a kind, not the note D natural. */
function isKindWord(token: Token | undefined): boolean {
  return token !== undefined && /^minor\b/.test(fold(token.text));
}

function spokenAccidental(word: string | undefined): number | undefined {
  return word === undefined ? undefined : SPOKEN[fold(word)];
}

/** `F-sharp`, `B-flat`. */
function hyphenated(token: Token): NoteRun | undefined {
  if (token.text[1] !== "-") return undefined;
  const [letter, ...rest] = token.text.split("-");
  const alter = rest.length ? SPOKEN[fold(rest.join(""))] : undefined;
  const plain = letter?.length === 1 ? noteOf(letter) : undefined;
  return plain && alter !== undefined ? { note: { ...plain.note, alter }, lower: plain.lower, length: 1 } : undefined;
}
