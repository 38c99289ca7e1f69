import { type Instrument, isInRange } from "../music/instrument.ts";
import { type Note, printNote, samePitch } from "../music/note.ts";
import { type Finding, finding, type Stretch } from "./finding.ts";

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

function listed(notes: readonly Note[], last: "and" | "or"): string {
  const names = notes.slice(0, NAMED).map(printNote);
  const more = notes.length - names.length;
  if (more > 0) return `${names.join(", ")} and ${more} more`;
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} ${last} ${names.at(-1)}`;
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
): readonly Finding[] {
  const absent = outside(notes, instrument);
  if (absent.length === 0) return [];
  const range = `${printNote(instrument.low)} to ${printNote(instrument.high)} as written`;
  const soft = instrument.soft ? ` Its range is not firm: ${instrument.soft}.` : "";
  const lacks =
    instrument.family === "voice"
      ? `Beyond the usual range of the ${instrument.names[0]}: ${listed(absent, "and")}`
      : `The ${instrument.names[0]} has no ${listed(absent, "or")}`;
  const message = `${lacks} (${range}).${soft}`;
  return [finding("out-of-range", place, message)];
}
