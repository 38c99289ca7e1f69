import { l10n, type TextEditor, Uri, window } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import type { ServerCommand } from "../shared/protocol.ts";

/** Where the server gave no answer. */
export const UNAVAILABLE = l10n.t("Daystave could not do that just now; the output named Daystave says why.");
/** Where no line is meant. */
export const NO_JOURNAL = l10n.t("Open a practice journal first, and put the cursor on the line that is meant.");

/**
 * Lets the server run a command at the cursor of the active editor, or of the one whose title bar was used. The server
 * sends the edit and the place of the cursor by itself, and says so where there is nothing to be done.
 */
export async function runAtCursor(
  client: BaseLanguageClient,
  command: ServerCommand,
  uri?: unknown,
  ...more: readonly (number | string | null)[]
): Promise<void> {
  const editor = journalEditor(uri);
  if (!editor) return void window.showInformationMessage(NO_JOURNAL);
  await runAt(client, command, editor.document.uri, editor.selection.active, ...more);
}

/** Lets the server run a command at a place; `more` is what the command takes besides. */
export async function runAt(
  client: BaseLanguageClient,
  command: ServerCommand,
  uri: Uri,
  { line, character }: { readonly line: number; readonly character: number },
  ...more: readonly (number | string | null)[]
): Promise<void> {
  const at = { textDocument: { uri: client.code2ProtocolConverter.asUri(uri) }, position: { line, character } };
  await client
    .sendRequest("workspace/executeCommand", { command, arguments: [at, ...more] })
    .catch(() => window.showInformationMessage(UNAVAILABLE)); // the client has logged why
}

/**
 * The editor that is meant: the one whose title bar was used, or the active one. While the focus is in no text at all,
 * as in the walkthrough, the journal that is visible, if there is just one.
 */
export function journalEditor(uri?: unknown): TextEditor | undefined {
  const active = window.activeTextEditor;
  const journals = window.visibleTextEditors.filter(({ document }) => document.languageId === "practice-journal");
  if (uri instanceof Uri) {
    const named = journals.filter(({ document }) => document.uri.toString() === uri.toString());
    return named.find((editor) => editor === active) ?? named[0];
  }
  if (active) return journals.find((editor) => editor === active);
  return journals.length === 1 ? journals[0] : undefined;
}
