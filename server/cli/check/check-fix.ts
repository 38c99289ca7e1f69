import { quoted } from "../../checks/finding.ts";
import { safeFixEdits } from "../../features/diagnostics/code-actions.ts";
import { diagnosticsOf } from "../../features/diagnostics/diagnostics.ts";
import type { TextEdit } from "../../features/types.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import { type Document, textOf } from "../../syntax/document/document.ts";
import { applyEdits, inOrder, textIn } from "../edits.ts";
import type { Io } from "../io.ts";
import { documentOf, type Journals, type NamedFile, type ReadJournals } from "../journals.ts";
import { printable } from "../printable.ts";
import { sweepBeside, writeFile } from "../write.ts";

export interface Fixed {
  /** As they stand now: with what was mended, and without it where a file could not be written. */
  readonly journals: Journals;
  /** A file could not be written. */
  readonly refused: boolean;
}

/** One mend may make another possible; more rounds than this would mean that two undo each other. */
const MOST_ROUNDS = 5;

/**
 * Applies the safe fixes to the named files until none is left, writes them, and says what it did.
 *
 * @param quiet says nothing but what could not be written
 */
export function fixFiles(read: ReadJournals, io: Io, quiet = false): Fixed {
  sweepBeside(read.files);
  const mends = new Map<NamedFile, string[]>();
  let journals: Journals = read.journals;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const before = journals;
    for (const [i, file] of read.files.entries()) {
      io.progress?.("Fixing", i, read.files.length);
      journals = fixOnce(file, journals, mends, io.today);
    }
    if (journals === before) break;
  }
  let refused = false;
  for (const [file, said] of mends) {
    if (writeFile(file, textOf(documentOf(file, journals)), io)) {
      if (!quiet) io.stderr.write(said.join(""));
      continue;
    }
    refused = true;
    journals = withDocument(journals, file, journals.get(file.root)!, documentOf(file, read.journals));
  }
  return { journals, refused };
}

/** The journals with one round of mends in a file; the same object where there is nothing to mend. */
function fixOnce(file: NamedFile, journals: Journals, mends: Map<NamedFile, string[]>, today: DayNumber): Journals {
  const journal = journals.get(file.root)!;
  const edits = safeFixEdits(diagnosticsOf(journal, file.uri, today));
  if (edits.length === 0) return journals;
  const document = documentOf(file, journals);
  const lines = edits.map((edit) => `${printable(file.path)}:${described(document, edit)}\n`);
  mends.set(file, [...(mends.get(file) ?? []), ...lines]);
  return withDocument(journals, file, journal, applyEdits(document, inOrder(edits)));
}

function withDocument(journals: Journals, { root, uri }: NamedFile, journal: Journal, document: Document): Journals {
  return new Map(journals).set(root, journal.with(uri, document));
}

/** `3:1 mended: “2026/03/02” is now “2026-03-02”`; the place is where it stood before. */
function described(document: Document, edit: TextEdit): string {
  const { line, character } = edit.range.start;
  const [before, after] = [textIn(document, edit), edit.newText].map((text) => printable(quoted(text)));
  const change = !before
    ? `“${after}” was added`
    : after
      ? `“${before}” is now “${after}”`
      : `“${before}” was taken out`;
  return `${line + 1}:${character + 1} fixed: ${change}`;
}
