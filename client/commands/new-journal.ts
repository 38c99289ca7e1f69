import { window, workspace } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import { runAt } from "../at-cursor.ts";

export const NEW_JOURNAL = "daystave.newJournal";

/** Begins a journal in a file that has no name yet, with today's day line. */
export async function newJournal(client: BaseLanguageClient): Promise<void> {
  const document = await workspace.openTextDocument({ language: "practice-journal" });
  await window.showTextDocument(document);
  await runAt(client, "daystave.server.newDay", document.uri, { line: 0, character: 0 });
}
