import { dirname } from "node:path";
import { sweep } from "../host/node/temporary-files.ts";
import { writeByRename } from "../host/node/write-file.ts";
import type { Io } from "./io.ts";
import { type NamedFile, withoutLinks } from "./journals.ts";
import { printable } from "./printable.ts";

/** Gives a file a new text. One that cannot be written keeps its old text, and is named. */
export function writeFile(file: NamedFile, text: string, { stderr }: Io): boolean {
  const written = writeByRename(file.place!, file, text);
  if (!written.ok) stderr.write(`daystave: ${printable(file.path)} was not written. ${written.reason}\n`);
  return written.ok;
}

/** Removes what an earlier run that was killed left beside these files. */
export function sweepBeside(files: readonly NamedFile[]): void {
  const folders = new Set<string>();
  for (const { place } of files) if (place !== undefined) folders.add(dirname(withoutLinks(place)));
  for (const folder of folders) sweep(folder);
}
