import type { BaseLanguageClient } from "vscode-languageclient";
import { runAtCursor } from "../at-cursor.ts";

export const WRITE_NOTES = "daystave.writeNotes";

/** Writes the notes of the entry at the cursor behind its subject. */
export function writeNotes(client: BaseLanguageClient): Promise<void> {
  return runAtCursor(client, "daystave.server.writeNotes");
}
