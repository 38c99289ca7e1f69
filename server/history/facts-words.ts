import { type DayNumber, mondayOf, weekIndex } from "../journal/calendar.ts";
import { dateInWords } from "../journal/date-words.ts";
import type { Tonguing } from "../journal/model.ts";
import type { ArticulationWords } from "./articulation-words.ts";
import type { Comparison } from "./comparisons.ts";
import { factsTexts } from "./facts-texts.ts";
import { isOpen, type Return } from "./return.ts";
import type { Settled } from "./settled.ts";
import type { CleanShare } from "./steady.ts";
import type { StrandFacts } from "./strand-facts.ts";
import { WEEKS_ROUND_A_BREAK } from "./thresholds.ts";
import { LATELY } from "./trend.ts";
import { type Notation, shown } from "./trend-words.ts";
import { wayTexts } from "./way-texts.ts";

/**
 * What is known of a strand beside its trend, a sentence each: how it goes since a break, where it has settled, how
 * often its fastest tempos were reached, and how two ways of playing compare. None where there is nothing to say.
 *
 * @param comparisons those of its exercise, the most telling first; one of the strand's own is told
 * @param day on which it is read
 * @param articulation how it is called on the instrument
 */
export function factsInWords(
  { returned, settled, shares }: StrandFacts,
  comparisons: readonly Comparison[],
  notation: Notation,
  day: DayNumber,
  articulation: ArticulationWords,
): readonly string[] {
  const [comparison] = comparisons;
  return [
    ...(returned ? returnInWords(returned, day) : []),
    ...(settled ? [settledInWords(settled, notation, day)] : []),
    ...sharesInWords(shares, notation),
    ...(comparison ? [comparisonInWords(comparison, articulation)] : []),
  ];
}

/** Only while it is too early to say what the break has cost, and not about one long ago. */
function returnInWords(returned: Return, day: DayNumber): readonly string[] {
  const { since, days, testedWeeks } = returned;
  if (!isOpen(returned) || weekIndex(since) <= weekIndex(day) - LATELY) return [];
  return [factsTexts.backSince(dateInWords(since, day), days, testedWeeks, WEEKS_ROUND_A_BREAK)];
}

function settledInWords({ best, index, tries }: Settled, notation: Notation, day: DayNumber): string {
  const tempo = shown(best, notation.noteValue, notation.beat);
  return factsTexts.settled(tempo, dateInWords(mondayOf(index), day), tries);
}

/** So many tempos are told of. */
const FASTEST = 2;

/** `66: 6 of 6 tries reached, on 2 days; 72: 5 of 7, on 3 days.` */
function sharesInWords(shares: readonly CleanShare[], { noteValue, beat }: Notation): readonly string[] {
  const told = shares.slice(-FASTEST).map(({ rate, reached, tries, days }, i) => {
    const share = i === 0 ? factsTexts.firstShare : factsTexts.furtherShare;
    return share(shown(rate, noteValue, beat), reached, tries, days);
  });
  return told.length === 0 ? [] : [`${told.join("; ")}.`];
}

/** `Tongued was below slurred in 8 of 8 weeks, by about 7 %.` */
function comparisonInWords(
  { of, with: other, lower, weeks, ratio }: Comparison,
  articulation: ArticulationWords,
): string {
  const by = Math.round((1 - ratio) * 100);
  const [one, another] = [of, other].map((way) => {
    const tonguing = TONGUINGS[way];
    return tonguing === undefined ? wayTexts.way(way) : articulation.beside(tonguing);
  });
  return factsTexts.comparison(`${one![0]!.toUpperCase()}${one!.slice(1)}`, another!, lower, weeks, by);
}

/** As comparisons name them. */
const TONGUINGS: Readonly<Partial<Record<string, Tonguing>>> = { tongued: "single", slurred: "slurred" };
