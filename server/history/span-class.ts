import type { Conventions } from "../journal/conventions.ts";
import { instrumentOf } from "../journal/conventions.ts";
import { subjectToPlay } from "../journal/entry-exercise.ts";
import type { Conditions, Entry, Reach, Subject } from "../journal/model.ts";
import { midi, type Note } from "../music/notes/note.ts";
import { notesToPlay } from "../music/patterns/notes-to-play.ts";
import type { ReachClass } from "./record.ts";

/** The widest of each class, in semitones (format.md, Arithmetic). */
const SHORT = 9;
const OCTAVE = 14;
const TWELFTH = 20;

/** How far an exercise goes, from its lowest note to its highest; null where its notes have no octaves. */
export function reachClassOf(entry: Entry, { reach }: Conditions, conventions: Conventions): ReachClass | null {
  const semitones = semitonesOf(entry, reach, conventions);
  if (semitones === undefined) return null;
  if (semitones <= SHORT) return "short";
  if (semitones <= OCTAVE) return "octave";
  return semitones <= TWELFTH ? "twelfth" : "wide";
}

function semitonesOf(entry: Entry, reach: Reach | undefined, conventions: Conventions): number | undefined {
  const subject = entry.subject!;
  if (reach?.type === "between") return midi(reach.to) - midi(reach.from);
  if (reach?.type === "octaves") return 12 * reach.count;
  if (subject.type === "technique" || (subject.type === "figure" && !subject.scale)) {
    const notes = (subject.notes ?? []).filter((note): note is Note => note.octave !== undefined).map(midi);
    return notes.length ? Math.max(...notes) - Math.min(...notes) : undefined;
  }
  const scale = scaleIn(subject);
  return scale && rangeOf(scale, entry, reach, conventions);
}

/** What tells how far a subject goes: of a set that has a name the first. */
function scaleIn(subject: Subject): Subject | undefined {
  if (subject.type === "chain") return subject.scales[0];
  if (subject.type === "several") return subject.subjects[0];
  return subject.type === "figure" ? subject.scale : subject;
}

/** Patterns stay within the span, but for octaves and tenths, which need two octaves where none are named. */
function rangeOf(
  subject: Subject,
  entry: Entry,
  reach: Reach | undefined,
  conventions: Conventions,
): number | undefined {
  const wide = entry.pattern?.type === "known" && (entry.pattern.id === "octaves" || entry.pattern.id === "tenths");
  if (!reach) return wide ? 24 : subject.type === "scale" && subject.to?.octave !== undefined ? undefined : 12;
  const toPlay = subjectToPlay(subject, entry.inversion ?? 0, conventions);
  if (!toPlay) return undefined;
  const instrument = instrumentOf(entry.instrument ?? conventions.instrument, conventions);
  const { range } = notesToPlay({ subject: toPlay, reach, instrument, direction: "up" });
  return range ? midi(range.high) - midi(range.low) : undefined;
}
