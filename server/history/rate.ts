import type { Conventions } from "../journal/conventions.ts";
import type { Conditions, Entry, NoteValue, Tempo } from "../journal/model.ts";
import { notesPerMinute, QUARTER } from "../music/notes/note-value.ts";
import { nameKey } from "../syntax/words/fold.ts";

/** Playing in these manners is practice without a rate. */
const WITHOUT_RATE = ["sung", "silent", "mental"];

/** What the metronome counts and what the rate does; the same where the rate is the metronome's figure. */
export interface Counting {
  readonly beat: NoteValue;
  readonly value: NoteValue;
}

/**
 * How tempos become rates: notes a minute, or for a title beats a minute in the beat of its goal. Without a note value,
 * on the line or for the journal, an entry counts one note a beat. Undefined where what was played has no rate.
 */
export function countingOf(
  entry: Entry,
  { manner, noteValue }: Conditions,
  { beat }: Pick<Tempo, "beat">,
  conventions: Conventions,
): Counting | undefined {
  if (manner.some((each) => WITHOUT_RATE.includes(each))) return undefined;
  if (entry.subject?.type === "title") {
    const goal = goalBeat(entry, conventions);
    return { beat: beat ?? goal, value: goal };
  }
  const value = noteValue ?? conventions.noteValue;
  return value ? { beat: beat ?? QUARTER, value } : { beat: QUARTER, value: QUARTER };
}

/** Null for a tempo of nothing. */
export function rateBy({ beat, value }: Counting, bpm: number): number | null {
  return bpm > 0 ? notesPerMinute(bpm, beat, value) : null;
}

/** The beat that a title's tempos are told in: of the movement's goal, else of the piece's, else a quarter. */
export function goalBeat(entry: Entry, { piecesByTitle }: Conventions): NoteValue {
  if (entry.subject?.type !== "title") return QUARTER;
  const own = piecesByTitle.get(nameKey(entry.subject.title)) ?? [];
  const movement = own.find(
    (piece) => piece.type === "movement" && piece.movement === entry.where?.movement && piece.goal,
  );
  return (movement ?? own.find((piece) => piece.type === "piece" && piece.goal))?.goal?.beat ?? QUARTER;
}
