/** The name of the file that marks the top folder of a journal. */
export const MARKER = "journal.practice";

/**
 * One spelling for every way to write the same URI, so that a file named by the editor and the same file found by a walk
 * are one key: lower-case scheme, authority and drive letter, and a path in which all but `A-Z a-z 0-9 - . _ ~ /` is
 * percent-encoded. What is no URI stays as it is.
 */
export function canonicalUri(uri: string): string {
  const match = /^([a-z][a-z0-9+.-]*):(\/\/[^/?#]*)?([^?#]*)(.*)$/is.exec(uri);
  if (!match) return uri;
  const [, scheme, authority = "", path, rest] = match;
  const segments = path!.split("/").map((segment) => encode(decode(segment)));
  const spelled = segments.join("/").replace(/^\/[A-Z](?=%3A)/, (drive) => drive.toLowerCase());
  return `${scheme!.toLowerCase()}:${authority.toLowerCase()}${spelled}${rest}`;
}

/** A folder's canonical URI, without the slash at its end. */
export function canonicalFolder(uri: string): string {
  return canonicalUri(uri).replace(/\/+$/, "");
}

/** The folder that a file or folder lies in, both canonical; undefined at the top. */
export function folderOf(uri: string): string | undefined {
  const end = uri.lastIndexOf("/");
  return end > 0 && uri[end - 1] !== "/" ? uri.slice(0, end) : undefined;
}

/** Whether a file or folder lies below a folder, at any depth. */
export function isBelow(folder: string, uri: string): boolean {
  return uri.startsWith(`${folder}/`);
}

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

/** Whether a walk of the workspace folders finds a file: `.practice` files, but none in dot folders and `node_modules`. */
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

/** The folders from the one that a file lies in up to its workspace folder, innermost first; none for a file outside. */
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

function encode(text: string): string {
  return encodeURIComponent(text).replace(/[!'()*]/g, (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`);
}

function decode(segment: string): string {
  try {
    return decodeURIComponent(segment);
  } catch {
    return segment;
  }
}
