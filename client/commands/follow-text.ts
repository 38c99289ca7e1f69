import type { PreviewPanels } from "../preview/panels.ts";

export const FOLLOW_TEXT = "daystave.followText";

/** In the preview's own menu: it follows the journal in the editor again. */
export function followText(panels: PreviewPanels): void {
  panels.stay(false);
}
