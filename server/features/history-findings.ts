import { farAim } from "../checks/aims.ts";
import type { LineFinding } from "../checks/context.ts";
import { leapsOf, tempoLeap } from "../checks/tempo-leap.ts";
import { journalHistory, weeksOfStrand } from "../history/journal-history.ts";
import { playedEntry } from "../history/played.ts";
import type { AttemptRecord } from "../history/record.ts";
import type { Exercise } from "../history/strands.ts";
import type { Declaration } from "../journal/declared.ts";
import type { Journal } from "../journal/journal.ts";
import type { DayNumber } from "../journal/model.ts";
import { readEntry } from "../journal/read-entry.ts";
import type { Block } from "../syntax/document.ts";
import type { AimAt } from "./file-findings.ts";

/** A finding on a line of a day that what was practised on other days bears on. */
export interface HistoryFinding {
  readonly uri: string;
  readonly block: Block;
  readonly finding: LineFinding;
}

/** Tempos that leap, in all files. The same objects for every exercise that stays the same. */
export function leapFindings(journal: Journal): readonly HistoryFinding[] {
  const found: HistoryFinding[] = [];
  for (const exercise of journalHistory(journal).exercises.values())
    for (const each of journal.memo.of(exercise, "leaps", () => leapsIn(journal, exercise))) found.push(each);
  return found;
}

function leapsIn(journal: Journal, { strands }: Exercise): readonly HistoryFinding[] {
  return strands.flatMap(leapsOf).map((leap) => {
    const { uri, block, line } = leap.record;
    return { uri, block, finding: { ...tempoLeap(leap, tempoPlace(journal, leap.record)), line } };
  });
}

/** Where the tempo of an attempt stands on its line. */
function tempoPlace(journal: Journal, { block, line, order }: AttemptRecord): { start: number; end: number } {
  const counting = journal.model(block).entries.filter((entry) => !entry.planned && hasAttempts(entry.subject?.type));
  let before = 0;
  for (const { place, attempts } of counting) {
    if (place.line === line) return attempts[order - before]?.place ?? place;
    before += attempts.length;
  }
  return { start: 0, end: block.lines[line]!.length };
}

function hasAttempts(subject: string | undefined): boolean {
  return subject !== undefined && subject !== "activity" && subject !== "free";
}

/** Aims of one file, at a tempo by a day, that the trend does not lead to. */
export function farAimFindings(
  journal: Journal,
  uri: string,
  aims: readonly AimAt[],
  today: DayNumber,
): readonly HistoryFinding[] {
  return aims.flatMap(({ block, line, declaration }) => {
    const found = farAimFinding(journal, uri, declaration, today);
    return found ? [{ uri, block, finding: { ...found, line } }] : [];
  });
}

function farAimFinding(
  journal: Journal,
  uri: string,
  declaration: Declaration,
  today: DayNumber,
): ReturnType<typeof farAim> {
  const { declared } = declaration;
  if (declared?.type !== "aim" || declared.by === undefined || declared.by < today) return undefined;
  const aim = playedEntry(readEntry(declared.entry, 0, journal.vocabulary), journal.conventions(uri)).attempts.find(
    ({ rate }) => rate !== null,
  );
  if (!aim) return undefined;
  const index = journalHistory(journal);
  const { manner, rate } = aim;
  const strand = index.strandOf(manner) ?? index.exercises.get(manner.exerciseKey)?.strands[0];
  if (!strand) return undefined;
  return farAim(
    declaration,
    { rate: rate!, by: declared.by, notation: manner, weeks: weeksOfStrand(journal, strand) },
    today,
  );
}
