import { FROM_NOTE, ON_NOTE, TONICS_THAT_ARE_WORDS } from "../lexicon/note-leads.ts";
import type { MeaningOf } from "./meaning.ts";
import { joinedNotes, type Notes, noteIn, notesAt, rangeAt } from "./note-rows.ts";
import { timesAt } from "./quantity-words.ts";
import { scaleAt } from "./scale-words.ts";
import { trillAt } from "./trill-words.ts";
import type { Found, Words } from "./words.ts";

type Figure = MeaningOf<"figure">;

/** `notes E5 F5`, `long tones on F4 C5`, `long tones on D minor`, `trill E6 with F6`, `B to C trill`. */
export function figureAt(words: Words, i: number): Found<Figure | MeaningOf<"several" | "technique">> | undefined {
  const named = words.phrase(i, "figure word");
  if (!named) return tonesOnNotes(words, i) ?? betweenNotes(words, i);
  const start = i + named.length;
  switch (named.meaning.figure) {
    case "notes":
      return notesNamed(words, i, start);
    case "trill":
      return trillAt(words, i, start);
    case "long tones":
      return longTones(words, i, start);
    default:
      return scaleOfNotes(words, i, start, named.meaning.figure);
  }
}

function notesNamed(words: Words, i: number, start: number): Found<Figure> | undefined {
  const { notes, length } = rangeAt(words, start) ?? notesAt(words, start);
  return notes.length > 0
    ? { length: start - i + length, meaning: { type: "figure", figure: "notes", notes } }
    : undefined;
}

/** `low C long notes`, `D long tones`: the notes stand first. */
function tonesOnNotes(words: Words, i: number): Found<Figure> | undefined {
  const note = noteIn(words, i);
  const named = note && words.phrase(i + note.length, "figure word");
  if (!note || named?.meaning.figure !== "long tones" || words.is(i, ...TONICS_THAT_ARE_WORDS)) return undefined;
  return { length: note.length + named.length, meaning: { type: "figure", figure: "long tones", notes: [note.note] } };
}

/** `Bb to C trill`; `A to B back and forth`, `B A G 5 times`, `Bb-A-Bb-C fork`. Way and times stay terms. */
function betweenNotes(words: Words, i: number): Found<Figure> | undefined {
  const row = notesInRow(words, i);
  if (!row) return undefined;
  const { notes, length } = row;
  const behind = words.phrase(i + length, "figure word", "direction");
  if (behind?.meaning.type === "figure word" && behind.meaning.figure === "trill" && notes.length === 2)
    return { length: length + behind.length, meaning: { type: "figure", figure: "trill", notes } };
  const turns = behind?.meaning.type === "direction" && behind.meaning.id === "back and forth";
  const fork = words.is(i + length, "fork", "forks", "forked") ? 1 : 0;
  const isPractised = turns || fork > 0 || timesAt(words, i + length) !== undefined;
  return isPractised ? { length: length + fork, meaning: { type: "figure", figure: "notes", notes } } : undefined;
}

/** Two notes with a joint, or several side by side. */
function notesInRow(words: Words, i: number): Notes | undefined {
  if (!words.note(i) && !joinedNotes(words, i)) return undefined;
  const row = rangeAt(words, i) ?? notesAt(words, i);
  return row.notes.length > 1 ? row : undefined;
}

function longTones(words: Words, i: number, named: number): Found<Figure> {
  const bare = { length: named - i, meaning: { type: "figure", figure: "long tones", notes: [] } } as const;
  const from = words.is(named, ...FROM_NOTE) ? 1 : 0;
  const on = words.is(named, "in", ...ON_NOTE);
  const range = on && !from ? undefined : rangeAt(words, named + from);
  if (range) return { length: named - i + from + range.length, meaning: bare.meaning };
  const start = named + (on ? 1 : 0);
  if (words.phrase(start, "instrument")) return bare; // `on A clarinet` is no note A
  const scale = scaleAt(words, start);
  if (scale && !scale.meaning.fromLowest)
    return { length: start - i + scale.length, meaning: { ...bare.meaning, scale: scale.meaning } };
  const { notes, length } = notesAt(words, start);
  return notes.length > 0 ? { length: start - i + length, meaning: { ...bare.meaning, notes } } : bare;
}

/** `five-note scale on D`. */
function scaleOfNotes(words: Words, i: number, named: number, figure: Figure["figure"]): Found<Figure> {
  const on = words.is(named, "in", ...ON_NOTE) ? words.note(named + 1) : undefined;
  const isTonic = on && !on.lower;
  return {
    length: named - i + (isTonic ? 1 + on.length : 0),
    meaning: { type: "figure", figure, notes: isTonic ? [on.note] : [] },
  };
}
