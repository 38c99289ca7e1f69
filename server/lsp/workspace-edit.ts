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

/** A new file with its text, and edits of others; nothing of it is done where the file is there by then. */
export function workspaceEditWith(
  session: Session,
  created: { readonly uri: string; readonly text: string },
  files: readonly FileEdits[],
): WorkspaceEdit {
  const { uri, text } = created;
  const start = { line: 0, character: 0 };
  return {
    documentChanges: [
      { kind: "create", uri, options: { overwrite: false, ignoreIfExists: false } },
      { textDocument: { uri, version: null }, edits: [{ range: { start, end: start }, newText: text }] },
      ...(workspaceEditOf(session, files).documentChanges ?? []),
    ],
  };
}
