import type { Conventions } from "../journal/conventions.ts";
import type { Entry, NoteValue, Tempo } from "../journal/model.ts";
import { notesPerMinute } from "../music/value.ts";
import { nameKey } from "../syntax/fold.ts";

export const QUARTER: NoteValue = { numerator: 1, denominator: 4 };

/**
 * What an attempt's tempo comes to: notes a minute, or for a title beats a minute in the beat of its goal. Without a
 * note value, on the line or for the journal, an entry counts one note a beat. Null for a tempo of nothing.
 */
export function rateOf(
  entry: Entry,
  { bpm, beat }: Tempo,
  stated: NoteValue | undefined,
  conventions: Conventions,
): number | null {
  if (!(bpm > 0)) return null;
  if (entry.subject?.type === "title") {
    const goal = goalBeat(entry, conventions);
    return notesPerMinute(bpm, beat ?? goal, goal);
  }
  const noteValue = stated ?? conventions.noteValue;
  return noteValue ? notesPerMinute(bpm, beat ?? QUARTER, noteValue) : bpm;
}

/** The beat that a title's tempos are told in: of the movement's goal, else of the piece's, else a quarter. */
export function goalBeat(entry: Entry, { pieces }: Conventions): NoteValue {
  if (entry.subject?.type !== "title") return QUARTER;
  const title = nameKey(entry.subject.title);
  const own = pieces.filter((piece) => nameKey(piece.title) === title);
  const movement = own.find(
    (piece) => piece.type === "movement" && piece.movement === entry.where?.movement && piece.goal,
  );
  return (movement ?? own.find((piece) => piece.type === "piece" && piece.goal))?.goal?.beat ?? QUARTER;
}
