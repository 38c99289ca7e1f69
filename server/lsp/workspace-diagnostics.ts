import type {
  CancellationToken,
  ResultProgressReporter,
  WorkspaceDiagnosticParams,
  WorkspaceDiagnosticReport,
  WorkspaceDiagnosticReportPartialResult,
  WorkspaceDocumentDiagnosticReport,
} from "vscode-languageserver";
import { Slices } from "../host/time-slices.ts";
import { canonicalUri } from "../host/uri.ts";
import { debounced } from "./debounce.ts";
import { reportOn } from "./diagnostics.ts";
import type { Session } from "./session.ts";

/** Longer than most pauses between keystrokes, in milliseconds: the document that is typed in is pulled by itself. */
const QUIET = 300;

/**
 * Tells about every file of the workspace that the client does not know the latest of, and then holds the request until
 * something changes: a client asks again right after an answer. With a channel for partial results the request stays
 * open and each change goes through it; without one the first change is the answer. Undefined when it is cancelled.
 */
export async function workspaceDiagnostics(
  session: Session,
  { previousResultIds }: WorkspaceDiagnosticParams,
  token: CancellationToken,
  partial: ResultProgressReporter<WorkspaceDiagnosticReportPartialResult> | undefined,
): Promise<WorkspaceDiagnosticReport | undefined> {
  const known = new Map(previousResultIds.map(({ uri, value }) => [canonicalUri(uri), value]));
  await session.workspace.walk();
  for (;;) {
    const change = nextChange(session, token);
    const items = await changedReports(session, known, token);
    if (items.length > 0 && !partial) return { items };
    if (items.length > 0) partial!.report({ items });
    await change;
    if (token.isCancellationRequested) return undefined;
  }
}

/** Reports of the files whose latest result the client does not know, in slices; `known` is brought up to date. */
async function changedReports(
  session: Session,
  known: Map<string, string>,
  token: CancellationToken,
): Promise<WorkspaceDocumentDiagnosticReport[]> {
  const { workspace } = session;
  const slices = new Slices();
  const items: WorkspaceDocumentDiagnosticReport[] = [];
  const files = new Set([...workspace.journals].flatMap((journal) => [...journal.files.keys()]));
  for (const key of files) {
    await slices.pause();
    if (token.isCancellationRequested) return items;
    const journal = workspace.journalOf(key);
    if (!journal) continue;
    const report = reportOn({ session, journal, uri: key });
    if (known.get(key) === report.resultId) continue;
    known.set(key, report.resultId);
    const open = workspace.openDocument(key);
    items.push({
      kind: "full",
      uri: open?.uri ?? key,
      version: open?.version ?? null,
      ...report,
    });
  }
  for (const key of [...known.keys()].filter((key) => !files.has(key))) {
    known.delete(key);
    items.push({ kind: "full", uri: key, version: null, items: [] });
  }
  return items;
}

function nextChange(session: Session, token: CancellationToken): Promise<void> {
  return new Promise((resolve) => {
    const end = () => {
      changes.dispose();
      cancelled.dispose();
      resolve();
    };
    const changes = debounced(session.onChange, QUIET, end);
    const cancelled = token.onCancellationRequested(end);
  });
}
