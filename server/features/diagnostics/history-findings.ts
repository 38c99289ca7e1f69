import type { LineFinding } from "../../checks/context.ts";
import { farAim } from "../../checks/file/aims.ts";
import { tempoLeap } from "../../checks/file/tempo-leap.ts";
import { journalHistory } from "../../history/journal-history.ts";
import { type Leap, leapsOf } from "../../history/leaps.ts";
import type { Exercise } from "../../history/strands.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Declaration } from "../../journal/declarations/declared.ts";
import type { Journal } from "../../journal/journal.ts";
import { aimProgress } from "../../plan/aims.ts";
import type { Block } from "../../syntax/document/document.ts";
import type { AimAt } from "./file-findings.ts";

/** A finding on a line of a day that what was practised on other days bears on. */
export interface HistoryFinding {
  readonly uri: string;
  readonly block: Block;
  readonly finding: LineFinding;
}

/** A tempo that leaps, and which of the day's attempts it is. */
interface LeapFinding extends HistoryFinding {
  readonly order: number;
}

const NO_LEAPS: readonly HistoryFinding[] = [];

/**
 * Tempos that leap in one file, each once, though it be an attempt at several subjects. The same objects for every
 * exercise that stays the same.
 */
export function leapFindings(journal: Journal, uri: string): readonly HistoryFinding[] {
  const index = journalHistory(journal);
  const byFile = journal.memo.of(index, "leaps by file", () => {
    const found = new Map<string, Map<Block, readonly LeapFinding[]>>();
    for (const exercise of index.exercises.values()) {
      for (const each of leapsOfExercise(journal, exercise)) {
        const days = found.get(each.uri) ?? new Map<Block, readonly LeapFinding[]>();
        days.set(each.block, withLeap(days.get(each.block) ?? [], each));
        found.set(each.uri, days);
      }
    }
    return new Map([...found].map(([file, days]) => [file, [...days.values()].flat()]));
  });
  return byFile.get(uri) ?? NO_LEAPS;
}

/** The leaps of a day with one more; of those at one tempo the first in the order of the day stays. */
function withLeap(leaps: readonly LeapFinding[], leap: LeapFinding): readonly LeapFinding[] {
  const { line, start } = leap.finding;
  const same = leaps.find(({ finding }) => finding.line === line && finding.start === start);
  if (!same) return [...leaps, leap];
  return same.order < leap.order ? leaps : leaps.map((each) => (each === same ? leap : each));
}

/** Finds the leaps beforehand, those of one exercise at each step. */
export function* leapsInSteps(journal: Journal): Generator<void> {
  for (const exercise of journalHistory(journal).exercises.values()) {
    leapsOfExercise(journal, exercise);
    yield;
  }
}

function leapsOfExercise(journal: Journal, exercise: Exercise): readonly LeapFinding[] {
  return journal.memo.of(exercise, "leaps", () => leapsIn(journal, exercise));
}

function leapsIn(journal: Journal, { strands }: Exercise): readonly LeapFinding[] {
  return strands.flatMap((strand) => {
    const leaps = journal.memo.of(strand, "leaps", () => leapsOf(strand));
    return leaps.map((leap) => leapFinding(journal, leap));
  });
}

/** The same object for the same two attempts. */
function leapFinding(journal: Journal, leap: Leap): LeapFinding {
  const { record, before } = leap;
  const { uri, block, line, order } = record;
  return journal.memo.from(record, "leap", [before], () => ({
    uri,
    block,
    order,
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

/** Of an aim at several subjects the first that is far. */
function farAimFinding(
  journal: Journal,
  uri: string,
  declaration: Declaration,
  today: DayNumber,
): ReturnType<typeof farAim> | undefined {
  const { declared } = declaration;
  if (declared?.type !== "aim" || declared.by === undefined || declared.by < today) return undefined;
  const { by } = declared;
  for (const one of aimProgress(journal, { declared, uri }, { today })) {
    const { standing, tempo } = one;
    if (standing.type !== "under way" || standing.shortBy === undefined || !tempo) continue;
    const { manner } = tempo;
    const likely = standing.shortBy;
    return farAim(declaration, { by, likely, notation: manner, ...(one.isOneOf ? { subject: manner.subject } : {}) });
  }
  return undefined;
}
