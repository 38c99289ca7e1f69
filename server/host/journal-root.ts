import { MARKER } from "../journal/journal.ts";
import { folderOf, isBelow } from "./uri.ts";

export function isMarker(uri: string): boolean {
  return uri.endsWith(`/${MARKER}`);
}

/** The workspace folder that a file lies in; of nested ones the innermost. */
export function workspaceFolderOf(uri: string, folders: readonly string[]): string | undefined {
  let found: string | undefined;
  for (const folder of folders) {
    if (isBelow(folder, uri) && (found === undefined || folder.length > found.length)) found = folder;
  }
  return found;
}

/**
 * Whether a walk of the workspace folders finds a file: `.practice` files, but none in dot folders and `node_modules`.
 */
export function isWalked(uri: string, folders: readonly string[]): boolean {
  const folder = workspaceFolderOf(uri, folders);
  const inside =
    folder === undefined
      ? []
      : uri
          .slice(folder.length + 1)
          .split("/")
          .slice(0, -1);
  return (
    folder !== undefined &&
    uri.endsWith(".practice") &&
    !inside.some((name) => name.startsWith(".") || name === "node_modules")
  );
}

/**
 * The folders from the one that a file lies in up to its workspace folder, innermost first; none for a file outside.
 */
export function foldersAbove(uri: string, folders: readonly string[]): readonly string[] {
  const top = workspaceFolderOf(uri, folders);
  const above: string[] = [];
  for (let folder = folderOf(uri); top !== undefined && folder !== undefined; folder = folderOf(folder)) {
    above.push(folder);
    if (folder === top) break;
  }
  return above;
}

/**
 * Which journal a file belongs to: that of the nearest marked folder at or above it within its workspace folder, else
 * that of the workspace folder; a file outside every folder stands alone.
 *
 * @param marked the folders that hold a `journal.practice`
 */
export function journalRoot(uri: string, folders: readonly string[], marked: ReadonlySet<string>): string {
  return foldersAbove(uri, folders).find((folder) => marked.has(folder)) ?? workspaceFolderOf(uri, folders) ?? uri;
}
