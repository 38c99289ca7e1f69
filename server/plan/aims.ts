import { answers } from "../history/aim-met.ts";
import { isWholePiece } from "../history/bars-played.ts";
import { ceilingOn } from "../history/ceiling.ts";
import { attemptOfRecord, entryMadeOnce } from "../history/entry-of-record.ts";
import type { HistoryIndex } from "../history/history-index.ts";
import { sinceOfStrand } from "../history/journal-facts.ts";
import { journalHistory, weeksOfStrand } from "../history/journal-history.ts";
import { type PlayedAttempt, playedEntry } from "../history/played.ts";
import { type AttemptRecord, inTimeOrder, type Manner } from "../history/record.ts";
import { type Strand, strandOf } from "../history/strands.ts";
import { bestWeek, type Week, weeksOf } from "../history/weeks.ts";
import { type DayNumber, weekIndex } from "../journal/calendar.ts";
import type { Conventions } from "../journal/conventions.ts";
import type { DeclaredAim } from "../journal/declared-lines.ts";
import { eachSubject } from "../journal/each-subject.ts";
import type { Journal } from "../journal/journal.ts";
import type { Entry } from "../journal/model.ts";
import { readEntry } from "../journal/read-entry.ts";
import { type Forecast, forecastOf, isOutOfSight, shortOf } from "./forecast.ts";

/** So long after its day an aim is still shown. */
const DAYS_SHOWN = 28;

/** The aims that lie ahead by their day, those without a day, and those whose day has just passed. */
export function shownAims(aims: readonly DeclaredAim[], today: DayNumber): readonly DeclaredAim[] {
  return nearestAimFirst(aims, today).filter(({ declared: { by } }) => by === undefined || by >= today - DAYS_SHOWN);
}

/** The nearest day ahead first, then those without a day, then the one that passed last. */
export function nearestAimFirst(aims: readonly DeclaredAim[], today: DayNumber): readonly DeclaredAim[] {
  return [...aims].sort((a, b) => urgency(a, today) - urgency(b, today) || (b.declared.by ?? 0) - (a.declared.by ?? 0));
}

function urgency({ declared: { by } }: DeclaredAim, today: DayNumber): number {
  if (by === undefined) return Number.MAX_SAFE_INTEGER - 1;
  return by >= today ? by : Number.MAX_SAFE_INTEGER;
}

/** What an aim asks for of one subject, and what was played of that. */
export interface AimedAt {
  readonly entry: Entry;
  /** Its first attempt with a tempo. */
  readonly tempo?: PlayedAttempt & { readonly rate: number };
  /** Played in just the way that the aim names; where it names no span, and nothing was played so, in a wider one. */
  readonly strand?: Strand;
  /** Of the exercise in all ways. */
  readonly strands: readonly Strand[];
  /** Where the aim names no span: in the same way, but over more than an octave. What is reached so is reached. */
  readonly wider: readonly Strand[];
  /** Whether the aim has several subjects. */
  readonly isOneOf: boolean;
}

/** How far one subject of an aim has come. */
export type AimStanding =
  /** For the first time on that day, in one attempt that has everything the aim says. */
  | { readonly type: "reached"; readonly on: DayNumber }
  /** Without a tempo: the first and the latest day. */
  | { readonly type: "done"; readonly first: DayNumber; readonly last: DayNumber }
  | { readonly type: "not done" }
  | { readonly type: "not played"; readonly otherwise: boolean }
  | { readonly type: "no tempo" }
  /** The tempo was reached, but not all else; in a row at it at most so often. */
  | { readonly type: "tempo only"; readonly best: number; readonly inARow: number }
  | UnderWay;

/** The tempo was not reached yet. */
export interface UnderWay {
  readonly type: "under way";
  /** The fastest rate reached, first in that week (`weekIndex`). */
  readonly best: number;
  readonly week: number;
  readonly forecast: Forecast;
  /** Near which rate it would be by the aim's day, where even the faster end of the trend does not lead there. */
  readonly shortBy?: number;
}

/** One subject of an aim, and how far it has come. */
export interface AimProgress extends AimedAt {
  readonly standing: AimStanding;
}

/** The day that aims are looked at on. */
export interface AimsAsked {
  readonly today: DayNumber;
}

/** Each subject of an aim is held by itself; there is at least one. */
export function aimProgress(
  journal: Journal,
  aim: Pick<DeclaredAim, "declared" | "uri">,
  asked: AimsAsked,
): readonly AimProgress[] {
  const { by } = aim.declared;
  return aimedAt(journal, aim).map((one) => ({ ...one, standing: standingOf(journal, one, { ...asked, by }) }));
}

/** What an aim asks for, subject by subject; there is at least one. */
export function aimedAt(
  journal: Journal,
  { declared, uri }: Pick<DeclaredAim, "declared" | "uri">,
): readonly AimedAt[] {
  const conventions = journal.conventions(uri);
  const asked = journal.memo.from(declared, "aimed at", [conventions], () =>
    subjectsOf(readEntry(declared.entry, 0, journal.vocabulary), conventions),
  );
  const index = journalHistory(journal);
  return asked.map(({ manner, ...one }) => {
    const exercise = manner && index.exercises.get(manner.exerciseKey);
    const wider = manner && isOfAnySpan(one.entry, manner) ? widerStrands(index, manner) : [];
    const strand = (manner && strandAimedAt(index, manner)) ?? wider[0];
    const isOneOf = asked.length > 1;
    return { ...one, isOneOf, strands: exercise?.strands ?? [], wider, ...(strand ? { strand } : {}) };
  });
}

/** The strand of the aim's own way; of a whole piece what was played `from the top` as well. */
function strandAimedAt(index: HistoryIndex, manner: Manner): Strand | undefined {
  if (manner.unit !== "beats" || !isWholePiece(manner.where)) return index.strandOf(manner);
  const strands = index.exercises.get(manner.exerciseKey)?.strands ?? [];
  const whole = strands.filter(({ movement, where }) => movement === manner.movement && isWholePiece(where));
  return whole.length < 2 ? whole[0] : strandOf(whole.flatMap(({ records }) => records).sort(inTimeOrder));
}

/** An aim that names no span takes any that has all of the exercise in it: an octave or more. */
function isOfAnySpan({ attempts }: Entry, { unit, reach }: Manner): boolean {
  return unit === "notes" && reach === "octave" && attempts.every(({ conditions }) => conditions.reach === undefined);
}

/** The one to show first. */
function widerStrands(index: HistoryIndex, { exerciseKey, tonguing, evenness }: Manner): readonly Strand[] {
  const strands = index.exercises.get(exerciseKey)?.strands ?? [];
  return strands.filter(
    (strand) =>
      (strand.reach === "twelfth" || strand.reach === "wide") &&
      strand.tonguing === tonguing &&
      strand.evenness === evenness,
  );
}

type AskedOf = Pick<AimedAt, "entry" | "tempo"> & Partial<Pick<PlayedAttempt, "manner">>;

function subjectsOf(whole: Entry, conventions: Conventions): readonly AskedOf[] {
  return eachSubject(whole).map(({ entry }) => {
    const { attempts } = playedEntry(entry, conventions);
    const tempo = attempts.find((attempt): attempt is PlayedAttempt & { rate: number } => attempt.rate !== null);
    const manner = (tempo ?? attempts[0])?.manner;
    return { entry, ...(tempo ? { tempo } : {}), ...(manner ? { manner } : {}) };
  });
}

/** Whether an aim is reached, as far as all of its subjects are, and since which day that is so. */
export function reachedOn(progress: readonly AimProgress[]): DayNumber | undefined {
  const days = progress.map(({ standing }) =>
    standing.type === "reached" ? standing.on : standing.type === "done" ? standing.first : Number.NaN,
  );
  const last = Math.max(...days);
  return Number.isNaN(last) ? undefined : last;
}

/** Whether one subject of an aim may be missed as things go; see `isOutOfSight`. */
export function isNotInSight({ standing }: AimProgress, by: DayNumber | undefined, today: DayNumber): boolean {
  if (standing.type === "reached" || standing.type === "done") return false;
  if (standing.type === "under way") return isOutOfSight(standing.forecast, by, today);
  return by !== undefined && by >= today;
}

type OfAim = AimsAsked & { readonly by: DayNumber | undefined };

function standingOf(journal: Journal, aimed: AimedAt, asked: OfAim): AimStanding {
  const { today } = asked;
  const { entry, tempo, strand, wider } = aimed;
  if (!tempo) return doneStanding(journal, aimed, today);
  const played = strand?.records.filter(({ day }) => day <= today) ?? [];
  if (!strand || played.length === 0) return { type: "not played", otherwise: recordsUpTo(aimed, today).length > 0 };
  const { rate } = tempo;
  const isFast = (record: AttemptRecord) => record.reached && record.rate !== null && record.rate >= rate;
  const fast = played.filter(isFast);
  const others = wider.flatMap(({ records }) => records.filter((each) => each.day <= today && isFast(each)));
  const first = [...fast, ...others].sort(inTimeOrder).find((record) => isMet(journal, record, entry));
  if (first) return { type: "reached", on: first.day };
  const weeks = played.length === strand.records.length ? weeksOfStrand(journal, strand) : weeksOf(played);
  const best = bestWeek(weeks);
  if (!best) return { type: "no tempo" };
  if (fast.length > 0) return { type: "tempo only", best: best.bestClean, inARow: mostInARow(fast) };
  return {
    type: "under way",
    best: best.bestClean,
    week: best.index,
    ...aheadOf(journal, weeks, { rate, strand }, asked),
  };
}

function aheadOf(
  journal: Journal,
  weeks: readonly Week[],
  { rate, strand }: { readonly rate: number; readonly strand: Strand },
  { today, by }: OfAim,
): Pick<UnderWay, "forecast" | "shortBy"> {
  const since = sinceOfStrand(journal, strand, today);
  const asked = { present: weekIndex(today), ...(since === undefined ? {} : { since: weekIndex(since) }) };
  const forecast = forecastOf(weeks, rate, asked);
  const short = by === undefined || by < today ? undefined : shortOf(weeks, rate, weekIndex(by), asked);
  return {
    forecast: forecast.type === "range" ? atEase(journal, forecast, strand, today) : forecast,
    ...(short === undefined ? {} : { shortBy: short }),
  };
}

/** A forecast, but on days on which one goes easy: then none. */
function atEase(journal: Journal, forecast: Forecast, { records }: Strand, today: DayNumber): Forecast {
  const { testedWeeks } = forecast;
  const { kind, said } = ceilingOn(journal, today, records[0]!.instrument);
  if (said && (kind === "without instrument" || kind === "sparing"))
    return { type: "something hurt", on: said.day, testedWeeks };
  return kind === "return" ? { type: "back after a break", testedWeeks } : forecast;
}

function doneStanding(journal: Journal, aimed: AimedAt, today: DayNumber): AimStanding {
  const done = recordsUpTo(aimed, today).filter(
    (record) => isAllOfIt(record, aimed.entry) && isMet(journal, record, aimed.entry),
  );
  return done.length === 0 ? { type: "not done" } : { type: "done", first: done[0]!.day, last: done.at(-1)!.day };
}

/** Where an aim names no place in a piece, a place of it is not the piece. */
function isAllOfIt({ unit, movement, where }: AttemptRecord, { where: asked }: Entry): boolean {
  if (unit !== "beats" || asked?.text) return true;
  return isWholePiece(where) && (movement === null || asked?.movement !== undefined);
}

/** Of the exercise in all ways, oldest first. */
function recordsUpTo({ strands }: AimedAt, today: DayNumber): readonly AttemptRecord[] {
  return strands.flatMap(({ records }) => records.filter(({ day }) => day <= today)).sort(inTimeOrder);
}

/** The most tries of one attempt of which none failed. */
function mostInARow(records: readonly AttemptRecord[]): number {
  return records.reduce((most, { got, count }) => (got === count ? Math.max(most, got) : most), 0);
}

/** Whether this one attempt has all that the aim says; what was only planned makes no record. */
function isMet(journal: Journal, record: AttemptRecord, asked: Entry): boolean {
  const entry = entryMadeOnce(journal, record);
  if (!entry) return false;
  const own = attemptOfRecord(entry, record);
  const alone = own ? { ...entry, attempts: [own] } : entry;
  return answers(alone, asked, journal.conventions(record.uri), { byRate: true });
}
