import type { Connection } from "vscode-languageserver";
import type { FilesMethod, FilesParams } from "../../shared/protocol.ts";
import type { FileReader, FileText } from "../host/file-reader.ts";
import { canonicalUri } from "../host/uri.ts";

/** Files that only the client can reach, asked for by `daystave/files`. */
export function clientReader(connection: Connection): FileReader {
  const method: FilesMethod = "daystave/files";
  const ask = (params: FilesParams): Promise<unknown> => connection.sendRequest(method, params);
  return {
    async list(uri) {
      const answer = await ask({ kind: "list", uri }).catch(() => undefined);
      const uris = (answer as { uris?: unknown } | null | undefined)?.uris;
      return Array.isArray(uris) ? uris.filter((each) => typeof each === "string").map(canonicalUri) : [];
    },
    async read(uri): Promise<FileText> {
      const answer = await ask({ kind: "read", uri }).catch(() => undefined);
      const text = (answer as { text?: unknown } | null | undefined)?.text;
      return typeof text === "string"
        ? { ok: true, text, bom: false }
        : { ok: false, reason: "The editor has no such file, or it is not UTF-8 text." };
    },
  };
}

/** For a client that reads nothing: only what it opens exists. */
export const noReader: FileReader = {
  list: async () => [],
  read: async () => ({ ok: false, reason: "This editor gives the server no way to read it." }),
};

/** The server's own way for `file:`, the client's for everything else. */
export function readerByScheme(own: FileReader | undefined, client: FileReader): FileReader {
  const readerOf = (uri: string) => (own && uri.startsWith("file:") ? own : client);
  return {
    list: (folder, signal) => readerOf(folder).list(folder, signal),
    read: (uri) => readerOf(uri).read(uri),
  };
}
