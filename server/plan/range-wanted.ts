import { attemptOfRecord, entryMadeOnce } from "../history/entry-of-record.ts";
import { journalHistory } from "../history/journal-history.ts";
import type { AttemptRecord } from "../history/record.ts";
import { DAYS_OF_KEYS, KEY_WITHIN } from "../history/thresholds.ts";
import type { DayNumber } from "../journal/calendar.ts";
import { type Conventions, instrumentOf, kindOf } from "../journal/conventions.ts";
import { notesPlayed } from "../journal/entry-notes.ts";
import type { Journal } from "../journal/journal.ts";
import type { Entry } from "../journal/model.ts";
import { hardestSteps } from "../music/fingering/finger-change.ts";
import { whyUnfingered } from "../music/fingering/fingering.ts";
import type { Instrument } from "../music/instruments/instrument.ts";
import { midi, type Note } from "../music/notes/note.ts";
import { notesToPlay } from "../music/patterns/notes-to-play.ts";
import { type HomeKey, homeKeysOf } from "./home-keys.ts";
import type { Part } from "./pieces-in-hand.ts";

/** The lowest and the highest note of something, as written. */
export interface NoteReach {
  readonly low: Note;
  readonly high: Note;
}

/** What a piece with a range wants of the lines of its key, and what was played of that. */
export interface RangeWanted {
  readonly range: NoteReach;
  /** As far as lines of the key went in the days that the need is met for; null where none was played. */
  readonly went: NoteReach | null;
  readonly played: boolean;
  /** The latest day of the last twelve weeks by which both ends were reached. */
  readonly last: DayNumber | null;
  /** The hardest finger change of the key's scale over the range; on recorders alone. */
  readonly change?: {
    readonly from: Note;
    readonly to: Note;
    readonly played: boolean;
    readonly last: DayNumber | null;
  };
}

/** A tone, in semitones: so near to an end is as good as there. */
const TONE = 2;

export function isFarAsLow(went: NoteReach, { low }: NoteReach): boolean {
  return midi(went.low) <= midi(low) + TONE;
}

export function isFarAsHigh(went: NoteReach, { high }: NoteReach): boolean {
  return midi(went.high) >= midi(high) - TONE;
}

/** Undefined where the range is not declared, or has no octaves. Only what its own instrument played counts. */
export function rangeWanted(journal: Journal, part: Part, key: HomeKey, today: DayNumber): RangeWanted | undefined {
  const { uri, declared } = part.line;
  const conventions = journal.conventions(uri);
  const id = part.records.at(-1)?.instrument ?? conventions.instrument;
  const instrument = instrumentOf(id ?? undefined, conventions);
  const range = declared.range && reachOf([declared.range.from, declared.range.to].filter(hasOctave), instrument);
  if (!range) return undefined;
  const name = instrument?.id ?? id ?? null;
  const lately = linesPlayed(journal, name, today);
  const own = lately.filter(({ keys }) => keys.includes(key.id));
  const recent = own.filter(({ day }) => today - day <= KEY_WITHIN);
  const went = reachOf(recent.flatMap(({ low, high }) => [low, high]));
  const lastLow = own.find((line) => isFarAsLow(line, range))?.day;
  const lastHigh = own.find((line) => isFarAsHigh(line, range))?.day;
  const last = lastLow === undefined || lastHigh === undefined ? null : Math.min(lastLow, lastHigh);
  const change = instrument && hardestChange(key, range, instrument, conventions);
  return {
    range,
    went: went ?? null,
    last,
    played: isLately(last, today),
    ...(change && { change: { ...change, ...changePlayed(lately, change, today) } }),
  };
}

function isLately(last: DayNumber | null, today: DayNumber): boolean {
  return last !== null && today - last <= KEY_WITHIN;
}

function hasOctave(note: { readonly octave?: number }): note is Note {
  return note.octave !== undefined;
}

/** From the lowest to the highest of some notes, as far as an instrument has them; undefined where there is no way. */
function reachOf(notes: readonly Note[], instrument?: Instrument): NoteReach | undefined {
  if (notes.length < 2) return undefined;
  const inOrder = [...notes].sort((a, b) => midi(a) - midi(b));
  const [low, high] = [inOrder[0]!, inOrder.at(-1)!];
  if (!instrument) return { low, high };
  const within = {
    low: midi(low) < midi(instrument.low) ? instrument.low : low,
    high: midi(high) > midi(instrument.high) ? instrument.high : high,
  };
  return midi(within.low) < midi(within.high) ? within : undefined;
}

/** A line that was played: how far it went, which notes came after one another, and the keys that it is practice of. */
interface PlayedLine extends NoteReach {
  readonly day: DayNumber;
  readonly keys: readonly string[];
  /** Pairs of keys that came after one another (`changeKey`). */
  readonly changes: ReadonlySet<number>;
}

/** The lines of scales, chords and figures that an instrument played in the last twelve weeks, the latest first. */
function linesPlayed(journal: Journal, instrument: string | null, today: DayNumber): readonly PlayedLine[] {
  const index = journalHistory(journal);
  return journal.memo.from(index, `lines played on ${instrument}`, [today], () => {
    const records = [...index.exercises.values()]
      .filter((exercise) => exercise.instrument === instrument && !exercise.strands[0]!.title)
      .flatMap(({ strands }) => strands.flatMap((strand) => strand.records))
      .filter(({ day }) => day <= today && day > today - DAYS_OF_KEYS);
    return records.flatMap((record) => lineOf(journal, record) ?? []).sort((a, b) => b.day - a.day);
  });
}

function lineOf(journal: Journal, record: AttemptRecord): PlayedLine | null {
  return journal.memo.from(record, "line played", [journal.conventions(record.uri)], () => {
    const entry = entryMadeOnce(journal, record);
    const own = entry && attemptOfRecord(entry, record);
    if (!entry || !own) return null;
    const conventions = journal.conventions(record.uri);
    const lines = singleEntries({ ...entry, attempts: [own] }).map((one) => notesPlayed(one, conventions, record.day));
    const reach = reachOf(lines.flat());
    if (!reach) return null;
    const changes = new Set(lines.flatMap((notes) => notes.slice(1).map((to, i) => changeKey(notes[i]!, to))));
    return { ...reach, day: record.day, keys: homeKeysOf(entry.subject), changes };
  });
}

/** Of a chain or a set an entry for each of its scales. */
function singleEntries(entry: Entry): readonly Entry[] {
  const { subject } = entry;
  if (subject?.type === "chain") return subject.scales.map((scale) => ({ ...entry, subject: scale }));
  if (subject?.type === "several") return subject.subjects.map((one) => ({ ...entry, subject: one }));
  return [entry];
}

const KEYS = 128;

/** The same both ways. */
function changeKey(from: Note, to: Note): number {
  return Math.min(midi(from), midi(to)) * KEYS + Math.max(midi(from), midi(to));
}

function hardestChange(
  { scale }: HomeKey,
  { low, high }: NoteReach,
  instrument: Instrument,
  conventions: Conventions,
): { readonly from: Note; readonly to: Note } | undefined {
  const kind = kindOf(scale.kind, scale.declared, conventions);
  if (instrument.family !== "recorder" || whyUnfingered(instrument) || conventions.hidesNotes || !kind)
    return undefined;
  const subject = { type: "scale", tonic: scale.tonic, kind } as const;
  const line = notesToPlay({ subject, reach: { type: "between", from: low, to: high }, instrument });
  const [hardest] = hardestSteps(line, instrument, 1);
  return hardest && { from: hardest.from, to: hardest.to };
}

function changePlayed(
  lines: readonly PlayedLine[],
  { from, to }: { readonly from: Note; readonly to: Note },
  today: DayNumber,
): { readonly last: DayNumber | null; readonly played: boolean } {
  const last = lines.find(({ changes }) => changes.has(changeKey(from, to)))?.day ?? null;
  return { last, played: isLately(last, today) };
}
