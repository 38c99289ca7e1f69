import type { CodeAction, CodeActionParams } from "vscode-languageserver";
import { codeActionsIn } from "../features/code-actions.ts";
import { diagnostic, textEdit } from "./convert.ts";
import type { Place } from "./session.ts";
import { workspaceEdit } from "./workspace-edit.ts";

export function codeActions(
  { session, journal, uri }: Place,
  { range, context, textDocument }: CodeActionParams,
): CodeAction[] {
  if (!session.client.takesCodeActions) return []; // older clients take commands alone, and we have none
  return codeActionsIn(journal, uri, range, session.dayOf(uri), context.only).map((action) => ({
    title: action.title,
    kind: action.kind,
    isPreferred: action.preferred,
    diagnostics: action.diagnostics.map(diagnostic),
    edit: workspaceEdit(session, uri, textDocument.uri, action.edits.map(textEdit)),
  }));
}
