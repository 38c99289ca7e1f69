import type { AttemptRecord } from "../../history/record.ts";
import type { Strand } from "../../history/strands.ts";
import { easeAskedBy } from "../../journal/body-said.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { saidOfAttempts } from "../../journal/conditions.ts";
import { weekdayDate } from "../../journal/date-words.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import { isSameLine } from "../explain/exercise-history.ts";
import { escapedExtract } from "../explain/markdown.ts";
import { historyTexts } from "./history-texts.ts";

/** So many remarks are shown of a day. */
const MOST_REMARKS = 2;

/**
 * `Tue 3 Nov: 88 clean, 92 clean 4 of 5, 96 slips` and the remarks below it, as they were written: the attempts of a
 * strand on the day of one of its records, up to that one.
 */
export function lastTimeInWords(
  journal: Journal,
  { records }: Strand,
  last: AttemptRecord,
  today: DayNumber,
): { readonly words: string; readonly remarks: readonly string[] } {
  const lines = linesOfDay(records, last);
  const played = lines.map((own) => attemptsAsWritten(journal, own)).filter((words) => words !== "");
  const remarks = lines.flatMap(([first]) => entryOf(journal, first!)?.remarks ?? []).slice(-MOST_REMARKS);
  const date = weekdayDate(last.day, today);
  return {
    words:
      played.length === 0
        ? historyTexts.lastPlayed(date)
        : historyTexts.lastTime(date, escapedExtract(played.join(", "))),
    remarks: remarks.map((remark) => `– ${escapedExtract(remark)}`),
  };
}

/** Whether what was written the last time before a day asks to go easy. */
export function easeAskedLastTime(
  journal: Journal,
  records: readonly AttemptRecord[],
  day: DayNumber,
): "tired" | "body" | undefined {
  const last = records.findLast((record) => record.day < day);
  if (!last) return undefined;
  const asked = linesOfDay(records, last)
    .flatMap(([first]) => entryOf(journal, first!)?.remarks ?? [])
    .flatMap((remark) => easeAskedBy(remark, journal) ?? []);
  return asked.find((each) => each === "tired") ?? asked[0];
}

/** The records of the day of one up to it, by their lines; lines without a tempo only where none has one. */
function linesOfDay(records: readonly AttemptRecord[], last: AttemptRecord): readonly (readonly AttemptRecord[])[] {
  const at = records.indexOf(last);
  const upTo = records.slice(0, at + 1).filter(({ day }) => day === last.day);
  const timed = upTo.filter(({ rate }) => rate !== null);
  const lines: AttemptRecord[][] = [];
  for (const record of timed.length > 0 ? timed : upTo) {
    const line = lines.find(([first]) => isSameLine(first!, record));
    if (line) line.push(record);
    else lines.push([record]);
  }
  return lines;
}

function entryOf(journal: Journal, { block, line }: AttemptRecord): Entry | undefined {
  return journal.model(block).entries.find(({ place }) => place.line === line);
}

/** Tempos with how they went, without what was played; without a tempo, what is said of the subject. */
function attemptsAsWritten(journal: Journal, records: readonly AttemptRecord[]): string {
  const [first] = records;
  const entry = entryOf(journal, first!);
  const text = first!.block.lines[first!.line]!;
  if (!entry) return "";
  if (first!.rate === null)
    return text.slice(entry.source.subject?.end ?? entry.place.end, entry.place.end).replace(/^[\s,]+/, "");
  const said = saidOfAttempts(entry.source.items);
  return records
    .map(({ start, end, attempt }) => {
      const last = Math.max(end, ...(said[attempt] ?? []).map((item) => item.end));
      return text.slice(start, last).replace(/^(?:at|@)\s*/i, "");
    })
    .join(", ");
}
