import type { AttemptRecord } from "../../../server/history/record.ts";
import { isoDate, parseIsoDate } from "../../../server/journal/calendar.ts";
import { attempt } from "../attempt.ts";
import type { Sitting } from "./player.ts";

const MONDAY = parseIsoDate("2026-01-05")!;

/** The player counts quarters and plays 8ths. */
export const NOTES_A_BEAT = 2;

/** One of hundreds of thousands: what is the same in all of them is on the prototype. */
class Played {
  constructor(
    readonly day: number,
    readonly order: number,
    readonly rate: number,
    readonly reached: boolean,
    readonly got = reached ? 1 : 0,
  ) {}
}
Object.assign(Played.prototype, attempt());

/** The sittings as the history takes them. */
export function recordsOf(sittings: readonly Sitting[]): AttemptRecord[] {
  return sittings.flatMap(({ day, attempts }) =>
    attempts.map(
      ({ bpm, reached }, order) => new Played(MONDAY + day, order, NOTES_A_BEAT * bpm, reached) as AttemptRecord,
    ),
  );
}

/** The same as the player writes it down. */
export function journalOf(sittings: readonly Sitting[]): string {
  const days = sittings.map(({ day, attempts }) => {
    const noted = attempts.map(({ bpm, reached }) => `${bpm} ${reached ? "clean" : "uneven"}`);
    return `${isoDate(MONDAY + day)}, 15 min\n  D melodic minor, thirds, tongued, 8ths at ${noted.join(", ")}\n`;
  });
  return `instrument alto recorder\n\n${days.join("\n")}`;
}
