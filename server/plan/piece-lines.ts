import { barsOfPlace, isWholePiece } from "../history/bars-played.ts";
import { sinceLately } from "../history/journal-facts.ts";
import { withoutLeaps } from "../history/leaps.ts";
import { placeInWords } from "../history/place-words.ts";
import { type AttemptRecord, inTimeOrder } from "../history/record.ts";
import {
  afterRest,
  highestTempo,
  notchAtOrBelow,
  type Standing,
  standingOf,
  startTempo,
} from "../history/start-tempo.ts";
import { strandOf } from "../history/strands.ts";
import {
  BARS_OF_A_STRETCH,
  BEGIN_AT,
  CLOSE_AT,
  DAYS_IN_HAND,
  FIRST_TEMPO_AT,
  STRETCH_WITHIN,
} from "../history/thresholds.ts";
import { subjectKey } from "../journal/subject-text.ts";
import { SLOWEST } from "../syntax/words/tempo-words.ts";
import { onDay } from "./day-words.ts";
import { onInstrument } from "./exercise-lines.ts";
import { figure } from "./figure.ts";
import { type PlannedPiece, wholeRuns } from "./pieces-planned.ts";
import type { LineDraft, PlanRule } from "./plan.ts";
import type { PlanBasis } from "./plan-basis.ts";
import { planTexts } from "./plan-texts.ts";
import { dueReason } from "./plan-words.ts";
import { lately } from "./reached-lately.ts";
import { readLine } from "./read-line.ts";
import { tempoSteps } from "./tempo-steps.ts";
import { isHurtPlace, overlap } from "./what-hurt.ts";

/** A place that may be worked at: `bars 17-24`; null for the piece from its beginning. */
interface Place {
  readonly where: string | null;
  readonly rule: PlanRule;
  readonly reason: string;
}

/** What is not to be written again. */
export interface Taken {
  /** Places in lines of the same plan. */
  readonly places: ReadonlySet<string | undefined>;
  /** The keys of what was played on the day. */
  readonly played: ReadonlySet<string>;
}

/**
 * Lines at places of pieces, so many of them, that go round the pieces: of each the place that was last not reached,
 * the first stretch of bars that was left alone, or the one worked longest ago.
 */
export function placeLines(
  basis: PlanBasis,
  pieces: readonly PlannedPiece[],
  count: number,
  { places: inPlan, played }: Taken,
): readonly LineDraft[] {
  const taken = new Set(inPlan);
  const found: LineDraft[] = [];
  const places = pieces.map((piece) => placesOf(basis, piece));
  const begun = new Set<PlannedPiece>();
  let idle = 0;
  for (let i = 0; found.length < count && idle < pieces.length; i = (i + 1) % pieces.length) {
    const piece = pieces[i]!;
    const draft = nextDraft(basis, piece, places[i]!, { isBegun: begun.has(piece), taken, played });
    idle = draft ? 0 : idle + 1;
    if (!draft) continue;
    begun.add(piece);
    found.push(draft);
  }
  return found;
}

function nextDraft(
  basis: PlanBasis,
  piece: PlannedPiece,
  places: Place[],
  {
    isBegun,
    taken,
    played,
  }: { readonly isBegun: boolean; readonly taken: Set<string | undefined>; readonly played: Taken["played"] },
): LineDraft | undefined {
  for (let place = places.shift(); place; place = places.shift()) {
    const strand = piece.records.findLast((record) => record.where === place!.where)?.strandKey;
    if (strand !== undefined && played.has(strand)) continue;
    const draft = placeLine(basis, piece, place, isBegun);
    if (!draft || taken.has(draft.place)) continue;
    taken.add(draft.place);
    return draft;
  }
  return undefined;
}

/** The places of a piece in the order in which they are wanted. */
function placesOf(basis: PlanBasis, piece: PlannedPiece): Place[] {
  const { day } = basis;
  const isHere = (place: Place): boolean => !isHurt(basis, piece, place.where);
  const lasts = latestByPlace(piece);
  const tried = [...lasts].filter(([where, { day: on }]) => !isWholePiece(where) && on > day - DAYS_IN_HAND);
  const failed = tried.flatMap(([where]): Place[] => {
    const noted = piece.records.findLast((record) => record.where === where && record.reached !== null);
    if (noted?.reached !== false || isEasy(basis)) return [];
    return [{ where, rule: "place not reached", reason: notReached(piece, noted, day) }];
  });
  const lastOf = (where: string | null) => lasts.get(where);
  failed.sort((a, b) => inTimeOrder(lastOf(b.where)!, lastOf(a.where)!));
  const inTurn = stretchesOf(piece).map(({ where, last }): Place & { readonly last: number } => {
    const isLeft = last === undefined || day - last > STRETCH_WITHIN;
    const reason = isLeft ? planTexts.leftAlone(STRETCH_WITHIN) : planTexts.barsLongestAgo(onDay(last, day));
    return { where, rule: isLeft ? "bars left alone" : "bars in turn", reason, last: isLeft ? 0 : last };
  });
  inTurn.sort((a, b) => a.last - b.last); // those left alone stay in the order of the piece
  const ofNoBars = inTurn.length > 0 ? [] : placesInTurn(tried, day);
  const whole: Place = { where: "from the top", rule: "whole piece", reason: planTexts.fromBeginning };
  const own = [...failed, ...inTurn, ...ofNoBars];
  return (own.length > 0 ? own : [whole]).filter(isHere);
}

/** Of a piece whose bars nobody counted: the places that were worked, the longest ago first. */
function placesInTurn(tried: readonly (readonly [string | null, AttemptRecord])[], day: number): Place[] {
  return tried
    .map(([where, last]) => ({ where, last }))
    .sort((a, b) => inTimeOrder(a.last, b.last))
    .map(({ where, last }) => ({
      where,
      rule: "bars in turn",
      reason: planTexts.placesLongestAgo(onDay(last.day, day)),
    }));
}

/** The latest record of each place, by its words. */
function latestByPlace({ records }: PlannedPiece): ReadonlyMap<string | null, AttemptRecord> {
  return new Map(records.map((record) => [record.where, record]));
}

interface Stretch {
  readonly where: string;
  readonly last?: number;
}

/**
 * The piece in stretches of eight bars, and when any bar of each was worked last; playing it through is no such work.
 */
export function stretchesOf({ facts: { bars }, records }: PlannedPiece): readonly Stretch[] {
  if (bars === undefined) return [];
  const worked = records.flatMap(({ where, day }) =>
    isWholePiece(where) ? [] : barsOfPlace(where, bars).map((each) => ({ ...each, day })),
  );
  return Array.from({ length: Math.ceil(bars / BARS_OF_A_STRETCH) }, (_, i) => {
    const from = i * BARS_OF_A_STRETCH + 1;
    const to = Math.min(bars, from + BARS_OF_A_STRETCH - 1);
    const days = worked.filter((each) => overlap(each, { from, to })).map(({ day }) => day);
    const where = from === to ? `bars ${from}` : `bars ${from}-${to}`; // as records name it
    return days.length === 0 ? { where } : { where, last: Math.max(...days) };
  });
}

function placeLine(
  basis: PlanBasis,
  piece: PlannedPiece,
  { where, rule, reason }: Place,
  isBegun: boolean,
): LineDraft | undefined {
  const known = where === null || isWholePiece(where) ? [] : temposAt(basis, piece, where);
  const first = known.length === 0 ? firstTempoAt(basis, piece, where) : undefined;
  const tempos = first === undefined ? known : [first];
  const isTimed = tempos.length > 0 && tempos.every((tempo) => tempo >= SLOWEST);
  const how = isTimed ? `at ${tempos.map(figure).join(", ")}` : "slow";
  const due = isBegun ? undefined : dueReason(basis, piece.name, piece.due);
  const eased = isHurtAtAll(basis, piece) ? planTexts.notWhereItHurt : reason;
  const begun = first === undefined ? untimedAt(piece, where, known) : [planTexts.firstTempo];
  return pieceDraft(basis, piece, where, how, { rule, reasons: [eased, ...begun, ...(due ? [due] : [])] });
}

/** A line at a piece, read back; undefined where it cannot be read. */
function pieceDraft(
  basis: PlanBasis,
  piece: PlannedPiece,
  where: string | null,
  how: string,
  { rule, reasons, whole }: Pick<LineDraft, "rule" | "reasons" | "whole">,
): LineDraft | undefined {
  const on = onInstrument(basis).map(({ words }) => `, ${words}`);
  const text = `${placeName(piece, where)}${on.join("")}, ${how}`;
  const read = readLine(basis, text);
  if (read?.place === undefined) return undefined;
  const { place } = read;
  const exercise = placeName({ written: piece.name }, where);
  return { text, phase: "pieces", rule, exercise, reasons, place, ...(whole ? { whole } : {}) };
}

/** `Ground, bars 17-24`. */
export function placeName({ written }: Pick<PlannedPiece, "written">, where: string | null): string {
  return where === null ? written : `${written}, ${inWriting(where)}`;
}

/** `bar 3`, of which records say `bars 3`. */
function inWriting(where: string): string {
  return where.replace(/^bars (?=\d+$)/, "bar ");
}

/** Beats a minute in the beat of the goal; none where nothing was tried there with a metronome. */
function temposAt(basis: PlanBasis, piece: PlannedPiece, where: string): readonly number[] {
  const { day, ceiling, kind, journal } = basis;
  const records = piece.records.filter((record) => record.where === where);
  if (records.length === 0) return [];
  const standing = standingOf(records, day, sinceLately(journal, strandOf(records), day));
  // A place goes by what was reached last, which is said of so few bars sooner than that it is steady.
  const { reached } = lately(basis, records, standing);
  const begin = startTempo({ ...standing, steady: reached }, day, 1, ceiling);
  if (begin === undefined || reached === null) return triedAt(basis, records);
  const today = mostToday(basis, standing);
  const start = today === undefined ? begin : Math.min(begin, notchAtOrBelow(today));
  if (isEasy(basis)) return [start];
  return tempoSteps({
    start,
    known: afterRest(reached, standing, day),
    unhurried: kind.kind !== "usual",
    most: Math.min(today ?? Number.POSITIVE_INFINITY, piece.facts.goal?.bpm ?? Number.POSITIVE_INFINITY),
  });
}

/** With the metronome for the first time, where a place went well without it; undefined where it did not yet. */
function firstTempoAt(basis: PlanBasis, { facts: { goal }, records }: PlannedPiece, where: string | null) {
  const own = records.filter((record) => record.where === where);
  const isReady = own.every(({ rate }) => rate === null) && own.findLast(({ reached }) => reached !== null)?.reached;
  return isReady && goal && basis.ceiling.share === undefined ? notchAtOrBelow(goal.bpm * FIRST_TEMPO_AT) : undefined;
}

/** A place that went well without the metronome, of a piece that has no goal. */
function untimedAt(
  { facts: { goal }, records }: PlannedPiece,
  where: string | null,
  known: readonly number[],
): readonly string[] {
  const own = records.filter((record) => record.where === where);
  const wentWell = own.findLast(({ reached }) => reached !== null)?.reached === true;
  return !goal && known.length === 0 && wentWell && own.every(({ rate }) => rate === null) ? [planTexts.untimed] : [];
}

/** As much as a day allows: where nothing is to be pushed no more than what is steady. Undefined without limit. */
function mostToday({ ceiling, kind: { kind } }: PlanBasis, standing: Standing): number | undefined {
  const isUnhurried = kind === "unhurried" || kind === "concert";
  return highestTempo(ceiling, standing) ?? (isUnhurried ? (standing.steady ?? undefined) : undefined);
}

/** Where nothing was reached yet: well below what was tried last. */
function triedAt({ ceiling, day }: PlanBasis, records: readonly AttemptRecord[]): readonly number[] {
  const told = withoutLeaps(records, day);
  const last = told.findLast((record) => record.rate !== null);
  if (!last || ceiling.kind === "without instrument") return [];
  const slowest = Math.min(
    ...told.flatMap(({ day: on, rate }) => (on === last.day && on < day && rate !== null ? [rate] : [])),
  );
  return [notchAtOrBelow(slowest * BEGIN_AT)];
}

function notReached({ name }: PlannedPiece, { rate, where, day: on }: AttemptRecord, day: number): string {
  const what = where === null ? name : `${name}, ${placeInWords(inWriting(where))}`;
  return rate === null
    ? planTexts.placeNotThereYet(what, onDay(on, day))
    : planTexts.placeNotReached(what, figure(rate), onDay(on, day));
}

/**
 * A piece played through, a little below what went well: in turn those that were played through before, or whose bars
 * were all worked; where there is none yet the first. Undefined where none may be.
 */
export function closingLine(basis: PlanBasis, pieces: readonly PlannedPiece[]): LineDraft | undefined {
  const whole = pieces.filter((piece) => !isHurt(basis, piece, "from the top"));
  const known = whole.filter((piece) => wholeRuns(piece).length > 0 || isAllWorked(piece));
  const [most = whole[0]] = [...known].sort(wholeLongestAgo);
  if (!most) return undefined;
  const standing = standingOf(wholeRuns(most), basis.day);
  const asWritten = wholeRuns(most).filter(({ where }) => where !== null);
  const limits = [standing, standingOf(asWritten, basis.day)].map((each) => mostToday(basis, each));
  const allowed = Math.min(...limits.map((limit) => limit ?? Number.POSITIVE_INFINITY));
  const tempo = wholeTempo(basis, lately(basis, wholeRuns(most), standing), CLOSE_AT, allowed);
  const how = tempo === undefined ? "slow" : `at ${tempo}`;
  const reason = tempo === undefined ? planTexts.wholeSlowly : planTexts.whole;
  return pieceDraft(basis, most, "from the top", how, { rule: "whole piece", reasons: [reason], whole: true });
}

/** Of two that were both played through on a day the one that was first there, so that they take turns at the end. */
function wholeLongestAgo(a: PlannedPiece, b: PlannedPiece): number {
  const [last, other] = [wholeRuns(a).at(-1), wholeRuns(b).at(-1)];
  return last && other ? inTimeOrder(last, other) : Number(last !== undefined) - Number(other !== undefined);
}

function isAllWorked(piece: PlannedPiece): boolean {
  const stretches = stretchesOf(piece);
  return stretches.length > 0 && stretches.every(({ last }) => last !== undefined);
}

/** At a part of the tempo last reached whole, and no more than that. */
function wholeTempo(
  { ceiling }: PlanBasis,
  { reached }: Standing,
  share: number,
  most = Number.POSITIVE_INFINITY,
): number | undefined {
  if (reached === null || ceiling.kind === "without instrument") return undefined;
  const tempo = notchAtOrBelow(Math.min(reached * share, most));
  return tempo < SLOWEST ? undefined : tempo;
}

/** The pieces of a concert played through, in its order, at the tempo last reached. */
export function runThrough(basis: PlanBasis, pieces: readonly PlannedPiece[]): readonly LineDraft[] {
  const { concert } = basis.kind;
  const titles = concert?.declared.titles ?? [];
  const own = titles.flatMap((title) => pieces.filter((piece) => piece.title === title));
  const played = own.length > 0 ? own : pieces.filter(({ due }) => due === concert?.declared.on);
  const days = (concert?.declared.on ?? basis.day) - basis.day;
  return [...new Set(played)].flatMap((piece) => {
    const standing = standingOf(wholeRuns(piece), basis.day);
    const tempo = wholeTempo(
      basis,
      lately(basis, wholeRuns(piece), standing),
      1,
      highestTempo(basis.ceiling, standing),
    );
    const reasons = [planTexts.runThrough(days)];
    const how = tempo === undefined ? "slow" : `at ${tempo}`;
    return pieceDraft(basis, piece, "from the top", how, { rule: "run-through", reasons, whole: true }) ?? [];
  });
}

/** On these days no place is chosen since it was not reached, and no tempo leads on. */
function isEasy({ kind: { kind } }: PlanBasis): boolean {
  return kind === "sparing" || kind === "easing" || kind === "return";
}

function isHurt(basis: PlanBasis, piece: PlannedPiece, where: string | null): boolean {
  if (!isEasy(basis)) return false;
  return isHurtPlace(basis.hurt, { ...keyOf(piece), where }, piece.facts.bars);
}

function isHurtAtAll(basis: PlanBasis, piece: PlannedPiece): boolean {
  const { subjectKey: key } = keyOf(piece);
  const { pieces, records } = basis.hurt;
  return isEasy(basis) && (pieces.has(key) || records.some((record) => record.subjectKey === key));
}

/** What makes a piece the same in records. */
export function keyOf({ records, title, facts }: PlannedPiece): Pick<AttemptRecord, "subjectKey" | "movement"> {
  const movement = "movement" in facts ? `mvt ${(facts as { readonly movement: string }).movement}` : null;
  const [first] = records;
  return first
    ? { subjectKey: first.subjectKey, movement: first.movement }
    : { subjectKey: subjectKey({ type: "title", title, declared: true }), movement };
}
