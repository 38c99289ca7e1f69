import {
  closeSync,
  fsyncSync,
  linkSync,
  lstatSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from "node:fs";
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
export function createFile(path: string, content: string | Uint8Array): Written {
  return throughTemporary(path, content, (temporary) => {
    try {
      linkSync(temporary, path);
    } catch (error) {
      if (!NO_LINKS.includes((error as NodeJS.ErrnoException).code ?? "")) throw error;
      writeWhole(path, content);
    }
  });
}

/** Makes a file in one step, in the place of another where there is one. A link stays a link. */
export function putFile(path: string, content: Uint8Array): Written {
  const there = lstatSync(path, { throwIfNoEntry: false });
  const place = there ? realpathSync(path) : path;
  const file = there && statSync(place);
  if (file && !file.isFile()) return { ok: false, reason: "It is not a file." };
  // Also for who may write everywhere: somebody meant it to stay as it is.
  if (file && (file.mode & 0o222) === 0) return { ok: false, reason: "It is read-only." };
  return throughTemporary(place, content, (temporary) => renameSync(temporary, place));
}

function throughTemporary(path: string, content: string | Uint8Array, moved: (temporary: string) => void): Written {
  const temporary = temporaryIn(dirname(path));
  try {
    writeWhole(temporary, content);
    moved(temporary);
    return { ok: true };
  } catch (error) {
    return { ok: false, reason: reasonOf(error) };
  } finally {
    rmSync(temporary, { force: true });
  }
}

/** A file that is not there yet. */
function writeWhole(path: string, content: string | Uint8Array): void {
  const file = openSync(path, "wx");
  try {
    const bytes = Buffer.from(content);
    for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
    fsyncSync(file);
  } catch (error) {
    rmSync(path, { force: true });
    throw error;
  } finally {
    closeSync(file);
  }
}
