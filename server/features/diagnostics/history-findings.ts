import type { LineFinding } from "../../checks/context.ts";
import { farAim } from "../../checks/file/aims.ts";
import { type Leap, leapsOf, tempoLeap } from "../../checks/file/tempo-leap.ts";
import { journalHistory, weeksOfStrand } from "../../history/journal-history.ts";
import { type PlayedAttempt, playedEntry } from "../../history/played.ts";
import type { Exercise } from "../../history/strands.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Conventions } from "../../journal/conventions.ts";
import type { Declaration } from "../../journal/declarations/declared.ts";
import type { Journal } from "../../journal/journal.ts";
import { readEntry } from "../../journal/read-entry.ts";
import type { Block } from "../../syntax/document/document.ts";
import type { EntryLine } from "../../syntax/line/line.ts";
import type { AimAt } from "./file-findings.ts";

/** A finding on a line of a day that what was practised on other days bears on. */
export interface HistoryFinding {
  readonly uri: string;
  readonly block: Block;
  readonly finding: LineFinding;
}

const NO_LEAPS: readonly HistoryFinding[] = [];

/** Tempos that leap in one file. The same objects for every exercise that stays the same. */
export function leapFindings(journal: Journal, uri: string): readonly HistoryFinding[] {
  const index = journalHistory(journal);
  const byFile = journal.memo.of(index, "leaps by file", () => {
    const found = new Map<string, HistoryFinding[]>();
    for (const exercise of index.exercises.values()) {
      for (const each of leapsOfExercise(journal, exercise)) {
        const own = found.get(each.uri);
        if (own) own.push(each);
        else found.set(each.uri, [each]);
      }
    }
    return found;
  });
  return byFile.get(uri) ?? NO_LEAPS;
}

/** Finds the leaps beforehand, those of one exercise at each step. */
export function* leapsInSteps(journal: Journal): Generator<void> {
  for (const exercise of journalHistory(journal).exercises.values()) {
    leapsOfExercise(journal, exercise);
    yield;
  }
}

function leapsOfExercise(journal: Journal, exercise: Exercise): readonly HistoryFinding[] {
  return journal.memo.of(exercise, "leaps", () => leapsIn(journal, exercise));
}

function leapsIn(journal: Journal, { strands }: Exercise): readonly HistoryFinding[] {
  return strands.flatMap((strand) => {
    const leaps = journal.memo.of(strand, "leaps", () => leapsOf(strand));
    return leaps.map((leap) => leapFinding(journal, leap));
  });
}

/** The same object for the same two attempts. */
function leapFinding(journal: Journal, leap: Leap): HistoryFinding {
  const { record, best } = leap;
  const { uri, block, line } = record;
  return journal.memo.from(record, "leap", [best], () => ({
    uri,
    block,
    finding: { ...tempoLeap(leap, record), line },
  }));
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
  const conventions = journal.conventions(uri);
  const aimed = journal.memo.from(declaration, "aimed at", [conventions], () =>
    attemptsAimedAt(declared.entry, journal, conventions),
  );
  const aim = aimed.find(({ rate }) => rate !== null);
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

/** The aim as attempts, of which none need state a tempo. */
function attemptsAimedAt(entry: EntryLine, journal: Journal, conventions: Conventions): readonly PlayedAttempt[] {
  return playedEntry(readEntry(entry, 0, journal.vocabulary), conventions).attempts;
}
