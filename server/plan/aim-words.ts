import { rateAsWritten } from "../history/exercise-row.ts";
import { WEEKS_FOR_A_FORECAST } from "../history/thresholds.ts";
import type { DayNumber } from "../journal/calendar.ts";
import { dateInWords } from "../journal/date-words.ts";
import type { Journal } from "../journal/journal.ts";
import { subjectText } from "../journal/subject-text.ts";
import { aimTexts } from "./aim-texts.ts";
import type { AimProgress } from "./aims.ts";
import { dayTexts } from "./day-texts.ts";
import { onDay, weekInWords } from "./day-words.ts";
import type { Forecast } from "./forecast.ts";

/** What is said of an aim. */
export interface AimSaid {
  readonly today: DayNumber;
  /** Whether a forecast is said, or why there is none: not while files are still being read. */
  readonly forecast: boolean;
  /** Days are named by their dates: it is kept, and read later. */
  readonly dated?: boolean;
  /** What hurt is not spoken of: others read it. */
  readonly discreet?: boolean;
}

/**
 * Where an aim is, and its forecast or why there is none; of several subjects each by its name. Names are as the
 * journal has them: whoever shows the sentences makes them safe.
 */
export function progressInWords(journal: Journal, progress: readonly AimProgress[], said: AimSaid): readonly string[] {
  return progress.flatMap((one) => {
    const [first, ...others] = sentencesOf(one, said);
    return [one.isOneOf ? aimTexts.of(nameOf(journal, one), first) : first, ...others];
  });
}

/** What the forecast rests on, or why there is none, in a sentence by itself. */
export function whyInWords(progress: AimProgress, said: Omit<AimSaid, "forecast">): string {
  const { standing } = progress;
  if (standing.type === "under way" && !isKept(standing.forecast, said))
    return forecastInWords(standing.forecast, said);
  return sentencesOf(progress, { ...said, forecast: true }).at(-1)!;
}

/** `C major`. */
function nameOf(journal: Journal, { entry }: AimProgress): string {
  return subjectText(entry.subject!, journal.names);
}

function sentencesOf(progress: AimProgress, said: AimSaid): readonly [string, ...string[]] {
  const { today, forecast } = said;
  const { standing } = progress;
  switch (standing.type) {
    case "reached":
      return [aimTexts.reached(on(standing.on, said))];
    case "done":
      return [aimTexts.lastDone(on(standing.last, said))];
    case "not done":
      return [aimTexts.notDone];
    case "not played":
      return [standing.otherwise ? aimTexts.notPlayedInThisWay : aimTexts.notPlayed];
    case "no tempo":
      return [aimTexts.noTempo];
    case "tempo only":
      return [tempoOnly(progress, standing)];
    case "under way": {
      const best = aimTexts.best(asAimed(standing.best, progress), weekInWords(standing.week, today));
      if (!forecast || isKept(standing.forecast, said)) return [best];
      return [best, forecastInWords(standing.forecast, said, standing.week)];
    }
  }
}

/** `8ths at 72 reached, but not 5 in a row yet; 3 at most.` */
function tempoOnly(
  progress: AimProgress,
  { best, inARow }: { readonly best: number; readonly inARow: number },
): string {
  const { got, count } = progress.entry.attempts.find(({ tempo }) => tempo)?.tries ?? { got: 1, count: 1 };
  const reached = asAimed(best, progress);
  if (count === 1 || inARow >= got) return aimTexts.notWithAll(reached);
  return got < count ? aimTexts.notInTries(reached, got, count) : aimTexts.notInARow(reached, got, inARow);
}

/** A rate in the note value and beat that the aim is written in. */
function asAimed(rate: number, { tempo }: AimProgress): string {
  const { manner } = tempo!;
  return rateAsWritten(rate, manner, manner);
}

/** `today`, `on 16 March`. */
function on(day: DayNumber, { today, dated }: Omit<AimSaid, "forecast">): string {
  return dated ? dayTexts.on(dateInWords(day, today)) : onDay(day, today);
}

/** Others are not told that there is none because something hurt. */
function isKept(forecast: Forecast, { discreet }: Pick<AimSaid, "discreet">): boolean {
  return discreet === true && forecast.type === "something hurt";
}

/**
 * A forecast in a sentence: a range of weeks with what it rests on, or why there is none. It names no day ahead.
 *
 * @param named the week that the sentence before it has named
 */
export function forecastInWords(forecast: Forecast, said: Omit<AimSaid, "forecast">, named?: number): string {
  const { testedWeeks: tested } = forecast;
  switch (forecast.type) {
    case "range":
      return aimTexts.ifItGoesOn(tested, rangeInWords(forecast));
    case "over a year":
      return aimTexts.overAYear(tested);
    case "too early":
      return aimTexts.tooEarly(tested, WEEKS_FOR_A_FORECAST);
    case "no clear change":
      return aimTexts.noClearChange(tested);
    case "falling":
      return aimTexts.falling(tested);
    case "something hurt":
      return aimTexts.hurt(on(forecast.on, said));
    case "back after a break":
      return aimTexts.afterBreak;
    case "not tested lately":
      return forecast.last === named
        ? aimTexts.notTestedSinceThen
        : aimTexts.notTestedSince(weekInWords(forecast.last, said.today));
  }
}

function rangeInWords({ earliest, latest }: Extract<Forecast, { readonly type: "range" }>): string {
  if (latest === null) return aimTexts.orMore(earliest);
  return earliest === latest ? aimTexts.about(latest) : aimTexts.fromTo(earliest, latest);
}
