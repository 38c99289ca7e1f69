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
  if (bytes.subarray(0, LOOKED_AT).includes(0))
    return { ok: false, reason: "It is a binary file: it holds a NUL character." };
  const bom = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  try {
    return { ok: true, text: new TextDecoder("utf-8", { fatal: true }).decode(bytes), bom };
  } catch {
    return { ok: false, reason: "It is not UTF-8 text. Saving it again with the encoding UTF-8 mends that." };
  }
}
