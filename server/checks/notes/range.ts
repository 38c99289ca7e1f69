import { type Instrument, isInRange } from "../../music/instruments/instrument.ts";
import { type Note, samePitch } from "../../music/notes/note.ts";
import { type NoteNames, noteText } from "../../music/notes/note-names.ts";
import { type Finding, finding, type Stretch } from "../finding.ts";

/** The most notes that the message names. */
const NAMED = 3;

/** The notes that a player named and the instrument does not have, each key once, in the order given. */
function outside(notes: readonly Note[], instrument: Pick<Instrument, "low" | "high">): Note[] {
  const found: Note[] = [];
  for (const note of notes) {
    if (!isInRange(instrument, note) && !found.some((seen) => samePitch(seen, note))) found.push(note);
  }
  return found;
}

function listed(notes: readonly Note[], last: "and" | "or", names: NoteNames): string {
  const shown = notes.slice(0, NAMED).map((note) => noteText(note, names));
  const more = notes.length - shown.length;
  if (more > 0) return `${shown.join(", ")} and ${more} more`;
  return shown.length < 2 ? shown.join("") : `${shown.slice(0, -1).join(", ")} ${last} ${shown.at(-1)}`;
}

/**
 * Whether an instrument has the notes that a line names with their octaves, as written for it.
 *
 * @param notes those of a figure, the two ends of a span, or an exercise's `outOfRange`
 * @param place where they are named: UTF-16 columns, the end excluded
 */
export function checkNotesInRange(
  notes: readonly Note[],
  instrument: Pick<Instrument, "names" | "family" | "low" | "high" | "soft">,
  place: Stretch,
  names: NoteNames,
): readonly Finding[] {
  const absent = outside(notes, instrument);
  if (absent.length === 0) return [];
  const range = `${noteText(instrument.low, names)} to ${noteText(instrument.high, names)} as written`;
  const soft = instrument.soft ? ` Its range is not firm: ${instrument.soft}.` : "";
  const lacks =
    instrument.family === "voice"
      ? `Beyond the usual range of the ${instrument.names[0]}: ${listed(absent, "and", names)}`
      : `The ${instrument.names[0]} has no ${listed(absent, "or", names)}`;
  const message = `${lacks} (${range}).${soft}`;
  return [finding("out-of-range", place, message)];
}
