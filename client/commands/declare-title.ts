import type { BaseLanguageClient } from "vscode-languageclient";
import { runAtCursor } from "../at-cursor.ts";

export const DECLARE_TITLE = "daystave.declareTitle";

/** Declares the title of the piece at the cursor. */
export function declareTitle(client: BaseLanguageClient): Promise<void> {
  return runAtCursor(client, "daystave.server.declareTitle");
}
