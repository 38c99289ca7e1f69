import { closeSync, fsyncSync, linkSync, openSync, rmSync, writeSync } from "node:fs";
import { dirname } from "node:path";
import { reasonOf } from "./read-file.ts";
import { temporaryIn } from "./temporary-files.ts";
import type { Written } from "./write-file.ts";

/** Where a file system has no links, a new file is written in its place. */
const NO_LINKS = ["EPERM", "ENOSYS", "ENOTSUP", "EOPNOTSUPP"];

/**
 * Makes a file in one step, so that a crash leaves either nothing or the whole text; never in the place of another one,
 * also of one that comes at the same moment.
 */
export function createFile(path: string, text: string): Written {
  const temporary = temporaryIn(dirname(path));
  try {
    writeWhole(temporary, text);
    try {
      linkSync(temporary, path);
    } catch (error) {
      if (!NO_LINKS.includes((error as NodeJS.ErrnoException).code ?? "")) throw error;
      writeWhole(path, text);
    }
    return { ok: true };
  } catch (error) {
    return { ok: false, reason: reasonOf(error) };
  } finally {
    rmSync(temporary, { force: true });
  }
}

/** A file that is not there yet. */
function writeWhole(path: string, text: string): void {
  const file = openSync(path, "wx");
  try {
    const bytes = Buffer.from(text, "utf8");
    for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
    fsyncSync(file);
  } catch (error) {
    rmSync(path, { force: true });
    throw error;
  } finally {
    closeSync(file);
  }
}
