import {
  LONGEST_WHOLE,
  MINUTES_AWAY,
  UNIT,
  UNITS_FOR_A_CLOSE,
  UNITS_FOR_A_WARM_UP,
  UNITS_FOR_TWO_OF_WARM_UP,
} from "../history/thresholds.ts";
import type { Journal } from "../journal/journal.ts";
import { awayLines } from "./away-lines.ts";
import type { Candidate } from "./candidate.ts";
import { candidatesOf } from "./candidates.ts";
import { careOnDay } from "./care-on-day.ts";
import { exerciseStates } from "./exercise-states.ts";
import { kindOfDayTexts } from "./kind-of-day-texts.ts";
import { minutesOnDay, timeInWords } from "./minutes-on-day.ts";
import { fitted, pausesBefore, shared, total } from "./pauses.ts";
import { closingLine, placeLines, runThrough } from "./piece-lines.ts";
import { type PlannedPiece, piecesPlanned } from "./pieces-planned.ts";
import { plainCandidates } from "./plain-lines.ts";
import type { LineDraft, Plan, PlanAsked, PlanKind, PlanLine } from "./plan.ts";
import { type PlanBasis, planBasis, playedOnDay, usualMinutes } from "./plan-basis.ts";
import { planTexts } from "./plan-texts.ts";
import { type SetOnDay, setOnDay } from "./set-lines.ts";
import { warmUpKey, warmUpLines } from "./warm-up.ts";

/**
 * A session for a day, from what the journal had before it: the same for the same journal, day and wishes, in whatever
 * order its files come. Never longer than was asked for, and always a suggestion.
 */
export function dayPlan(journal: Journal, asked: PlanAsked): Plan {
  const basis = planBasis(journal, asked);
  const wished = asked.minutes ?? usualMinutes(basis);
  const set = setOnDay(basis);
  const { minutes, notes, away, whole } = minutesOnDay(basis, wished);
  const care = careOnDay(basis, timeInWords(whole, wished));
  const base = { date: asked.day, asked: wished, minutes: 0, care, setInWords: set.words };
  const { kind } = basis.kind;
  if (kind === "rest") {
    const setWork = [...set.pieces.map(({ text }) => text), ...textsOf(set.exercises), ...set.words];
    return { ...base, setInWords: setWork, kind: "rest", notes: [kindOfDayTexts.rest], lines: [], breaks: [] };
  }
  if (kind === "no instrument" || away) return awayPlan(basis, { ...base, kind: "noInstrument", notes }, minutes);
  if (minutes < UNIT) {
    return { ...base, kind: "none", notes: wished < UNIT ? [kindOfDayTexts.tooShort] : notes, lines: [], breaks: [] };
  }
  const drafts = sessionOf(basis, asked, set, minutes);
  return timed(basis, asked, { ...base, kind: KINDS[kind], notes }, drafts, minutes);
}

const KINDS = {
  usual: "usual",
  unhurried: "unhurried",
  concert: "concert",
  sparing: "sparing",
  easing: "sparing",
  return: "return",
} as const satisfies Readonly<Record<string, PlanKind>>;

type PlanHead = Omit<Plan, "lines" | "breaks">;

/** A line and the units that it takes. */
interface Drafted {
  readonly draft: LineDraft;
  readonly units: number;
}

function textsOf(candidates: readonly Candidate[]): readonly string[] {
  return candidates.flatMap((each) => each.write("groundwork", 0)?.text ?? []);
}

function awayPlan(basis: PlanBasis, head: PlanHead, minutes: number): Plan {
  if (minutes < UNIT) {
    return { ...head, notes: [...head.notes, kindOfDayTexts.awayTooShort], lines: [], breaks: [] };
  }
  const units = Math.floor(Math.min(minutes, MINUTES_AWAY) / UNIT);
  const drafts = awayLines(basis, piecesPlanned(basis), units);
  const own = shared(
    units,
    drafts.map(() => MINUTES_AWAY / UNIT),
  );
  const lines = drafts.map((draft, i) => lineOf(draft, own.units[i]! * UNIT));
  if (lines.length === 0) return { ...head, notes: [...head.notes, kindOfDayTexts.quietDay], lines, breaks: [] };
  return { ...head, lines, minutes: lines.reduce((sum, line) => sum + line.minutes, 0), breaks: [] };
}

/** What is played, in the order of the day. */
function sessionOf(basis: PlanBasis, asked: PlanAsked, set: SetOnDay, minutes: number): readonly Drafted[] {
  const { settings } = asked;
  const pauses = UNIT * Math.max(0, Math.ceil(minutes / settings.playBeforePause) - 1);
  const units = Math.floor((minutes - pauses) / UNIT);
  const longest = Math.floor(settings.longestLine / UNIT);
  const pieces = piecesPlanned(basis);
  const wanted = pieces.length > 0 ? Math.ceil(units * settings.pieces) : 0;
  if (units === 1) {
    const draft = onlyLine(basis, set, pieces);
    return draft ? [{ draft, units: 1 }] : [];
  }
  const worked = pieceDrafts(basis, set, pieces, wanted);
  const ofPieces = worked.places.length + worked.close.length > 0 ? wanted : 0;
  const rest = units - ofPieces;
  const warm = warmUpUnits(units, rest);
  const slow = noFluency(basis) || units < UNITS_FOR_A_WARM_UP;
  const ground = slow ? rest - warm : Math.round((rest - warm) * settings.groundwork);
  const chosen = exerciseDrafts(basis, set, { groundwork: ground, fluency: rest - warm - ground });
  const warmUp = warmUpLines(basis, warmUpKey(basis, pieces, chosen.groundwork), warm);
  const fluency = shared(
    rest - warm - ground,
    chosen.fluency.map(() => longest),
  );
  const groundwork = shared(
    ground + fluency.left,
    chosen.groundwork.map(() => longest),
  );
  const spare = warmUp.length === 0 ? warm : 0;
  const piecesUnits = ofPieces + groundwork.left + spare;
  const closeLeast = worked.close.length > 0 && worked.places.length > 0 ? 1 : 0;
  const places = shared(
    piecesUnits - closeLeast,
    worked.places.map((draft) => (draft.whole ? LONGEST_WHOLE / UNIT : longest)),
  );
  const close = shared(
    places.left + closeLeast,
    worked.close.map(() => LONGEST_WHOLE / UNIT),
  );
  const withUnits = (drafts: readonly LineDraft[], own: readonly number[]): readonly Drafted[] =>
    drafts.map((draft, i) => ({ draft, units: own[i]! })).filter((each) => each.units > 0);
  const first = withUnits(
    warmUp,
    shared(
      warm,
      warmUp.map(() => 1),
    ).units,
  );
  const middle = withUnits(worked.places, places.units);
  const slowly = withUnits(chosen.groundwork, groundwork.units);
  const varied = withUnits(chosen.fluency, fluency.units);
  const last = withUnits(worked.close, close.units);
  return units < UNITS_FOR_A_CLOSE
    ? [...first, ...slowly, ...varied, ...middle, ...last]
    : [...first, ...middle, ...slowly, ...varied, ...last];
}

function warmUpUnits(units: number, rest: number): number {
  if (units < UNITS_FOR_A_WARM_UP) return 0;
  return units >= UNITS_FOR_TWO_OF_WARM_UP && rest > 2 ? 2 : Math.min(1, rest);
}

function noFluency({ kind: { kind } }: PlanBasis): boolean {
  return kind !== "usual" && kind !== "unhurried";
}

/** With five minutes: what is set, what was left alone long, a piece, or anything. */
function onlyLine(basis: PlanBasis, set: SetOnDay, pieces: readonly PlannedPiece[]): LineDraft | undefined {
  const [ofPiece] = set.pieces;
  const chosen = exerciseDrafts(basis, set, { groundwork: 1, fluency: 0 });
  const [exercise] = chosen.groundwork;
  if (exercise?.rule === "set") return exercise;
  if (ofPiece) return ofPiece;
  if (exercise?.rule === "long ago") return exercise;
  return pieceDrafts(basis, { ...set, pieces: [] }, pieces, 1).places[0] ?? exercise;
}

interface PieceDrafts {
  readonly places: readonly LineDraft[];
  readonly close: readonly LineDraft[];
}

function pieceDrafts(basis: PlanBasis, set: SetOnDay, pieces: readonly PlannedPiece[], units: number): PieceDrafts {
  if (units === 0 || pieces.length === 0) return { places: [], close: [] };
  const { kind, concert } = basis.kind;
  const ahead = concert ? concert.declared.on! - basis.day : 0;
  if (kind === "concert" && ahead > 0 && ahead % 2 === 0) {
    const whole = runThrough(basis, pieces).slice(0, units);
    if (whole.length > 0) return { places: whole, close: [] };
  }
  const close = units > 1 ? [closingLine(basis, pieces)].filter((each) => each !== undefined) : [];
  const round = Math.max(1, Math.ceil((units - 1) / 2)) + (units > 1 && close.length === 0 ? 1 : 0);
  const own = set.pieces.slice(0, round);
  const inPlan = new Set([...own, ...close].map(({ place }) => place));
  const taken = { places: inPlan, played: playedOnDay(basis) };
  const places = placeLines(basis, pieces, round - own.length, taken);
  return { places: [...own, ...places], close };
}

interface ExerciseDrafts {
  readonly groundwork: readonly LineDraft[];
  readonly fluency: readonly LineDraft[];
}

/** What the rules have first: what goes well is varied while there is room for it, all else is worked at slowly. */
function exerciseDrafts(
  basis: PlanBasis,
  set: SetOnDay,
  room: { readonly groundwork: number; readonly fluency: number },
): ExerciseDrafts {
  const found: { readonly groundwork: LineDraft[]; readonly fluency: LineDraft[] } = { groundwork: [], fluency: [] };
  const taken = new Set<string>(playedOnDay(basis));
  if (basis.ceiling.said || basis.ceiling.kind === "return") for (const key of basis.hurt.exercises) taken.add(key);
  const texts = new Set<string>();
  for (const each of everything(basis, set)) {
    const hasRoom = (phase: "groundwork" | "fluency"): boolean => found[phase].length < room[phase];
    if (!hasRoom("groundwork") && !hasRoom("fluency")) break;
    if (taken.has(each.key)) continue;
    const phases = each.fluent ? (["fluency", "groundwork"] as const) : (["groundwork"] as const);
    for (const phase of phases) {
      const draft = hasRoom(phase) ? each.write(phase, found.groundwork.length + 1) : undefined;
      if (!draft || texts.has(draft.text) || draft.exerciseKeys?.some((key) => taken.has(key))) continue;
      found[phase].push(draft);
      for (const key of [each.key, ...(draft.exerciseKeys ?? [])]) taken.add(key);
      texts.add(draft.text);
      break;
    }
  }
  return found;
}

function* everything(basis: PlanBasis, set: SetOnDay): Generator<Candidate> {
  yield* set.exercises;
  yield* candidatesOf(basis, exerciseStates(basis));
  yield* plainCandidates(basis);
}

/**
 * With minutes, pauses and the reasons that neighbours give each other: to take two in turn is by Carter, C. E. and
 * Grahn, J. A. (2016), "Optimizing music learning", Frontiers in Psychology 7, 1251 (from memory).
 */
function timed(
  basis: PlanBasis,
  { settings }: PlanAsked,
  head: PlanHead,
  drafted: readonly Drafted[],
  most: number,
): Plan {
  const { playBeforePause: longest } = settings;
  const hasPiece = drafted.some(({ draft }) => draft.phase === "pieces");
  const half = hasPiece && most >= 2 * UNIT && basis.kind.kind !== "no instrument" && settings.pieces >= 0.5;
  const timedLines = drafted.map(({ draft, units }) => ({ minutes: units * UNIT, piece: draft.phase === "pieces" }));
  const minutes = fitted(timedLines, most, longest, half);
  const kept = drafted.flatMap(({ draft }, i) => (minutes[i]! > 0 ? [{ draft, minutes: minutes[i]! }] : []));
  const before = pausesBefore(kept, longest);
  let isSecond = false;
  const lines = kept.map(({ draft, minutes: own }, i) => {
    const next = kept[i + 1]?.draft;
    const isPair = !isSecond && draft.steady === true && next?.steady === true && !before.includes(i + 1);
    isSecond = isPair;
    return lineOf(isPair ? { ...draft, reasons: [...draft.reasons, planTexts.inTurns] } : draft, own);
  });
  return {
    ...head,
    minutes: total(minutes, longest),
    lines,
    breaks: before.map((index) => ({ before: index, minutes: UNIT })),
  };
}

function lineOf({ text, phase, rule, exercise, reasons }: LineDraft, minutes: number): PlanLine {
  return { text: `${text}, ${minutes} min`, phase, minutes, rule, exercise, reasons };
}
