import { l10n, Uri, window } from "vscode";
import { journalEditor } from "../at-cursor.ts";
import type { PreviewPanels } from "../preview/panels.ts";
import { revealLine } from "../preview/reveal-line.ts";

export const SHOW_PREVIEW = "daystave.showPreview";

/**
 * Shows the figures of the active document's journal at the side, or of the document whose title bar was used. From
 * above an entry, with its address and line, the cursor goes there, so that the preview has its exercise in sight.
 */
export async function showPreview(panels: PreviewPanels, uri: unknown, line?: unknown): Promise<void> {
  if (typeof uri === "string" && typeof line === "number") {
    const document = Uri.parse(uri);
    await revealLine(document, line);
    return panels.showCursor(document);
  }
  const document = uri instanceof Uri ? uri : (window.activeTextEditor ?? journalEditor())?.document.uri;
  if (document) await panels.show(document);
  else
    await window.showInformationMessage(
      l10n.t("Open a practice journal first: the preview shows how its exercises have gone."),
    );
}
