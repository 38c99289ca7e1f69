import type { DayNumber } from "../journal/calendar.ts";
import type { Journal } from "../journal/journal.ts";
import { recordsAt } from "./attempts.ts";
import type { Ceiling } from "./ceiling.ts";
import { sinceLately } from "./journal-facts.ts";
import { journalHistory } from "./journal-history.ts";
import { withoutLeaps } from "./leaps.ts";
import type { AttemptRecord } from "./record.ts";
import { highestTempo, notchAbove, notchAtOrBelow, standingOf } from "./start-tempo.ts";

/** A tempo that a line of a journal has. */
export interface TempoOfLine {
  readonly uri: string;
  /** From 0, within the file. */
  readonly line: number;
  /** Which of its line's attempts has it, from 0. */
  readonly attempt: number;
  /** Beats a minute. */
  readonly bpm: number;
}

/**
 * A tempo that is to be proposed for what a line practises, or the highest notch that the day allows; undefined where
 * it allows none. What the line has itself is no start while it is a leap that stands alone: then a notch above what
 * was reached before, or none.
 */
export function proposedTempo(
  journal: Journal,
  ceiling: Ceiling,
  { uri, line, attempt, bpm }: TempoOfLine,
  next: number,
  day: DayNumber,
): number | undefined {
  if (ceiling.kind === "without instrument") return undefined;
  const own = recordsAt(journal, uri, line).find((record) => record.attempt === attempt && record.rate !== null);
  const perBeat = own?.rate ? own.rate / bpm : 1;
  const strand = own && journalHistory(journal).strandOf(own);
  const known =
    own && strand && isLeapAlone(strand.records, own, day) ? standingOf(strand.records, day + 1) : undefined;
  if (known?.reached === null) return undefined;
  const wanted = known?.reached ? Math.min(next, notchAbove(known.reached / perBeat)) : next;
  if (ceiling.share === undefined) return wanted;
  const most = strand && highestTempo(ceiling, standingOf(strand.records, day, sinceLately(journal, strand, day)));
  return Math.min(wanted, notchAtOrBelow(most === undefined ? ceiling.share * bpm : most / perBeat));
}

/** Whether an attempt, up to a day, is a leap that no second day reached. */
function isLeapAlone(records: readonly AttemptRecord[], own: AttemptRecord, day: DayNumber): boolean {
  return !withoutLeaps(records, day + 1).includes(own);
}
