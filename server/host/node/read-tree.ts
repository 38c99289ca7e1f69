import { type Dirent, readdirSync, realpathSync, statSync } from "node:fs";
import { join } from "node:path";
import { reasonOf } from "./read-file.ts";

export type TreeStep =
  /** `real` is its path without links. */
  | { readonly type: "file"; readonly path: string; readonly real: string }
  /** A folder was read: a good moment to let others have a turn. */
  | { readonly type: "folder"; readonly path: string }
  | { readonly type: "unreadable"; readonly path: string; readonly reason: string };

/**
 * Walks a folder for `.practice` files, in the order of their names, without dot folders and `node_modules`. Links are
 * followed once everything that is no link was seen, and never to a place that was seen already: so loops end, and a
 * file that is also linked to is met once, under its own path.
 */
export function* readTree(folder: string): Generator<TreeStep, void, undefined> {
  const seen = new Set<string>();
  const links: string[] = [];
  yield* readFolder(folder, seen, links);
  for (let link = links.shift(); link !== undefined; link = links.shift()) yield* followLink(link, seen, links);
}

function* readFolder(folder: string, seen: Set<string>, links: string[]): Generator<TreeStep, void, undefined> {
  let place: string;
  let entries: Dirent[];
  try {
    place = realpathSync(folder);
    if (seen.has(place)) return;
    seen.add(place);
    entries = readdirSync(folder, { withFileTypes: true });
  } catch (error) {
    yield { type: "unreadable", path: folder, reason: reasonOf(error) };
    return;
  }
  entries.sort((a, b) => (a.name < b.name ? -1 : 1));
  yield { type: "folder", path: folder };
  for (const entry of entries) {
    const path = join(folder, entry.name);
    if (entry.isSymbolicLink()) {
      if (isWantedFolder(entry.name) || isPractice(entry.name)) links.push(path);
    } else if (entry.isDirectory()) {
      if (isWantedFolder(entry.name)) yield* readFolder(path, seen, links);
    } else if (entry.isFile() && isPractice(entry.name)) {
      const real = join(place, entry.name);
      seen.add(real);
      yield { type: "file", path, real };
    }
  }
}

function* followLink(link: string, seen: Set<string>, links: string[]): Generator<TreeStep, void, undefined> {
  try {
    const target = statSync(link);
    const place = realpathSync(link);
    if (seen.has(place)) return;
    if (target.isDirectory()) {
      yield* readFolder(link, seen, links);
    } else if (target.isFile() && isPractice(link)) {
      seen.add(place);
      yield { type: "file", path: link, real: place };
    }
  } catch (error) {
    if (isPractice(link)) yield { type: "unreadable", path: link, reason: reasonOf(error) };
  }
}

function isWantedFolder(name: string): boolean {
  return !name.startsWith(".") && name !== "node_modules";
}

function isPractice(name: string): boolean {
  return name.endsWith(".practice");
}
