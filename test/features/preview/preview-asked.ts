import { readdirSync, readFileSync } from "node:fs";
import { type Preview, type PreviewAsked, preview } from "../../../server/features/preview/preview.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import type { PreviewExercise, PreviewLine, PreviewPlace } from "../../../shared/preview.ts";
import { journalOf } from "../journal-text.ts";

export interface Asked extends Omit<PreviewAsked, "today"> {
  /** ISO 8601. */
  readonly today?: string;
}

/** What the preview shows of a journal of one file, on 2026-03-09 unless said. */
export function previewOf(text: string | Journal, { today = "2026-03-09", ...asked }: Asked = {}): Preview {
  const journal = typeof text === "string" ? journalOf(text) : text;
  return preview(journal, { ...asked, today: parseIsoDate(today)! });
}

/** The files of the sample of a year, by their names. */
export function filesOfYear(): Readonly<Record<string, string>> {
  const folder = "samples/year";
  return Object.fromEntries(readdirSync(folder).map((name) => [name, readFileSync(`${folder}/${name}`, "utf8")]));
}

export function journalOfFiles(files: Readonly<Record<string, string>>): Journal {
  const documents = Object.entries(files).map(([name, text]) => [`file:///j/${name}`, createDocument(text)] as const);
  return new Journal("file:///j", new Map(documents));
}

/** Those of the last four weeks, then those before. */
export function exercisesOf({ exercises }: Pick<Preview, "exercises">): readonly PreviewExercise[] {
  return exercises ? [...exercises.recent, ...exercises.earlier] : [];
}

/** A line as it is seen: `Ground, bars 1-16 | start at 54 | played Mon 2 | Thu 12 Nov`. */
export function seen({ text, behind, facts, below, day }: PreviewLine): string {
  return [text + behind, ...facts, below, day].filter((part) => part !== "").join(" | ");
}

/** The text of the line that a place names. */
export function lineAtPlace(text: string, { line }: PreviewPlace): string {
  return text.split("\n")[line]!.trim();
}
