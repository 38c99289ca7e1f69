import { undeclaredTitles } from "../../features/preview/pieces.ts";
import { type AttemptRecord, inTimeOrder } from "../../history/record.ts";
import { placeKey } from "../../history/strand-key.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { declaredLines, ofType } from "../../journal/declared-lines.ts";
import type { Journal } from "../../journal/journal.ts";
import { declaredParts, nameOfPart, type Part, partsOf } from "../../plan/pieces-in-hand.ts";
import type { DaysAsked } from "./days-asked.ts";

/** A piece, study or movement that was worked in the days of a report. */
export interface WorkedPiece {
  readonly name: string;
  /** Beats a minute; null where none is declared. */
  readonly goal: number | null;
  /** The latest worked first. */
  readonly places: readonly WorkedPlace[];
  /** Where it is declared. */
  readonly part?: Part;
}

export interface WorkedPlace {
  /** As typed last; null for the whole piece. */
  readonly where: string | null;
  /** On which it was worked, the earliest first. */
  readonly days: readonly DayNumber[];
  /** The tempo reached there last, up to the end of these days, in beats a minute; null where none was. */
  readonly latest: number | null;
}

/** The pieces that were worked in some days: those declared in their order, then other titles, the latest first. */
export function piecesWorked(journal: Journal, days: DaysAsked): readonly WorkedPiece[] {
  const lines = declaredLines(journal);
  const declared = declaredParts(journal, lines, days.until);
  const movements = ofType(lines, "movement");
  return [
    ...declared.flatMap((piece) => partsOf(piece, movements)).map((part) => workedPart(part, days)),
    ...undeclaredTitles(journal, declared, days.until).map((records) => ({
      name: records.at(-1)!.subject,
      goal: null,
      places: placesOf(records, days),
    })),
  ].filter(({ places }) => places.length > 0);
}

function workedPart(part: Part, days: DaysAsked): WorkedPiece {
  const { line, records } = part;
  const goal = line.declared.goal?.bpm ?? null;
  return { name: nameOfPart(part), goal, places: placesOf(records, days), part };
}

function placesOf(records: readonly AttemptRecord[], { since }: DaysAsked): readonly WorkedPlace[] {
  const byPlace = new Map<string, AttemptRecord[]>();
  for (const record of records) {
    const key = record.where === null ? "" : placeKey(record.where);
    byPlace.set(key, [...(byPlace.get(key) ?? []), record]);
  }
  return [...byPlace]
    .filter(([, own]) => own.at(-1)!.day >= since)
    .sort(([, a], [, b]) => inTimeOrder(b.at(-1)!, a.at(-1)!))
    .map(([, own]) => ({
      where: own.at(-1)!.where,
      days: [...new Set(own.flatMap(({ day }) => (day >= since ? [day] : [])))],
      latest: own.findLast(({ reached, rate }) => reached === true && rate !== null)?.rate ?? null,
    }));
}
