import { type AttemptRecord, inTimeOrder } from "./record.ts";
import { type Exercise, exerciseOf, exercisesInSteps, grouped, type Strand, strandOf } from "./strands.ts";

/**
 * All attempts of a journal by exercise and strand. Immutable: an edit makes the next one by the difference, and
 * exercises and strands that it does not touch are the same objects, so that what is derived from them (weeks, trends)
 * stays.
 */
export class HistoryIndex {
  private constructor(
    /** By their keys. */
    readonly exercises: ReadonlyMap<string, Exercise>,
  ) {}

  /** Of any records, a few at each step. */
  static *inSteps(records: readonly AttemptRecord[]): Generator<void, HistoryIndex> {
    const exercises = yield* exercisesInSteps(records);
    return new HistoryIndex(new Map(exercises.map((exercise) => [exercise.key, exercise])));
  }

  /**
   * The index without some records and with others. Those that go must be the same objects that came.
   *
   * @param placeOf where a record's day stands in its file, by which alone records are told apart that say the same
   */
  changed(gone: readonly AttemptRecord[], come: readonly AttemptRecord[], placeOf: PlaceOf): HistoryIndex {
    if (gone.length === 0 && come.length === 0) return this;
    const exercises = new Map(this.exercises);
    const [going, coming] = [grouped(gone, "exerciseKey"), grouped(come, "exerciseKey")];
    for (const key of new Set([...going.keys(), ...coming.keys()])) {
      const strands = strandsAfter(
        exercises.get(key)?.strands ?? [],
        going.get(key) ?? [],
        coming.get(key) ?? [],
        placeOf,
      );
      if (strands.length > 0) exercises.set(key, exerciseOf(strands));
      else exercises.delete(key);
    }
    return new HistoryIndex(exercises);
  }

  /** The strand that an attempt belongs to. */
  strandOf({ exerciseKey, strandKey }: Pick<AttemptRecord, "exerciseKey" | "strandKey">): Strand | undefined {
    return this.exercises.get(exerciseKey)?.strands.find(({ key }) => key === strandKey);
  }
}

/** The strands of one exercise; those that nothing touches are the same objects. */
function strandsAfter(
  before: readonly Strand[],
  gone: readonly AttemptRecord[],
  come: readonly AttemptRecord[],
  placeOf: PlaceOf,
): readonly Strand[] {
  const [going, coming] = [grouped(gone, "strandKey"), grouped(come, "strandKey")];
  const known = new Map(before.map((strand) => [strand.key, strand]));
  for (const key of new Set([...going.keys(), ...coming.keys()])) {
    const out = new Set(going.get(key));
    const records = (known.get(key)?.records ?? []).filter((record) => !out.has(record));
    for (const record of coming.get(key) ?? []) records.splice(indexIn(records, record, placeOf), 0, record);
    if (records.length > 0) known.set(key, strandOf(records));
    else known.delete(key);
  }
  return [...known.values()];
}

type PlaceOf = (record: AttemptRecord) => number;

/** Where a record belongs among others in time order. */
function indexIn(records: readonly AttemptRecord[], record: AttemptRecord, placeOf: PlaceOf): number {
  let low = 0;
  let high = records.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const other = records[middle]!;
    if ((inTimeOrder(other, record) || placeOf(other) - placeOf(record)) <= 0) low = middle + 1;
    else high = middle;
  }
  return low;
}
