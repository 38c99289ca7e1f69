import type { AttemptRecord } from "../../history/record.ts";
import type { Strand } from "../../history/strands.ts";
import { shown } from "../../history/trend-words.ts";
import { isoDate } from "../../journal/calendar.ts";
import { type Finding, finding, type Stretch } from "../finding.ts";

/** So many times the best before is worth a question. Two integers, so that 90 after 60 is exactly not. */
const LEAP = { numerator: 3, denominator: 2 };

/** An attempt that was reached far above everything before it, and the best until then. */
export interface Leap {
  readonly record: AttemptRecord;
  readonly best: AttemptRecord;
}

/**
 * The leaps of a strand: each reached tempo is held against the best that was reached before, which it then may become.
 */
export function leapsOf({ records }: Pick<Strand, "records">): readonly Leap[] {
  const leaps: Leap[] = [];
  let best: AttemptRecord | undefined;
  for (const record of records) {
    if (!record.reached || record.rate === null) continue;
    if (best && record.rate * LEAP.denominator > best.rate! * LEAP.numerator) leaps.push({ record, best });
    if (!best || record.rate > best.rate!) best = record;
  }
  return leaps;
}

/** @param tempo the tempo on its line */
export function tempoLeap({ record, best }: Leap, tempo: Stretch): Finding {
  const tempoOf = (rate: number): string => shown(rate, record.noteValue, record.beat);
  const when = best.day === record.day ? "earlier the same day" : `on ${isoDate(best.day)}`;
  return finding(
    "tempo-leap",
    tempo,
    `${tempoOf(record.rate!)} is over one and a half times your best before, ${tempoOf(best.rate!)} ${when}. If that is right, leave it. Otherwise check the digits, beat and note value.`,
  );
}
