import { debounced } from "./debounce.ts";
import { reportOn } from "./diagnostics.ts";
import type { Session } from "./session.ts";

/** In milliseconds: short, as what stands in the window is wrong until then. */
const QUIET = 50;

/**
 * For clients that pull: asks them to pull again when what they were told about an open document no longer holds,
 * though nobody edited that document. One that was edited since is pulled anyway.
 */
export function refreshDiagnostics(session: Session): void {
  const { client, connection, workspace, told } = session;
  const isStale = ({ key, version }: { readonly key: string; readonly version: number }) => {
    const before = told.get(key);
    const journal = workspace.journalOf(key);
    return (
      before?.version === version &&
      journal !== undefined &&
      reportOn({ session, journal, uri: key }).resultId !== before.resultId
    );
  };
  debounced(session.onChange, QUIET, ({ cause }) => {
    if (client.refreshesDiagnostics && [...workspace.openDocuments].some(isStale))
      connection.languages.diagnostics.refresh();
    if (client.refreshesTokens && cause === "files") connection.languages.semanticTokens.refresh();
  });
}
