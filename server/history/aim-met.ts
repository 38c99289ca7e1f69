import type { DayNumber } from "../journal/calendar.ts";
import type { Conventions } from "../journal/conventions.ts";
import { eachSubject } from "../journal/each-subject.ts";
import type { Attempt, Conditions, Entry, PiecePlace } from "../journal/model.ts";
import { subjectKey } from "../journal/subject-text.ts";
import { nameKey } from "../syntax/words/fold.ts";
import { isWholePiecePlace } from "../syntax/words/whole-piece.ts";
import { patternOfRecord } from "./exercise-name.ts";
import { countingOf, rateBy } from "./rate.ts";

export interface AnswerOptions {
  /** Notes a minute alone count where a tempo is asked for, in whichever note value. */
  readonly byRate?: boolean;
}

/**
 * Whether an entry is what was set or aimed at: the same subject and pattern, with every term that is stated there, in
 * one and the same attempt. A tempo, tries and minutes are met by more as well. What was only planned is not done. Of
 * several subjects each is held by itself: all that are asked for must be there, and may be among others.
 */
export function answers(entry: Entry, asked: Entry, conventions: Conventions, options: AnswerOptions = {}): boolean {
  const played = eachSubject(entry);
  return eachSubject(asked).every((wanted) =>
    played.some((one) => answersOne(one.entry, wanted.entry, conventions, options)),
  );
}

function answersOne(entry: Entry, asked: Entry, conventions: Conventions, { byRate = false }: AnswerOptions): boolean {
  const { subject } = asked;
  if (entry.planned || !entry.subject || !subject || subjectKey(entry.subject) !== subjectKey(subject)) return false;
  if (patternOfRecord(entry) !== patternOfRecord(asked)) return false;
  if (asked.instrument !== undefined && entry.instrument !== asked.instrument) return false;
  if (asked.minutes !== undefined && (entry.minutes ?? 0) < asked.minutes) return false;
  if (asked.focus !== undefined && nameKey(entry.focus ?? "") !== nameKey(asked.focus)) return false;
  if (asked.where && !isPlaceAsked(entry.where, asked.where)) return false;
  return asked.attempts.every((wanted) =>
    entry.attempts.some(
      (attempt) =>
        hasTerms(attempt, wanted) &&
        ((byRate && wanted.tempo) || hasNoteValue(attempt, wanted)) &&
        isAsFast(entry, attempt, asked, wanted, conventions),
    ),
  );
}

/** Words for the whole piece are one place, whatever their language. */
function isPlaceAsked(played: PiecePlace | undefined, { movement, text }: PiecePlace): boolean {
  const [own, asked] = [played?.text ?? "", text];
  const isSame = nameKey(own) === nameKey(asked) || (isWholePiecePlace(own) && isWholePiecePlace(asked));
  return isSame && played?.movement === movement;
}

/** An entry of a day. */
export interface DoneEntry {
  readonly entry: Entry;
  readonly day: DayNumber;
  readonly conventions: Conventions;
}

/** The entries of one exercise on one day by the same conventions, the fastest first: they answer most. */
interface DoneOnDay {
  readonly day: DayNumber;
  readonly conventions: Conventions;
  readonly entries: { readonly entry: Entry; readonly rate: number }[];
}

/** The entries of some days by what was practised, so that what was set is held only against what may answer it. */
export class DoneEntries {
  private readonly byExercise = new Map<string, DoneOnDay[]>();

  constructor(entries: Iterable<DoneEntry>) {
    for (const each of entries) {
      if (each.entry.planned || !each.entry.subject) continue;
      for (const { entry } of eachSubject(each.entry)) this.add({ ...each, entry });
    }
    for (const done of this.byExercise.values()) for (const each of done) each.entries.sort((a, b) => b.rate - a.rate);
  }

  private add({ entry, day, conventions }: DoneEntry): void {
    const known = this.done(entry);
    const last = known.at(-1);
    const same = last?.day === day && last.conventions === conventions ? last : { day, conventions, entries: [] };
    if (same !== last) known.push(same);
    same.entries.push({ entry, rate: fastest(entry, conventions) });
    this.byExercise.set(exerciseOf(entry), known);
  }

  /**
   * The days, of those from one to another, on which something is what was set; where several subjects were set, each
   * of them, in whichever lines.
   */
  daysAnswering(asked: Entry, from: DayNumber, to: DayNumber): ReadonlySet<DayNumber> {
    const [first, ...others] = eachSubject(asked).map(({ entry }) => this.daysAnsweringOne(entry, from, to));
    return new Set([...first!].filter((day) => others.every((days) => days.has(day))));
  }

  private daysAnsweringOne(asked: Entry, from: DayNumber, to: DayNumber): ReadonlySet<DayNumber> {
    const within = this.done(asked).filter(({ day }) => day >= from && day <= to);
    return new Set(within.filter((done) => isAnswered(asked, done)).map(({ day }) => day));
  }

  /** The days on which words that were set are said to be done. */
  daysAnsweringWords(words: string, from: DayNumber, to: DayNumber): ReadonlySet<DayNumber> {
    const within = this.done({ subject: { type: "free", words } }).filter(({ day }) => day >= from && day <= to);
    return new Set(within.map(({ day }) => day));
  }

  private done(entry: Pick<Entry, "subject" | "pattern" | "inversion">): DoneOnDay[] {
    return this.byExercise.get(exerciseOf(entry)) ?? [];
  }
}

function isAnswered(asked: Entry, { entries, conventions }: DoneOnDay): boolean {
  const needed = fastest(asked, conventions);
  for (const { entry, rate } of entries) {
    if (rate < needed) return false;
    if (answers(entry, asked, conventions)) return true;
  }
  return false;
}

/** The same for entries of which one may answer the other. Words have no pattern. */
function exerciseOf(entry: Pick<Entry, "subject" | "pattern" | "inversion">): string {
  const { subject } = entry;
  if (!subject || subject.type === "free") return subject ? subjectKey(subject) : "";
  return `${subjectKey(subject)}\n${patternOfRecord(entry) ?? ""}`;
}

/** The fastest of an entry's tempos, as they are compared; 0 where none is stated. */
function fastest(entry: Entry, conventions: Conventions): number {
  return Math.max(0, ...entry.attempts.map((attempt) => rateOf(entry, attempt, conventions) ?? 0));
}

function hasTerms(attempt: Attempt, wanted: Attempt): boolean {
  return (
    wanted.outcomes.every((outcome) => attempt.outcomes.includes(outcome)) &&
    hasTries(attempt.tries, wanted.tries) &&
    hasConditions(attempt.conditions, wanted.conditions)
  );
}

/** As many at least, and of several no smaller a part: 5 of 9 are not 5 in a row. */
function hasTries({ got, count }: Attempt["tries"], wanted: Attempt["tries"]): boolean {
  return got >= wanted.got && (wanted.count === 1 || got * wanted.count >= wanted.got * count);
}

function hasNoteValue({ conditions }: Attempt, wanted: Attempt): boolean {
  const { noteValue } = wanted.conditions;
  return !noteValue || same(conditions.noteValue, noteValue);
}

function hasConditions(own: Conditions, wanted: Conditions): boolean {
  return (
    (!wanted.articulation || own.articulation?.text === wanted.articulation.text) &&
    (!wanted.rhythm || own.rhythm?.text === wanted.rhythm.text) &&
    (!wanted.reach || same(own.reach, wanted.reach)) &&
    (!wanted.direction || own.direction === wanted.direction) &&
    (!wanted.withoutClick || own.withoutClick === wanted.withoutClick) &&
    wanted.manner.every((manner) => own.manner.includes(manner))
  );
}

function isAsFast(entry: Entry, attempt: Attempt, asked: Entry, wanted: Attempt, conventions: Conventions): boolean {
  const rate = rateOf(asked, wanted, conventions);
  return rate === null || (rateOf(entry, attempt, conventions) ?? 0) >= rate;
}

/** In notes a minute, for titles in beats a minute; null without a tempo. */
function rateOf(entry: Entry, { tempo, conditions }: Attempt, conventions: Conventions): number | null {
  const counting = tempo && countingOf(entry, conditions, tempo, conventions);
  return tempo && counting ? rateBy(counting, tempo.bpm) : null;
}

function same(a: object | undefined, b: object): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
