import { l10n, type Uri, window } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import type { ExportFormat, ExportMethod, ExportParams, ExportResult } from "../../shared/export.ts";
import { journalEditor, NO_JOURNAL, UNAVAILABLE } from "../at-cursor.ts";
import { saveAs } from "../save-as.ts";

export const EXPORT_EXERCISE = "daystave.exportExercise";

interface Choice {
  readonly label: string;
  readonly detail: string;
  readonly format: ExportFormat;
  readonly ending: string;
}

const CHOICES: readonly Choice[] = [
  { label: "MIDI", detail: l10n.t("To be played by other programs, as it sounds"), format: "midi", ending: "mid" },
  {
    label: "MusicXML",
    detail: l10n.t("For notation programs, as it is written"),
    format: "musicxml",
    ending: "musicxml",
  },
];

/** Writes the exercise of the entry at the cursor into a file, after asking what kind and where. */
export async function exportExercise(client: BaseLanguageClient): Promise<void> {
  const editor = journalEditor();
  if (!editor) return void window.showInformationMessage(NO_JOURNAL);
  const { document, selection } = editor;
  const choice = await window.showQuickPick(CHOICES, {
    title: l10n.t("Export this exercise"),
    placeHolder: l10n.t("What kind of file?"),
  });
  if (!choice) return;
  const made = await exported(client, document.uri, selection.active.line, choice.format);
  if (!made) return void window.showInformationMessage(UNAVAILABLE);
  if (!made.ok) return void window.showInformationMessage(made.reason);
  const bytes = Uint8Array.from(atob(made.base64), (character) => character.charCodeAt(0));
  await saveAs(bytes, { name: `${made.name}.${choice.ending}`, kind: choice.label, beside: document.uri });
}

async function exported(
  client: BaseLanguageClient,
  document: Uri,
  line: number,
  format: ExportFormat,
): Promise<ExportResult> {
  const method: ExportMethod = "daystave/export";
  const uri = client.code2ProtocolConverter.asUri(document);
  const params: ExportParams = { textDocument: { uri }, position: { line, character: 0 }, format };
  return client.sendRequest<ExportResult>(method, params).catch(() => null); // the client has logged why
}
