import { type BarStrip, barRuns, RECENCIES, workedBeyond } from "./bar-data.ts";

/** The most stretches to tell one by one. */
const MOST_STRETCHES = 8;

/** What a strip of bars shows, in sentences; `bars` is how many are shown. */
export function describeBars(data: BarStrip, bars: number): string {
  const runs = barRuns(data, bars);
  const worked = RECENCIES.flatMap(({ words }, recency) => {
    const stretches = runs.filter((run) => run.recency === recency);
    return stretches.length === 0 ? [] : [`${recency === LONG_AGO ? words : `within ${words}`}: ${listed(stretches)}`];
  });
  const beyond = workedBeyond(data, bars);
  return [
    `${bars} ${bars === 1 ? "bar" : "bars"}`,
    worked.length === 0 ? "none worked yet" : `worked ${worked.join("; ")}`,
    ...notYet(runs, bars),
    ...(beyond ? [`bars as far as ${beyond} were worked, beyond the last`] : []),
  ]
    .map((sentence) => `${sentence[0]!.toUpperCase()}${sentence.slice(1)}.`)
    .join(" ");
}

const LONG_AGO = RECENCIES.length - 1;

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** The bars that were never worked, where some were. */
function notYet(runs: readonly Stretch[], bars: number): string[] {
  if (runs.length === 0) return [];
  const gaps = [...runs, { from: bars + 1, to: bars + 1 }].flatMap(({ from }, place) => {
    const start = (runs[place - 1]?.to ?? 0) + 1;
    return start < from ? [{ from: start, to: from - 1 }] : [];
  });
  return gaps.length === 0 ? [] : [`not yet: ${listed(gaps)}`];
}

/** `1–8, 17–32`. */
function listed(stretches: readonly Stretch[]): string {
  const shown = stretches.slice(0, MOST_STRETCHES).map(({ from, to }) => (from === to ? `${from}` : `${from}–${to}`));
  const more = stretches.length - shown.length;
  return `${shown.join(", ")}${more > 0 ? ` and ${more} more` : ""}`;
}
