import { exerciseFileAt } from "../../server/features/scores/exercise-file.ts";
import { exerciseToPlay } from "../../server/journal/entry-exercise.ts";
import { printNote } from "../../server/music/notes/note.ts";
import { notesToPlay } from "../../server/music/patterns/notes-to-play.ts";
import type { ExportFormat } from "../../shared/export.ts";
import { journalOf, URI } from "../features/journal-text.ts";
import { TODAY } from "../features/marked-text.ts";

/** The file of a line, below lines that declare things. */
export function fileOf(line: string, format: ExportFormat, head = "") {
  const journal = journalOf(`${head}\n2026-03-08\n  ${line}`);
  return exerciseFileAt(journal, URI, journal.files.get(URI)!.lineCount - 1, { format, today: TODAY });
}

/** Its bytes, where it has one. */
export function bytesOf(line: string, format: ExportFormat, head = ""): Uint8Array {
  const file = fileOf(line, format, head);
  if (!file.ok) throw new Error(`${line}: ${file.reason}`);
  return file.bytes;
}

/**
 * The notes of a line as written, `F#4`, and how many semitones higher they sound: the notes engine and the table of
 * instruments, which tests of their own hold against sources from outside.
 */
export function playedBy(line: string, head = ""): { readonly written: readonly string[]; readonly sounding: number } {
  const journal = journalOf(`${head}\n2026-03-08\n  ${line}`);
  const block = journal.files.get(URI)!.blocks.at(-1)!;
  const { entries, day } = journal.model(block);
  const entry = entries[0]!;
  const input = exerciseToPlay(entry, entry.attempts[0]?.conditions, journal.conventions(URI), day!.date)!;
  const { instrument } = input;
  return { written: notesToPlay(input).notes.map(printNote), sounding: instrument?.sounding.semitones ?? 0 };
}
