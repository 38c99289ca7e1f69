import { type NoteName, nameAtFifths } from "../../music/notes/note.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import { noteList } from "../../syntax/line/claim.ts";
import { LONGEST_LINE } from "../../syntax/line/line-reader.ts";
import { printable } from "../printable.ts";

export type NotesGiven =
  | { readonly ok: true; readonly notes: readonly NoteName[] }
  | { readonly ok: false; readonly reason: string };

const ACCEPTED =
  "A note is a letter from A to G, perhaps with #, b, ##, x or bb (or sharp, flat) after it, and an octave number, as D, F#, Bb or C#5.";

function accepted(names: NoteNames): string {
  if (names.words === null) return ACCEPTED;
  const shown = [0, 2, 6, -2, -3].map((fifths) => names.name(nameAtFifths(fifths)));
  return `Notes are named in ${names.id[0]!.toUpperCase()}${names.id.slice(1)}, as ${shown.join(", ")}, perhaps with an octave number after them.`;
}

const GERMAN = /^(?:h|[a-h](?:is|es)|as|es)\d?$/i;

/** More notes than anybody would ask about. */
const MOST_NOTES = 500;

/**
 * The notes that somebody types, parted by spaces, commas, bars or hyphens as in a journal; else which word is none.
 */
export function notesGiven(typed: string, names: NoteNames): NotesGiven {
  if (typed.length > LONGEST_LINE) return { ok: false, reason: `The notes take up over ${LONGEST_LINE} characters.` };
  // `d-g` may be tongued in a journal; here nothing but notes can be meant.
  const text = typed.replace(/[\r\n\t]/g, " ").replace(/[-–](?!sharp|flat)/giu, " ");
  const notes: NoteName[] = [];
  let end = text.search(/[^\s,|]/);
  if (end < 0) return { ok: false, reason: `Give at least one note. ${accepted(names)}` };
  const list = noteList(text, end, text.length, names);
  for (const claimed of list?.type === "notes" ? list.notes : []) {
    if (!claimed.note) return noNote(text, claimed.start, names);
    notes.push({ letter: claimed.note.letter, alter: claimed.note.alter });
    end = claimed.end;
  }
  const rest = text.slice(end).search(/[^\s,|]/);
  if (rest >= 0) return noNote(text, end + rest, names);
  if (notes.length > MOST_NOTES) return { ok: false, reason: `These are over ${MOST_NOTES} notes.` };
  return { ok: true, notes };
}

function noNote(text: string, at: number, names: NoteNames): NotesGiven {
  const word = /^[^\s,|]*/.exec(text.slice(at, at + 200))![0];
  const place = text.slice(0, at).match(/[^\s,|]+/g)?.length ?? 0;
  const shown = [...word].length > 40 ? `${[...word].slice(0, 39).join("")}…` : word;
  const german = names.words === null && GERMAN.test(word) ? " It is a German name: use `--names german`." : "";
  return { ok: false, reason: `Word ${place + 1}, “${printable(shown)}”, is not a note.${german} ${accepted(names)}` };
}
