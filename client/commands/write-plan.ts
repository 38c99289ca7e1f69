import { type ExtensionContext, l10n, window } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import type { PlanMinutesMethod, PlanMinutesResult } from "../../shared/protocol.ts";
import { journalEditor, runAtCursor } from "../at-cursor.ts";

export const WRITE_PLAN = "daystave.writePlan";

/** Under it the last answer is kept, for the next time. */
const KEPT = "planMinutes";

const MOST = 600;
const WRONG = l10n.t("A whole number of minutes, up to {0}.", MOST);

/** Writes a plan for today into the journal, after asking once how long it is for. */
export async function writePlan(
  client: BaseLanguageClient,
  { workspaceState }: Pick<ExtensionContext, "workspaceState">,
  uri?: unknown,
): Promise<void> {
  const editor = journalEditor(uri);
  const usual = editor ? await usualMinutes(client, client.code2ProtocolConverter.asUri(editor.document.uri)) : null;
  if (usual === null) return runAtCursor(client, "daystave.server.writePlan", uri); // which says why, or goes there
  const answer = await window.showInputBox({
    title: l10n.t("Today's plan"),
    prompt: l10n.t("How many minutes do you have?"),
    value: String(workspaceState.get<number>(KEPT) ?? usual),
    validateInput: (text) => (minutesIn(text) === undefined ? WRONG : undefined),
  });
  const minutes = answer === undefined ? undefined : minutesIn(answer);
  if (minutes === undefined) return;
  void workspaceState.update(KEPT, minutes);
  await runAtCursor(client, "daystave.server.writePlan", editor?.document.uri, minutes);
}

/** Null where there is nothing to ask, and where the server cannot say: the client has logged why. */
async function usualMinutes(client: BaseLanguageClient, uri: string): Promise<PlanMinutesResult> {
  const method: PlanMinutesMethod = "daystave/planMinutes";
  return client.sendRequest<PlanMinutesResult>(method, { textDocument: { uri } }).catch(() => null);
}

/** `45`, and `45 min` as the journal writes it; with the German word too, as the question is. */
function minutesIn(text: string): number | undefined {
  const digits = /^\s*(\d{1,3})(?:\s*(?:min|minutes|minuten))?\s*$/i.exec(text)?.[1];
  const minutes = Number(digits ?? 0);
  return minutes >= 1 && minutes <= MOST ? minutes : undefined;
}
