import type { BaseLanguageClient } from "vscode-languageclient";
import { runAtCursor } from "../at-cursor.ts";

export const FINGER_CHANGE = "daystave.fingerChange";

/** Puts an entry below the one at the cursor that practises its hardest finger change by itself. */
export function fingerChange(client: BaseLanguageClient): Promise<void> {
  return runAtCursor(client, "daystave.server.fingerChange");
}
