import { l10n, Selection, type TextDocument, type Uri, ViewColumn, window, workspace } from "vscode";

const GONE = l10n.t("The file of that line cannot be opened: it may have been moved or deleted.");

/** Takes the reader of a page to a line of a journal, in the editor that shows it or in the first column. */
export async function revealLine(uri: Uri, line: number): Promise<void> {
  const open = window.visibleTextEditors.find((editor) => editor.document.uri.toString() === uri.toString());
  const document = open?.document ?? (await openDocument(uri));
  if (!document) return void window.showInformationMessage(GONE);
  const { range } = document.lineAt(Math.min(line, document.lineCount - 1));
  await window.showTextDocument(document, {
    viewColumn: open?.viewColumn ?? ViewColumn.One,
    selection: new Selection(range.start, range.start),
  });
}

/** Undefined for a file that is gone: the page may not have followed yet. */
async function openDocument(uri: Uri): Promise<TextDocument | undefined> {
  try {
    return await workspace.openTextDocument(uri);
  } catch {
    return undefined;
  }
}
