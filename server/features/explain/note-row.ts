import { type NoteStyle, styleOf, writtenNote } from "../../checks/notes/note-style.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import { notesToPlay, type WhatToPlay } from "../../music/patterns/notes-to-play.ts";

/**
 * The notes of an exercise in a row, in the signs that its subject is typed with, and never in small letters; empty
 * where nothing lies within the span.
 */
export function noteRow(input: WhatToPlay, typed: string, names: NoteNames): string {
  const { subject } = input;
  const note = subject.type === "scale" ? subject.tonic : subject.root;
  const written = styleOf([{ start: 0, end: typed.length, text: typed, note }], names);
  const style: NoteStyle = { ...written, lower: false, octaves: "none" };
  return notesToPlay(input)
    .notes.map((each) => writtenNote(each, style))
    .join(" ");
}
