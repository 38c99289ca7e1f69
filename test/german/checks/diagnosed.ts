import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import type { Diagnostic } from "../../../server/features/types.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";

const TODAY = parseIsoDate("2026-06-01")!;

/** What is found on 2026-06-01 in the files of a journal, by their paths in it. */
export function diagnosticsIn(files: Readonly<Record<string, string>>): readonly Diagnostic[] {
  const documents = Object.entries(files).map(([name, text]) => [`file:///j/${name}`, createDocument(text)] as const);
  const journal = new Journal("file:///j", new Map(documents));
  return journal.addresses.flatMap((uri) => diagnosticsOf(journal, uri, TODAY));
}
