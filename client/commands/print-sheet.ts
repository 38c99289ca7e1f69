import { env, l10n, window } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import type { SheetMethod, SheetParams, SheetResult } from "../../shared/export.ts";
import { journalEditor, NO_JOURNAL, UNAVAILABLE } from "../at-cursor.ts";
import { saveAs } from "../save-as.ts";

export const PRINT_SHEET = "daystave.printSheet";

const CHOICES: readonly { readonly label: string; readonly detail: string; readonly of: SheetParams["of"] }[] = [
  { label: l10n.t("Today"), detail: l10n.t("What is planned, or else a plan"), of: "plan" },
  { label: l10n.t("This Week"), detail: l10n.t("Every exercise of the week, once"), of: "week" },
];

const OPEN = l10n.t("Open in Browser");

/** Saves a page with staves for the music stand, after asking of what, and offers to open it where one can print. */
export async function printSheet(client: BaseLanguageClient): Promise<void> {
  const editor = journalEditor();
  if (!editor) return void window.showInformationMessage(NO_JOURNAL);
  const { uri } = editor.document;
  const choice = await window.showQuickPick(CHOICES, {
    title: l10n.t("A sheet to print"),
    placeHolder: l10n.t("Of what?"),
  });
  if (!choice) return;
  const method: SheetMethod = "daystave/sheet";
  const params: SheetParams = { textDocument: { uri: client.code2ProtocolConverter.asUri(uri) }, of: choice.of };
  const made = await client.sendRequest<SheetResult>(method, params).catch(() => null); // the client has logged why
  if (!made) return void window.showInformationMessage(UNAVAILABLE);
  const page = new TextEncoder().encode(made.html);
  const saved = await saveAs(page, { name: `${made.name}.html`, kind: "HTML", beside: uri });
  if (saved?.scheme !== "file") return;
  const answer = await window.showInformationMessage(l10n.t("The sheet is saved. Print it from a browser."), OPEN);
  if (answer === OPEN) await env.openExternal(saved);
}
