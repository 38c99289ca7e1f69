import { readFileSync } from "node:fs";
import { join } from "node:path";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import { createDocument } from "../../server/syntax/document/document.ts";
import { blockText } from "../journal/print.ts";

// The journals of test/reference/journals; its README says where they come from.

const FOLDER = join(import.meta.dirname, "../reference/journals");
export const TODAY = parseIsoDate("2026-06-01")!;

export const JOURNALS = {
  amateur: ["journal.practice", "2026-03.practice"],
  student: ["journal.practice", "spring.practice"],
  child: ["journal.practice", "week.practice"],
} as const;

export type Name = keyof typeof JOURNALS;

/** The texts of a journal's files, changed in some way that its meaning should not depend on. */
export function textsOf(name: Name, change = (text: string): string => text): ReadonlyMap<string, string> {
  return new Map(
    JOURNALS[name].map((file) => [`file:///${name}/${file}`, change(readFileSync(join(FOLDER, name, file), "utf8"))]),
  );
}

export function journalOf(texts: ReadonlyMap<string, string>, root = "file:///journal"): Journal {
  return new Journal(root, new Map([...texts].map(([uri, text]) => [uri, createDocument(text)])));
}

/** What the blocks of all files mean, a line for each thing said. */
export function meaningOf(journal: Journal): readonly string[] {
  return journal.addresses.flatMap((uri) =>
    journal.files.get(uri)!.blocks.flatMap((block) => blockText(journal.model(block))),
  );
}

/** What is declared, in plain data. */
export function declaredIn(journal: Journal): readonly unknown[] {
  return journal.addresses.flatMap((uri) =>
    journal.files
      .get(uri)!
      .blocks.flatMap((block) =>
        journal.model(block).declarations.map(({ declaration: { declared } }) => withoutPlaces(declared)),
      ),
  );
}

/** The same without columns and lines, which spacing moves. */
function withoutPlaces(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutPlaces);
  if (typeof value !== "object" || value === null) return value;
  const kept = Object.entries(value).filter(([key]) => !["start", "end", "remark"].includes(key));
  return Object.fromEntries(kept.map(([key, each]) => [key, withoutPlaces(each)]));
}

/** `line: severity code`, lines from 1. */
export function findingsOf(journal: Journal, today = TODAY): readonly string[] {
  return journal.addresses.flatMap((uri) =>
    diagnosticsOf(journal, uri, today).map(
      ({ severity, code, range }) => `${uri.split("/").at(-1)}:${range.start.line + 1} ${severity} ${code}`,
    ),
  );
}
