import type { InlayHint, InlayHintParams } from "vscode-languageserver";
import { inlayHints } from "../features/inlay/inlay-hints.ts";
import { noteShown } from "./refresh-shown.ts";
import type { Place } from "./session.ts";

/** None unless the settings want them. */
export function hints(place: Place, { range }: InlayHintParams): InlayHint[] {
  const { session, journal, uri } = place;
  noteShown(place, "hints");
  const { notesPerMinute, lastTempo } = session.settingsOf(uri).hints;
  const asked = {
    today: session.dayOf(uri),
    notesPerMinute,
    lastTempo: lastTempo && !session.workspace.isReading,
    readsAll: !session.client.refreshesHints,
  };
  return inlayHints(journal, uri, range, asked).map((hint) => ({ ...hint, paddingLeft: true }));
}
