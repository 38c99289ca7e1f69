import { Uri, window } from "vscode";
import { journalEditor } from "../at-cursor.ts";
import type { PreviewPanels } from "../preview/panels.ts";

export const SHOW_PREVIEW = "daystave.showPreview";

/** Shows the figures of the active document's journal at the side, or of the document whose title bar was used. */
export async function showPreview(panels: PreviewPanels, uri: unknown): Promise<void> {
  const document = uri instanceof Uri ? uri : (window.activeTextEditor ?? journalEditor())?.document.uri;
  if (document) await panels.show(document);
  else
    await window.showInformationMessage(
      "Open a practice journal first: the preview shows how its exercises have gone.",
    );
}
