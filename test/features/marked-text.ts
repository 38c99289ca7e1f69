import type { CommandAnswer } from "../../server/features/commands/command-answer.ts";
import { type DayNumber, parseIsoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import { createDocument, type Position } from "../../server/syntax/document/document.ts";
import { edited, URI } from "./journal-text.ts";

export const TODAY = parseIsoDate("2026-03-09")!;

export type Command = (
  journal: Journal,
  uri: string,
  position: Position,
  options: { readonly today: DayNumber },
) => CommandAnswer;

/** Texts of other files of the journal, by their names. */
export type OtherFiles = Readonly<Record<string, string>>;

/**
 * A command run at the mark `‸`: the text after its edits with the mark where the cursor is then, or the sentence that
 * says why nothing was done. Where another file is shown, its name stands before its text.
 */
export function run(command: Command, marked: string, others: OtherFiles = {}): string {
  const [before = "", after = ""] = marked.split("‸");
  const lines = before.split(/\r\n|\r|\n/);
  const texts = new Map(Object.entries(others).map(([name, text]) => [uriOf(name), text]));
  texts.set(URI, before + after);
  const files = new Map([...texts].map(([uri, text]) => [uri, createDocument(text)]));
  const journal = new Journal("file:///journal", files);
  const answer = command(journal, URI, { line: lines.length - 1, character: lines.at(-1)!.length }, { today: TODAY });
  if (!answer.ok) return answer.reason;
  const text = withMark(edited(texts.get(answer.uri)!, answer.edits), answer.cursor);
  return answer.uri === URI ? text : `${answer.uri.split("/").at(-1)}\n${text}`;
}

function uriOf(name: string): string {
  return `file:///journal/${name}`;
}

function withMark(text: string, { line, character }: Position): string {
  const lines = text.split(/(?<=\r\n|\r(?!\n)|\n)/);
  if (/[\r\n]$/.test(text) || text === "") lines.push("");
  const at = lines[line];
  if (at === undefined || character > at.replace(/[\r\n]+$/, "").length)
    throw new Error(`The cursor at ${line}:${character} stands outside of the text.`);
  return [...lines.slice(0, line), `${at.slice(0, character)}‸${at.slice(character)}`, ...lines.slice(line + 1)].join(
    "",
  );
}
