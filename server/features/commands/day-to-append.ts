import { orderOf } from "../../checks/file/journal-order.ts";
import type { Journal } from "../../journal/journal.ts";
import { createDocument, type Document } from "../../syntax/document/document.ts";
import { datedDays, daysOfJournal, type PlacedDay } from "../explain/dated-days.ts";
import { lineEndOf } from "../explain/line-under-cursor.ts";
import { lastPhases } from "../explain/phases-before.ts";
import { isSeparated } from "./lines-in-file.ts";
import type { NewDayOptions } from "./new-day.ts";
import { dayLine } from "./today-line.ts";

/** Today's lines, for the end of a file. */
export interface DayToAppend {
  /** As the file writes its days, or, where it has none, the file of the latest day. */
  readonly line: string;
  /** Those of the last session, where they are asked for; none where no session had any. */
  readonly phases: readonly string[];
  /** What parts the lines from the end of the file: the end of its last line, an empty line. */
  readonly lead: string;
  readonly lineEnd: string;
  /** The end of the file is the wrong place: its newest day comes first. */
  readonly newestFirst: boolean;
}

/** @param uri of the file that the lines go to; undefined where that is not known, so that nothing goes before them */
export function dayToAppend(journal: Journal, uri: string | undefined, { today, phases }: NewDayOptions): DayToAppend {
  const file = uri === undefined ? undefined : journal.files.get(uri);
  const own = file ? datedDays(uri!, file) : [];
  const days = own.length > 0 ? own : daysOfLatestFile(journal);
  const document = days[0]?.document ?? file ?? createDocument("");
  return {
    line: dayLine(journal, document, days, today),
    phases: phases ? (lastPhases(journal, today)?.lines ?? []) : [],
    lead: file ? leadAfter(file) : "",
    lineEnd: lineEndOf(file ?? document),
    newestFirst: orderOf(own).newestFirst,
  };
}

function daysOfLatestFile(journal: Journal): readonly PlacedDay[] {
  const latest = daysOfJournal(journal).reduce<PlacedDay | undefined>(
    (a, b) => (a && a.date > b.date ? a : b),
    undefined,
  );
  return latest ? datedDays(latest.uri, latest.document) : [];
}

function leadAfter(document: Document): string {
  const [before = "", last] = document.blocks.flatMap(({ lines }) => lines).slice(-2);
  const end = lineEndOf(document);
  if (last === undefined) return before.trim() === "" ? "" : end + end;
  const closed = last === "" ? "" : end;
  const above = last === "" ? before : last;
  return closed + (above.trim() !== "" && isSeparated(document) ? end : "");
}
