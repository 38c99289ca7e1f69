import type { DocumentDiagnosticParams, DocumentDiagnosticReport } from "vscode-languageserver";
import { diagnosticsOf } from "../features/diagnostics.ts";
import { hasHistory } from "../features/history-reading.ts";
import type { Report } from "./reports.ts";
import type { Place } from "./session.ts";

export function reportOn({ session, journal, uri }: Place): Report {
  return session.reports.of(diagnosticsOf(journal, uri, session.dayOf(uri), { history: hasHistory(journal) }));
}

export function documentDiagnostics(
  place: Place,
  { previousResultId }: DocumentDiagnosticParams,
): DocumentDiagnosticReport {
  const { session, uri } = place;
  const { resultId, items } = reportOn(place);
  session.told.set(uri, { resultId, version: session.workspace.openDocument(uri)?.version });
  if (resultId === previousResultId) return { kind: "unchanged", resultId };
  return { kind: "full", resultId, items };
}

/** For a file that nobody knows. */
export function noDiagnostics(): DocumentDiagnosticReport {
  return { kind: "full", items: [] };
}
