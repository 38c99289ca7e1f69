import { Range, type TextEditor, Uri, window } from "vscode";
import type { ShowDocumentParams, ShowDocumentRequest } from "vscode-languageclient";

/**
 * Shows a document in the column where it is visible already. The library would open it a second time where the focus
 * is, which may be beside it: the walkthrough takes the focus back after each of its buttons.
 */
export const showDocument: ShowDocumentRequest.MiddlewareSignature = async (params, token, next) => {
  const uri = Uri.parse(params.uri).toString();
  const visible = window.visibleTextEditors.find(({ document }) => document.uri.toString() === uri);
  if (!visible) return next(params, token);
  const isThere = isAt(visible, params) || isTypedOn(visible, params);
  // What this program knows of the cursor is a moment old: put where it is thought to be, it would jump back.
  if (isThere && window.activeTextEditor === visible) return { success: true };
  await window.showTextDocument(visible.document, {
    viewColumn: visible.viewColumn,
    preserveFocus: params.takeFocus === false,
    selection: isThere ? undefined : selectionOf(params),
  });
  return { success: true };
};

/** Whether the cursor is where it is to go: an edit before it has moved it there. */
function isAt({ selection }: TextEditor, { selection: wanted }: ShowDocumentParams): boolean {
  if (!wanted || !selection.isEmpty) return false;
  const { line, character } = selection.active;
  return line === wanted.start.line && character === wanted.start.character;
}

/**
 * Whether somebody types on the line already that the cursor is to go to the beginning of, as an edit has put it under
 * the cursor before this comes: moved back then, the cursor would part a word.
 */
function isTypedOn({ document, selection: { active } }: TextEditor, { selection }: ShowDocumentParams): boolean {
  if (selection?.start.line !== active.line || active.character <= selection.start.character) return false;
  return document.lineAt(active.line).text.slice(0, selection.start.character).trim() === "";
}

/** The protocol counts as the editor does, in UTF-16 columns from 0. */
function selectionOf({ selection }: ShowDocumentParams): Range | undefined {
  if (!selection) return undefined;
  const { start, end } = selection;
  return new Range(start.line, start.character, end.line, end.character);
}
