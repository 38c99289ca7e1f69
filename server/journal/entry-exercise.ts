import { chordById } from "../music/chords/chord.ts";
import type { Note } from "../music/notes/note.ts";
import type { WhatToPlay } from "../music/patterns/notes-to-play.ts";
import { nameKey } from "../syntax/words/fold.ts";
import type { MeaningOf, ScaleMeaning } from "../syntax/words/meaning.ts";
import type { DayNumber } from "./calendar.ts";
import { type Conventions, instrumentOf, kindOf } from "./conventions.ts";
import type { Conditions, Entry, PatternRef, Subject } from "./model.ts";

/**
 * What theory can say about an entry: the exercise to play, for scales and chords; undefined for anything else.
 *
 * @param day the day that it is played on, where its notes are asked for: `leaps` go by it
 */
export function exerciseToPlay(
  entry: Pick<Entry, "subject" | "pattern" | "inversion" | "instrument">,
  conditions: Conditions | undefined,
  conventions: Conventions,
  day?: DayNumber,
): WhatToPlay | undefined {
  const subject = entry.subject && subjectToPlay(entry.subject, entry.inversion ?? 0, conventions);
  if (!subject) return undefined;
  const cell = entry.pattern && cellOf(entry.pattern, conventions);
  if (entry.pattern && cell === undefined) return undefined;
  return {
    subject,
    ...(cell === undefined ? {} : { pattern: cell }),
    ...(entry.pattern?.type === "known" && entry.pattern.variant ? { variant: entry.pattern.variant } : {}),
    direction: conditions?.direction,
    reach: conditions?.reach ?? reachOf(entry.subject!),
    instrument: instrumentOf(entry.instrument ?? conventions.instrument, conventions),
    day,
  };
}

/** A scale or a chord as `music/exercise.ts` takes it. */
export function subjectToPlay(
  subject: Subject,
  inversion: number,
  conventions: Conventions,
): WhatToPlay["subject"] | undefined {
  if (subject.type === "scale") return scaleToPlay(subject, conventions);
  if (subject.type !== "chord") return undefined;
  const { root, chord, broken, key, keyMode } = subject;
  const known = chordById(chord);
  return (
    known && {
      type: "chord",
      root,
      octave: root.octave,
      chord,
      inversion: Math.min(inversion, known.degrees.length - 1),
      broken,
      ...(key ? { key } : {}),
      ...(keyMode ? { keyMode } : {}),
    }
  );
}

function scaleToPlay(
  { tonic, kind, declared, fromLowest }: ScaleMeaning,
  conventions: Conventions,
): WhatToPlay["subject"] | undefined {
  const known = kindOf(kind, declared, conventions);
  if (!known) return undefined;
  const low = fromLowest ? instrumentOf(conventions.instrument, conventions)?.low : undefined;
  if (low) return { type: "scale", tonic: low, octave: low.octave, kind: known };
  return { type: "scale", tonic, ...(tonic.octave === undefined ? {} : { octave: tonic.octave }), kind: known };
}

/** `chromatic from G4 to G6` says its reach by itself. */
function reachOf(subject: Subject): Conditions["reach"] {
  if (subject.type !== "scale" || !subject.to || subject.tonic.octave === undefined || subject.to.octave === undefined)
    return undefined;
  return { type: "between", from: subject.tonic as Note, to: subject.to as Note };
}

/** The id of a known pattern, or the cell of a declared one; undefined where its declaration cannot be read. */
export function cellOf(pattern: PatternRef, { cells }: Conventions): WhatToPlay["pattern"] {
  return pattern.type === "known" ? pattern.id : cells.get(nameKey(pattern.name));
}

/** `thirds`, `thirds alternating`, a declared pattern's name. */
export function patternText(pattern: PatternRef): string {
  if (pattern.type === "declared") return pattern.name;
  return pattern.variant ? `${pattern.id} ${pattern.variant}` : pattern.id;
}

export function isPlayable(subject: Subject | undefined): subject is ScaleMeaning | MeaningOf<"chord"> {
  return subject?.type === "scale" || subject?.type === "chord";
}
