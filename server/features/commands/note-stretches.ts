import { type NoteName, sameName } from "../../music/notes/note.ts";
import type { ClaimedNote, EntryLine } from "../../syntax/line/line.ts";
import type { WrittenNote } from "../../syntax/words/meaning.ts";
import { type NoteReading, noteAt, noteOf, parted } from "../../syntax/words/note-word.ts";
import { type Token, tokenise } from "../../syntax/words/token.ts";

/** A name of a note on a line. */
export interface NoteStretch extends ClaimedNote {
  readonly note: WrittenNote;
}

interface Stretch {
  readonly start: number;
  readonly end: number;
}

/**
 * Where a part of a line names notes, as far as its reading has them: tonics, roots (`F#` of `F#m7b5`), notes of
 * figures and ends of spans, and each note of a claim.
 */
export function noteStretchesIn(text: string, line: EntryLine, reading: NoteReading): readonly NoteStretch[] {
  const claims = line.claims.flatMap((claim) => (claim.type === "notes" ? claim.notes : []));
  const inClaims = claims.flatMap(({ note, ...stretch }) => (note ? [{ ...stretch, note }] : []));
  const named = [...(line.subject ? [line.subject] : []), ...line.items];
  const inWords = named.flatMap((item) => notesWithin(text, item, notesOf(item.meaning), reading));
  const all = [...inClaims, ...inWords].sort((a, b) => a.start - b.start || b.end - a.end);
  return all.filter(({ start }, i) => i === 0 || start >= all[i - 1]!.end);
}

/** Every note that a reading holds, however deep. */
export function notesOf(meaning: unknown): readonly WrittenNote[] {
  if (typeof meaning !== "object" || meaning === null) return [];
  if (isNote(meaning)) return [meaning];
  return Object.values(meaning).flatMap(notesOf);
}

export function isNote(value: object): value is WrittenNote {
  return "letter" in value && "alter" in value;
}

/** The words of a stretch that name some of these notes. */
export function notesWithin(
  text: string,
  { start, end }: Stretch,
  notes: readonly WrittenNote[],
  reading: NoteReading,
): readonly NoteStretch[] {
  if (notes.length === 0) return [];
  const found: NoteStretch[] = [];
  for (const part of partsOf(text, start, end)) {
    const tokens = parted(tokenise(text.slice(part.start, part.end), part.start), reading);
    for (let i = 0; i < tokens.length; i++) {
      const run = noteAt(tokens, i, reading);
      const stretch = run
        ? known(text, tokens[i]!.start, tokens[i + run.length - 1]!.end, run.note, notes)
        : rootOf(tokens[i]!, text, notes, reading);
      if (stretch) found.push(stretch);
      if (run && stretch) i += run.length - 1;
    }
  }
  return found;
}

/** What signs part: a stroke, a hyphen between two notes, or a comma. A hyphen may also join a name: `fis-Moll`. */
function partsOf(text: string, start: number, end: number): readonly Stretch[] {
  const parts: Stretch[] = [];
  let from = start;
  for (const { index } of text.slice(start, end).matchAll(/[,:>→/&+|]|(?<=[\d'’])[-–]/gu)) {
    parts.push({ start: from, end: start + index });
    from = start + index + 1;
  }
  return [...parts, { start: from, end }];
}

/** A stretch that names one of the notes; in `C7` the number is a chord's, where the reading has no octave. */
function known(
  text: string,
  start: number,
  end: number,
  note: WrittenNote,
  notes: readonly WrittenNote[],
): NoteStretch | undefined {
  const meant = notes.filter((each) => sameName(each, note));
  if (meant.length === 0) return undefined;
  if (meant.some(({ octave }) => octave === note.octave)) return { start, end, text: text.slice(start, end), note };
  const { octave: _, ...name } = note;
  const plain = text.slice(start, end).replace(/\d$/, "");
  return { start, end: start + plain.length, text: plain, note: name };
}

/** The root that a word begins with: `Bbm`, `F#m7b5`. */
function rootOf(
  { start, text: word, quote }: Token,
  text: string,
  notes: readonly NoteName[],
  reading: NoteReading,
): NoteStretch | undefined {
  for (let length = quote ? 0 : Math.min(word.length - 1, LONGEST_ROOT); length > 0; length--) {
    const root = noteOf(word.slice(0, length), reading);
    if (!BEHIND_ROOT.test(word.slice(length))) continue;
    if (root && notes.some((each) => sameName(each, root.note)))
      return known(text, start, start + length, root.note, notes);
  }
  return undefined;
}

/** What of a kind or a chord may follow its root within a word: `m7b5`, `maj7`, `ø`. */
const BEHIND_ROOT =
  /^(?:m|M|mi|min|ma|maj|hm|mm|nm|dim|aug|sus|add|[ø°Δo+\-−(\d])(?:[\d#b♯♭ø°Δ()+\-−/]|maj|min|dim|sus|add|no|M|m)*$/u;
/** In UTF-16 units, with a double accidental. */
const LONGEST_ROOT = 5;
