import {
  closeSync,
  fchmodSync,
  fsyncSync,
  openSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import { reasonOf } from "./read-file.ts";

export type Written = { readonly ok: true } | { readonly ok: false; readonly reason: string };

const BOM = "\uFEFF";

/**
 * Replaces a file's text in one step: a new file is written beside it and takes its name, so that a crash leaves either
 * the old text or the new. A link stays a link, and the file keeps its permissions.
 *
 * @param before what was read, by `readFileText`; when the file no longer holds exactly that, nothing is written
 */
export function writeByRename(
  path: string,
  before: { readonly text: string; readonly bom: boolean },
  text: string,
): Written {
  let temporary: string | undefined;
  try {
    const place = realpathSync(path);
    if (!readFileSync(place).equals(bytesOf(before.text, before.bom))) {
      return { ok: false, reason: "It changed while it was being worked on, so it was left alone." };
    }
    temporary = join(dirname(place), `.${basename(place)}.${process.pid}.new`);
    writeNew(temporary, bytesOf(text, before.bom), statSync(place).mode);
    renameSync(temporary, place);
    return { ok: true };
  } catch (error) {
    if (temporary !== undefined) rmSync(temporary, { force: true });
    return { ok: false, reason: reasonOf(error) };
  }
}

function bytesOf(text: string, bom: boolean): Buffer {
  return Buffer.from(bom ? BOM + text : text, "utf8");
}

function writeNew(path: string, bytes: Buffer, mode: number): void {
  const file = openSync(path, "wx", mode);
  try {
    fchmodSync(file, mode); // the mode given to `open` is cut by the umask
    for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}
