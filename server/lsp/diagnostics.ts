import type { DocumentDiagnosticParams, DocumentDiagnosticReport, Range } from "vscode-languageserver";
import { diagnosticsOf, diagnosticsOn, underlinedOf } from "../features/diagnostics/diagnostics.ts";
import { hasHistory } from "../features/diagnostics/history-reading.ts";
import type { Diagnostic } from "../features/types.ts";
import type { Report } from "./reports.ts";
import type { Place } from "./session.ts";

/** What is found by now, hints among it: what only the history tells comes once that is read. */
export function foundDiagnostics({ session, journal, uri }: Place): readonly Diagnostic[] {
  return diagnosticsOf(journal, uri, session.dayOf(uri), { history: hasHistory(journal) });
}

/** The same on the lines of a range alone. */
export function diagnosticsNear({ session, journal, uri }: Place, { start, end }: Range): readonly Diagnostic[] {
  const lines = { first: start.line, last: end.line };
  return diagnosticsOn(journal, uri, session.dayOf(uri), lines, { history: hasHistory(journal) });
}

export function reportOn({ session, journal, uri }: Place): Report {
  const underlined = underlinedOf(journal, uri, session.dayOf(uri), { history: hasHistory(journal) });
  return session.reports.of(underlined);
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
