import type { BaseLanguageClient } from "vscode-languageclient";
import { runAtCursor } from "../at-cursor.ts";

export const NEW_DAY_WITH_PHASES = "daystave.newDayWithPhases";

/** Puts in today's day line with the phases of the last session and their minutes. */
export function newDayWithPhases(client: BaseLanguageClient, uri: unknown): Promise<void> {
  return runAtCursor(client, "daystave.server.newDayWithPhases", uri);
}
