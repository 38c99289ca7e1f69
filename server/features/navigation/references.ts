import { historyInSteps } from "../../history/journal-history.ts";
import type { Journal } from "../../journal/journal.ts";
import { readForTitles } from "../../journal/titles/journal-titles.ts";
import type { Position } from "../../syntax/document/document.ts";
import { locationOf } from "./declarations.ts";
import { placeOfRecord, recordsOf, workOnExercise } from "./exercise-places.ts";
import type { Location } from "./named.ts";
import { placesOfName } from "./places-of-name.ts";
import { type ExerciseThere, type NamedThere, underCursor } from "./under-cursor.ts";

/** Whether declarations count among the places. A line that teaches a title is a use of it as well, and always does. */
export interface ReferenceOptions {
  readonly includeDeclaration: boolean;
}

/**
 * All places of a journal that name what stands at a position, or play its exercise; on a tempo, the tempos that were
 * played in the same way. In the order of the files and lines, each once; in steps.
 */
export function* referencesAt(
  journal: Journal,
  uri: string,
  position: Position,
  options: ReferenceOptions,
): Generator<void, readonly Location[]> {
  yield* readForTitles(journal);
  const subject = underCursor(journal, uri, position)?.subject;
  if (!subject) return [];
  const found = yield* subject.type === "name"
    ? toName(journal, subject, options)
    : toExercise(journal, subject, options);
  return inOrder(journal, found);
}

function* toName(
  journal: Journal,
  { name }: NamedThere,
  { includeDeclaration }: ReferenceOptions,
): Generator<void, readonly Location[]> {
  const places = yield* placesOfName(journal, name);
  return places.filter(({ mention }) => includeDeclaration || !mention.isDeclaration).map(locationOf);
}

function* toExercise(
  journal: Journal,
  exercise: ExerciseThere,
  { includeDeclaration }: ReferenceOptions,
): Generator<void, readonly Location[]> {
  const found: Location[] = includeDeclaration ? [...workOnExercise(journal, exercise)] : [];
  for (const record of recordsOf(yield* historyInSteps(journal), exercise)) {
    yield;
    const place = placeOfRecord(journal, record, exercise.strandKey !== undefined);
    if (place) found.push(place);
  }
  return found;
}

function inOrder(journal: Journal, places: readonly Location[]): readonly Location[] {
  const files = new Map(journal.addresses.map((uri, i) => [uri, i]));
  const sorted = [...places].sort(
    (a, b) =>
      files.get(a.uri)! - files.get(b.uri)! ||
      a.range.start.line - b.range.start.line ||
      a.range.start.character - b.range.start.character,
  );
  return sorted.filter((each, i) => i === 0 || !isSamePlace(each, sorted[i - 1]!));
}

function isSamePlace(a: Location, b: Location): boolean {
  const [from, to] = [a.range.start, b.range.start];
  return a.uri === b.uri && from.line === to.line && from.character === to.character;
}
