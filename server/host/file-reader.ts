/** A file's text without its byte order mark, or why it is no text. */
export type FileText =
  | { readonly ok: true; readonly text: string; readonly bom: boolean }
  | { readonly ok: false; readonly reason: string };

/** How the server reaches files that no editor holds open. URIs are canonical. */
export interface FileReader {
  /**
   * Every `.practice` file below a folder, without dot folders and `node_modules`. An unreadable folder is an empty
   * one.
   */
  list(folder: string, signal: AbortSignal): Promise<readonly string[]>;
  read(uri: string): Promise<FileText>;
}

/** As many bytes as are looked at to tell a binary file by its NUL. */
const LOOKED_AT = 8000;

/** Tells text from what is none: a NUL among the first 8,000 bytes, or bytes that are not UTF-8. */
export function decodeText(bytes: Uint8Array): FileText {
  const other = otherEncoding(bytes);
  if (other !== undefined) return { ok: false, reason: `It is ${other} text. Save it again with the encoding UTF-8.` };
  if (bytes.subarray(0, LOOKED_AT).includes(0))
    return { ok: false, reason: "It is a binary file: it contains a NUL character." };
  const bom = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  try {
    return { ok: true, text: new TextDecoder("utf-8", { fatal: true }).decode(bytes), bom };
  } catch {
    return { ok: false, reason: "It is not UTF-8 text. Save it again with the encoding UTF-8." };
  }
}

/**
 * The encoding of a text in 16 or 32 bits a unit, by its byte order mark (The Unicode Standard, 23.8), or where it has
 * none by the NUL in nearly every second place: the letters, digits and signs of a journal are below U+0100.
 */
function otherEncoding(bytes: Uint8Array): string | undefined {
  const [a, b, c, d] = bytes;
  if (a === 0xff && b === 0xfe) return c === 0 && d === 0 ? "UTF-32" : "UTF-16";
  if (a === 0xfe && b === 0xff) return "UTF-16";
  if (a === 0 && b === 0 && c === 0xfe && d === 0xff) return "UTF-32";
  const units = Math.floor(Math.min(bytes.length, LOOKED_AT) / 2);
  const nuls = [0, 0];
  for (let i = 0; i < units * 2; i++) if (bytes[i] === 0) nuls[i % 2]!++;
  const [most, least] = [Math.max(...nuls), Math.min(...nuls)];
  return units > 1 && most >= units * MOSTLY && least === 0 ? "UTF-16" : undefined;
}

/** A binary file seldom has so many of its NULs in every second place, and none in the others. */
const MOSTLY = 0.7;
