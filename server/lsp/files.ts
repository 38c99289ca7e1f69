import {
  DidChangeWatchedFilesNotification,
  type DidChangeWatchedFilesParams,
  type WorkspaceFoldersChangeEvent,
} from "vscode-languageserver";
import { canonicalFolder, canonicalUri } from "../host/uri.ts";
import { fetchSettings } from "./configuration.ts";
import { register } from "./register.ts";
import type { Session } from "./session.ts";

/**
 * Git and other programs write many files at once: they are looked at together, this many milliseconds after the last.
 */
const QUIET = 30;

/** Asks to be told of changes to files where the client offers that. */
export async function startWatching(session: Session): Promise<void> {
  if (!session.isToldOfFiles) return;
  const watchers = [{ globPattern: "**/*.practice" }];
  session.isToldOfFiles = await register(session.connection, DidChangeWatchedFilesNotification.method, { watchers });
}

/** Gathers the files that changed; reads each once, however often it is named. */
export function changedFiles(
  tell: (what: (session: Session) => void) => void,
): (params: DidChangeWatchedFilesParams) => void {
  const pending = new Set<string>();
  let timer: ReturnType<typeof setTimeout> | undefined;
  return ({ changes }) => {
    for (const { uri } of changes) pending.add(canonicalUri(uri));
    clearTimeout(timer);
    timer = setTimeout(() => {
      const keys = [...pending];
      pending.clear();
      tell(({ workspace }) => workspace.filesChanged(keys));
    }, QUIET);
  };
}

/** Folders were added or removed: their journals come and go, and each has its own settings. */
export async function foldersChanged(session: Session, { added, removed }: WorkspaceFoldersChangeEvent): Promise<void> {
  const { workspace } = session;
  const gone = new Set(removed.map(({ uri }) => canonicalFolder(uri)));
  const kept = workspace.folders.filter((folder) => !gone.has(folder)).map((folder) => workspace.spellingOf(folder));
  session.setFolders([...kept, ...added.map(({ uri }) => uri)]);
  await Promise.all([workspace.walk(), fetchSettings(session)]);
}
