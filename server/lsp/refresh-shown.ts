import type { Disposable } from "vscode-languageserver";
import { historyShown } from "../features/lens/history-shown.ts";
import { sameItems } from "../journal/memo.ts";
import { debounced } from "./debounce.ts";
import type { Place, Session } from "./session.ts";

/** In milliseconds: long enough that an editor has asked by itself for what it has typed in. */
const QUIET = 100;

/** Notes down that lenses or hints of a document are given now. */
export function noteShown(place: Place, what: keyof Session["shown"]): void {
  const { session, uri } = place;
  session.shown[what].set(uri, { version: session.workspace.openDocument(uri)?.version, of: basisOf(place) });
}

/**
 * Asks clients to ask for lenses and hints again where what they were made of has changed, though nobody edited the
 * document: the history was read, a day turned, another file or a setting changed. Nothing is looked at where both are
 * off.
 */
export function refreshShown(session: Session): Disposable {
  const { client, connection, workspace, shown } = session;
  const isAnyStale = (what: keyof typeof shown): boolean =>
    [...workspace.openDocuments].some(({ key, version }) => {
      const before = shown[what].get(key);
      const journal = workspace.journalOf(key);
      if (before?.version !== version || !journal) return false;
      return !sameItems(before.of, basisOf({ session, journal, uri: key }));
    });
  return debounced(session.onChange, QUIET, () => {
    if (client.refreshesLenses && isAnyStale("lenses"))
      connection.sendRequest("workspace/codeLens/refresh").catch(() => {});
    if (client.refreshesHints && isAnyStale("hints")) connection.languages.inlayHint.refresh().catch(() => {});
  });
}

function basisOf({ session, journal, uri }: Place): readonly unknown[] {
  const { lens, hints } = session.settingsOf(uri);
  const wanted = [lens.trend, hints.notesPerMinute, hints.lastTempo];
  if (!lens.trend && !hints.lastTempo) return wanted;
  return [...wanted, historyShown(journal), session.dayOf(uri), session.workspace.isReading];
}
