import { compareText } from "../../history/record.ts";
import { type DayNumber, isoDate } from "../../journal/calendar.ts";
import { declaredLines } from "../../journal/declared-lines.ts";
import type { Journal } from "../../journal/journal.ts";
import { needInWords, whatIsWanted } from "../../plan/key-words.ts";
import { type PractisedKey, practisedKeys } from "../../plan/keys-played.ts";
import { type KeyNeed, keysWanted } from "../../plan/keys-wanted.ts";
import { nameOfPart } from "../../plan/pieces-in-hand.ts";
import { type WaysPlayed, waysPlayed } from "../../plan/ways-played.ts";

/** Both ends included. */
export interface Days {
  readonly since: DayNumber;
  readonly until: DayNumber;
}

/** What was played of keys in some days, and what the current pieces want on the last of them. */
export interface KeysOfJournal extends WaysPlayed {
  /** Those with most days first. */
  readonly keys: readonly PractisedKey[];
  readonly wanted: readonly KeyNeed[];
}

/** `keys --json` of one journal. */
export interface KeysReport extends WaysPlayed {
  readonly since: string;
  readonly until: string;
  readonly keys: readonly {
    readonly kind: string;
    readonly tonic: string;
    readonly fifths: number | null;
    readonly days: number;
    readonly last: string | null;
  }[];
  readonly wanted: readonly {
    readonly piece: string;
    readonly what: KeyNeed["what"];
    readonly name: string;
    readonly played: boolean;
    readonly last: string | null;
    readonly why: string;
  }[];
}

export function keysOfJournal(journal: Journal, { since, until }: Days): KeysOfJournal {
  const asked = { since, today: until, instrument: null };
  const keys = [...practisedKeys(journal, asked)].sort(
    (a, b) => b.days.size - a.days.size || compareText(a.key.name, b.key.name),
  );
  return { keys, ...waysPlayed(journal, asked), wanted: keysWanted(journal, declaredLines(journal), until) };
}

export function keysReport(journal: Journal, days: Days): KeysReport {
  const { keys, wanted, ...ways } = keysOfJournal(journal, days);
  return {
    since: isoDate(days.since),
    until: isoDate(days.until),
    keys: keys.map(({ key, days: on, last }) => ({
      kind: key.kind,
      tonic: journal.names.name(key.tonic),
      fifths: key.fifths,
      days: on.size,
      last: isoDate(last.day),
    })),
    ...ways,
    wanted: wanted.map((need) => ({
      piece: nameOfPart(need.part),
      what: need.what,
      name: whatIsWanted(journal, need),
      played: need.played,
      last: need.last === null ? null : isoDate(need.last),
      why: needInWords(journal, need, days.until),
    })),
  };
}
