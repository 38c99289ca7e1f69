import type { DayNumber } from "../journal/calendar.ts";
import { scaleText } from "../journal/subject-text.ts";
import { articulationsOf } from "../music/instruments/articulations.ts";
import { noteText } from "../music/notes/note-names.ts";
import { onInstrument, slowLine, type Wanted } from "./exercise-lines.ts";
import type { ExerciseState, ExerciseStates } from "./exercise-states.ts";
import type { HomeKey } from "./home-keys.ts";
import { modeOf } from "./keys-played.ts";
import { homeKeysOfExercise, type KeyNeed, keysWanted } from "./keys-wanted.ts";
import type { LineDraft } from "./plan.ts";
import type { PlanBasis } from "./plan-basis.ts";
import type { WrittenTerm } from "./practised-line.ts";
import { readLine } from "./read-line.ts";

/** A key that a piece in hand wants, its neighbour, or its lines as far as it goes. */
export interface KeyCandidate {
  readonly need: KeyNeed;
  readonly key: string;
  readonly text: string;
  /** The last day on which anything in it was played, warming up aside. */
  readonly last?: DayNumber;
  /** What was played in it last. */
  readonly state?: ExerciseState;
  /** The line that begins it. */
  readonly terms: readonly WrittenTerm[];
}

/** What the pieces in hand want on a day; ranges only where they are not met. */
export function keysOpen(basis: PlanBasis, states: ExerciseStates): readonly KeyCandidate[] {
  const { journal, lines, day, conventions } = basis;
  const hidden = conventions.hidesNotes;
  return keysWanted(journal, lines, day).flatMap((need): KeyCandidate[] => {
    if (need.what === "fingerChange" || (need.what === "range" && (need.played || hidden))) return [];
    const terms = termsOf(basis, need);
    const key = readLine(basis, terms.map(({ words }) => words).join(", "))?.exerciseKey;
    const state = need.what === "range" ? undefined : latestIn(basis, states, need.key);
    if (key === undefined && !state) return [];
    return [
      {
        need,
        key: state?.exercise.key ?? key!,
        text: terms[0]!.words,
        terms,
        ...(state ? { state, last: state.last } : {}),
      },
    ];
  });
}

/** What was practised last in a key: scales, chords and chains count. */
function latestIn(
  { journal, exercises }: PlanBasis,
  states: ExerciseStates,
  { id }: HomeKey,
): ExerciseState | undefined {
  let latest: ExerciseState | undefined;
  for (const exercise of exercises) {
    if (exercise.strands[0]!.title || !homeKeysOfExercise(journal, exercise).includes(id)) continue;
    const state = states(exercise);
    if (state && (!latest || state.last > latest.last)) latest = state;
  }
  return latest;
}

/** `G harmonic minor, slurred`: of a minor key the harmonic form. */
function termsOf(basis: PlanBasis, need: Exclude<KeyNeed, { readonly what: "fingerChange" }>): readonly WrittenTerm[] {
  const { journal, played } = basis;
  const { names } = journal;
  const term = (type: WrittenTerm["type"], words: string): WrittenTerm => ({ type, words, runsOn: false });
  const far =
    need.what === "range"
      ? [term("span", `from ${noteText(need.range.low, names)} to ${noteText(need.range.high, names)}`)]
      : [];
  return [
    term("scale", keyText(basis, need.key)),
    ...far,
    term("articulation", articulationsOf(played).joined),
    ...onInstrument(basis),
  ];
}

function keyText({ journal: { names } }: Pick<PlanBasis, "journal">, { scale }: HomeKey): string {
  const isMinor = !scale.declared && modeOf(scale.kind) === "minor";
  return isMinor ? names.key(scale.tonic, "harmonic minor") : scaleText(scale, names);
}

/** A key that was not played yet is begun slowly. */
export function keyLine(basis: PlanBasis, { terms, text }: KeyCandidate, wanted: Wanted): LineDraft | undefined {
  return slowLine(basis, terms, { ...wanted, exercise: text });
}
