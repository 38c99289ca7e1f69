import type { NoteName } from "../music/note.ts";
import { noteList } from "../syntax/claim.ts";
import { printable } from "./printable.ts";

export type NotesGiven =
  | { readonly ok: true; readonly notes: readonly NoteName[] }
  | { readonly ok: false; readonly reason: string };

const ACCEPTED =
  "A note is a letter from A to G, perhaps with #, b, ##, x or bb (or sharp, flat) behind it and an octave number, as D, F#, Bb or C#5.";

const GERMAN = /^(?:h|[a-h](?:is|es)|as|es)\d?$/i;

/** More notes than anybody would ask about. */
const MOST_NOTES = 500;
const LONGEST = 4096;

/** The notes that somebody types, parted by spaces, commas, bars or hyphens as in a journal; else which word is none. */
export function notesGiven(typed: string): NotesGiven {
  if (typed.length > LONGEST) return { ok: false, reason: `The notes take up over ${LONGEST} characters.` };
  // `d-g` may be tongued in a journal; here nothing but notes can be meant.
  const text = typed.replace(/[\r\n\t]/g, " ").replace(/[-–](?!sharp|flat)/giu, " ");
  const notes: NoteName[] = [];
  let end = text.search(/[^\s,|]/);
  if (end < 0) return { ok: false, reason: `No note stands here. ${ACCEPTED}` };
  const list = noteList(text, end, text.length);
  for (const claimed of list?.type === "notes" ? list.notes : []) {
    if (!claimed.note) return noNote(text, claimed.start);
    notes.push({ letter: claimed.note.letter, alter: claimed.note.alter });
    end = claimed.end;
  }
  const rest = text.slice(end).search(/[^\s,|]/);
  if (rest >= 0) return noNote(text, end + rest);
  if (notes.length > MOST_NOTES) return { ok: false, reason: `These are over ${MOST_NOTES} notes.` };
  return { ok: true, notes };
}

function noNote(text: string, at: number): NotesGiven {
  const word = /^[^\s,|]*/.exec(text.slice(at, at + 200))![0];
  const place = text.slice(0, at).match(/[^\s,|]+/g)?.length ?? 0;
  const shown = [...word].length > 40 ? `${[...word].slice(0, 39).join("")}…` : word;
  const german = GERMAN.test(word)
    ? " German names are not read here: H is B, a German B is Bb, Fis is F#, Es is Eb."
    : "";
  return { ok: false, reason: `Word ${place + 1}, “${printable(shown)}”, is no note.${german} ${ACCEPTED}` };
}
