import { KEY_WITHIN } from "../history/thresholds.ts";
import type { DayNumber } from "../journal/calendar.ts";
import type { Journal } from "../journal/journal.ts";
import type { Note } from "../music/notes/note.ts";
import { type NoteNames, noteText } from "../music/notes/note-names.ts";
import { onDay } from "./day-words.ts";
import { type HomeKey, homeKeyText } from "./home-keys.ts";
import { keyTexts } from "./key-texts.ts";
import type { FingerChangeNeed, KeyNeed, KeyWanted, RangeNeed } from "./keys-wanted.ts";
import { kindTexts } from "./kind-texts.ts";
import { nameOfPart } from "./pieces-in-hand.ts";
import { isFarAsHigh, isFarAsLow } from "./range-wanted.ts";

/** A need, or the same one of several pieces, in a sentence. Names are as the journal has them. */
export interface NeedInWords {
  readonly played: boolean;
  readonly sentence: string;
}

/** What is wanted, need by need; pieces in one key share a sentence. */
export function needsInWords(journal: Journal, needs: readonly KeyNeed[], today: DayNumber): readonly NeedInWords[] {
  const groups = new Map<string, KeyNeed[]>();
  for (const [i, need] of needs.entries()) {
    const name = need.what === "key" ? `${need.likely} ${need.key.id}` : String(i);
    groups.set(name, [...(groups.get(name) ?? []), need]);
  }
  return Array.from(groups.values(), (group) => ({
    played: group[0]!.played,
    sentence: needInWords(journal, group[0]!, today, group.map(nameOfNeed)),
  }));
}

/** What is said of the last time: that it was played, or worked at, where other playing is no work at it. */
type LastTime = "played" | "worked at";

/**
 * Why something is wanted, and when it was played last. Names of notes stay out where the journal hides them.
 *
 * @param names of the pieces that want it
 */
export function needInWords(
  journal: Journal,
  need: KeyNeed,
  today: DayNumber,
  names = [nameOfNeed(need)],
  last: LastTime = "played",
): string {
  const conventions = journal.conventions(need.part.line.uri);
  switch (need.what) {
    case "key":
    case "neighbour":
      return keyInWords(need, journal.names, lastInWords(need.last, today, last), names);
    case "range":
      return rangeInWords(need, conventions.hidesNotes ? undefined : journal.names, today);
    case "fingerChange":
      return changeInWords(need, journal.names, today);
  }
}

function lastInWords(last: DayNumber | null, today: DayNumber, what: LastTime): string {
  const isPlayed = what === "played";
  if (last === null) return isPlayed ? keyTexts.notPlayed : keyTexts.notWorkedAt;
  return (isPlayed ? keyTexts.lastPlayed : keyTexts.lastWorkedAt)(onDay(last, today));
}

/** What a need is called: `G minor`, `F4 to F6`, `E5 to F5`. */
export function whatIsWanted(journal: Journal, need: KeyNeed): string {
  const { names } = journal;
  if (need.what === "range") return keyTexts.range(noteText(need.range.low, names), noteText(need.range.high, names));
  if (need.what === "fingerChange") return keyTexts.change(noteText(need.from, names), noteText(need.to, names));
  return keyText(need.key, names);
}

/** As it is read: what is written into a journal is `homeKeyText`. */
function keyText(key: HomeKey, names: NoteNames): string {
  const { tonic, kind } = key.scale;
  return kindTexts.key(names.name(tonic), kind, homeKeyText(key, names));
}

function nameOfNeed({ part }: KeyNeed): string {
  return nameOfPart(part);
}

function keyInWords(
  { what, key, likely }: KeyWanted,
  names: NoteNames,
  when: string,
  pieces: readonly string[],
): string {
  const called = keyText(key, names);
  return what === "neighbour" ? keyTexts.besideKey(pieces, called, when) : keyTexts.inKey(pieces, called, likely, when);
}

function rangeInWords(need: RangeNeed, names: NoteNames | undefined, today: DayNumber): string {
  const { part, range, went, played, last } = need;
  const name = nameOfPart(part);
  const text = (note: Note): string => noteText(note, names!);
  const far = names ? keyTexts.goesFrom(name, text(range.low), text(range.high)) : keyTexts.goesFar(name);
  if (played) return keyTexts.scaleWentAsFar(far, onDay(last!, today));
  if (!went) return keyTexts.scaleNotPlayed(far, KEY_WITHIN);
  if (!names) return keyTexts.fartherThanScale(name, KEY_WITHIN);
  const [low, high] = [!isFarAsLow(went, range), !isFarAsHigh(went, range)];
  if (low && high) return keyTexts.scaleWentFrom(far, text(went.low), text(went.high));
  return low
    ? keyTexts.goesDown(name, text(range.low), text(went.low))
    : keyTexts.goesUp(name, text(range.high), text(went.high));
}

function changeInWords({ part, key, from, to, last }: FingerChangeNeed, names: NoteNames, today: DayNumber): string {
  const change = keyTexts.change(noteText(from, names), noteText(to, names));
  const when = last === null ? keyTexts.notInTwelveWeeks : keyTexts.lastPlayed(onDay(last, today));
  return keyTexts.hardestChange(keyText(key, names), nameOfPart(part), change, when);
}
