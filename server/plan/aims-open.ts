import { patternOfRecord } from "../history/exercise-name.ts";
import { exerciseInWords } from "../history/exercise-words.ts";
import { playedEntry } from "../history/played.ts";
import type { DayNumber } from "../journal/calendar.ts";
import { type DeclaredAim, ofType } from "../journal/declared-lines.ts";
import { subjectText } from "../journal/subject-text.ts";
import { type AimProgress, aimProgress } from "./aims.ts";
import { plainTerms, slowLine, type Wanted } from "./exercise-lines.ts";
import type { ExerciseState, ExerciseStates } from "./exercise-states.ts";
import { isOutOfSight } from "./forecast.ts";
import type { LineDraft } from "./plan.ts";
import type { PlanBasis } from "./plan-basis.ts";

/** An aim that is not reached, and whose day has not passed; of one with several subjects one of them. */
export interface AimCandidate {
  readonly progress: AimProgress;
  readonly key: string;
  readonly text: string;
  readonly by?: DayNumber;
  /** The last day on which its exercise was played, warming up aside. */
  readonly last?: DayNumber;
  /** It may be missed as things go, or nobody can say. */
  readonly outOfSight: boolean;
  readonly state?: ExerciseState;
  /** The rate that is aimed at. */
  readonly most?: number;
}

/** The aims at exercises; those at pieces are worked at with the pieces. */
export function aimsOpen(basis: PlanBasis, states: ExerciseStates): readonly AimCandidate[] {
  const { journal, day, instrument } = basis;
  return ofType(basis.lines, "aim").flatMap((aim) => {
    const { by } = aim.declared;
    if ((by !== undefined && by < day) || (aim.day !== undefined && aim.day > day)) return [];
    return aimProgress(journal, aim, { today: day }).flatMap((progress): AimCandidate[] => {
      const { entry, standing, tempo } = progress;
      const manner = playedEntry(entry, journal.conventions(aim.uri)).attempts[0]?.manner;
      if (!manner || manner.unit === "beats" || manner.instrument !== instrument) return [];
      if (standing.type === "reached" || standing.type === "done") return [];
      const exercise = basis.exercises.find(({ key }) => key === manner.exerciseKey);
      const state = exercise && states(exercise);
      return [
        {
          progress,
          key: manner.exerciseKey,
          text: exerciseInWords(subjectText(entry.subject!, journal.names), patternOfRecord(entry)),
          outOfSight: isMissed(progress, aim, day),
          ...(by === undefined ? {} : { by }),
          ...(state ? { state, last: state.last } : {}),
          ...(tempo ? { most: tempo.rate } : {}),
        },
      ];
    });
  });
}

function isMissed({ standing }: AimProgress, { declared: { by } }: DeclaredAim, day: DayNumber): boolean {
  if (by === undefined) return false;
  return standing.type !== "under way" || isOutOfSight(standing.forecast, by, day);
}

/** The first line at an aim that was not played yet: slow, in the words of the format. */
export function aimLine(
  basis: PlanBasis,
  { progress, text, key }: AimCandidate,
  wanted: Wanted,
): LineDraft | undefined {
  return slowLine(basis, plainTerms(basis, progress.entry), { ...wanted, exercise: text, key });
}
