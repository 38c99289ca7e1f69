import { semanticTokens } from "../../../server/features/colours/semantic-tokens.ts";
import { completionsAt } from "../../../server/features/completion/completion.ts";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { lineRows } from "../../../server/features/explain/line-rows.ts";
import { hoverAt } from "../../../server/features/hover/hover.ts";
import { formatEdits } from "../../../server/features/layout/formatting.ts";
import { documentSymbols } from "../../../server/features/outline/document-symbols.ts";
import { foldingRanges } from "../../../server/features/outline/folding-ranges.ts";
import { recordsOfBlock } from "../../../server/history/attempts.ts";
import { journalHistory } from "../../../server/history/journal-history.ts";
import type { AttemptRecord } from "../../../server/history/record.ts";
import type { Journal } from "../../../server/journal/journal.ts";
import { textOf } from "../../../server/syntax/document/document.ts";
import { TODAY } from "../edits.ts";

/** What may be asked of a journal about one file. Places count around. */
export const QUESTIONS = [
  "rows",
  "models",
  "diagnostics",
  "typing",
  "history",
  "titles",
  "symbols",
  "folding",
  "tokens",
  "layout",
  "hover",
  "completion",
] as const;
export type Question = (typeof QUESTIONS)[number];

/** What two journals are held against each other by each time; of the others one. */
const ALWAYS: readonly Question[] = ["history", "rows", "diagnostics", "titles"];
const BY_TURNS: readonly Question[] = ["models", "symbols", "folding", "tokens", "layout", "hover"];
const DAYS_FROM_TODAY = [0, 0, 0, 60, -120];

/** The answer to one question, as plain data. */
export function answer(journal: Journal, question: Question, uri: string, at: number): unknown {
  const document = journal.files.get(uri);
  if (!document) return null;
  const today = TODAY + DAYS_FROM_TODAY[at % DAYS_FROM_TODAY.length]!;
  const position = { line: at % document.lineCount, character: (at >> 3) % 40 };
  switch (question) {
    case "rows":
      return lineRows(journal, uri);
    case "models":
      return document.blocks.map((block) => journal.model(block));
    case "diagnostics":
      return diagnosticsOf(journal, uri, today);
    case "typing":
      return diagnosticsOf(journal, uri, today, { history: false });
    case "history":
      return shownHistory(journal);
    case "titles":
      return document.blocks.map((block) => [...(journal.titlesOf(block) ?? [])]);
    case "symbols":
      return documentSymbols(journal, uri);
    case "folding":
      return foldingRanges(journal, uri);
    case "tokens":
      return semanticTokens(journal, uri);
    case "layout":
      return formatEdits(journal, uri);
    case "hover":
      return hoverAt(journal, uri, position, { today });
    case "completion":
      return completionsAt(journal, uri, position, today);
  }
}

/**
 * What a journal tells of its files, each answer under its question and file: text, history, how each line is read,
 * diagnostics, known titles and records, and by turns one thing more. `at` says which, and whatever depends on a place or the day.
 */
export function told(journal: Journal, at: number): ReadonlyMap<string, string> {
  const questions = [...ALWAYS, BY_TURNS[at % BY_TURNS.length]!];
  const answers = new Map<string, string>();
  for (const uri of journal.addresses) {
    const { blocks, starts, lineCount } = journal.files.get(uri)!;
    const cut = blocks.map(({ day, lines, ends }) => [day, lines.length, ends.join()]);
    answers.set(`text of ${uri}`, JSON.stringify([textOf(journal.files.get(uri)!), starts, lineCount, cut]));
    for (const question of questions)
      answers.set(`${question} of ${uri}`, JSON.stringify(answer(journal, question, uri, at)) ?? "nothing");
    const records = blocks.map((block) => recordsOfBlock(journal, uri, block).map(figures));
    answers.set(`records of ${uri}`, JSON.stringify(records));
  }
  return answers;
}

/** Where two journals tell something else first; undefined where nowhere. */
export function difference(is: ReadonlyMap<string, string>, fresh: ReadonlyMap<string, string>): string | undefined {
  for (const [name, expected] of fresh) {
    const found = is.get(name) ?? "nothing";
    if (found === expected) continue;
    let at = 0;
    while (found[at] === expected[at]) at++;
    const from = Math.max(0, at - 60);
    return `${name}: … ${found.slice(from, at + 100)} … in place of … ${expected.slice(from, at + 100)} …`;
  }
  return is.size === fresh.size ? undefined : "other files";
}

function shownHistory(journal: Journal): unknown {
  return [...journalHistory(journal).exercises.values()]
    .sort((a, b) => (a.key < b.key ? -1 : 1))
    .map(({ key, subject, lastDay, strands }) => ({
      key,
      subject,
      lastDay,
      strands: strands.map((strand) => ({ ...strand, records: strand.records.map(figures) })),
    }));
}

/** A record as it is wherever its day stands. */
function figures({
  day,
  order,
  subject,
  strandKey,
  rate,
  reached,
  count,
  got,
  minutes,
  about,
  line,
}: AttemptRecord): unknown {
  return { day, order, subject, strandKey, rate, reached, count, got, minutes, about, line };
}
