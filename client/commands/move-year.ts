import { l10n } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import { runWithChoice } from "../choose.ts";

export const MOVE_YEAR = "daystave.moveYear";

/** Moves the days of a year that is over into a file of their own, after asking which year. */
export function moveYear(client: BaseLanguageClient): Promise<void> {
  return runWithChoice(client, "daystave.server.moveYear", { of: "years", title: l10n.t("Move which year?") });
}
