import { attemptOfRecord, entryMadeOnce } from "../history/entry-of-record.ts";
import { exerciseInWords } from "../history/exercise-words.ts";
import { compareText } from "../history/record.ts";
import { FINGER_CHANGES_WITHIN, TURN } from "../history/thresholds.ts";
import type { DayNumber } from "../journal/calendar.ts";
import { exerciseToPlay, isPlayable } from "../journal/entry-exercise.ts";
import { type FingerChange, hardestSteps } from "../music/fingering/finger-change.ts";
import { whyUnfingered } from "../music/fingering/fingering.ts";
import { type NoteNames, noteText } from "../music/notes/note-names.ts";
import { notesToPlay } from "../music/patterns/notes-to-play.ts";
import type { Candidate } from "./candidate.ts";
import type { ExerciseState, ExerciseStates } from "./exercise-states.ts";
import type { PlanBasis } from "./plan-basis.ts";
import { planTexts } from "./plan-texts.ts";
import { readLine } from "./read-line.ts";

/**
 * A finger change by itself: both notes, back and forth; slurred, as the tongue hides where fingers do not move
 * together (common practice, no source).
 *
 * @param on the instrument, where it has to be named
 */
export function fingerChangeText(
  { from, to }: Pick<FingerChange, "from" | "to">,
  names: NoteNames,
  on: string | undefined,
): string {
  const named = on === undefined ? "" : `, on ${on}`;
  return `notes ${noteText(from, names)} ${noteText(to, names)}, back and forth, slurred${named}`;
}

/** What `focus` says of an entry whose finger changes were listened for. */
const FINGER_CHANGES = "finger changes";
/** How an entry went whose fingers may not have moved together. */
const UNSURE: readonly string[] = ["uneven", "slips"];

/**
 * The hardest finger change of the latest entry that asks for it, on recorders; one a plan. None on days on which
 * something is to be spared, none where note names are hidden, and not within two days of itself.
 */
export function* fingerChangeCandidates(basis: PlanBasis, states: ExerciseStates): Generator<Candidate> {
  const { played, conventions, kind } = basis;
  const isSpared = kind.kind === "sparing" || kind.kind === "easing" || kind.kind === "return";
  if (isSpared || played?.family !== "recorder" || whyUnfingered(played) || conventions.hidesNotes) return;
  for (const state of unsure(basis, states)) {
    const found = candidateFrom(basis, state);
    if (!found) continue;
    yield found;
    return;
  }
}

function unsure({ exercises, journal, day }: PlanBasis, states: ExerciseStates): readonly ExerciseState[] {
  const found = exercises.flatMap((exercise) => {
    if (exercise.lastDay < day - FINGER_CHANGES_WITHIN || exercise.strands[0]!.title) return [];
    const state = states(exercise);
    if (!state || state.last < day - FINGER_CHANGES_WITHIN) return [];
    const { latest, noted } = state;
    const isListened = entryMadeOnce(journal, latest)?.focus?.toLowerCase() === FINGER_CHANGES;
    const entry = noted && entryMadeOnce(journal, noted);
    const outcomes = (entry && attemptOfRecord(entry, noted)?.outcomes) ?? [];
    return isListened || outcomes.some((outcome) => UNSURE.includes(outcome)) ? [state] : [];
  });
  return found.sort((a, b) => b.last - a.last || compareText(a.exercise.key, b.exercise.key));
}

function candidateFrom(basis: PlanBasis, { latest, exercise }: ExerciseState): Candidate | undefined {
  const { journal, conventions, played, day } = basis;
  const entry = entryMadeOnce(journal, latest);
  if (!entry || !isPlayable(entry.subject)) return undefined;
  const conditions = attemptOfRecord(entry, latest)?.conditions;
  const input = exerciseToPlay(entry, conditions, conventions, latest.day);
  const change = input && hardestSteps(notesToPlay({ ...input, instrument: played! }), played!, 1)[0];
  if (!change) return undefined;
  const usual = conventions.instrument === undefined || basis.instrument !== latest.instrument;
  const text = fingerChangeText(change, journal.names, usual ? (basis.instrument ?? undefined) : entry.instrument);
  const read = readLine(basis, `${text}, slow`);
  const key = read?.exerciseKey;
  if (key === undefined || wasPlayedLately(basis, key)) return undefined;
  const named = exerciseInWords(exercise.subject, exercise.pattern);
  return {
    key,
    fluent: false,
    write: (phase) =>
      phase === "fluency"
        ? undefined
        : {
            text: `${text}, slow`,
            phase: "groundwork",
            rule: "finger change",
            exercise: read!.attempts[0]?.manner.subject ?? null,
            reasons: [planTexts.hardestChange(named)],
          },
  };

  function wasPlayedLately({ exercises }: PlanBasis, own: string): boolean {
    const last: DayNumber | undefined = exercises
      .find((each) => each.key === own)
      ?.strands.flatMap(({ records }) => records.findLast((record) => record.day < day)?.day ?? [])
      .reduce<DayNumber | undefined>((a, b) => (a === undefined ? b : Math.max(a, b)), undefined);
    return last !== undefined && day - last <= TURN;
  }
}
