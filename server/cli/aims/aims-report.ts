import type { DayNumber } from "../../journal/calendar.ts";
import { isoDate, weekIndex, weekLabelOf } from "../../journal/calendar.ts";
import { type DeclaredAim, declaredLines, ofType } from "../../journal/declared-lines.ts";
import type { Journal } from "../../journal/journal.ts";
import { subjectText } from "../../journal/subject-text.ts";
import { type AimSaid, whyInWords } from "../../plan/aim-words.ts";
import { type AimProgress, aimProgress, nearestAimFirst } from "../../plan/aims.ts";
import type { Around } from "../whole-journals.ts";

/** One aim of `aims --json`, or one subject of an aim that has several. Rates: notes a minute, of titles beats. */
export interface AimRow {
  readonly text: string;
  readonly subject: string | null;
  readonly path: string;
  /** From 0. */
  readonly line: number;
  readonly by: string | null;
  readonly state: "reached" | "open" | "past";
  readonly reachedOn: string | null;
  readonly best: number | null;
  readonly wanted: number | null;
  readonly forecast: {
    /** Weeks from now. */
    readonly earliest: number;
    readonly latest: number | null;
    readonly fromWeek: string;
    readonly toWeek: string | null;
    readonly testedWeeks: number;
  } | null;
  readonly why: string;
}

export function aimRows(around: Around, today: DayNumber): readonly AimRow[] {
  return rowsOfAims(around, aimsOf(around.journal, today), { today });
}

/** The day that aims are looked at on, and by whom it is read. */
export type AimsTold = Omit<AimSaid, "forecast">;

export function rowsOfAims(
  { journal, pathOf }: Around,
  aims: readonly DeclaredAim[],
  told: AimsTold,
): readonly AimRow[] {
  return aims.flatMap((aim) =>
    aimProgress(journal, aim, told).map((progress) =>
      rowOf(journal, aim, progress, { ...told, path: pathOf(aim.uri) }),
    ),
  );
}

/** All of a journal, the nearest day first. */
export function aimsOf(journal: Journal, today: DayNumber): readonly DeclaredAim[] {
  return nearestAimFirst(ofType(declaredLines(journal), "aim"), today);
}

function rowOf(
  journal: Journal,
  { declared: { by }, text, uri, block, line }: DeclaredAim,
  progress: AimProgress,
  { path, ...told }: AimsTold & { readonly path: string },
): AimRow {
  const { today } = told;
  const { standing, tempo, isOneOf, entry } = progress;
  const reached = standing.type === "reached" ? standing.on : standing.type === "done" ? standing.first : undefined;
  const document = journal.files.get(uri)!;
  return {
    text,
    subject: isOneOf ? subjectText(entry.subject!, journal.names) : null,
    path,
    line: document.starts[document.blocks.indexOf(block)]! + line,
    by: by === undefined ? null : isoDate(by),
    state: reached !== undefined ? "reached" : by !== undefined && by < today ? "past" : "open",
    reachedOn: reached === undefined ? null : isoDate(reached),
    best: bestOf(progress, today),
    wanted: tempo?.rate ?? null,
    forecast: forecastRow(progress, weekIndex(today)),
    why: whyInWords(progress, told),
  };
}

/** The fastest reached up to a day in just the way of the aim, where that has a tempo. */
function bestOf({ tempo, strand }: AimProgress, today: DayNumber): number | null {
  if (!tempo || !strand) return null;
  return strand.records.reduce<number | null>(
    (best, { day, reached, rate }) => (day <= today && reached && rate !== null && rate > (best ?? 0) ? rate : best),
    null,
  );
}

function forecastRow({ standing }: AimProgress, present: number): AimRow["forecast"] {
  if (standing.type !== "under way" || standing.forecast.type !== "range") return null;
  const { earliest, latest, testedWeeks } = standing.forecast;
  return {
    earliest,
    latest,
    fromWeek: weekLabelOf(present + earliest),
    toWeek: latest === null ? null : weekLabelOf(present + latest),
    testedWeeks,
  };
}
