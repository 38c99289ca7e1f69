import { Uri, window, workspace } from "vscode";
import { sampleText } from "../sample-text.ts";
import { localDay } from "../workbench/bring-up-to.mjs";

export const OPEN_SAMPLE = "daystave.openSample";

/**
 * Shows the sample as a text that has no name yet: nothing is written anywhere, and whoever tries things on it keeps it
 * only by saving it. One that is open already, and as it was, is shown again.
 */
export async function openSample(extension: Uri): Promise<void> {
  const read = async (name: string) =>
    new TextDecoder().decode(await workspace.fs.readFile(Uri.joinPath(extension, "samples/quickstart", name)));
  const files = await Promise.all([read("journal.practice"), read("2026-02.practice"), read("week.practice")]);
  const content = sampleText(files, localDay(new Date()));
  const open = workspace.textDocuments.find((each) => each.isUntitled && each.getText() === content);
  await window.showTextDocument(open ?? (await workspace.openTextDocument({ language: "practice-journal", content })));
}
