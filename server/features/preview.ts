import type { PreviewRow } from "../../shared/protocol.ts";
import { lineOf } from "../history/attempts.ts";
import { type ExerciseRow, exerciseRow, rateAsWritten } from "../history/exercise-row.ts";
import { journalHistory, weeksOfStrand } from "../history/journal-history.ts";
import { type Exercise, latestFirst } from "../history/strands.ts";
import type { Journal } from "../journal/journal.ts";

/** The rows of the side preview: every exercise of a journal, the latest practised first, with its weeks and trend. */
export function previewRows(journal: Journal): readonly PreviewRow[] {
  return journal.memo.of(journal, "preview rows", () =>
    [...journalHistory(journal).exercises.values()].sort(latestFirst).map((exercise) => previewRow(journal, exercise)),
  );
}

function previewRow(journal: Journal, of: Exercise): PreviewRow {
  const row = figures(journal, exerciseRow(of, weeksOfStrand(journal, of.strands[0]!)));
  return { ...row, hash: hashOf(JSON.stringify(row)) };
}

function figures(
  journal: Journal,
  { exercise, strand, weeks, trendWords, notation, lastPractised, latest }: ExerciseRow,
): Omit<PreviewRow, "hash"> {
  return {
    key: exercise.key,
    subject: exercise.subject,
    pattern: exercise.pattern,
    instrument: exercise.instrument,
    strand,
    unit: latest.unit === "beats" ? ("beats a minute" as const) : ("notes a minute" as const),
    lastPractised,
    trend: `${trendWords[0]!.toUpperCase()}${trendWords.slice(1)}.`,
    weeks: weeks.map(({ week, bestClean, tested, attempts, minutes }) => ({
      week,
      bestClean,
      shown: bestClean === null ? "" : rateAsWritten(bestClean, latest, notation),
      tested,
      attempts,
      minutes,
    })),
    uri: latest.uri,
    line: lineOf(journal, latest) ?? 0,
  };
}

/** FNV-1a, 32 bits (Fowler, Noll, Vo; draft-eastlake-fnv): enough to tell a row from its next state. */
function hashOf(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(36);
}
