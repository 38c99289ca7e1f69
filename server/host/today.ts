import { dayNumber, parseIsoDate } from "../journal/calendar.ts";
import type { DayNumber } from "../journal/model.ts";

/** Milliseconds since 1970-01-01 UTC, as `Date.now` gives them. */
export type Clock = () => number;

/** Whose calendar day is today: a fixed day, a time zone's, or else that of the machine that the server runs on. */
export class Today {
  #fixed: DayNumber | undefined;
  #zone: Intl.DateTimeFormat | undefined;

  constructor(private readonly clock: Clock) {}

  /** @param date ISO 8601, `2026-03-08`; anything else leaves the clock in charge */
  fix(date: string | undefined): void {
    this.#fixed = date === undefined ? undefined : parseIsoDate(date);
  }

  /** @param name an IANA time zone, or empty for the machine's own. False when there is no such zone: then the machine's own serves. */
  setTimeZone(name: string): boolean {
    this.#zone = undefined;
    if (name === "") return true;
    try {
      this.#zone = new Intl.DateTimeFormat("en-u-ca-iso8601-nu-latn", {
        timeZone: name,
        year: "numeric",
        month: "numeric",
        day: "numeric",
      });
      return true;
    } catch {
      return false;
    }
  }

  get day(): DayNumber {
    return this.#fixed ?? (this.#zone ? dayIn(this.#zone, this.clock()) : localDay(this.clock()));
  }
}

function dayIn(zone: Intl.DateTimeFormat, now: number): DayNumber {
  const parts = zone.formatToParts(now);
  const part = (type: "year" | "month" | "day") => Number(parts.find((each) => each.type === type)?.value);
  return dayNumber(part("year"), part("month"), part("day"))!;
}

/** `Date` only reads the clock here: its local year, month and day are the calendar's. */
function localDay(now: number): DayNumber {
  const date = new Date(now);
  return dayNumber(date.getFullYear(), date.getMonth() + 1, date.getDate())!;
}
