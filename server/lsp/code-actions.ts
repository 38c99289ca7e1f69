import type { CodeAction, CodeActionParams, TextEdit, WorkspaceEdit } from "vscode-languageserver";
import { codeActionsIn } from "../features/code-actions.ts";
import { diagnostic, textEdit } from "./convert.ts";
import type { Place, Session } from "./session.ts";

export function codeActions(
  { session, journal, uri }: Place,
  { range, context, textDocument }: CodeActionParams,
): CodeAction[] {
  if (!session.client.takesCodeActions) return []; // older clients take commands alone, and we have none
  return codeActionsIn(journal, uri, range, session.day, context.only).map((action) => ({
    title: action.title,
    kind: action.kind,
    isPreferred: action.preferred,
    diagnostics: action.diagnostics.map(diagnostic),
    edit: workspaceEdit(session, uri, textDocument.uri, action.edits.map(textEdit)),
  }));
}

/** With the document's version where the client takes that: then an edit made meanwhile cannot be overwritten. */
function workspaceEdit({ client, workspace }: Session, key: string, uri: string, edits: TextEdit[]): WorkspaceEdit {
  const version = workspace.openDocument(key)?.version ?? null;
  return client.takesVersionedEdits
    ? { documentChanges: [{ textDocument: { uri, version }, edits }] }
    : { changes: { [uri]: edits } };
}
