import { window } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import type { Choice, ChoicesMethod, ChoicesParams, ChoicesResult, ServerCommand } from "../shared/protocol.ts";
import { journalEditor, runAtCursor } from "./at-cursor.ts";

/** What is chosen, and the question. */
interface Asked {
  readonly of: ChoicesParams["of"];
  readonly title: string;
}

/**
 * Lets the server run a command on the active journal with one of the choices there are for it. Where there are none it
 * runs without, and says why nothing can be done.
 */
export async function runWithChoice(client: BaseLanguageClient, command: ServerCommand, asked: Asked): Promise<void> {
  const editor = journalEditor();
  const choices = editor
    ? await choicesFor(client, client.code2ProtocolConverter.asUri(editor.document.uri), asked.of)
    : [];
  if (choices.length === 0) return runAtCursor(client, command, editor?.document.uri);
  const chosen = await window.showQuickPick<Choice>(choices, { title: asked.title });
  if (chosen) await runAtCursor(client, command, editor!.document.uri, chosen.value);
}

/** None where the server cannot say: the client has logged why. */
async function choicesFor(client: BaseLanguageClient, uri: string, of: ChoicesParams["of"]): Promise<Choice[]> {
  const method: ChoicesMethod = "daystave/choices";
  const params: ChoicesParams = { textDocument: { uri }, of };
  return [...(await client.sendRequest<ChoicesResult>(method, params).catch(() => []))];
}
