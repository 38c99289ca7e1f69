import {
  accessSync,
  closeSync,
  constants,
  fchmodSync,
  fchownSync,
  fstatSync,
  fsyncSync,
  openSync,
  readSync,
  realpathSync,
  renameSync,
  rmSync,
  type Stats,
  statSync,
  writeSync,
} from "node:fs";
import { dirname } from "node:path";
import { reasonOf } from "./read-file.ts";
import { temporaryIn } from "./temporary-files.ts";

export type Written = { readonly ok: true } | { readonly ok: false; readonly reason: string };

const BOM = "\uFEFF";
const CHANGED = refused("It changed in the meantime, so it was left alone.");

/**
 * Replaces a file's text in one step: a new file is written beside it and takes its name, so that a crash leaves either
 * the old text or the new. A link stays a link, and the file keeps its owner and permissions. Where that cannot be, or
 * the file is read-only or has a second name, it is left alone.
 *
 * @param before what was read, by `readFileText`; when the file no longer holds exactly that, nothing is written
 */
export function writeByRename(
  path: string,
  before: { readonly text: string; readonly bom: boolean },
  text: string,
): Written {
  try {
    const place = realpathSync(path);
    const refusal = refusalFor(place, statSync(place));
    return refusal ?? replace(place, bytesOf(before.text, before.bom), bytesOf(text, before.bom));
  } catch (error) {
    return refused(reasonOf(error));
  }
}

function refused(reason: string): Written {
  return { ok: false, reason };
}

function bytesOf(text: string, bom: boolean): Buffer {
  return Buffer.from(bom ? BOM + text : text, "utf8");
}

/** Why a file is not written though it could be replaced; undefined where nothing speaks against it. */
function refusalFor(place: string, { mode, nlink, uid }: Stats): Written | undefined {
  const isOwner = process.getuid?.() === uid;
  // Also for who may write everywhere: somebody meant it to stay as it is.
  if ((mode & (isOwner ? 0o200 : 0o222)) === 0) return refused("It is read-only.");
  accessSync(place, constants.W_OK);
  if (nlink > 1) return refused("It has a second name (a hard link), under which the old text would stay.");
  return undefined;
}

/** Nobody can lock a file here. So it is compared last of all, and once more when it has been replaced. */
function replace(place: string, before: Buffer, after: Buffer): Written {
  const old = openSync(place, "r");
  const temporary = temporaryIn(dirname(place));
  try {
    const refusal = writeNew(temporary, after, fstatSync(old));
    if (refusal) return refusal;
    if (!bytesIn(old).equals(before) || statSync(place).ino !== fstatSync(old).ino) return CHANGED;
    renameSync(temporary, place);
    const since = bytesIn(old);
    if (since.equals(before)) return { ok: true };
    const theirs = writeNew(temporary, since, fstatSync(old));
    if (!theirs) renameSync(temporary, place);
    return theirs ?? CHANGED;
  } finally {
    closeSync(old);
    rmSync(temporary, { force: true });
  }
}

function bytesIn(file: number): Buffer {
  const bytes = Buffer.alloc(fstatSync(file).size);
  let at = 0;
  for (let read = -1; read !== 0 && at < bytes.length; at += read)
    read = readSync(file, bytes, at, bytes.length - at, at);
  return bytes.subarray(0, at);
}

/** Writes a file that is not there yet, to belong to whom another belongs, with the same permissions. */
function writeNew(path: string, bytes: Buffer, { mode, uid, gid }: Stats): Written | undefined {
  const file = openSync(path, "wx", 0o600);
  try {
    const own = fstatSync(file);
    if ((own.uid !== uid || own.gid !== gid) && !isGiven(file, uid, gid))
      return refused("It belongs to another user or group, and would become yours.");
    fchmodSync(file, mode); // last, as a new owner takes some permissions away
    for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
    fsyncSync(file);
    return undefined;
  } finally {
    closeSync(file);
  }
}

function isGiven(file: number, uid: number, gid: number): boolean {
  try {
    fchownSync(file, uid, gid);
    return true;
  } catch {
    return false;
  }
}
