import type { PupilsPanel } from "../pupils/panel.ts";

export const SHOW_PUPILS = "daystave.showPupils";

/** Shows a teacher what each journal of the workspace has set, played and asked, at the side. */
export async function showPupils(panel: PupilsPanel): Promise<void> {
  await panel.show();
}
