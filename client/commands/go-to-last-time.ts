import type { BaseLanguageClient } from "vscode-languageclient";
import { runAtCursor } from "../at-cursor.ts";

export const GO_TO_LAST_TIME = "daystave.goToLastTime";

/** Goes to the line where the exercise at the cursor was last played before. */
export function goToLastTime(client: BaseLanguageClient): Promise<void> {
  return runAtCursor(client, "daystave.server.goToLastTime");
}
