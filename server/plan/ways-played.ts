import { articulationWords } from "../history/articulation-words.ts";
import { attemptOfRecord, entryMadeOnce } from "../history/entry-of-record.ts";
import { journalHistory } from "../history/journal-history.ts";
import { type AttemptRecord, compareText } from "../history/record.ts";
import type { DayNumber } from "../journal/calendar.ts";
import type { Journal } from "../journal/journal.ts";
import type { Conditions, Direction, Reach } from "../journal/model.ts";
import { type NoteNames, noteText } from "../music/notes/note-names.ts";
import type { PlayedAsked } from "./keys-played.ts";

/** A way of playing, and on how many days it was played. */
export interface WayPlayed {
  readonly name: string;
  readonly days: number;
}

/** How scales and chords were played in some days: each list with most days first, then by name. */
export interface WaysPlayed {
  readonly patterns: readonly WayPlayed[];
  readonly articulations: readonly WayPlayed[];
  readonly directions: readonly WayPlayed[];
  readonly reaches: readonly WayPlayed[];
}

type DaysByName = Map<string, Set<DayNumber>>;

const REACHES = { short: "under an octave", octave: "one octave", twelfth: "a twelfth", wide: "two octaves" } as const;
const DIRECTIONS: Readonly<Record<Direction, string>> = {
  up: "up",
  down: "down",
  "up and down": "up and down",
  "down and up": "top down",
  "back and forth": "back and forth",
};

/** What a line does not say is as it goes without saying: the usual articulation, up and down, one octave. */
export function waysPlayed(
  journal: Journal,
  { since = Number.NEGATIVE_INFINITY, today, instrument }: PlayedAsked,
): WaysPlayed {
  const [patterns, articulations, directions, reaches]: DaysByName[] = [new Map(), new Map(), new Map(), new Map()];
  for (const exercise of journalHistory(journal).exercises.values()) {
    if (exercise.pattern === null || (instrument !== null && exercise.instrument !== instrument)) continue;
    for (const record of exercise.strands.flatMap(({ records }) => records)) {
      const { day, tonguing, reach } = record;
      if (day < since || day > today) continue;
      const conditions = conditionsOf(journal, record);
      add(patterns!, exercise.pattern, day);
      const articulation = conditions?.articulation?.text ?? articulationWords(journal, record).alone(tonguing);
      if (articulation !== null) add(articulations!, articulation, day);
      add(directions!, DIRECTIONS[conditions?.direction ?? "up and down"], day);
      const far = conditions?.reach ? reachText(conditions.reach, journal.names) : reach && REACHES[reach];
      if (far) add(reaches!, far, day);
    }
  }
  const listed = (found: DaysByName): readonly WayPlayed[] =>
    Array.from(found, ([name, days]) => ({ name, days: days.size })).sort(
      (a, b) => b.days - a.days || compareText(a.name, b.name),
    );
  return {
    patterns: listed(patterns!),
    articulations: listed(articulations!),
    directions: listed(directions!),
    reaches: listed(reaches!),
  };
}

function add(found: DaysByName, name: string, day: DayNumber): void {
  const days = found.get(name) ?? new Set();
  days.add(day);
  found.set(name, days);
}

function conditionsOf(journal: Journal, record: AttemptRecord): Conditions | undefined {
  const entry = entryMadeOnce(journal, record);
  return entry && attemptOfRecord(entry, record)?.conditions;
}

function reachText(reach: Reach, names: NoteNames): string {
  switch (reach.type) {
    case "degrees":
      return `${reach.count} notes`;
    case "octaves":
      return reach.count === 1 ? REACHES.octave : reach.count === 2 ? REACHES.wide : `${reach.count} octaves`;
    case "twelfth":
      return REACHES.twelfth;
    case "full range":
      return "full range";
    case "between":
      return `${noteText(reach.from, names)} to ${noteText(reach.to, names)}`;
  }
}
