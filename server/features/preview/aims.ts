import type { PreviewAim } from "../../../shared/preview.ts";
import { answers } from "../../history/aim-met.ts";
import { exerciseRow, rateAsWritten } from "../../history/exercise-row.ts";
import { journalHistory } from "../../history/journal-history.ts";
import { type PlayedAttempt, playedEntry } from "../../history/played.ts";
import { type AttemptRecord, inTimeOrder } from "../../history/record.ts";
import { exerciseOf, type Strand, strandOf } from "../../history/strands.ts";
import { bestWeek, weeksOf } from "../../history/weeks.ts";
import { type DayNumber, isoDate } from "../../journal/calendar.ts";
import { eachSubject } from "../../journal/each-subject.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import { readEntry } from "../../journal/read-entry.ts";
import { subjectText } from "../../journal/subject-text.ts";
import { daysAhead } from "../explain/days-away.ts";
import type { DeclaredAim } from "../explain/declared-lines.ts";
import { entryOf } from "../explain/entry-of-record.ts";
import type { AimedTempo } from "./chart.ts";
import { spanOfDays, USUAL_SPAN } from "./span.ts";
import { placeOf, sentence, shownText } from "./text.ts";

/** So long after its day an aim is still told of. */
const DAYS_TOLD = 28;

/** The aims that lie ahead by their day, those without a day, and those whose day has just passed. */
export function aimsSection(journal: Journal, aims: readonly DeclaredAim[], today: DayNumber): readonly PreviewAim[] {
  return aims
    .filter(({ declared: { by } }) => by === undefined || by >= today - DAYS_TOLD)
    .sort((a, b) => urgency(a, today) - urgency(b, today))
    .map((aim) => ({
      text: shownText(aim.text.replace(BY_DAY, "")),
      place: placeOf(journal, aim.uri, aim.block, aim.line),
      sentences: [dayOf(aim, today), ...standingOf(journal, aim, today)],
    }));
}

/** The day at the end of an aim or of what is set. */
export const BY_DAY = /(?<![\s,])[\s,]+(?:by|due|until)\s+\d{4}-\d\d-\d\d\s*$/i;

function urgency({ declared: { by } }: DeclaredAim, today: DayNumber): number {
  if (by === undefined) return Number.MAX_SAFE_INTEGER - 1;
  return by >= today ? by : Number.MAX_SAFE_INTEGER;
}

function dayOf({ declared: { by } }: DeclaredAim, today: DayNumber): string {
  if (by === undefined) return "Without a day.";
  return by < today ? `Its day, ${isoDate(by)}, has passed.` : `By ${isoDate(by)}, ${daysAhead(by - today)}.`;
}

/** By the key of its strand, the next aim at a tempo by a day; else the one that passed last. */
export function aimsByStrand(
  journal: Journal,
  aims: readonly DeclaredAim[],
  today: DayNumber,
): ReadonlyMap<string, AimedTempo> {
  const found = new Map<string, AimedTempo>();
  for (const aim of aims) {
    const { by } = aim.declared;
    if (by === undefined) continue;
    for (const { tempo, strand } of aimedAt(journal, aim)) {
      if (!strand || tempo?.rate == null) continue;
      const before = found.get(strand.key);
      const nearer = before && (before.by >= today ? by >= today && by < before.by : by > before.by);
      if (!before || nearer) found.set(strand.key, { rate: tempo.rate, by });
    }
  }
  return found;
}

/** What an aim asks for of one subject, and the strand that it is held against. */
interface AimedAt {
  readonly entry: Entry;
  readonly tempo?: PlayedAttempt;
  readonly strand?: Strand;
  readonly records: readonly AttemptRecord[];
}

/** Each of its subjects is held by itself; there is at least one. */
function aimedAt(journal: Journal, { declared, uri }: DeclaredAim): readonly AimedAt[] {
  const whole = readEntry(declared.entry, 0, journal.vocabulary);
  return eachSubject(whole).map(({ entry }) => aimedAtOne(journal, entry, uri));
}

function aimedAtOne(journal: Journal, entry: Entry, uri: string): AimedAt {
  const { attempts } = playedEntry(entry, journal.conventions(uri));
  const tempo = attempts.find(({ rate }) => rate !== null);
  const manner = (tempo ?? attempts[0])?.manner;
  const index = journalHistory(journal);
  const exercise = manner && index.exercises.get(manner.exerciseKey);
  const strand = manner && index.strandOf(manner);
  const records = exercise?.strands.flatMap((each) => each.records) ?? [];
  return { entry, records, ...(tempo ? { tempo } : {}), ...(strand ? { strand } : {}) };
}

/** Of several subjects each by its name. */
function standingOf(journal: Journal, aim: DeclaredAim, today: DayNumber): string[] {
  const aimed = aimedAt(journal, aim);
  return aimed.flatMap((one) => {
    const [first = "", ...others] = standingOfOne(journal, one, today);
    const name = aimed.length > 1 ? `${shownText(subjectText(one.entry.subject!, journal.names))}: ` : "";
    return [name + first, ...others];
  });
}

function standingOfOne(journal: Journal, { entry, tempo, strand, records }: AimedAt, today: DayNumber): string[] {
  if (tempo?.rate == null) {
    const before = records.filter(({ day }) => day <= today).sort(inTimeOrder);
    const last = before.findLast((record) => isMet(journal, record, entry));
    return [last ? `Last done on ${isoDate(last.day)}.` : "Not done so far."];
  }
  const played = strand?.records.filter(({ day }) => day <= today) ?? [];
  const first = played.find(
    ({ rate, reached }, i) => reached && rate !== null && rate >= tempo.rate! && isMet(journal, played[i]!, entry),
  );
  if (first) return [`Reached on ${isoDate(first.day)}.`];
  return played.length === 0 ? ["Not played in this way so far."] : bestAndTrend(played, tempo, today);
}

/** Whether what was played has all that the aim says; what was only planned makes no record. */
function isMet(journal: Journal, record: AttemptRecord, asked: Entry): boolean {
  const entry = journal.memo.from(record, "entry", [], () => entryOf(journal, record)); // for all aims at its exercise
  return entry !== undefined && answers(entry, asked, journal.conventions(record.uri), { byRate: true });
}

/** The best so far as the aim is written, and the trend of the usual span. */
function bestAndTrend(played: readonly AttemptRecord[], { manner }: PlayedAttempt, today: DayNumber): string[] {
  const best = bestWeek(weeksOf(played));
  if (!best) return ["No tempo was reached so far."];
  const { since } = spanOfDays(USUAL_SPAN, today);
  const lately = weeksOf(played, since);
  const { trendWords } = exerciseRow(exerciseOf([strandOf(played, since)]), lately);
  return [
    `Best so far ${rateAsWritten(best.bestClean, manner, manner)}, in ${best.week}.`,
    ...(lately.length === 0 ? [] : [sentence(trendWords)]),
  ];
}
