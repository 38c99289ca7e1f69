import { readdirSync, statSync } from "node:fs";
import { basename, dirname, join, relative, resolve, sep } from "node:path";
import { reasonOf } from "../host/node/read-file.ts";
import { readTree } from "../host/node/read-tree.ts";
import { nearest, offer } from "./nearest.ts";
import { printable } from "./printable.ts";

export const STANDARD_INPUT = "-";

/** A file that the user named, or that lies in a folder that the user named. */
export interface FoundFile {
  /** As the user would write it: relative where the argument was. */
  readonly path: string;
  /** Absolute; undefined for standard input. */
  readonly place?: string;
  /** The folder that was searched for it, absolute, and its path without links where that is known by the search. */
  readonly searched?: string;
  readonly real?: string;
}

/** What was left out, and why. */
export interface Skipped {
  readonly path: string;
  readonly reason: string;
}

export type FoundFiles =
  | {
      readonly ok: true;
      readonly files: readonly FoundFile[];
      readonly skipped: readonly Skipped[];
      /** One of those left out is a folder that was named itself. */
      readonly unread: boolean;
    }
  | { readonly ok: false; readonly reason: string };

/** The files that PATH arguments mean, in their order; no argument is the current folder. */
export function findFiles(paths: readonly string[], cwd: string): FoundFiles {
  const files: FoundFile[] = [];
  const skipped: Skipped[] = [];
  const named = paths.length > 0 ? paths : ["."];
  for (const path of named) {
    if (path === STANDARD_INPUT) {
      files.push({ path });
      continue;
    }
    const place = resolve(cwd, path);
    const kind = kindOf(place);
    if (!kind.ok) return { ok: false, reason: `${printable(path)}: ${kind.reason}${offer(nearPath(path, cwd))}` };
    if (kind.isFolder) searchFolder(path, place, files, skipped);
    else files.push({ path, place });
  }
  return { ok: true, files, skipped, unread: skipped.some(({ path }) => named.includes(path)) };
}

function searchFolder(path: string, searched: string, files: FoundFile[], skipped: Skipped[]): void {
  const shown = (place: string) => shownBelow(path, relative(searched, place));
  for (const step of readTree(searched)) {
    if (step.type === "file") files.push({ path: shown(step.path), place: step.path, searched, real: step.real });
    if (step.type === "unreadable") skipped.push({ path: shown(step.path), reason: step.reason });
  }
}

/** `sub/` and `a.practice` are `sub/a.practice`; below the current folder the name alone does. */
function shownBelow(folder: string, name: string): string {
  if (name === "") return folder;
  if (folder === ".") return name;
  return folder.endsWith("/") || folder.endsWith(sep) ? folder + name : folder + sep + name;
}

/** The path with its last part as a journal's file or folder beside it has it, where one is named almost so. */
function nearPath(path: string, cwd: string): string | undefined {
  const folder = dirname(path);
  const near = nearest(basename(path), namesIn(resolve(cwd, folder)));
  return near && (folder === "." ? near : join(folder, near));
}

/** What a PATH could name in a folder; nothing where it cannot be read. */
function namesIn(folder: string): readonly string[] {
  try {
    const entries = readdirSync(folder, { withFileTypes: true });
    return entries
      .filter((entry) => entry.isDirectory() || entry.name.endsWith(".practice"))
      .map(({ name }) => name)
      .sort();
  } catch {
    return [];
  }
}

type Kind = { readonly ok: true; readonly isFolder: boolean } | { readonly ok: false; readonly reason: string };

function kindOf(place: string): Kind {
  try {
    return { ok: true, isFolder: statSync(place).isDirectory() };
  } catch (error) {
    return { ok: false, reason: reasonOf(error) };
  }
}
