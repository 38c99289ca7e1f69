import { writeByRename } from "../host/node/write-file.ts";
import { textOf } from "../syntax/document/document.ts";
import type { Io } from "./io.ts";
import { documentOf, type Journals, type NamedFile } from "./journals.ts";
import { printable } from "./printable.ts";

export interface Written {
  readonly files: readonly NamedFile[];
  /** As they stand on disk now. */
  readonly journals: Journals;
  /** A file could not be written, or changed meanwhile. */
  readonly refused: boolean;
}

/** Writes files as they stand in the new journals. One that cannot be written keeps its old text, and is named. */
export function writeFiles(files: readonly NamedFile[], before: Journals, after: Journals, io: Io): Written {
  const journals = new Map(after);
  const done: NamedFile[] = [];
  for (const file of files) {
    const written = writeByRename(file.place!, file, textOf(documentOf(file, after)));
    if (written.ok) {
      done.push(file);
      continue;
    }
    io.stderr.write(`daystave: ${printable(file.path)} was not written. ${written.reason}\n`);
    journals.set(file.root, journals.get(file.root)!.with(file.uri, documentOf(file, before)));
  }
  return { files: done, journals, refused: done.length < files.length };
}
