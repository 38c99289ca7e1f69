import type { Journal } from "../journal/journal.ts";
import { createDocument } from "../syntax/document/document.ts";
import { fold } from "../syntax/words/fold.ts";
import type { WrittenNote } from "../syntax/words/meaning.ts";

/** A note by its name, or a degree of what is practised: 1 the tonic, 5 the fifth. */
export type SoundedNote =
  | { readonly type: "note"; readonly note: WrittenNote }
  | { readonly type: "degree"; readonly degree: number };

/** Of a scale, by the trade's words; 8 is the tonic an octave up. */
const DEGREES: Readonly<Record<string, number>> = {
  tonic: 1,
  keynote: 1,
  root: 1,
  first: 1,
  second: 2,
  third: 3,
  fourth: 4,
  fifth: 5,
  dominant: 5,
  sixth: 6,
  seventh: 7,
  octave: 8,
};

/** `D A`, `D and A`, `the fifth`, `5`: notes are read as the journal reads them. Empty where some word is none. */
export function readNotes(typed: string, journal: Journal): readonly SoundedNote[] {
  const words = typed.split(/,| and | & |\s/i).filter((word) => word !== "" && fold(word) !== "the");
  const notes = words.map((word) => degreeOf(word) ?? noteNamed(word, journal));
  return notes.every((each) => each !== undefined) ? notes : [];
}

function degreeOf(word: string): SoundedNote | undefined {
  const degree = /^[1-8]$/.test(word) ? Number(word) : DEGREES[fold(word)];
  return degree === undefined ? undefined : { type: "degree", degree };
}

function noteNamed(word: string, journal: Journal): SoundedNote | undefined {
  const block = createDocument(`2000-01-01\n  notes ${word} ${word}\n`).blocks.at(-1)!;
  const subject = journal.ownModelOnce(block).entries[0]?.subject;
  const note = subject?.type === "figure" ? subject.notes[0] : undefined;
  return note && { type: "note", note };
}
