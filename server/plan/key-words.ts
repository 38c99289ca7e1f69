import { KEY_WITHIN } from "../history/thresholds.ts";
import type { DayNumber } from "../journal/calendar.ts";
import type { Journal } from "../journal/journal.ts";
import { type NoteNames, noteText } from "../music/notes/note-names.ts";
import { onDay } from "./day-words.ts";
import { homeKeyText } from "./home-keys.ts";
import type { FingerChangeNeed, KeyNeed, KeyWanted, RangeNeed } from "./keys-wanted.ts";
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

/**
 * Why something is wanted, and when it was played last. Names of notes stay out where the journal hides them.
 *
 * @param names of the pieces that want it
 */
export function needInWords(journal: Journal, need: KeyNeed, today: DayNumber, names = [nameOfNeed(need)]): string {
  const conventions = journal.conventions(need.part.line.uri);
  switch (need.what) {
    case "key":
    case "neighbour":
      return keyInWords(need, journal.names, today, names);
    case "range":
      return rangeInWords(need, conventions.hidesNotes ? undefined : journal.names, today);
    case "fingerChange":
      return changeInWords(need, journal.names, today);
  }
}

/** What a need is called: `G minor`, `F4 to F6`, `E5 to F5`. */
export function whatIsWanted(journal: Journal, need: KeyNeed): string {
  const { names } = journal;
  if (need.what === "range") return `${noteText(need.range.low, names)} to ${noteText(need.range.high, names)}`;
  if (need.what === "fingerChange") return `${noteText(need.from, names)} to ${noteText(need.to, names)}`;
  return homeKeyText(need.key, names);
}

function nameOfNeed({ part }: KeyNeed): string {
  return nameOfPart(part);
}

const AND = new Intl.ListFormat("en-GB");

function keyInWords(
  { what, key, likely, last }: KeyWanted,
  names: NoteNames,
  today: DayNumber,
  pieces: readonly string[],
): string {
  const called = homeKeyText(key, names);
  const wanted =
    what === "neighbour"
      ? `${called} is next to the key of ${AND.format(pieces)}`
      : `${AND.format(pieces)} ${pieces.length > 1 ? "are" : "is"} ${likely ? "probably " : ""}in ${called}`;
  return `${wanted}: ${last === null ? "not played yet" : `last played ${onDay(last, today)}`}.`;
}

function rangeInWords(need: RangeNeed, names: NoteNames | undefined, today: DayNumber): string {
  const { part, range, went, played, last } = need;
  const name = nameOfPart(part);
  const far = names ? `${name} goes ${toAndFro(need, names)}` : `${name} goes far`;
  if (played) return `${far}: its scale last went as far ${onDay(last!, today)}.`;
  if (!went) return `${far}: its scale was not played in the last ${KEY_WITHIN} days.`;
  if (!names) return `${name} goes farther than its scale went in the last ${KEY_WITHIN} days.`;
  const [low, high] = [!isFarAsLow(went, range), !isFarAsHigh(went, range)];
  if (low && high) return `${far}; its scale went from ${noteText(went.low, names)} to ${noteText(went.high, names)}.`;
  return low
    ? `${name} goes down to ${noteText(range.low, names)}; its scale went down to ${noteText(went.low, names)}.`
    : `${name} goes up to ${noteText(range.high, names)}; its scale went up to ${noteText(went.high, names)}.`;
}

function toAndFro({ range: { low, high } }: RangeNeed, names: NoteNames): string {
  return `from ${noteText(low, names)} to ${noteText(high, names)}`;
}

function changeInWords({ part, key, from, to, last }: FingerChangeNeed, names: NoteNames, today: DayNumber): string {
  const change = `${noteText(from, names)} to ${noteText(to, names)}`;
  const when = last === null ? "not played in the last twelve weeks" : `last played ${onDay(last, today)}`;
  const scale = `${homeKeyText(key, names)}, as far as ${nameOfPart(part)} goes,`;
  return `The hardest finger change of ${scale} is ${change}: ${when}.`;
}
