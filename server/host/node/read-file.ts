import { readFileSync } from "node:fs";
import { decodeText, type FileText } from "../file-reader.ts";

/** Reads a journal's text. Never throws: what cannot be read is a value with its reason. */
export function readFileText(path: string): FileText {
  try {
    return decodeText(readFileSync(path));
  } catch (error) {
    return { ok: false, reason: reasonOf(error) };
  }
}

/** A file system's refusal in plain words. */
export function reasonOf(error: unknown): string {
  const code = (error as NodeJS.ErrnoException).code ?? "";
  return REASONS[code] ?? `It cannot be read or written (${code || String(error)}).`;
}

const REASONS: Readonly<Record<string, string>> = {
  EEXIST: "There is such a file or folder already.",
  ENOENT: "There is no such file or folder.",
  EACCES: "You do not have permission to read or write it.",
  EPERM: "You do not have permission to read or write it.",
  EISDIR: "It is a folder.",
  ENOTDIR: "A part of its path is not a folder.",
  ELOOP: "Its links lead in a circle.",
  ENAMETOOLONG: "Its name is too long.",
  ENOSPC: "The disk is full.",
  EDQUOT: "Your share of the disk is used up.",
  EFBIG: "It is too large.",
  EIO: "The disk reports an error.",
  EROFS: "It is on a read-only disk.",
};
