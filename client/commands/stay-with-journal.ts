import type { PreviewPanels } from "../preview/panels.ts";

export const STAY_WITH_JOURNAL = "daystave.stayWithJournal";

/** In the preview's own menu: it stays with the journal that it shows, whichever is looked at in the editor. */
export function stayWithJournal(panels: PreviewPanels): void {
  panels.stay(true);
}
