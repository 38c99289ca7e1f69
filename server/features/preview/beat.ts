import { entryMadeOnce } from "../../history/entry-of-record.ts";
import { beatBefore as beatNamedBefore } from "../../history/exercise-row.ts";
import type { AttemptRecord } from "../../history/record.ts";
import type { Notation } from "../../history/trend-words.ts";
import type { Journal } from "../../journal/journal.ts";
import { AT_WORDS } from "../../syntax/lexicon/tempo-marks.ts";

/**
 * The beat that a record's tempo counts, as it was written there: `crotchet=`, `half=`. Empty where that goes without
 * saying.
 *
 * @param notation that of the rates which it is put before
 */
export function beatBefore(journal: Journal, record: AttemptRecord, notation: Notation): string {
  const written = beatAsWritten(journal, record, notation);
  return written ?? beatNamedBefore(record, { beat: notation.beat });
}

/** Undefined where the beat is not written, or is not that of the rates. */
function beatAsWritten(journal: Journal, record: AttemptRecord, { beat }: Notation): string | undefined {
  const own = entryMadeOnce(journal, record)?.attempts.find(({ place }) => place.start === record.start)?.tempo?.beat;
  if (!own || !beat || own.numerator * beat.denominator !== beat.numerator * own.denominator) return undefined;
  const [before, after] = record.block.lines[record.line]!.slice(record.start, record.end).split("=");
  if (after === undefined) return undefined;
  const [first, ...words] = before!.trim().split(/\s+/);
  return `${AT.includes(first!.toLowerCase()) ? words.join(" ") : [first, ...words].join(" ")}=`;
}

/** What may be before a beat. */
const AT = ["at", "@", ...AT_WORDS];
