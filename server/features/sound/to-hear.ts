import type { PreviewHear } from "../../../shared/preview.ts";
import { rateBy } from "../../history/rate.ts";
import { startTempo } from "../../history/start-tempo.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import { notesHidden } from "../../journal/notes-hidden.ts";
import { noteOnDegree } from "../../music/notes/degree.ts";
import { noteText } from "../../music/notes/note-names.ts";
import { figure } from "../../plan/figure.ts";
import { scaleOf } from "../../sound/heard.ts";
import { type HeardAt, heardAt } from "./heard-at.ts";
import { SILENT } from "./sound.ts";

/** Where nobody knows the document. */
export const NOTHING_TO_HEAR: PreviewHear = { place: null, lines: [], silent: "" };

/** Tempos of a line that are named. */
const MOST_TEMPOS = 8;

/**
 * Lines that may be heard beside the line of the cursor: a click at its tempos, a drone on its tonic, the exercise, and
 * its third, tempered and pure. No tempo is proposed where the player has none, and nothing on a day without the
 * instrument.
 */
export function linesToHear(journal: Journal, uri: string, line: number, today: DayNumber): PreviewHear {
  const at = heardAt(journal, uri, line, today);
  const place = at.entry ? { uri, line } : null;
  if (at.ceiling.kind === "without instrument") return { place, lines: [], silent: SILENT };
  const tempos = temposOf(at, today);
  const click = tempos.length > 0 ? [`click at ${tempos.join(", ")}`] : [];
  const through = at.by.exercise && tempos.length > 0 ? [`play through at ${tempos[0]}`] : [];
  return { place, lines: [...click, ...through, ...notesOf(at, journal)], silent: "" };
}

/** Those of the line; where it has none, the one to begin with. */
function temposOf({ entry, by, ceiling, standing }: HeardAt, today: DayNumber): readonly string[] {
  const own = entry?.attempts.flatMap(({ tempo }) => (tempo && tempo.beat === undefined ? tempo.bpm : [])) ?? [];
  if (own.length > 0) return [...new Set(own)].slice(0, MOST_TEMPOS).map(figure);
  const perBeat = rateBy({ beat: by.beat, value: by.noteValue }, 1)!;
  const start = standing && startTempo(standing, today, perBeat, ceiling);
  return start === undefined ? [] : [figure(start)];
}

/** By name, or by degree where notes stay out of sight. */
function notesOf({ entry, by, conventions }: HeardAt, journal: Journal): readonly string[] {
  const scale = by.exercise ? scaleOf(by.exercise) : by.key && scaleOf(by.key);
  if (!entry || !scale) return [];
  if (notesHidden(entry, conventions)) return ["drone on the tonic", "compare the third against the tonic"];
  const [tonic, third] = [1, 3].map((degree) => {
    const { letter, alter } = noteOnDegree({ ...scale.tonic, octave: 4 }, scale.degrees, degree);
    return noteText({ letter, alter }, journal.names);
  });
  return [`drone on ${tonic}`, `compare ${third} against ${tonic}`];
}
