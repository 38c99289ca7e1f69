import type { Sound } from "../../../shared/sound.ts";
import { type Ceiling, ceilingOn } from "../../history/ceiling.ts";
import { sinceLately } from "../../history/journal-facts.ts";
import { journalHistory } from "../../history/journal-history.ts";
import { playedEntry } from "../../history/played.ts";
import { countingOf, rateBy } from "../../history/rate.ts";
import { highestTempo, notchAtOrBelow, standingOf } from "../../history/start-tempo.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { type Conventions, instrumentOf } from "../../journal/conventions.ts";
import { exerciseToPlay } from "../../journal/entry-exercise.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import { QUARTER } from "../../music/notes/note-value.ts";
import { CONCERT_TUNING } from "../../music/tuning/temperament.ts";
import type { HeardBy } from "../../sound/heard.ts";
import { soundOf } from "../../sound/passages.ts";
import { readSoundLine } from "../../sound/sound-line.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import { entryUnderCursor } from "../explain/line-under-cursor.ts";

export interface SoundAsked {
  /** As it was typed: `click at 52, 60`. */
  readonly text: string;
  readonly today: DayNumber;
}

/**
 * What a line of words sounds like beside an entry: in its key and note values, on its instrument, in the tuning of the
 * journal, and no faster than the day allows. Nothing sounds on a day without the instrument. Where no entry stands, a
 * click and named notes sound all the same.
 */
export function soundAt(journal: Journal, uri: string, line: number, { text, today }: SoundAsked): Sound {
  const read = readSoundLine(text, journal);
  if (!read.ok) return read;
  const conventions = journal.conventions(uri);
  const found = entryUnderCursor(journal, uri, { line, character: 0 });
  const entry = found.ok ? found.entry : undefined;
  const by = heardBy(entry, conventions, today);
  const instrument = entry?.instrument ?? conventions.instrument ?? null;
  const ceiling = ceilingOn(journal, today, instrument);
  if (ceiling.kind === "without instrument") return { ok: false, reason: SILENT };
  const { share } = ceiling;
  if (share === undefined) return soundOf(read.line, by, () => undefined);
  const most = entry && highestRate(journal, ceiling, entry, conventions, today);
  return soundOf(read.line, by, ({ bpm, beat = by.beat }) => {
    const perBeat = rateBy({ beat, value: by.noteValue }, 1)!;
    return notchAtOrBelow(most === undefined ? share * bpm : most / perBeat);
  });
}

/** How fast the day allows the strand of an entry, as a rate; undefined where nothing is known of it yet. */
function highestRate(
  journal: Journal,
  ceiling: Ceiling,
  entry: Entry,
  conventions: Conventions,
  today: DayNumber,
): number | undefined {
  const manner = playedEntry(entry, conventions).attempts[0]?.manner;
  const strand = manner && journalHistory(journal).strandOf(manner);
  return strand && highestTempo(ceiling, standingOf(strand.records, today, sinceLately(journal, strand, today)));
}

const SILENT = "Nothing sounds today: yesterday or today you noted that something hurts. Rest is a full answer.";

function heardBy(entry: Entry | undefined, conventions: Conventions, today: DayNumber): HeardBy {
  const tuning = conventions.tuning ?? CONCERT_TUNING;
  const instrument = instrumentOf(entry?.instrument ?? conventions.instrument, conventions);
  const attempt = entry?.attempts[0];
  const conditions = attempt?.conditions;
  const counting = entry && conditions ? countingOf(entry, conditions, attempt.tempo ?? {}, conventions) : undefined;
  const tonguing = conditions?.articulation?.tonguing ?? conventions.usualTonguing;
  return {
    exercise: entry && exerciseToPlay(entry, conditions, conventions, today),
    key: keyOf(entry, conventions),
    instrument,
    tuning,
    beat: counting?.beat ?? QUARTER,
    noteValue: counting?.value ?? conventions.noteValue ?? QUARTER,
    slurred: tonguing === "slurred",
  };
}

/** Of a piece that says its key. */
function keyOf(entry: Entry | undefined, { piecesByTitle }: Conventions): HeardBy["key"] {
  if (entry?.subject?.type !== "title") return undefined;
  const key = piecesByTitle.get(nameKey(entry.subject.title))?.find((piece) => piece.key)?.key;
  return key && { tonic: key.tonic, minor: /minor/.test(key.kind) };
}
