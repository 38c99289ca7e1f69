import type { Ceiling } from "../history/ceiling.ts";
import { namesEarsAlone } from "../journal/body-said.ts";
import type { DayNumber } from "../journal/calendar.ts";
import type { Journal } from "../journal/journal.ts";
import { careTexts } from "./care-texts.ts";
import { onDay } from "./day-words.ts";

type Said = NonNullable<Ceiling["said"]>;

/** What is said of a day on which something hurts, or on the day after it. It holds no mark of Markdown. */
export function careSentence(journal: Journal, said: Said, today: DayNumber): string {
  const noted = origin(said, today);
  if (!namesEarsAlone(said.words, journal)) return careTexts.hurts(noted);
  return said.day === today ? careTexts.earsToday(noted) : careTexts.earsAfter(noted);
}

/**
 * What is said while one goes easy, some days after something hurt.
 *
 * @param time `15 minutes instead of 30`
 */
export function sparingSentences(journal: Journal, said: Said, today: DayNumber, time: string): readonly string[] {
  const noted = origin(said, today);
  return namesEarsAlone(said.words, journal)
    ? [careTexts.sparingEars(noted, time), careTexts.stillInEars]
    : [careTexts.sparing(noted, time), careTexts.stillThere];
}

/** And on the two days after that. */
export function easingSentence(said: Said, today: DayNumber, time: string): string {
  return careTexts.easing(origin(said, today), time);
}

/** Why no tempo is proposed: `Written without a tempo: yesterday you noted “sore left thumb”.` */
export function withoutTempo({ day, words }: Said, today: DayNumber): string {
  return careTexts.withoutTempo(careTexts.noted(onDay(day, today), plain(words)));
}

/** Why a tempo is lower than was asked for: `Not above 48 today: on 16 March you noted “sore left thumb”.` */
export function lowerTempo({ said }: Ceiling, bpm: number, today: DayNumber): string {
  return careTexts.notAbove(bpm, said ? careTexts.noted(onDay(said.day, today), plain(said.words)) : careTexts.isBack);
}

/** Why a tempo is not gone on from that is far above all before it: `160 is far above your best before: …`. */
export function doubtedTempo(bpm: number): string {
  return careTexts.doubted(bpm);
}

/** `Yesterday you noted “sore left thumb”`, `In a remark on 5 April you noted “the wrist hurts again”`. */
function origin({ day, words, remark }: Said, today: DayNumber): string {
  const noted = (remark ? careTexts.notedInRemark : careTexts.noted)(onDay(day, today), plain(words));
  return `${noted[0]!.toUpperCase()}${noted.slice(1)}`;
}

const MOST = 60;

/** The player's words without signs: editors read links in what they show. */
function plain(words: string): string {
  const text = words.replace(/[^\p{L}\p{N}'’-]+/gu, " ").trim();
  const characters = [...text];
  return characters.length > MOST
    ? `${characters
        .slice(0, MOST - 1)
        .join("")
        .trimEnd()}…`
    : text;
}
