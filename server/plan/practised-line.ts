import type { Ceiling } from "../history/ceiling.ts";
import { entryIn } from "../history/entry-of-record.ts";
import { type PlayedAttempt, playedEntry } from "../history/played.ts";
import type { AttemptRecord } from "../history/record.ts";
import { type Standing, standingOf, startTempo } from "../history/start-tempo.ts";
import type { Strand } from "../history/strands.ts";
import type { DayNumber } from "../journal/calendar.ts";
import { termsOfAttempt } from "../journal/conditions.ts";
import { type Conventions, instrumentOf } from "../journal/conventions.ts";
import type { Journal } from "../journal/journal.ts";
import type { Attempt, Entry, Subject } from "../journal/model.ts";
import type { Item } from "../syntax/words/meaning.ts";
import { termType } from "../syntax/words/term-types.ts";

/** A practised strand as the player would write it today. */
export interface PractisedLine {
  readonly text: string;
  /** Without its tempo. What practises several exercises has one, whichever of them it is offered for. */
  readonly phrase: string;
  readonly subject: Subject;
  /** Missing where no tempo was reached with a metronome before today, or none may be proposed. */
  readonly start?: StartTempo;
  /** The attempts that it was made from. */
  readonly from: readonly AttemptRecord[];
}

/** Beats a minute, in the beat and the note value of the line. */
export interface StartTempo {
  readonly tempo: number;
  /** Missing where none is steady. */
  readonly steady?: number;
  /** What was reached last. */
  readonly reached: number;
  /** Days since that was reached. */
  readonly gap: number;
}

/** Longer lines are nobody's usual ones, and do not fit a list. */
const LONGEST_TEXT = 120;
/** The tempo that a line is tried with: any will do. */
const ANY_BPM = 60;

/**
 * The line that practises a strand again, in the words of the line that was last written for it with a tempo, or of its
 * last line. Undefined where those words, put so, would be read as another strand. Days after `today` do not count.
 *
 * @param since the first day back after a break that cuts off what came before (`baselineOf`)
 */
export function practisedLine(
  journal: Journal,
  conventions: Conventions,
  { records }: Strand,
  today: DayNumber,
  ceiling: Ceiling,
  since?: DayNumber,
): PractisedLine | undefined {
  const own = (record: AttemptRecord): boolean => record.day <= today && standsAlone(journal, record);
  const source = records.findLast((record) => record.rate !== null && own(record)) ?? records.findLast(own);
  const reached = records.findLast(({ day, rate, reached }) => day <= today && reached && rate !== null);
  const written = source && writtenFor(journal, conventions, source);
  if (!written) return undefined;
  const { phrase, opening, entry } = written;
  const start = written.rate ? startOf(standingOf(records, today, since), today, written.rate, ceiling) : undefined;
  const text = start ? `${phrase}${opening}${start.tempo}` : phrase;
  if (text.length > LONGEST_TEXT) return undefined;
  return {
    text,
    phrase,
    subject: entry.subject!,
    from: [source, ...(reached ? [reached] : [])],
    ...(start ? { start } : {}),
  };
}

/** What tells what an entry practises, and how its last attempt was played, in the words of its line. */
export function phraseOf(entry: Entry, text: string): string | undefined {
  const { subject } = entry.source;
  if (!entry.subject || !subject || entry.source.same) return undefined;
  return phraseIn(termsIn([subject as Item, ...itemsOf(entry, entry.attempts.length - 1)], text));
}

/** `same, 66` says nothing where no entry stands above it. */
export function standsAlone(journal: Journal, { block, line }: AttemptRecord): boolean {
  return entryIn(journal, block.lines[line] ?? "")?.source.same === undefined;
}

function startOf(standing: Standing, today: DayNumber, perBeat: number, ceiling: Ceiling): StartTempo | undefined {
  const { steady, reached, reachedOn } = standing;
  const tempo = startTempo(standing, today, perBeat, ceiling);
  if (tempo === undefined || reached === null || reachedOn === null) return undefined;
  const known = { tempo, reached: reached / perBeat, gap: today - reachedOn };
  return steady === null ? known : { ...known, steady: steady / perBeat };
}

/** A part of a phrase: the subject, or a term. */
export interface WrittenTerm {
  readonly type: Item["meaning"]["type"];
  readonly words: string;
  /** It is written after the one before it without a comma. */
  readonly runsOn: boolean;
}

/** A strand in the player's words, and what a tempo behind them comes to. */
export interface Written {
  readonly phrase: string;
  /** What stands between the words and the figure of a tempo: ` at `, `, at half=`. */
  readonly opening: string;
  readonly entry: Entry;
  /** The terms of the phrase, each with its words, the note value last. */
  readonly terms: readonly WrittenTerm[];
  /** Of one beat a minute, as `AttemptRecord.rate` counts; missing where it is played without a metronome. */
  readonly rate?: number;
}

/**
 * The words of the line that a record comes from, as far as they tell its strand; undefined where they would be read as
 * another one. What a plan is written in.
 */
export function writtenFor(journal: Journal, conventions: Conventions, record: AttemptRecord): Written | undefined {
  const text = record.block.lines[record.line] ?? "";
  const entry = entryIn(journal, text);
  const subject = entry?.source.subject;
  if (!entry?.subject || !subject) return undefined;
  const at = record.attempt;
  const attempt = entry.attempts[at];
  if (!attempt) return undefined;
  const items = itemsOf(entry, at);
  const nameOf = (id: string | undefined): string | undefined => instrumentOf(id, conventions)?.id ?? id;
  const isUsual = nameOf(entry.instrument) === nameOf(conventions.instrument);
  const told = isUsual ? items.filter(({ meaning }) => meaning.type !== "instrument") : items;
  const terms = termsIn([subject as Item, ...told], text);
  const phrase = phraseIn(terms);
  const noteValueIsLast = told.at(-1)?.meaning.type === "note value";
  const opening = `${noteValueIsLast ? " " : ", "}${beatIn(entry, attempt, text)}`;
  return readBack(journal, conventions, record.strandKey, { phrase, terms, opening });
}

/**
 * What tells how an attempt was played, in the order to write it in: the note value last, as the tempo goes with it.
 */
function itemsOf({ subject, source: { items } }: Entry, attempt: number): readonly Item[] {
  // What goes on is played with a metronome.
  const isChanging = ({ meaning: { type } }: Item): boolean =>
    termType(type)?.said === "once for each tempo" && type !== "without click" && subject?.type !== "title";
  const changing = termsOfAttempt(items, attempt).filter(isChanging);
  const kept = items.filter((item) => termType(item.meaning.type)?.tells === "what" || changing.includes(item));
  const isNoteValue = ({ meaning }: Item): boolean => meaning.type === "note value";
  return [...kept.filter((item) => !isNoteValue(item)), ...kept.filter(isNoteValue)];
}

/** Neighbours that were typed without a comma stay so. */
function termsIn(items: readonly Item[], text: string): readonly WrittenTerm[] {
  return items.map(({ start, end, meaning }, i) => {
    const words = text.slice(start, end).replace(/\s+/g, " ");
    const before = items[i - 1];
    const runsOn = before !== undefined && before.end <= start && text.slice(before.end, start).trim() === "";
    return { type: meaning.type, words, runsOn };
  });
}

/** `D minor thirds, slurred, 8ths`. */
export function phraseIn(terms: readonly WrittenTerm[]): string {
  return terms.map(({ words, runsOn }, i) => (i === 0 ? words : `${runsOn ? " " : ", "}${words}`)).join("");
}

/** `at `, or with the beat that the attempt was counted in: `at half=`, which the first of its tempos says. */
function beatIn({ source }: Entry, { tempo, place }: Attempt, text: string): string {
  if (!tempo?.beat) return "at ";
  const said = source.items.flatMap(({ start, end, meaning }) => {
    const beat = meaning.type === "tempo" && start <= place.start ? /^.*=/s.exec(text.slice(start, end)) : null;
    return beat ? [beat[0]] : [];
  });
  return said.at(-1) ?? "at ";
}

/** Only what is read as the same strand again is written. */
function readBack(
  journal: Journal,
  conventions: Conventions,
  strandKey: string,
  { phrase, terms, opening }: Pick<Written, "phrase" | "terms" | "opening">,
): Written | undefined {
  const entry = plainEntryIn(journal, phrase);
  if (!entry || !playedAlone(entry, conventions, strandKey)) return undefined;
  const withTempo = plainEntryIn(journal, `${phrase}${opening}${ANY_BPM}`);
  const rate = withTempo && playedAlone(withTempo, conventions, strandKey)?.rate;
  return { phrase, terms, opening, entry, ...(rate ? { rate: rate / ANY_BPM } : {}) };
}

/** An entry that takes up a whole text, each word of it known. */
function plainEntryIn(journal: Journal, text: string): Entry | undefined {
  const entry = entryIn(journal, text);
  if (!entry?.subject || entry.source.end !== text.length) return undefined;
  return entry.source.items.some(({ meaning }) => meaning.type === "unknown") ? undefined : entry;
}

/** The one attempt of an entry, where it is one of the strand; of one at several subjects that at the strand's. */
function playedAlone(entry: Entry, conventions: Conventions, strandKey: string): PlayedAttempt | undefined {
  if (entry.attempts.length !== 1) return undefined;
  return playedEntry(entry, conventions).attempts.find(({ manner }) => manner.strandKey === strandKey);
}
