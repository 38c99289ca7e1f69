import { isoDate, parseIsoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import { createDocument } from "../../server/syntax/document/document.ts";

/** A journal of these files, by their names. */
export function journalOfFiles(files: Readonly<Record<string, string>>): Journal {
  const documents = Object.entries(files).map(([name, text]) => [`file:///j/${name}`, createDocument(text)] as const);
  return new Journal("file:///j", new Map(documents));
}

/** A journal of one file. */
export function journalOf(text: string): Journal {
  return journalOfFiles({ "a.practice": text });
}

/** A day as the program counts them, from its date. */
export function day(date: string): number {
  return parseIsoDate(date)!;
}

/**
 * One day a week, on Mondays, each with a tempo that was reached; 0 is a week without.
 *
 * @param first the first Monday
 * @param entry what is before the tempo
 */
export function weekly(
  tempos: readonly number[],
  first = "2026-03-02",
  entry = "D minor, thirds, slurred, 8ths at",
): string {
  const days = tempos.map((bpm, week) => `${isoDate(day(first) + 7 * week)}\n  ${entry} ${bpm} clean\n`);
  return days.filter((_, week) => tempos[week] !== 0).join("\n");
}
