import { isoDate } from "../../journal/calendar.ts";
import type { Spoken } from "../../plan/lesson.ts";
import type { Pupil } from "../../plan/pupils.ts";
import type { SetWork } from "../../plan/set-work.ts";
import { textOfSet } from "../../plan/set-work-words.ts";

/** A pupil, and where the journal is. */
export interface PlacedPupil {
  readonly pupil: Pupil;
  /** Its folder, as seen from the current one; a lone file's own name. */
  readonly path: string;
}

/** What was written on a day. */
export interface Said {
  readonly date: string;
  readonly text: string;
}

/** A piece of set work. */
export interface SetRow {
  readonly text: string;
  readonly done: readonly string[];
  readonly wanted: number | null;
  readonly by: string | null;
}

/** One pupil of `pupils --json`. */
export interface PupilRow {
  readonly name: string;
  readonly path: string;
  readonly last: string | null;
  readonly set: readonly SetRow[];
  readonly questions: readonly Said[];
  readonly body?: readonly Said[];
}

export function pupilRow({ pupil: { name, last, set, asked, body }, path }: PlacedPupil): PupilRow {
  return {
    name,
    path,
    last: last ? isoDate(last.day) : null,
    set: set.map(setRow),
    questions: asked.map(saidRow),
    ...(body && { body: body.map(saidRow) }),
  };
}

export function setRow({ work, done }: SetWork): SetRow {
  const { days, by } = work.declared;
  return {
    text: textOfSet(work),
    done: done.map(isoDate),
    wanted: days ?? null,
    by: by === undefined ? null : isoDate(by),
  };
}

export function saidRow({ day, text }: Pick<Spoken, "day" | "text">): Said {
  return { date: isoDate(day), text };
}
