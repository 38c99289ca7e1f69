import type { BaseLanguageClient } from "vscode-languageclient";
import { runAtCursor } from "../at-cursor.ts";

export const KEEP_BOTH_SIDES = "daystave.keepBothSides";

/** Settles every conflict of the file, so that no line of either side is lost. */
export function keepBothSides(client: BaseLanguageClient): Promise<void> {
  return runAtCursor(client, "daystave.server.keepBothSides");
}
