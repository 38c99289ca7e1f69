import type { DayNumber } from "../journal/calendar.ts";
import type { Journal } from "../journal/journal.ts";
import { recordsAt } from "./attempts.ts";
import type { Ceiling } from "./ceiling.ts";
import { sinceLately } from "./journal-facts.ts";
import { journalHistory } from "./journal-history.ts";
import { highestTempo, notchAtOrBelow, standingOf } from "./start-tempo.ts";

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
 * it allows none.
 */
export function proposedTempo(
  journal: Journal,
  ceiling: Ceiling,
  { uri, line, attempt, bpm }: TempoOfLine,
  next: number,
  day: DayNumber,
): number | undefined {
  if (ceiling.kind === "without instrument") return undefined;
  if (ceiling.share === undefined) return next;
  const own = recordsAt(journal, uri, line).find((record) => record.attempt === attempt && record.rate !== null);
  const perBeat = own?.rate ? own.rate / bpm : 1;
  const strand = own && journalHistory(journal).strandOf(own);
  const most = strand && highestTempo(ceiling, standingOf(strand.records, day, sinceLately(journal, strand, day)));
  return Math.min(next, notchAtOrBelow(most === undefined ? ceiling.share * bpm : most / perBeat));
}
