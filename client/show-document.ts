import { Range, Uri, window } from "vscode";
import type { ShowDocumentParams, ShowDocumentRequest } from "vscode-languageclient";

/**
 * Shows a document in the column where it is visible already. The library would open it a second time where the focus
 * is, which may be beside it: the walkthrough takes the focus back after each of its buttons.
 */
export const showDocument: ShowDocumentRequest.MiddlewareSignature = async (params, token, next) => {
  const uri = Uri.parse(params.uri).toString();
  const visible = window.visibleTextEditors.find(({ document }) => document.uri.toString() === uri);
  if (!visible) return next(params, token);
  await window.showTextDocument(visible.document, {
    viewColumn: visible.viewColumn,
    preserveFocus: params.takeFocus === false,
    selection: selectionOf(params),
  });
  return { success: true };
};

/** The protocol counts as the editor does, in UTF-16 columns from 0. */
function selectionOf({ selection }: ShowDocumentParams): Range | undefined {
  if (!selection) return undefined;
  const { start, end } = selection;
  return new Range(start.line, start.character, end.line, end.character);
}
