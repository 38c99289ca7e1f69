import type { BaseLanguageClient } from "vscode-languageclient";
import { runAtCursor } from "../at-cursor.ts";

export const REPEAT_FASTER = "daystave.repeatFaster";

/** Puts in a copy of the entry at the cursor, a notch faster. */
export function repeatFaster(client: BaseLanguageClient): Promise<void> {
  return runAtCursor(client, "daystave.server.repeatFaster");
}
