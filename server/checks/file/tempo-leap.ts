import type { Leap } from "../../history/leaps.ts";
import { shown } from "../../history/trend-words.ts";
import { isoDate } from "../../journal/calendar.ts";
import { type Finding, finding, type Stretch } from "../finding.ts";

/** @param tempo the tempo on its line */
export function tempoLeap({ record, before }: Leap, tempo: Stretch): Finding {
  const tempoOf = (rate: number): string => shown(rate, record.noteValue, record.beat);
  const when = before.day === record.day ? "earlier the same day" : `on ${isoDate(before.day)}`;
  const what = before.reached === true ? "your best before" : "the fastest you tried before";
  return finding(
    "tempo-leap",
    tempo,
    `${tempoOf(record.rate!)} is over one and a half times ${what}, ${tempoOf(before.rate!)} ${when}. If that is right, leave it. Otherwise check the digits, beat and note value.`,
  );
}
