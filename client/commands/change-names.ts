import { l10n } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import { runWithChoice } from "../choose.ts";

export const CHANGE_NAMES = "daystave.changeNames";

/** Names the notes of the journal in another language, after asking which. */
export function changeNames(client: BaseLanguageClient): Promise<void> {
  return runWithChoice(client, "daystave.server.changeNames", {
    of: "names",
    title: l10n.t("Names of notes in which language?"),
  });
}
