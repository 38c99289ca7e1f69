/**
 * One spelling for every way to write the same URI, so that a file named by the editor and the same file found by a
 * walk are one key: lower-case scheme, authority and drive letter, and a path in which all but `A-Z a-z 0-9 - . _ ~ /`
 * is percent-encoded. What is no URI stays as it is.
 */
export function canonicalUri(uri: string): string {
  const match = /^([a-z][a-z0-9+.-]*):(\/\/[^/?#]*)?([^?#]*)(.*)$/is.exec(uri);
  if (!match) return uri;
  const [, scheme, authority = "", path, rest] = match;
  const segments = path!.split("/").map((segment) => encode(decode(segment)));
  const spelled = segments.join("/").replace(/^\/[A-Z](?=%3A)/, (drive) => drive.toLowerCase());
  return `${scheme!.toLowerCase()}:${authority.toLowerCase()}${spelled}${rest}`;
}

/** Whether every `%` of a URI begins a sign that it encodes (RFC 3986, 2.1, and UTF-8). */
export function isDecodable(uri: string): boolean {
  try {
    decodeURIComponent(uri);
    return true;
  } catch {
    return false;
  }
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

/** Whether a file or folder lies below one of some folders: of thousands none is looked at but those above it. */
export function isBelowAny(folders: ReadonlySet<string>, uri: string): boolean {
  for (let folder = folderOf(uri); folder !== undefined; folder = folderOf(folder))
    if (folders.has(folder)) return true;
  return false;
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
