import { type PlayedAttempt, playedEntry } from "../../history/played.ts";
import type { AttemptRecord } from "../../history/record.ts";
import type { Strand } from "../../history/strands.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { termsOfAttempt } from "../../journal/conditions.ts";
import { type Conventions, instrumentOf } from "../../journal/conventions.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Attempt, Entry, Subject } from "../../journal/model.ts";
import type { Item } from "../../syntax/words/meaning.ts";
import { termType } from "../../syntax/words/term-types.ts";
import { entryIn } from "../explain/entry-of-record.ts";
import { startTempo } from "../explain/start-tempo.ts";

/** A practised strand as the player would write it today. */
export interface PractisedLine {
  readonly text: string;
  /** Without its tempo. What practises several exercises has one, whichever of them it is offered for. */
  readonly phrase: string;
  readonly subject: Subject;
  /** Missing where no tempo was reached with a metronome. */
  readonly start?: StartTempo;
}

/** Beats a minute, in the beat and the note value of the line. */
export interface StartTempo {
  readonly tempo: number;
  /** To one decimal. */
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
 */
export function practisedLine(
  journal: Journal,
  conventions: Conventions,
  { records }: Strand,
  today: DayNumber,
): PractisedLine | undefined {
  const own = (record: AttemptRecord): boolean => record.day <= today && standsAlone(journal, record);
  const source = records.findLast((record) => record.rate !== null && own(record)) ?? records.findLast(own);
  const reached = records.findLast(({ day, rate, reached }) => day <= today && reached && rate !== null);
  const written = source && writtenFor(journal, conventions, source);
  if (!written) return undefined;
  const { phrase, opening, entry } = written;
  const start = reached && written.rate ? startOf(reached.rate! / written.rate, today - reached.day) : undefined;
  const text = start ? `${phrase}${opening}${start.tempo}` : phrase;
  if (text.length > LONGEST_TEXT) return undefined;
  return { text, phrase, subject: entry.subject!, ...(start ? { start } : {}) };
}

/** `same, 66` says nothing where no entry stands above it. */
function standsAlone(journal: Journal, { block, line }: AttemptRecord): boolean {
  return entryIn(journal, block.lines[line] ?? "")?.source.same === undefined;
}

/** Undefined for a tempo that rounds to nothing. */
function startOf(reached: number, gap: number): StartTempo | undefined {
  const tempo = Math.round(startTempo(reached, gap));
  return tempo > 0 ? { tempo, reached: Math.round(reached * 10) / 10, gap } : undefined;
}

/** A strand in the player's words, and what a tempo behind them comes to. */
interface Written {
  readonly phrase: string;
  /** What stands between the words and the figure of a tempo: ` at `, `, at half=`. */
  readonly opening: string;
  readonly entry: Entry;
  /** Of one beat a minute, as `AttemptRecord.rate` counts; missing where it is played without a metronome. */
  readonly rate?: number;
}

function writtenFor(journal: Journal, conventions: Conventions, record: AttemptRecord): Written | undefined {
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
  const phrase = joined([subject as Item, ...told], text);
  const noteValueIsLast = told.at(-1)?.meaning.type === "note value";
  const opening = `${noteValueIsLast ? " " : ", "}${beatIn(entry, attempt, text)}`;
  return readBack(journal, conventions, record.strandKey, phrase, opening);
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
function joined(items: readonly Item[], text: string): string {
  return items
    .map(({ start, end }, i) => {
      const words = text.slice(start, end).replace(/\s+/g, " ");
      const before = items[i - 1];
      if (!before) return words;
      const isNext = before.end <= start && text.slice(before.end, start).trim() === "";
      return `${isNext ? " " : ", "}${words}`;
    })
    .join("");
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
  phrase: string,
  opening: string,
): Written | undefined {
  const entry = plainEntryIn(journal, phrase);
  if (!entry || !playedAlone(entry, conventions, strandKey)) return undefined;
  const withTempo = plainEntryIn(journal, `${phrase}${opening}${ANY_BPM}`);
  const rate = withTempo && playedAlone(withTempo, conventions, strandKey)?.rate;
  return { phrase, opening, entry, ...(rate ? { rate: rate / ANY_BPM } : {}) };
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
