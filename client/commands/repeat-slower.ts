import type { BaseLanguageClient } from "vscode-languageclient";
import { runAtCursor } from "../at-cursor.ts";

export const REPEAT_SLOWER = "daystave.repeatSlower";

/** Puts in a copy of the entry at the cursor, a notch slower. */
export function repeatSlower(client: BaseLanguageClient): Promise<void> {
  return runAtCursor(client, "daystave.server.repeatSlower");
}
