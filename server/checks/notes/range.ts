import { type Instrument, isInRange } from "../../music/instruments/instrument.ts";
import { instrumentTexts } from "../../music/instruments/instrument-texts.ts";
import { midi, type Note, samePitch } from "../../music/notes/note.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import type { ClaimedNote } from "../../syntax/line/line.ts";
import { type Finding, finding, type Stretch } from "../finding.ts";
import { keyTexts } from "./key-texts.ts";
import { hasStrokes, writtenNote } from "./note-style.ts";

/** The most notes that the message names. */
const NAMED = 3;

type Ranged = Pick<Instrument, "names" | "family" | "low" | "high" | "soft" | "leeway">;

/** Where notes are named, in UTF-16 columns with the end excluded, and how: what is said of them is written alike. */
export interface NamedAt extends Stretch {
  /** What stands there, as typed. */
  readonly text: string;
}

/** Whether nothing is to be said of a note: it is in the range, or beyond an end that is not firm by little enough. */
function passes({ low, high, leeway }: Ranged, note: Note): boolean {
  if (isInRange({ low, high }, note)) return true;
  const key = midi(note);
  return key < midi(low) ? midi(low) - key <= (leeway?.below ?? 0) : key - midi(high) <= (leeway?.above ?? 0);
}

/** The notes that a player named and the instrument does not have, each key once, in the order given. */
function outside(notes: readonly Note[], instrument: Ranged): Note[] {
  const found: Note[] = [];
  for (const note of notes) {
    if (!passes(instrument, note) && !found.some((seen) => samePitch(seen, note))) found.push(note);
  }
  return found;
}

/** As the player writes octaves: `e'` where strokes stand, else `E4`. */
function inStyleOf(text: string, names: NoteNames): (note: Note) => string {
  const strokes = hasStrokes(text);
  const style = { names, spelling: "plain", cross: false, lower: strokes } as const;
  return (note) => writtenNote(note, { ...style, octaves: strokes ? "strokes" : "numbers" });
}

/**
 * Whether an instrument has the notes that a line names with their octaves, as written for it.
 *
 * @param notes those of a figure, the two ends of a span, or an exercise's `outOfRange`
 */
export function checkNotesInRange(
  notes: readonly Note[],
  instrument: Ranged,
  { text, start, end }: NamedAt,
  names: NoteNames,
): readonly Finding[] {
  const absent = outside(notes, instrument);
  if (absent.length === 0) return [];
  const written = inStyleOf(text, names);
  const [low, high] = [written(instrument.low), written(instrument.high)];
  const name = instrumentTexts.name(instrument.names[0]!);
  const told = absent.slice(0, NAMED).map(written);
  const lacks = instrument.family === "voice" ? keyTexts.beyondVoice : keyTexts.notOn;
  const message = lacks(name, told, absent.length - told.length, low, high);
  const varies = instrument.soft ? keyTexts.rangeVaries(instrument.soft) : "";
  return [finding("out-of-range", { start, end }, message + varies)];
}

/** The same of a list of notes behind a colon, as far as octaves stand there: one finding for notes in a row. */
export function checkListInRange(
  claimed: readonly ClaimedNote[],
  instrument: Ranged,
  names: NoteNames,
): readonly Finding[] {
  const rows: ClaimedNote[][] = [];
  let before: ClaimedNote | undefined;
  for (const each of claimed) {
    const absent = isPlaced(each) && !passes(instrument, each.note);
    if (absent && before) rows.at(-1)!.push(each);
    else if (absent) rows.push([each]);
    before = absent ? each : undefined;
  }
  return rows.flatMap((row) => {
    const place = { text: row[0]!.text, start: row[0]!.start, end: row.at(-1)!.end };
    return checkNotesInRange(
      row.filter(isPlaced).map(({ note }) => note),
      instrument,
      place,
      names,
    );
  });
}

function isPlaced(claimed: ClaimedNote): claimed is ClaimedNote & { readonly note: Note } {
  return claimed.note?.octave !== undefined;
}
