import type { Disposable } from "vscode-languageserver";
import type { ChangedMethod, ChangedParams, PreviewParams, PreviewResult } from "../../shared/protocol.ts";
import { previewRows } from "../features/preview.ts";
import { collectQuietly } from "./quiet.ts";
import type { Place, Session } from "./session.ts";

/** How long nobody must have typed before a preview is told, in milliseconds. */
const QUIET = 150;

export function preview({ session, journal }: Place, { version }: PreviewParams): PreviewResult {
  const now = session.workspace.versionOf(journal.root);
  if (version === now) return { unchanged: true };
  return { journal: journal.root, version: now, rows: previewRows(journal) };
}

/** For a document that nobody knows. */
export function emptyPreview(uri: string): PreviewResult {
  return { journal: uri, version: 0, rows: [] };
}

/** Tells the client which journals changed. Only a client that has asked for a preview knows what that means. */
export function announceChanges({ connection, workspace, onChange }: Session): Disposable {
  const method: ChangedMethod = "daystave/changed";
  return collectQuietly(onChange, QUIET, ({ journals }) => {
    for (const journal of journals) {
      const params: ChangedParams = { journal, version: workspace.versionOf(journal) };
      connection.sendNotification(method, params);
    }
  });
}
