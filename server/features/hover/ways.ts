import { articulationWords } from "../../history/articulation-words.ts";
import { axisOf, rateAsWritten } from "../../history/exercise-row.ts";
import { movementInWords, placeInWords } from "../../history/place-words.ts";
import type { Strand } from "../../history/strands.ts";
import type { Notation } from "../../history/trend-words.ts";
import { shown } from "../../history/trend-words.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { shortDate } from "../../journal/date-words.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry, Tonguing } from "../../journal/model.ts";
import { escapedExtract } from "../explain/markdown.ts";
import { wayTexts } from "./way-texts.ts";

/** What of a line says how it is played, in its own words: `slurred, 2 oct`; the rest by the strand. */
export function wayOfLine(strand: Strand, { subject, source }: Entry, text: string): string {
  if (strand.title) return placeOf(strand);
  const typed = (...types: readonly string[]): string[] =>
    source.items.flatMap(({ start, end, meaning }) => (types.includes(meaning.type) ? [text.slice(start, end)] : []));
  const { tonguing, evenness } = strand;
  // What a technique or a figure goes over is told by its notes.
  const reach = subject?.type === "scale" || subject?.type === "chord" ? strand.reach : null;
  const spans = typed("span");
  const articulations = typed("articulation");
  const rhythms = typed("rhythm");
  return [
    ...(articulations.length > 0 || tonguing === null || tonguing === "single"
      ? articulations
      : [wayTexts.tonguings[tonguing]]),
    ...(spans.length > 0 || reach === null ? spans : [wayTexts.reaches[reach]]),
    ...(rhythms.length > 0 || evenness !== "uneven" ? rhythms : [wayTexts.uneven]),
  ]
    .map((words) => escapedExtract(words, MOST))
    .join(", ");
}

/** In characters, of one term. */
const MOST = 60;

function placeOf({ movement, where }: Pick<Strand, "movement" | "where">): string {
  return [...(movement === null ? [] : [movementInWords(movement)]), ...(where === null ? [] : [placeInWords(where)])]
    .map((words) => escapedExtract(words, MOST))
    .join(", ");
}

/** How another strand differs: `tongued`, `slurred, a twelfth`, `bars 1-8`. */
export function wayBeside(journal: Journal, strand: Strand, beside: Strand): string {
  if (strand.title) return placeOf(strand) || wayTexts.wholePiece;
  const { reach, tonguing, evenness } = strand;
  return [
    ...(tonguing !== null && tonguing !== beside.tonguing ? [tonguingBeside(journal, strand, tonguing)] : []),
    ...(reach !== beside.reach ? [reach === null ? wayTexts.noReach : wayTexts.reaches[reach]] : []),
    ...(evenness !== beside.evenness ? [evenness === "uneven" ? wayTexts.uneven : wayTexts.even] : []),
  ].join(", ");
}

function tonguingBeside(journal: Journal, { records }: Strand, tonguing: Tonguing): string {
  return tonguing === "single"
    ? articulationWords(journal, records[0]!).beside(tonguing)
    : wayTexts.tonguings[tonguing];
}

/** So many other ways are named. */
const MOST_WAYS = 3;

/**
 * `Also tongued: 69 on 7 Sep.`: the other ways by their latest reached tempo, those with most weeks first; one in
 * another note value or beat as it was written, `16ths at 66`.
 */
export function otherWays(
  journal: Journal,
  others: readonly Strand[],
  strand: Strand,
  notation: Notation,
  today: DayNumber,
): readonly string[] {
  const told = others.flatMap((other) => {
    const last = other.records.findLast(({ day, rate, reached }) => day <= today && reached && rate !== null);
    if (!last) return [];
    const isAlike = axisOf(last, last) === axisOf(last, notation);
    const tempo = isAlike ? shown(last.rate!, last.noteValue, last.beat) : rateAsWritten(last.rate!, last, last);
    return [wayTexts.otherWay(wayBeside(journal, other, strand), tempo, shortDate(last.day, today))];
  });
  return told.length === 0 ? [] : [wayTexts.also(told.slice(0, MOST_WAYS))];
}
