import type { BaseLanguageClient } from "vscode-languageclient";
import { runAtCursor } from "../at-cursor.ts";

export const RESPELL = "daystave.respell";

/** Spells the entry at the cursor otherwise, so that it sounds the same. */
export function respell(client: BaseLanguageClient): Promise<void> {
  return runAtCursor(client, "daystave.server.respell");
}
