import type { WrittenNote } from "./meaning.ts";
import { noteOf } from "./note-word.ts";
import type { Words } from "./words.ts";

/** Which of the notes with one name: it names no octave that could be counted. */
export const HEIGHTS = ["open", "low", "high", "bottom", "top", "middle"];
const JOINTS = ["with", "to", "and", "&", "/", "-", "–"];

interface Notes {
  readonly notes: readonly WrittenNote[];
  readonly length: number;
}

/** Two notes with a joint between: `low F to C`, `E-F`, `g#''/a''`. */
export function rangeAt(words: Words, i: number): Notes | undefined {
  const start = i + heightAt(words, i);
  const pair = joinedNotes(words, start);
  if (pair?.notes.length === 2) return { notes: pair.notes, length: start - i + pair.length };
  const first = words.note(start);
  if (!first || !words.is(start + first.length, ...JOINTS)) return undefined;
  const next = start + first.length + 1;
  const second = words.note(next + heightAt(words, next));
  if (!second) return undefined;
  return { notes: [first.note, second.note], length: next + heightAt(words, next) + second.length - i };
}

export function heightAt(words: Words, i: number): number {
  return words.is(i, ...HEIGHTS) ? 1 : 0;
}

/** Notes one after another; `E5-F5` is two. */
export function notesAt(words: Words, i: number): Notes {
  const notes: WrittenNote[] = [];
  let next = i;
  for (;;) {
    const run = words.note(next) ?? joinedNotes(words, next);
    if (run && "note" in run) notes.push(run.note);
    else if (run) notes.push(...run.notes);
    else if (words.typed(next) !== "|" && !(notes.length > 0 && words.is(next, "and", "&") && words.note(next + 1)))
      break;
    next += run?.length ?? 1;
  }
  return { notes, length: next - i };
}

/** Whether a word holds two notes. */
export function isPair(words: Words, i: number): boolean {
  return joinedNotes(words, i)?.notes.length === 2;
}

const STROKE = /[-–/]/u;

/** `E5-F5`, `C#6/D6`: notes in one word. A small letter needs a sign of its octave: `a-b` are letters. */
function joinedNotes(words: Words, i: number): Notes | undefined {
  const token = words.tokens[i];
  if (!token || token.quote || !STROKE.test(token.text) || !/^(?:[A-Z]|\p{L}[#♯b♭]?['’])/u.test(token.text))
    return undefined;
  const runs = token.text.split(STROKE).map((word) => noteOf(word, words.vocabulary.notes));
  return runs.every((run) => run !== undefined) ? { notes: runs.map((run) => run.note), length: 1 } : undefined;
}
