import type { PreviewNote, PreviewStaff } from "../../../shared/staff.ts";
import { type Conventions, instrumentOf } from "../../journal/conventions.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import { notesHidden } from "../../journal/notes-hidden.ts";
import { fingeringOf, printFingering } from "../../music/fingering/fingering.ts";
import type { Instrument } from "../../music/instruments/instrument.ts";
import { type NoteNames, noteText } from "../../music/notes/note-names.ts";
import type { Staff, StaffNote } from "../../notation/staff.ts";
import type { StaffDrawer } from "../../notation/staff-look.ts";
import { stavesOfClaim } from "../explain/claimed-entry.ts";
import { entryStaff } from "../explain/entry-staff.ts";
import { fingeringInWords } from "../explain/finger-words.ts";
import { entryUnderCursor } from "../explain/line-under-cursor.ts";
import { nameOfEntry } from "../explain/written-name.ts";
import { sectionTexts } from "./section-texts.ts";

export interface StaffShown {
  /** Undefined where nobody draws. */
  readonly drawer: StaffDrawer | undefined;
  /** In pixels. */
  readonly width: number;
  readonly fingerings: boolean;
}

/** Narrower pages have smaller staves, in pixels; and how large either are. */
const NARROW = 420;
const SCALE = 0.85;
const SCALE_NARROW = 0.7;

/**
 * The exercise on a line as a staff, with what there is to say of each note; null where the line has none. Notes
 * written out that are not right stand above those that they should be.
 */
export function staffUnderCursor(journal: Journal, uri: string, line: number, shown: StaffShown): PreviewStaff | null {
  const found = entryUnderCursor(journal, uri, { line, character: 0 });
  if (!found.ok) return null;
  const { entry, text, model } = found;
  const conventions = journal.conventions(uri);
  const title = nameOfEntry(entry, text, conventions);
  const { width, fingerings, drawer } = shown;
  const reading = entryStaff({ entry, text, title, conventions, day: model.day?.date, fingerings });
  if (!reading) return null;
  if (notesHidden(entry, conventions)) return without(sectionTexts.hiddenNotes);
  if (!reading.ok) return without(reading.reason);
  if (!drawer) return without(sectionTexts.noDrawer);
  const staves = wrongClaim(entry, conventions, fingerings) ?? [reading.staff];
  const look = { width, scale: width < NARROW ? SCALE_NARROW : SCALE, id: "staff" };
  const instrument = instrumentOf(entry.instrument ?? conventions.instrument, conventions);
  const notes = staves.flatMap((staff) => staff.notes.map((note) => shownNote(note, instrument, conventions.names)));
  return {
    svg: drawer.drawStaves(staves, look).svg,
    text: staves.map((staff) => `${staff.title}. ${staff.text}`).join(" "),
    notes,
    fingered: notes.some(({ fingering }) => fingering !== ""),
    sentence: "",
  };
}

/** The first list of notes on the line that is not right, above the notes that it should be. */
function wrongClaim(entry: Entry, conventions: Conventions, fingerings: boolean): readonly Staff[] | undefined {
  for (const claim of entry.source.claims) {
    const staves = claim.type === "notes" ? stavesOfClaim(entry, conventions, claim.notes, fingerings) : undefined;
    if (staves) return staves;
  }
  return undefined;
}

function without(sentence: string): PreviewStaff {
  return { svg: "", text: "", notes: [], fingered: false, sentence };
}

function shownNote(
  { note, degree, mark = "" }: StaffNote,
  instrument: Instrument | undefined,
  names: NoteNames,
): PreviewNote {
  const found = instrument && fingeringOf(instrument, note);
  const fingering = found?.known ? found.fingering : undefined;
  return {
    name: noteText(note, names),
    degree,
    mark,
    fingering: fingering ? printFingering(fingering) : "",
    fingeringWords: fingering ? fingeringInWords(fingering) : "",
  };
}
