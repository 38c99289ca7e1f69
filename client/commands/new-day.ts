import type { BaseLanguageClient } from "vscode-languageclient";
import { runAtCursor } from "../at-cursor.ts";

export const NEW_DAY = "daystave.newDay";

/** Puts in today's day line, or goes to the end of today. */
export function newDay(client: BaseLanguageClient, uri: unknown): Promise<void> {
  return runAtCursor(client, "daystave.server.newDay", uri);
}
