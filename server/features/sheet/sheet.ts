import type { DayNumber } from "../../journal/calendar.ts";
import type { Conventions } from "../../journal/conventions.ts";
import { exerciseToPlay } from "../../journal/entry-exercise.ts";
import type { Entry } from "../../journal/model.ts";
import { notesHidden } from "../../journal/notes-hidden.ts";
import type { Staff } from "../../notation/staff.ts";
import { isCondition } from "../../syntax/words/term-types.ts";
import { entryStaff } from "../explain/entry-staff.ts";
import { nameOfEntry } from "../explain/written-name.ts";
import { sheetTexts } from "./sheet-texts.ts";

/** What is to be played, for a music stand: plain texts, which whoever shows them makes safe. */
export interface Sheet {
  readonly title: string;
  /** Who plays. */
  readonly name: string;
  /** What is said before anything is played. */
  readonly sentences: readonly string[];
  readonly parts: readonly SheetPart[];
}

/** A phase of a day, or exercises that go together. */
export interface SheetPart {
  readonly heading: string;
  readonly items: readonly SheetItem[];
}

export interface SheetItem {
  /** `D melodic minor, thirds`; of what is no exercise the words of its line. */
  readonly name: string;
  /** How it is played, its tempos and minutes; may be empty. */
  readonly way: string;
  readonly staff?: Staff;
  /** Why there are no notes where there could be some, as a sentence; empty otherwise. */
  readonly instead: string;
}

/** What a sheet shows of exercises. */
export interface SheetShown {
  /** Recorder fingerings beneath the notes. */
  readonly fingerings: boolean;
  /** Also where the journal keeps names of notes out of sight. */
  readonly hiddenNotes: boolean;
}

/** An entry, and what stands around it. */
export interface SheetEntry {
  readonly entry: Entry;
  /** Its line. */
  readonly text: string;
  readonly conventions: Conventions;
  readonly day: DayNumber;
}

/** A scale or an arpeggio with its staff; undefined where the entry is none. */
export function exerciseItem(asked: SheetEntry, shown: SheetShown): SheetItem | undefined {
  const { entry, conventions, text } = asked;
  const name = nameOfEntry(entry, text, conventions);
  const reading = entryStaff({ ...asked, title: name, fingerings: shown.fingerings });
  if (!reading) return undefined;
  const way = wordsOf(asked, (meaning) => isCondition(meaning) || meaning.type === "tempo");
  const item = { name, way, instead: "" };
  if (notesHidden(entry, conventions) && !shown.hiddenNotes) return { ...item, instead: sheetTexts.hidden };
  return reading.ok ? { ...item, staff: reading.staff } : { ...item, instead: reading.reason };
}

/** Whether something is a scale or an arpeggio whose notes are known. */
export function isExercise({ entry, conventions, day }: SheetEntry): boolean {
  return exerciseToPlay(entry, entry.attempts[0]?.conditions, conventions, day) !== undefined;
}

/** Terms of an entry in the player's words, in the order of the line. */
export function wordsOf(
  { entry, text }: Pick<SheetEntry, "entry" | "text">,
  wanted: (meaning: Entry["source"]["items"][number]["meaning"]) => boolean,
): string {
  const words = entry.source.items.filter(({ meaning }) => wanted(meaning));
  return words.map(({ start, end }) => text.slice(start, end).trim()).join(", ");
}
