import type { PreviewChoice, PreviewFigures, PreviewSpan } from "../../../shared/preview.ts";
import { ceilingOn } from "../../history/ceiling.ts";
import { journalHistory } from "../../history/journal-history.ts";
import { compareText } from "../../history/record.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { datesInWords } from "../../journal/date-words.ts";
import { type DeclaredLine, declaredLines, ofType } from "../../journal/declared-lines.ts";
import type { Journal } from "../../journal/journal.ts";
import { nameOfJournal } from "../../journal/journal-name.ts";
import { type NeedInWords, needsInWords } from "../../plan/key-words.ts";
import { keysWanted } from "../../plan/keys-wanted.ts";
import { setNow } from "../../plan/lesson.ts";
import { declaredParts, inHandOf } from "../../plan/pieces-in-hand.ts";
import { daysOfJournal } from "../explain/dated-days.ts";
import { usualInstrument } from "../explain/usual-instrument.ts";
import { aimsByStrand, aimsSection } from "./aims.ts";
import { exercisesSection } from "./exercises.ts";
import { keysSection, piecesInKeys } from "./keys.ts";
import { lessonSection } from "./lesson.ts";
import { piecesSection } from "./pieces.ts";
import { type PlanShown, USUAL_PLAN_SHOWN } from "./plan.ts";
import { MOST_WEEKS, practisedWeeks } from "./practised-weeks.ts";
import { setLines } from "./set-work.ts";
import { axisOf, isInSpan, latestWeeks, type SpanOfDays, spanOfDays, USUAL_SPAN } from "./span.ts";
import { shownText } from "./text.ts";
import { isFirstEvening, todaySection } from "./today.ts";
import { weekSentence, weeksSection } from "./weeks.ts";

export interface PreviewAsked {
  readonly today: DayNumber;
  readonly choice?: PreviewChoice;
  readonly most?: number;
  readonly known?: readonly string[];
  /** Whether files are still being read. */
  readonly reading?: boolean;
  /** The key of the exercise that is unfolded. */
  readonly open?: string;
  readonly plan?: PlanShown;
}

/** As many exercises as are shown at once unless more are asked for. */
export const USUAL_MOST = 200;

export type Preview = Omit<PreviewFigures, "journal" | "version" | "underCursor" | "shownBy" | "fingers" | "hear">;

/** What the side preview shows of a journal. */
export function preview(journal: Journal, { today, most = USUAL_MOST, known = [], ...asked }: PreviewAsked): Preview {
  const { reading = false, open, plan = USUAL_PLAN_SHOWN } = asked;
  const lines = declaredLines(journal);
  const [aims, sets] = [ofType(lines, "aim"), ofType(lines, "set")];
  const instruments = instrumentsOf(journal);
  const { span = usualSpan(journal, today), instrument: chosen = null } = asked.choice ?? {};
  const instrument = chosen !== null && instruments.includes(chosen) ? chosen : null;
  const days = spanOfDays(span, today);
  const parts = declaredParts(journal, lines, today);
  const inHand = inHandOf(parts, today);
  const usual = usualInstrument(journal);
  const axisOn = (only: string | null) => axisOf(days, practisedWeeks(journal, days, only));
  const axis = axisOn(instrument);
  const early = isFirstEvening(journal, today); // one sentence says so for the whole page
  return {
    name: shownText(nameOfJournal(journal), 60),
    choice: { span, instrument },
    instruments,
    reading,
    dates: datesOf(journal, days),
    week: weekSentence(journal, today),
    today: todaySection(journal, {
      today,
      instrument,
      usualInstrument: usual,
      plan: reading ? null : plan,
      set: setLines(journal, setNow(journal, sets, today), today),
    }),
    exercises: exercisesSection(journal, {
      days,
      axis,
      instrument,
      usualInstrument: usual,
      most,
      known: new Set(known),
      aims: aimsByStrand(journal, aims, today),
      reading: reading || early,
      open,
    }),
    pieces: piecesSection(journal, { parts, inHand }, lines, today),
    keys: early
      ? null
      : keysSection(journal, days, {
          instrument,
          pieces: piecesInKeys(inHand),
          wanted: wantedOf(journal, lines, today),
        }),
    lesson: lessonSection(journal, sets, today),
    weeks: early
      ? null
      : weeksSection(journal, latestWeeks(instrument === null ? axis : axisOn(null), MOST_WEEKS), today),
    aims: aimsSection(journal, aims, { today, reading }),
  };
}

/** What the current pieces want of keys; nothing on a day on which the instrument had better rest. */
function wantedOf(journal: Journal, lines: readonly DeclaredLine[], today: DayNumber): readonly NeedInWords[] {
  if (ceilingOn(journal, today).kind === "without instrument") return [];
  return needsInWords(journal, keysWanted(journal, lines, today), today);
}

/** Where nobody chose: half a year, or everything where nothing was practised in that. */
function usualSpan(journal: Journal, today: DayNumber): PreviewSpan {
  const days = spanOfDays(USUAL_SPAN, today);
  const lastDays = [...journalHistory(journal).exercises.values()].flatMap(({ strands }) =>
    strands.flatMap(({ records }) => records.findLast(({ day }) => day <= today)?.day ?? []),
  );
  return lastDays.length === 0 || lastDays.some((day) => isInSpan(day, days)) ? USUAL_SPAN : "all";
}

/** From the first day that anything is written of, where that lies within the weeks. */
function datesOf(journal: Journal, { since = Number.NEGATIVE_INFINITY, today }: SpanOfDays): string {
  const first = daysOfJournal(journal).reduce((before, { date }) => Math.min(before, date), today);
  return datesInWords(Math.max(since, first), today);
}

function instrumentsOf(journal: Journal): readonly string[] {
  const all = [...journalHistory(journal).exercises.values()].flatMap(({ instrument }) => instrument ?? []);
  return [...new Set(all)].sort(compareText);
}
