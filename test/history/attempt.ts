import type { AttemptRecord } from "../../server/history/record.ts";
import { exerciseKeyOf, strandKeyOf } from "../../server/history/strand-key.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { createDocument } from "../../server/syntax/document/document.ts";

/** The day that attempts stand in unless said: one for all, as many of them are made. */
const BLOCK = createDocument("").blocks[0]!;

/** An attempt at D minor melodic in thirds, reached, with what differs. */
export function attempt(different: Partial<AttemptRecord> = {}): AttemptRecord {
  const told = {
    day: parseIsoDate("2026-03-02")!,
    order: 0,
    instrument: "alto recorder",
    subject: "D minor melodic",
    subjectKey: "scale:d:melodic",
    pattern: "thirds",
    movement: null,
    where: null,
    reach: "octave",
    tonguing: "single",
    evenness: "even",
    unit: "notes",
    rate: 120,
    reached: true,
    count: 1,
    got: different.reached === false ? 0 : (different.count ?? 1),
    minutes: 5,
    about: false,
    uri: "file:///alto.practice",
    block: BLOCK,
    line: 0,
    ...different,
  } as Omit<AttemptRecord, "exerciseKey" | "strandKey">;
  return { ...told, exerciseKey: exerciseKeyOf(told), strandKey: strandKeyOf(told) };
}

/** An attempt at a piece, in beats a minute. */
export function pieceAttempt(different: Partial<AttemptRecord> = {}): AttemptRecord {
  return attempt({
    subject: "Ground in G minor",
    subjectKey: "title:ground in g minor",
    pattern: null,
    where: "bars 17-32",
    reach: null,
    unit: "beats",
    rate: 70,
    ...different,
  });
}

/**
 * Attempts of one strand from lines of a date and its rates; `72x` was not reached, `-` had no tempo:
 *
 *     2026-03-02  60 66 72x
 */
export function practised(lines: string, common: Partial<AttemptRecord> = {}): AttemptRecord[] {
  return lines
    .trim()
    .split("\n")
    .flatMap((line, number) => {
      const [date, ...rates] = line.trim().split(/\s+/);
      return rates.map((rate, order) =>
        attempt({
          day: parseIsoDate(date!)!,
          order,
          line: number,
          rate: rate === "-" ? null : Number.parseFloat(rate),
          reached: !rate.endsWith("x"),
          ...common,
        }),
      );
    });
}
