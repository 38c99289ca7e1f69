import { rateAsWritten } from "../history/exercise-row.ts";
import { WEEKS_FOR_A_FORECAST } from "../history/thresholds.ts";
import type { DayNumber } from "../journal/calendar.ts";
import { dateInWords } from "../journal/date-words.ts";
import type { Journal } from "../journal/journal.ts";
import { subjectText } from "../journal/subject-text.ts";
import type { AimProgress } from "./aims.ts";
import { counted, onDay, weekInWords } from "./day-words.ts";
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
    return [`${namedBefore(journal, one)}${first}`, ...others];
  });
}

/** What the forecast rests on, or why there is none, in a sentence by itself. */
export function whyInWords(progress: AimProgress, said: Omit<AimSaid, "forecast">): string {
  const { standing } = progress;
  if (standing.type === "under way" && !isKept(standing.forecast, said))
    return forecastInWords(standing.forecast, said);
  return sentencesOf(progress, { ...said, forecast: true }).at(-1)!;
}

/** `C major: `, of an aim that has several subjects. */
function namedBefore(journal: Journal, { entry, isOneOf }: AimProgress): string {
  return isOneOf ? `${subjectText(entry.subject!, journal.names)}: ` : "";
}

function sentencesOf(progress: AimProgress, said: AimSaid): readonly [string, ...string[]] {
  const { today, forecast } = said;
  const { standing } = progress;
  switch (standing.type) {
    case "reached":
      return [`Reached ${on(standing.on, said)}.`];
    case "done":
      return [`Last done ${on(standing.last, said)}.`];
    case "not done":
      return ["Not done yet."];
    case "not played":
      return [standing.otherwise ? "Not played in this way yet." : "Not played yet."];
    case "no tempo":
      return ["No tempo reached yet."];
    case "tempo only":
      return [tempoOnly(progress, standing)];
    case "under way": {
      const best = `Best yet: ${asAimed(standing.best, progress)}, in ${weekInWords(standing.week, today)}.`;
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
  const reached = `${asAimed(best, progress)} reached, but not`;
  if (count === 1 || inARow >= got) return `${reached} yet with all that the aim asks.`;
  if (got < count) return `${reached} in ${got} of ${count} tries yet.`;
  return `${reached} ${got} in a row yet${inARow > 1 ? `; ${inARow} at most` : ""}.`;
}

/** A rate in the note value and beat that the aim is written in. */
function asAimed(rate: number, { tempo }: AimProgress): string {
  const { manner } = tempo!;
  return rateAsWritten(rate, manner, manner);
}

/** `today`, `on 16 March`. */
function on(day: DayNumber, { today, dated }: Omit<AimSaid, "forecast">): string {
  return dated ? `on ${dateInWords(day, today)}` : onDay(day, today);
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
      return `If it goes on as in the last ${tested} tested weeks, in ${rangeInWords(forecast)}; it need not.`;
    case "over a year":
      return `At the pace of the last ${tested} tested weeks, over a year.`;
    case "too early":
      return `Too early for a forecast: ${tested} of ${WEEKS_FOR_A_FORECAST} tested weeks.`;
    case "no clear change":
      return `No forecast: no clear change over ${tested} tested weeks.`;
    case "falling":
      return `No forecast: slower over the last ${tested} tested weeks.`;
    case "something hurt":
      return `No forecast for now: something hurt ${on(forecast.on, said)}.`;
    case "back after a break":
      return "No forecast in the first days after a break.";
    case "not tested lately":
      return `No forecast: not tested since ${forecast.last === named ? "then" : weekInWords(forecast.last, said.today)}.`;
  }
}

function rangeInWords({ earliest, latest }: Extract<Forecast, { readonly type: "range" }>): string {
  if (latest === null) return `${counted(earliest, "week")} or more`;
  return earliest === latest ? `about ${counted(latest, "week")}` : `${earliest} to ${counted(latest, "week")}`;
}
