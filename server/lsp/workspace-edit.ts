import type { TextEdit, WorkspaceEdit } from "vscode-languageserver";
import type { Session } from "./session.ts";

/** Edits of one file. */
export interface FileEdits {
  /** Canonical. */
  readonly key: string;
  /** As the editor spells it. */
  readonly uri: string;
  readonly edits: TextEdit[];
}

/**
 * Edits of one file, with the document's version where the client takes that: then an edit made meanwhile cannot be
 * overwritten.
 *
 * @param key canonical
 * @param uri as the editor spells it
 */
export function workspaceEdit(session: Session, key: string, uri: string, edits: TextEdit[]): WorkspaceEdit {
  return workspaceEditOf(session, [{ key, uri, edits }]);
}

/** The same of several files. */
export function workspaceEditOf({ client, workspace }: Session, files: readonly FileEdits[]): WorkspaceEdit {
  if (!client.takesVersionedEdits) return { changes: Object.fromEntries(files.map(({ uri, edits }) => [uri, edits])) };
  return {
    documentChanges: files.map(({ key, uri, edits }) => ({
      textDocument: { uri, version: workspace.openDocument(key)?.version ?? null },
      edits,
    })),
  };
}
