import type { PreviewChoice, PreviewFigures, PreviewSpan } from "../../../shared/preview.ts";
import { journalHistory } from "../../history/journal-history.ts";
import { playedEntry } from "../../history/played.ts";
import { compareText } from "../../history/record.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { instrumentOf } from "../../journal/conventions.ts";
import type { Journal } from "../../journal/journal.ts";
import { declaredLines, ofType } from "../explain/declared-lines.ts";
import { entryUnderCursor } from "../explain/line-under-cursor.ts";
import { aimsByStrand, aimsSection } from "./aims.ts";
import { keysSection, piecesInKeys } from "./keys.ts";
import { lessonSection } from "./lesson.ts";
import { movingSection } from "./moving.ts";
import { declaredParts, inHandOf, piecesSection } from "./pieces.ts";
import { isInSpan, spanOfDays, USUAL_SPAN } from "./span.ts";
import { shownText } from "./text.ts";
import { weekSection } from "./week.ts";

export interface PreviewAsked {
  readonly today: DayNumber;
  readonly choice?: PreviewChoice;
  readonly most?: number;
  readonly known?: readonly string[];
}

/** As many exercises as are told at once unless more are asked for. */
export const USUAL_MOST = 200;

export type Preview = Omit<PreviewFigures, "journal" | "version" | "underCursor" | "fingers">;

/** What the side preview shows of a journal. */
export function preview(journal: Journal, { today, most = USUAL_MOST, known = [], ...asked }: PreviewAsked): Preview {
  const lines = declaredLines(journal);
  const aims = ofType(lines, "aim");
  const instruments = instrumentsOf(journal);
  const { span = usualSpan(journal, today), instrument: chosen = null } = asked.choice ?? {};
  const instrument = chosen !== null && instruments.includes(chosen) ? chosen : null;
  const days = spanOfDays(span, today);
  const parts = declaredParts(journal, lines, today);
  const inHand = inHandOf(parts, today);
  return {
    name: nameOfJournal(journal),
    choice: { span, instrument },
    instruments,
    week: weekSection(journal, today),
    lesson: lessonSection(journal, ofType(lines, "set"), today),
    moving: movingSection(journal, {
      days,
      instrument,
      usualInstrument: usualInstrument(journal),
      most,
      known: new Set(known),
      aims: aimsByStrand(journal, aims, today),
    }),
    pieces: piecesSection(journal, { parts, inHand }, lines, today),
    keys: keysSection(journal, days, { instrument, pieces: piecesInKeys(inHand) }),
    aims: aimsSection(journal, aims, today),
  };
}

/** The key of the exercise that a line practises, or would practise; null where it is none. */
export function exerciseUnderCursor(journal: Journal, uri: string, line: number): string | null {
  const found = entryUnderCursor(journal, uri, { line, character: 0 });
  const attempt = found.ok ? playedEntry(found.entry, journal.conventions(uri)).attempts[0] : undefined;
  return attempt?.manner.exerciseKey ?? null;
}

/** Where nobody chose: half a year, or everything where nothing was practised in that. */
function usualSpan(journal: Journal, today: DayNumber): PreviewSpan {
  const days = spanOfDays(USUAL_SPAN, today);
  const lastDays = [...journalHistory(journal).exercises.values()].flatMap(({ strands }) =>
    strands.flatMap(({ records }) => records.findLast(({ day }) => day <= today)?.day ?? []),
  );
  return lastDays.length === 0 || lastDays.some((day) => isInSpan(day, days)) ? USUAL_SPAN : "all";
}

function usualInstrument(journal: Journal): string | null {
  const [first] = journal.addresses;
  if (first === undefined) return null;
  const conventions = journal.conventions(first);
  return instrumentOf(conventions.instrument, conventions)?.id ?? conventions.instrument ?? null;
}

function instrumentsOf(journal: Journal): readonly string[] {
  const all = [...journalHistory(journal).exercises.values()].flatMap(({ instrument }) => instrument ?? []);
  return [...new Set(all)].sort(compareText);
}

function nameOfJournal(journal: Journal): string {
  const player = journal.addresses.map((uri) => journal.conventions(uri).player).find((name) => name !== undefined);
  return shownText(player ?? lastSegment(journal.root), 60);
}

/** Without its scheme, as `untitled:Untitled-1` has no slash. */
function lastSegment(uri: string): string {
  const name =
    uri
      .replace(/^[a-z][a-z0-9+.-]*:/i, "")
      .replace(/\/+$/, "")
      .split("/")
      .at(-1) ?? "";
  try {
    return decodeURIComponent(name);
  } catch {
    return name;
  }
}
