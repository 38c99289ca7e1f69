import type { Location } from "../../../server/features/navigation/named.ts";
import type { Range, TextEdit } from "../../../server/features/types.ts";
import { atOnce } from "../../../server/journal/at-once.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument, type Position } from "../../../server/syntax/document/document.ts";
import { edited, URI } from "../journal-text.ts";
import type { OtherFiles } from "../marked-text.ts";

/** A journal with a mark `‸` in its first file, where the cursor is. */
export interface MarkedJournal {
  readonly journal: Journal;
  readonly position: Position;
  readonly texts: ReadonlyMap<string, string>;
}

export function marked(text: string, others: OtherFiles = {}): MarkedJournal {
  const [before = "", after = ""] = text.split("‸");
  const lines = before.split(/\r\n|\r|\n/);
  const texts = new Map(Object.entries(others).map(([name, other]) => [`file:///journal/${name}`, other]));
  texts.set(URI, before + after);
  const files = new Map([...texts].map(([uri, each]) => [uri, createDocument(each)]));
  return {
    journal: new Journal("file:///journal", files),
    position: { line: lines.length - 1, character: lines.at(-1)!.length },
    texts,
  };
}

/** The lines of places, each with its place in brackets; those of other files behind their names. */
export function shownPlaces(texts: ReadonlyMap<string, string>, places: readonly Location[]): string {
  return places
    .map(({ uri, range }) => (uri === URI ? "" : `${uri.split("/").at(-1)}: `) + bracketed(texts.get(uri)!, range))
    .join("\n");
}

export function bracketed(text: string, { start, end }: Range): string {
  const line = text.split(/\r\n|\r|\n/)[start.line]!;
  return `${line.slice(0, start.character)}[${line.slice(start.character, end.character)}]${line.slice(end.character)}`;
}

/** The texts of a journal after edits in some of its files. */
export function editedTexts(
  texts: ReadonlyMap<string, string>,
  files: readonly { readonly uri: string; readonly edits: readonly TextEdit[] }[],
): ReadonlyMap<string, string> {
  const after = new Map(texts);
  for (const { uri, edits } of files) after.set(uri, edited(texts.get(uri)!, edits));
  return after;
}

export { atOnce };

/** The first day of long journals. */
export const FIRST_DAY = parseIsoDate("2026-03-02")!;
