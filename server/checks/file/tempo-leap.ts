import type { Leap } from "../../history/leaps.ts";
import { shown } from "../../history/trend-words.ts";
import { isoDate } from "../../journal/calendar.ts";
import { type Finding, finding, type Stretch } from "../finding.ts";
import { fileTexts } from "./file-texts.ts";

/** @param tempo the tempo on its line */
export function tempoLeap({ record, before }: Leap, tempo: Stretch): Finding {
  const tempoOf = (rate: number): string => shown(rate, record.noteValue, record.beat);
  const when = before.day === record.day ? fileTexts.sameDay : fileTexts.on(isoDate(before.day));
  const message = before.reached === true ? fileTexts.overBest : fileTexts.overFastest;
  return finding("tempo-leap", tempo, message(tempoOf(record.rate!), tempoOf(before.rate!), when));
}
