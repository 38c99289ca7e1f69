import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { repeatEntry } from "../../../server/features/commands/repeat-entry.ts";
import type { Journal } from "../../../server/journal/journal.ts";
import type { Entry } from "../../../server/journal/model.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { edited, journalOf, URI } from "../journal-text.ts";
import { TODAY } from "../marked-text.ts";

// Lines as many hands wrote them, invented: test/reference/README.md. Whoever has one finger free repeats any of them.

const DAY = "2026-03-09\n";

function linesOf(file: string): readonly string[] {
  const [, ...rows] = readFileSync(`test/reference/${file}.tsv`, "utf8").trimEnd().split("\n");
  return rows.filter((row) => !row.startsWith("#")).map((row) => row.split("\t")[2]!);
}

const EMPTY = journalOf("");

/** What a journal reads by is made once. */
function journalWith(text: string): Journal {
  return EMPTY.with(URI, createDocument(text));
}

function entryOn(journal: Journal, line: number): Entry | undefined {
  return journal.model(journal.files.get(URI)!.blocks[0]!).entries.find(({ place }) => place.line === line);
}

/** Whether a line is repeated, and as the same exercise at another tempo; undefined for one that has no tempo. */
function repeated(line: string): "well" | "otherwise" | "not" | undefined {
  const text = `${DAY}${line}\n`;
  const before = entryOn(journalWith(text), 1);
  const tempo = before?.attempts.findLast((attempt) => attempt.tempo)?.tempo;
  if (!before || !tempo || tempo.bpm <= 40) return undefined; // there is no slower
  const answer = repeatEntry(journalWith(text), URI, { line: 1, character: 0 }, { today: TODAY, step: "slower" });
  if (!answer.ok) return "not";
  if (answer.note) return undefined; // a line that says something hurts: test/features/ceiling.test.ts
  const copy = entryOn(journalWith(edited(text, answer.edits)), 2);
  const now = copy?.attempts.findLast((attempt) => attempt.tempo)?.tempo;
  // Of several the one that the last tempo was at.
  const subjects = before.subject?.type === "several" ? [before.subject, ...before.subject.subjects] : [before.subject];
  const asText = (subject: Entry["subject"], pattern: Entry["pattern"]) => JSON.stringify([subject, pattern]);
  const isSame = subjects.some((each) => asText(copy?.subject, copy?.pattern) === asText(each, before.pattern));
  return isSame && now && now.bpm < tempo.bpm ? "well" : "otherwise";
}

/** The shares that were reached, of lines with a tempo. */
test.each([
  ["natural-lines", 0.94],
  ["new-hands", 0.9],
  ["more-hands", 0.96],
  ["kept-hands", 0.94],
])("of %s with a tempo nearly all are repeated, as the same exercise a notch slower", (file, share) => {
  const answers = linesOf(file).flatMap((line) => repeated(line) ?? []);
  const shareOf = (wanted: string) => answers.filter((answer) => answer === wanted).length / answers.length;
  expect(answers.length).toBeGreaterThan(20);
  expect(shareOf("well")).toBeGreaterThanOrEqual(share);
  expect(shareOf("not")).toBeLessThan(0.03);
});
