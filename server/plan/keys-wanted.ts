import { entryMadeOnce } from "../history/entry-of-record.ts";
import type { HistoryIndex } from "../history/history-index.ts";
import { journalHistory } from "../history/journal-history.ts";
import type { Exercise } from "../history/strands.ts";
import { KEY_WITHIN, NEIGHBOUR_WITHIN } from "../history/thresholds.ts";
import type { DayNumber } from "../journal/calendar.ts";
import { type DeclaredLine, ofType } from "../journal/declared-lines.ts";
import type { Journal } from "../journal/journal.ts";
import { keyOfPiece } from "../journal/likely-key.ts";
import type { Note } from "../music/notes/note.ts";
import { type HomeKey, homeKeyOf, homeKeysOf, neighboursOf } from "./home-keys.ts";
import { declaredParts, inHandOf, isDatePassed, type Part, partsOf } from "./pieces-in-hand.ts";
import { type NoteReach, type RangeWanted, rangeWanted } from "./range-wanted.ts";

/** Something that a piece in hand wants, whether it was played lately enough, and when last. */
export type KeyNeed = KeyWanted | RangeNeed | FingerChangeNeed;

interface NeedOfPart {
  readonly part: Part;
  readonly key: HomeKey;
  /** Whether it was played within the days that the need is met for. */
  readonly played: boolean;
  readonly last: DayNumber | null;
}

export interface KeyWanted extends NeedOfPart {
  /** The piece's own key, or one a fifth from it. */
  readonly what: "key" | "neighbour";
  /** The piece's key is only likely, by its last note and signature. */
  readonly likely: boolean;
}

export interface RangeNeed extends NeedOfPart {
  readonly what: "range";
  readonly range: NoteReach;
  /** As far as the lines of the key went lately; null where none was played. */
  readonly went: NoteReach | null;
}

export interface FingerChangeNeed extends NeedOfPart {
  readonly what: "fingerChange";
  readonly from: Note;
  readonly to: Note;
}

/**
 * What the pieces in hand want of keys on a day: their own, those next to them, the lines of their key as high and as
 * low as they go, and on a recorder the hardest finger change on that way. In this order, the nearest piece first. A
 * key that is some piece's own is not wanted once more as another's neighbour. Titles meet no need.
 */
export function keysWanted(journal: Journal, lines: readonly DeclaredLine[], today: DayNumber): readonly KeyNeed[] {
  const parts = neededBy(journal, lines, today);
  const played = playedIn(journal, today);
  const keyed = parts.flatMap((part) => {
    const found = keyOfPiece(part.line.declared);
    return found ? [{ part, key: homeKeyOf(found.key), likely: found.likely }] : [];
  });
  const asked = new Set<string>();
  const once = (name: string): boolean => !asked.has(name) && asked.add(name).has(name);
  const own = keyed.map((one) => keyWanted(one, "key", played, today));
  for (const { key } of keyed) asked.add(key.id);
  const next = keyed.flatMap(({ part, key, likely }) =>
    neighboursOf(key, journal.conventions(part.line.uri))
      .filter(({ id }) => once(id))
      .map((neighbour) => keyWanted({ part, key: neighbour, likely }, "neighbour", played, today)),
  );
  const ranges = keyed.map(({ part, key }) => ({ part, key, wanted: rangeWanted(journal, part, key, today) }));
  return [
    ...own,
    ...next,
    ...ranges.flatMap(({ part, key, wanted }) => (wanted ? [rangeNeed(part, key, wanted)] : [])),
    ...ranges.flatMap(({ part, key, wanted }) =>
      wanted?.change ? [{ part, key, what: "fingerChange" as const, ...wanted.change }] : [],
    ),
  ];
}

/** The pieces in hand, or their movements; not those whose day has passed and that were not touched since. */
function neededBy(journal: Journal, lines: readonly DeclaredLine[], today: DayNumber): readonly Part[] {
  const movements = ofType(lines, "movement");
  return inHandOf(declaredParts(journal, lines, today), today)
    .filter((part) => !isDatePassed(part, today))
    .flatMap((piece) => partsOf(piece, movements));
}

type LastPlayed = ReadonlyMap<string, DayNumber>;

function keyWanted(
  one: { readonly part: Part; readonly key: HomeKey; readonly likely: boolean },
  what: KeyWanted["what"],
  played: LastPlayed,
  today: DayNumber,
): KeyWanted {
  const last = played.get(one.key.id) ?? null;
  const within = what === "key" ? KEY_WITHIN : NEIGHBOUR_WITHIN;
  return { ...one, what, last, played: last !== null && today - last <= within };
}

function rangeNeed(part: Part, key: HomeKey, { range, went, last, played }: RangeWanted): RangeNeed {
  return { part, key, what: "range", range, went, last, played };
}

/** The latest day up to one on which each key was practised, by its id. */
function playedIn(journal: Journal, today: DayNumber): LastPlayed {
  const index: HistoryIndex = journalHistory(journal);
  return journal.memo.from(index, "keys last played", [today], () => {
    const found = new Map<string, DayNumber>();
    for (const exercise of index.exercises.values()) {
      const last = lastDayOf(exercise, today);
      if (last === undefined) continue;
      for (const id of homeKeysOfExercise(journal, exercise)) found.set(id, Math.max(last, found.get(id) ?? last));
    }
    return found;
  });
}

function lastDayOf({ strands }: Exercise, today: DayNumber): DayNumber | undefined {
  const days = strands.flatMap(({ records }) => records.findLast(({ day }) => day <= today)?.day ?? []);
  return days.length === 0 ? undefined : Math.max(...days);
}

/** The keys of an exercise's subject, by their ids. */
export function homeKeysOfExercise(journal: Journal, exercise: Exercise): readonly string[] {
  return journal.memo.of(exercise, "home keys", () => {
    const last = exercise.strands[0]!.records.at(-1)!;
    return homeKeysOf(entryMadeOnce(journal, last)?.subject);
  });
}
