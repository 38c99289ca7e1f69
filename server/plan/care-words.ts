import type { Ceiling } from "../history/ceiling.ts";
import { namesEarsAlone } from "../journal/body-said.ts";
import type { DayNumber } from "../journal/calendar.ts";
import { dateInWords, dayInWords } from "../journal/date-words.ts";
import type { Journal } from "../journal/journal.ts";

type Said = NonNullable<Ceiling["said"]>;

/** What is said of a day on which something hurts, or on the day after it. It holds no mark of Markdown. */
export function careSentence(journal: Journal, said: Said, today: DayNumber): string {
  if (namesEarsAlone(said.words, journal)) {
    const quiet =
      said.day === today
        ? "keep quiet for the rest of the day. If it is still there tomorrow, see a doctor"
        : "keep quiet today too. If it is still there, see a doctor";
    return `${origin(said, today)}. Ringing or dull hearing after playing: ${quiet}.`;
  }
  return `${origin(said, today)}. If something hurts, stop and rest, and tell your teacher; see a doctor who knows musicians if it stays, comes back, wakes you, or brings numbness or weakness.`;
}

/**
 * What is said while one goes easy, some days after something hurt.
 *
 * @param time `15 minutes instead of 30`
 */
export function sparingSentences(journal: Journal, said: Said, today: DayNumber, time: string): readonly string[] {
  if (namesEarsAlone(said.words, journal))
    return [
      `${origin(said, today)}. If you play: ${time}, softly, with pauses, away from loud players; ask about protection for your ears.`,
      "If it is still there, or comes back, no playing: see a doctor.",
    ];
  return [
    `${origin(said, today)}. Rest is a full answer. If you play: ${time}, nothing fast, as long a pause as you played, and stop at the first sign.`,
    "If it is still there, no playing: tell your teacher and see a doctor.",
  ];
}

/** And on the two days after that. */
export function easingSentence(said: Said, today: DayNumber, time: string): string {
  return `${origin(said, today)}. Today ${time}, and nothing above what is steady. If it comes back, stop and rest, and tell your teacher; see a doctor if it stays.`;
}

/** Why no tempo is proposed: `Written without a tempo: yesterday you noted “sore left thumb”.` */
export function withoutTempo({ day, words }: Said, today: DayNumber): string {
  return `Written without a tempo: ${whenInWords(day, today)} you noted “${plain(words)}”.`;
}

/** Why a tempo is lower than was asked for: `Not above 48 today: on 16 March you noted “sore left thumb”.` */
export function lowerTempo({ said }: Ceiling, bpm: number, today: DayNumber): string {
  const why = said
    ? `${whenInWords(said.day, today)} you noted “${plain(said.words)}”`
    : "it is one of the first days back";
  return `Not above ${bpm} today: ${why}.`;
}

/** Why a tempo is not gone on from that is far above all before it: `160 is far above your best before: …`. */
export function doubtedTempo(bpm: number): string {
  return `${bpm} is far above what you played before. Check its digits; once you reach it on a second day, it counts.`;
}

/** `Yesterday you noted “sore left thumb”`, `In a remark on 5 April you noted “the wrist hurts again”`. */
function origin({ day, words, remark }: Said, today: DayNumber): string {
  const when = whenInWords(day, today);
  const opening = remark ? `in a remark ${when}` : when;
  return `${opening[0]!.toUpperCase()}${opening.slice(1)} you noted “${plain(words)}”`;
}

/** `today`, `yesterday`, `on 16 March`. */
function whenInWords(day: DayNumber, today: DayNumber): string {
  const words = dayInWords(day, today);
  return words === dateInWords(day, today) ? `on ${words}` : words;
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
