import { NOTE_NAMES, type NoteNames, namesById } from "../music/notes/note-names.ts";
import { createDocument, type Document } from "../syntax/document/document.ts";
import { fold } from "../syntax/words/fold.ts";
import { notOneOf } from "./nearest.ts";

export type NamesAsked =
  | { readonly ok: true; readonly names?: NoteNames }
  | { readonly ok: false; readonly reason: string };

/** The language of note names that an option asks for; none where it is not given. */
export function namesAsked(value: string | undefined): NamesAsked {
  if (value === undefined) return { ok: true };
  const names = namesById(fold(value.trim()));
  if (names) return { ok: true, names };
  const known = NOTE_NAMES.map(({ id }) => id);
  return { ok: false, reason: notOneOf(`--names ${value}`, value, known) };
}

/** A file that declares them, and counts before the marker of any journal on disk. */
export function declaring({ id }: NoteNames): readonly [uri: string, document: Document] {
  return ["argument:/journal.practice", createDocument(`names ${id}`)];
}
