import { debounced } from "./debounce.ts";
import { reportOn } from "./diagnostics.ts";
import type { Session } from "./session.ts";

/** A burst of changes is answered once, in milliseconds. */
const QUIET = 5;

/** For clients that cannot pull: tells about every open document that changed, or whose diagnostics did. */
export function pushDiagnostics(session: Session): void {
  const { workspace, connection, told } = session;
  debounced(session.onChange, QUIET, async ({ journals }) => {
    for (const { key } of [...workspace.openDocuments]) {
      await workspace.ready(key);
      const open = workspace.openDocument(key);
      const journal = workspace.journalOf(key);
      if (!open || !journal || !journals.has(journal.root)) continue;
      const { resultId, items } = reportOn({ session, journal, uri: key });
      const before = told.get(key);
      if (before?.resultId === resultId && before.version === open.version) continue;
      told.set(key, { resultId, version: open.version });
      connection.sendDiagnostics({ uri: open.uri, version: open.version, diagnostics: items });
    }
  });
}
