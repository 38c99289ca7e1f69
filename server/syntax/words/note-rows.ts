import { BETWEEN_NOTES, REGISTERS, REGISTERS_BEHIND } from "../lexicon/note-leads.ts";
import type { WrittenNote } from "./meaning.ts";
import { noteOf } from "./note-word.ts";
import type { Words } from "./words.ts";

export interface Notes {
  readonly notes: readonly WrittenNote[];
  readonly length: number;
}

/** Two notes with a joint between: `low F to C`, `E-F`, `g#''/a''`, `do à ré aigu`, `low Bb–high F#`. */
export function rangeAt(words: Words, i: number): Notes | undefined {
  const start = i + registerAt(words, i);
  const pair = joinedNotes(words, start);
  if (pair?.notes.length === 2) return withRegister(words, i, { notes: pair.notes, length: start - i + pair.length });
  const apart = joinedToRegister(words, start);
  if (apart) return withRegister(words, i, { notes: apart.notes, length: start - i + apart.length });
  const first = noteIn(words, i);
  if (!first || !words.is(i + first.length, ...BETWEEN_NOTES)) return undefined;
  const next = i + first.length + 1;
  const second = noteIn(words, next);
  return second && { notes: [first.note, second.note], length: next + second.length - i };
}

/** A note with a word of its register before or behind it: `low C`, `si grave`. */
export function noteIn(words: Words, i: number): { readonly note: WrittenNote; readonly length: number } | undefined {
  const before = registerAt(words, i);
  const run = words.note(i + before);
  if (!run) return undefined;
  const behind = i + before + run.length;
  return { note: run.note, length: before + run.length + registerBehind(words, behind) };
}

/** How many words say in which register the note behind them is. */
export function registerAt(words: Words, i: number): number {
  return words.is(i, ...REGISTERS) && !words.note(i) ? 1 : 0;
}

/** The same behind the note; a word before another note belongs to that. */
function registerBehind(words: Words, i: number): number {
  return words.is(i, ...REGISTERS_BEHIND) && !words.note(i + 1) ? 1 : 0;
}

export function withRegister(words: Words, i: number, { notes, length }: Notes): Notes {
  return { notes, length: length + registerBehind(words, i + length) };
}

/** `Bb–high F#`. */
function joinedToRegister(words: Words, i: number): Notes | undefined {
  const [, name = "", register = ""] = /^(.+?)[-–](\p{L}+)$/su.exec(words.typed(i)) ?? [];
  if (!REGISTERS.includes(register.toLowerCase())) return undefined;
  const first = noteOf(name, words.vocabulary.notes);
  const second = words.note(i + 1);
  return first && second && { notes: [first.note, second.note], length: 1 + second.length };
}

/**
 * Notes one after another; `E5-F5` is two.
 *
 * @param further a note stands before them
 */
export function notesAt(words: Words, i: number, further = false): Notes {
  const notes: WrittenNote[] = [];
  let next = i;
  for (;;) {
    const run = words.note(next) ?? joinedNotes(words, next);
    if (run && "note" in run) notes.push(run.note);
    else if (run) notes.push(...run.notes);
    else if (words.typed(next) !== "|" && !((further || notes.length > 0) && isAnd(words, next))) break;
    next += run?.length ?? 1;
  }
  return { notes, length: next - i };
}

function isAnd(words: Words, i: number): boolean {
  return words.is(i, "and", "&", "und", "et") && words.note(i + 1) !== undefined;
}

const STROKE = /[-–/]/u;

/** `E5-F5`, `C#6/D6`: notes in one word. A small letter needs a sign of its octave: `a-b` are letters. */
export function joinedNotes(words: Words, i: number): Notes | undefined {
  return /^(?:[A-Z]|\p{L}[#♯b♭]?['’])/u.test(words.typed(i)) ? joinedLetters(words, i) : undefined;
}

/** The same in whatever letters, where notes are meant: `trill h-c`, `f-f''' chromatic`. */
export function joinedLetters(words: Words, i: number): Notes | undefined {
  const word = words.typed(i);
  if (!STROKE.test(word)) return undefined;
  const names = word.includes("/") ? word.split("/").map(withSign) : word.split(STROKE);
  const runs = names.map((each) => noteOf(each, words.vocabulary.notes));
  return runs.every((run) => run !== undefined) ? { notes: runs.map((run) => run.note), length: 1 } : undefined;
}

/** `E-flat` and `Eflat` as `Eb`. */
function withSign(name: string): string {
  return name.replace(/^(\p{L})-?flat$/iu, "$1b").replace(/^(\p{L})-?sharp$/iu, "$1#");
}
