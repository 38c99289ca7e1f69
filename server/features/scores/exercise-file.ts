import type { ExportFormat } from "../../../shared/export.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Conventions } from "../../journal/conventions.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import { type ExerciseScore, exerciseScore } from "../../scores/exercise-score.ts";
import { midiFile } from "../../scores/midi-file.ts";
import { musicXml } from "../../scores/music-xml.ts";
import { scoreTexts } from "../../scores/score-texts.ts";
import { exerciseAsked } from "../explain/entry-staff.ts";
import { entryUnderCursor } from "../explain/line-under-cursor.ts";
import { type Refusal, refusal } from "../explain/refusal.ts";
import { nameOfEntry } from "../explain/written-name.ts";
import { heardBy } from "../sound/heard-at.ts";

/** An entry whose exercise is to go into a file. */
export interface EntryToExport {
  readonly entry: Entry;
  /** Its line. */
  readonly text: string;
  readonly conventions: Conventions;
  /** The day that it is played on. */
  readonly day: DayNumber;
  /** Beats a minute, in place of what the line says. */
  readonly bpm?: number;
}

/** An exercise for another program. */
export interface ExerciseFile {
  readonly ok: true;
  /** Its name: `D minor, thirds`. */
  readonly title: string;
  readonly bytes: Uint8Array;
  /** Nobody said how fast it goes. */
  readonly withoutTempo: boolean;
}

/** The exercise of an entry as a file: notes, note values, slurs and the first tempo of its line. */
export function exerciseFile(asked: EntryToExport, format: ExportFormat): ExerciseFile | Refusal {
  const score = scoreOf(asked);
  if (!score) return NOT_PLAYABLE;
  const made = format === "midi" ? midiFile(score) : musicXml(score);
  if (!made.ok) return made;
  const { content } = made;
  const bytes = typeof content === "string" ? new TextEncoder().encode(content) : content;
  return { ok: true, title: score.title, bytes, withoutTempo: score.tempo === undefined };
}

/** The same of the entry on a line. */
export function exerciseFileAt(
  journal: Journal,
  uri: string,
  line: number,
  { format, today }: { readonly format: ExportFormat; readonly today: DayNumber },
): ExerciseFile | Refusal {
  const found = entryUnderCursor(journal, uri, { line, character: 0 });
  if (!found.ok) return found;
  const { entry, text, model } = found;
  return exerciseFile({ entry, text, conventions: journal.conventions(uri), day: model.day?.date ?? today }, format);
}

const NOT_PLAYABLE = refusal(scoreTexts.nothingToExport);

function scoreOf({ entry, text, conventions, day, bpm }: EntryToExport): ExerciseScore | undefined {
  const title = nameOfEntry(entry, text, conventions);
  const asked = exerciseAsked({ entry, text, title, conventions, day });
  if (!asked) return undefined;
  const { beat, noteValue, slurred } = heardBy(entry, conventions, day);
  const played = bpm ?? entry.attempts.find(({ tempo }) => tempo)?.tempo?.bpm;
  return exerciseScore({
    ...asked,
    value: noteValue,
    slurred,
    ...(played === undefined ? {} : { tempo: { bpm: played, beat } }),
  });
}
