import { historyInSteps } from "../../history/journal-history.ts";
import type { Journal } from "../../journal/journal.ts";
import { readForTitles } from "../../journal/titles/journal-titles.ts";
import type { Position } from "../../syntax/document/document.ts";
import { declarationsOf, locationOf } from "./declarations.ts";
import { firstRecord, placeOfRecord, recordsOf, workOnExercise } from "./exercise-places.ts";
import type { Location } from "./named.ts";
import { placesOfName, teaching } from "./places-of-name.ts";
import { type ExerciseThere, type NamedThere, underCursor } from "./under-cursor.ts";

/**
 * Where what stands at a position comes from: a name's declaration, and for a title without one the line that teaches
 * it; of an exercise the aims and the set work that name it, or else where it was first played. None where nothing with
 * a name or a history stands there. In steps, as the whole journal may have to be read.
 */
export function* definitionsAt(
  journal: Journal,
  uri: string,
  position: Position,
): Generator<void, readonly Location[]> {
  yield* readForTitles(journal);
  const subject = underCursor(journal, uri, position)?.subject;
  if (!subject) return [];
  return yield* subject.type === "name" ? ofName(journal, subject) : ofExercise(journal, subject);
}

/** A short name leads to the short name, all else to the name itself. */
function* ofName(journal: Journal, { name, mention }: NamedThere): Generator<void, readonly Location[]> {
  const declared = declarationsOf(journal, name);
  const alike = declared.filter((each) => each.mention.form === mention.form);
  const whole = declared.filter((each) => each.mention.form === "whole");
  if (declared.length > 0) return (alike.length > 0 ? alike : whole).map(locationOf);
  if (name.kind !== "title") return [];
  const taught = teaching(journal, yield* placesOfName(journal, name));
  return taught ? [locationOf(taught)] : [];
}

function* ofExercise(journal: Journal, exercise: ExerciseThere): Generator<void, readonly Location[]> {
  const work = workOnExercise(journal, exercise);
  if (work.length > 0) return work;
  const records = recordsOf(yield* historyInSteps(journal), exercise);
  const first = firstRecord(records);
  const place = first && placeOfRecord(journal, first, exercise.strandKey !== undefined);
  return place ? [place] : [];
}
