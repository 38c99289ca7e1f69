import type { BaseLanguageClient } from "vscode-languageclient";
import { runAtCursor } from "../at-cursor.ts";

export const ISOLATE_STEP = "daystave.isolateStep";

/** Puts an entry below the one at the cursor that practises its hardest step by itself. */
export function isolateStep(client: BaseLanguageClient): Promise<void> {
  return runAtCursor(client, "daystave.server.isolateStep");
}
