import type { TextEdit, WorkspaceEdit } from "vscode-languageserver";
import type { Session } from "./session.ts";

/**
 * Edits of one file, with the document's version where the client takes that: then an edit made meanwhile cannot be
 * overwritten.
 *
 * @param key canonical
 * @param uri as the editor spells it
 */
export function workspaceEdit(
  { client, workspace }: Session,
  key: string,
  uri: string,
  edits: TextEdit[],
): WorkspaceEdit {
  const version = workspace.openDocument(key)?.version ?? null;
  return client.takesVersionedEdits
    ? { documentChanges: [{ textDocument: { uri, version }, edits }] }
    : { changes: { [uri]: edits } };
}
