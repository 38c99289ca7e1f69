import { isSyllables } from "../words/articulation-words.ts";
import { isNoteLike, type NoteReading, noteAt } from "../words/note-word.ts";
import { tokenise } from "../words/token.ts";
import type { Claim, ClaimedNote } from "./line.ts";

/** A word at most, with what separates notes taken away in front of it. */
const NOTE_WORD = /([\s|\-–,]*)([^\s|,\-–:>"“”„«»]+)/uy;
/** `| D E F G |`: a bar line may close the list too. */
const CLOSING_BARS = /^(?:\s*\|)*/;
/** Tones and semitones, or halves and wholes, and three semitones in any way of writing them. */
const STEP_WORD = /^(?:[TSAWH]|[tsawh]|3[SHsh]?|[mM][23]|A2|\+2)+$/;
const STEPS = /[mM][23]|A2|\+2|./gs;

/** The claim that stands after a colon: notes, or steps in letters; undefined for anything else. */
export function claimAfterColon(line: string, from: number, to: number, reading: NoteReading): Claim | undefined {
  const claim = lettersOfSteps(line, from, to) ?? noteList(line, from, to, reading);
  const isFew = claim?.type === "notes" && claim.notes.length < FEWEST_BEFORE_WORDS;
  return isFew && /^\s+\p{L}/u.test(line.slice(claim.end, to)) ? undefined : claim;
}

/** Fewer notes with words right behind them are what is said of these: `D minor at 60: C sharp late`. */
const FEWEST_BEFORE_WORDS = 3;

/** Tones and semitones in letters need no word before them once a colon stands: at least five, and no note list. */
function lettersOfSteps(line: string, from: number, to: number): Claim | undefined {
  const words = tokenise(line.slice(from, to).split(",")[0]!, from);
  let end = 0;
  while (words[end] && !words[end]!.quote && STEP_WORD.test(words[end]!.text.replaceAll("-", ""))) end++;
  const typed = words.slice(0, end).map((word) => word.text.replaceAll("-", ""));
  if (!areSteps(typed)) return undefined;
  const start = words[0]!.start;
  return { type: "steps", start, end: words[end - 1]!.end, words: line.slice(start, words[end - 1]!.end) };
}

/** In one alphabet; in small letters, which are words as well, each by itself or all that an octave has. */
function areSteps(typed: readonly string[]): boolean {
  const steps = typed.join("").match(STEPS) ?? [];
  const letters = steps.filter((step) => /^[A-Za-z]$/.test(step)).join("");
  if (steps.length < 5 || !/[TSWH]/i.test(letters) || !/^[TSA]+$|^[WHA]+$/i.test(letters)) return false;
  if (/[TSWH]/.test(letters)) return letters === letters.toUpperCase();
  if (!/[tsw]/.test(letters)) return false;
  return typed.every((word) => word.length === 1) || steps.reduce(withStep, 0) === OCTAVE;
}

/** In semitones. */
const OCTAVE = 12;
const SMALL_STEPS: Readonly<Record<string, number>> = { t: 2, s: 1, w: 2, h: 1, m2: 1, M2: 2 };
const withStep = (sum: number, step: string): number => sum + (SMALL_STEPS[step] ?? 3);

/** Notes over spaces, bars, hyphens and commas, up to the first word that is no note. */
export function noteList(line: string, from: number, to: number, reading: NoteReading): Claim | undefined {
  const notes: ClaimedNote[] = [];
  const pattern = new RegExp(NOTE_WORD);
  let at = from;
  for (;;) {
    const next = claimedNote(line, at, to, pattern, { first: notes.length === 0, reading });
    if (!next) break;
    notes.push(next);
    at = next.end;
  }
  if (!notes.some((note) => note.note)) return undefined;
  const end = notes.at(-1)!.end + CLOSING_BARS.exec(line.slice(notes.at(-1)!.end, to))![0].length;
  return { type: "notes", start: notes[0]!.start, end, notes };
}

function claimedNote(
  line: string,
  at: number,
  to: number,
  pattern: RegExp,
  { first, reading }: { readonly first: boolean; readonly reading: NoteReading },
): ClaimedNote | undefined {
  pattern.lastIndex = at;
  const match = pattern.exec(line);
  const start = match ? match.index + match[1]!.length : to;
  if (!match || start >= to || (first && match[1]!.includes(",")) || startsSyllables(line, start)) return undefined;
  const spoken = tokenise(line.slice(start, Math.min(to, start + 40)).split(/[,|:>]/)[0]!, start);
  const run = noteAt(spoken, 0, reading);
  if (run) {
    // `E-F` is one token to the tokeniser, two notes here
    const end = spoken[run.length - 1]!.end;
    return { start, end, text: line.slice(start, end), note: run.note };
  }
  const end = start + match[2]!.length;
  const single = noteAt([{ start, end, text: match[2]! }], 0, reading);
  if (single) return { start, end, text: match[2]!, note: single.note };
  return isNoteLike(match[2]!, reading) ? { start, end, text: match[2]! } : undefined;
}

/** `, d-g` after a list is an articulation, not two notes. */
function startsSyllables(line: string, start: number): boolean {
  const word = /^[a-z]+(?:[-‐‑][a-z]+)+/.exec(line.slice(start, start + 30))?.[0];
  return word !== undefined && isSyllables(word);
}
