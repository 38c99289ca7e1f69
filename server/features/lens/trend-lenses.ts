import type { HistoryIndex } from "../../history/history-index.ts";
import { historyAtHand, journalHistory } from "../../history/journal-history.ts";
import { type AttemptRecord, inTimeOrder } from "../../history/record.ts";
import type { Exercise } from "../../history/strands.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Block } from "../../syntax/document/document.ts";
import { usualInstrument } from "../explain/usual-instrument.ts";
import { nameOf } from "../preview/exercises.ts";
import { isTimed, lastOf, rowInSpan } from "../preview/row-in-span.ts";
import { spanOfDays, USUAL_SPAN } from "../preview/span.ts";
import { lensTexts } from "./lens-texts.ts";

/** Words above a line. */
export interface TrendLens {
  /** From 0, within the file. */
  readonly line: number;
  readonly title: string;
}

export interface LensesAsked {
  readonly today: DayNumber;
  /** Reads all days where the history is not at hand, as nobody asks again. */
  readonly readsAll: boolean;
}

/** Of a line that practises more, as all major scales, no more are told. Our own choice. */
const MOST_ON_A_LINE = 3;

/**
 * The trend of each exercise of the last half year above its latest entry in the journal, as the preview has it: of the
 * way in which it was played most, where that was played last. Pieces are none. The same array while nothing that bears
 * on it changes; none while the history is not at hand.
 */
export function trendLenses(journal: Journal, uri: string, { today, readsAll }: LensesAsked): readonly TrendLens[] {
  const document = journal.files.get(uri);
  const index = readsAll ? journalHistory(journal) : historyAtHand(journal);
  if (!index || !document) return NONE;
  const trends = trendsIn(journal, index, today);
  const usual = usualInstrument(journal);
  return journal.memo.from(document, "trend lenses", [trends, usual], () => {
    const starts = new Map(document.blocks.map((block, i) => [block, document.starts[i]!]));
    const own = trends.filter(({ record }) => record.uri === uri);
    return lensesIn(own, starts, (exercise) => nameOf(journal, exercise, usual));
  });
}

const NONE: readonly TrendLens[] = [];

interface Trend {
  readonly exercise: Exercise;
  readonly trend: string;
  /** The latest of the strand that is told of. */
  readonly record: AttemptRecord;
}

/** Of all files; an exercise that no edit touched is not worked out again. */
function trendsIn(journal: Journal, index: HistoryIndex, today: DayNumber): readonly Trend[] {
  const days = spanOfDays(USUAL_SPAN, today);
  return journal.memo.from(index, "trends for lenses", [today], () =>
    [...index.exercises.values()].flatMap((exercise): Trend[] => {
      const found = exercise.strands[0]!.title ? undefined : rowInSpan(journal, exercise, days, "row for a lens");
      if (!found || !isTimed(found.row.exercise.strands[0]!, days)) return [];
      return [{ exercise, trend: found.trend, record: lastOf(found.row) }];
    }),
  );
}

/** @param name tells the exercises of a line apart: asked for only where it has several */
function lensesIn(
  trends: readonly Trend[],
  starts: ReadonlyMap<Block, number>,
  name: (exercise: Exercise) => string,
): readonly TrendLens[] {
  const byLine = new Map<number, Trend[]>();
  for (const each of [...trends].sort((a, b) => inTimeOrder(a.record, b.record))) {
    const start = starts.get(each.record.block);
    if (start === undefined) continue;
    const line = start + each.record.line;
    byLine.set(line, [...(byLine.get(line) ?? []), each]);
  }
  return [...byLine]
    .sort(([a], [b]) => a - b)
    .flatMap(([line, own]) =>
      own.slice(0, MOST_ON_A_LINE).map(({ exercise, trend }) => ({
        line,
        title: own.length === 1 ? lensTexts.trend(trend) : lensTexts.trendOf(name(exercise), trend),
      })),
    );
}
