import { type DayNumber, dayNumber, parseIsoDate } from "../journal/calendar.ts";

/** Milliseconds since 1970-01-01 UTC, as `Date.now` gives them. */
export type Clock = () => number;

/**
 * Which calendar day is today: a fixed day, or else that of a time zone. A zone is an IANA name; an empty one, and one
 * that does not exist, stands for that of the machine that the server runs on.
 */
export class Today {
  #fixed: DayNumber | undefined;
  /** What reads the clock in each zone that was asked for; undefined for one that does not exist. */
  readonly #zones = new Map<string, Intl.DateTimeFormat | undefined>();
  readonly #seen = new Map<string, DayNumber>();

  constructor(
    private readonly clock: Clock,
    /** Called at the first look at a zone that finds another day than the look before. */
    private readonly turned: (zone: string) => void = () => {},
  ) {}

  /** @param date ISO 8601, `2026-03-08`; anything else leaves the clock in charge */
  fix(date: string | undefined): void {
    this.#fixed = date === undefined ? undefined : parseIsoDate(date);
  }

  knows(zone: string): boolean {
    return zone === "" || this.#formatOf(zone) !== undefined;
  }

  dayIn(zone: string): DayNumber {
    const day = this.#fixed ?? this.#read(zone);
    const before = this.#seen.get(zone);
    if (before === day) return day;
    this.#seen.set(zone, day);
    if (before !== undefined) this.turned(zone);
    return day;
  }

  #read(zone: string): DayNumber {
    const format = zone === "" ? undefined : this.#formatOf(zone);
    return format ? dayBy(format, this.clock()) : localDay(this.clock());
  }

  #formatOf(zone: string): Intl.DateTimeFormat | undefined {
    if (!this.#zones.has(zone)) this.#zones.set(zone, formatFor(zone));
    return this.#zones.get(zone);
  }
}

function formatFor(timeZone: string): Intl.DateTimeFormat | undefined {
  try {
    return new Intl.DateTimeFormat("en-u-ca-iso8601-nu-latn", {
      timeZone,
      year: "numeric",
      month: "numeric",
      day: "numeric",
    });
  } catch {
    return undefined;
  }
}

function dayBy(format: Intl.DateTimeFormat, now: number): DayNumber {
  const parts = format.formatToParts(now);
  const part = (type: "year" | "month" | "day") => Number(parts.find((each) => each.type === type)?.value);
  return dayNumber(part("year"), part("month"), part("day"))!;
}

/** `Date` only reads the clock here: its local year, month and day are the calendar's. */
function localDay(now: number): DayNumber {
  const date = new Date(now);
  return dayNumber(date.getFullYear(), date.getMonth() + 1, date.getDate())!;
}
