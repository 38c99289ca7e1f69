import { type Disposable, FileType, Uri, workspace } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import type { FilesMethod, FilesParams, FilesResult } from "../shared/protocol.ts";
import { type FolderEntry, journalText, walkJournals } from "./journal-walk.ts";

/** Lists and reads journals for the server, on every file system that the editor knows. */
export function answerFiles(client: BaseLanguageClient): Disposable {
  const method: FilesMethod = "daystave/files";
  return client.onRequest<FilesResult, void>(method, async ({ kind, uri }: FilesParams): Promise<FilesResult> => {
    return kind === "list" ? { uris: await list(Uri.parse(uri, true)) } : { text: await read(Uri.parse(uri, true)) };
  });
}

/** By walking: `workspace.findFiles` never settles on a virtual folder without a search provider. */
async function list(folder: Uri): Promise<string[]> {
  const found = await walkJournals(folder, { entries, join: (parent, name) => Uri.joinPath(parent, name) });
  return found.map((uri) => uri.toString()).sort();
}

async function entries(folder: Uri): Promise<FolderEntry[]> {
  try {
    const held = await workspace.fs.readDirectory(folder);
    return held.map(([name, type]) => ({
      name,
      isFolder: type === FileType.Directory,
      isFile: (type & FileType.File) !== 0,
    }));
  } catch {
    return []; // gone or not to be read: as good as empty
  }
}

async function read(uri: Uri): Promise<string | null> {
  try {
    return journalText(await workspace.fs.readFile(uri));
  } catch {
    return null; // gone or not to be read
  }
}
