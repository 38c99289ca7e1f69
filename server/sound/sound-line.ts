import type { Journal } from "../journal/journal.ts";
import type { NoteValue, Tempo } from "../journal/model.ts";
import { type Bars, type Metre, readTerms } from "./sound-terms.ts";
import { soundTexts } from "./sound-texts.ts";
import { readNotes, type SoundedNote } from "./sounded-notes.ts";

export interface ClickLine {
  readonly type: "click";
  readonly tempos: readonly Tempo[];
  /** Softer clicks between the beats. */
  readonly division?: NoteValue;
  /** So many bars with a click, then so many without. */
  readonly turns?: BarTurns;
  readonly metre?: Metre;
  readonly minutes?: number;
}

export interface BarTurns {
  readonly on: number;
  readonly off: number;
}

export interface DroneLine {
  readonly type: "drone";
  readonly notes: readonly SoundedNote[];
  readonly minutes?: number;
}

export interface PlayLine {
  readonly type: "play";
  readonly tempos: readonly Tempo[];
  readonly noteValue?: NoteValue;
  readonly bars?: Bars;
  readonly metre?: Metre;
  readonly times: number;
}

export interface CompareLine {
  readonly type: "compare";
  readonly upper: SoundedNote;
  readonly lower: SoundedNote;
}

/** What a line asks to hear. */
export type SoundLine = ClickLine | DroneLine | PlayLine | CompareLine;

export type SoundLineRead =
  | { readonly ok: true; readonly line: SoundLine }
  | { readonly ok: false; readonly reason: string };

/** The most of each, so that no line sounds without end. */
const MOST_NOTES = 4;
const MOST_BARS = 64;
const MOST_TIMES = 20;

/** Reads a line such as `click at 52, 60, 69`. Tempos, note values, minutes and notes are read as in the journal. */
export function readSoundLine(typed: string, journal: Journal): SoundLineRead {
  const text = typed.trim().replace(/\s+/g, " ");
  const [, verb, rest] = /^(click|drone|play|compare)\b[ ,:]*(.*)$/is.exec(text) ?? [];
  switch (verb?.toLowerCase()) {
    case "click":
      return readClick(rest!, journal);
    case "drone":
      return readDrone(rest!, journal);
    case "play":
      return readPlay(rest!.replace(/^through\b,? ?/i, ""), journal);
    case "compare":
      return readCompare(rest!, journal);
    default:
      return refused(soundTexts.howToBegin);
  }
}

function readClick(rest: string, journal: Journal): SoundLineRead {
  const { turns, text } = withoutTurns(rest);
  const read = readTerms(text, journal);
  if (!read.ok) return read;
  const { tempos, noteValue: division, metre, minutes, bars, times } = read.terms;
  if (bars || times !== undefined) return refused(soundTexts.barsOfAClick);
  return { ok: true, line: { type: "click", tempos, division, turns, metre, minutes } };
}

const TURNS = /,? ?(?:with )?(\d+) bars? on, ?(\d+) (?:bars? )?off\b|,? ?on bars? 1(?:-(\d+))? of (?:every )?(\d+)\b/i;

/** `2 bars on, 2 off`, also as `on bars 1-2 of every 4`. */
function withoutTurns(text: string): { readonly text: string; readonly turns?: BarTurns } {
  const found = TURNS.exec(text);
  if (!found) return { text };
  const [, on, off, last, every] = found.map(Number);
  const turns = Number.isNaN(on) ? { on: last || 1, off: every! - (last || 1) } : { on: on!, off: off! };
  const left = text.slice(0, found.index) + text.slice(found.index + found[0].length);
  const isPossible = turns.on > 0 && turns.off >= 0 && turns.on + turns.off <= MOST_BARS;
  return isPossible ? { text: left, turns } : { text };
}

function readPlay(rest: string, journal: Journal): SoundLineRead {
  const read = readTerms(rest, journal);
  if (!read.ok) return read;
  const { tempos, noteValue, bars, metre, times = 1 } = read.terms;
  return {
    ok: true,
    line: { type: "play", tempos, noteValue, bars, metre, times: Math.max(1, Math.min(times, MOST_TIMES)) },
  };
}

function readDrone(rest: string, journal: Journal): SoundLineRead {
  const [, words, minutes] = /^(?:on )?(.*?)(?:,? (\d+) min(?:utes?)?)?$/is.exec(rest)!;
  const notes = readNotes(words!, journal);
  if (notes.length === 0 || notes.length > MOST_NOTES) return refused(soundTexts.notesMissing);
  return { ok: true, line: { type: "drone", notes, ...(minutes === undefined ? {} : { minutes: Number(minutes) }) } };
}

function readCompare(rest: string, journal: Journal): SoundLineRead {
  const [upper, lower, ...more] = rest.split(/ (?:against|over|with) /i).map((words) => readNotes(words, journal));
  if (upper?.length !== 1 || lower?.length !== 1 || more.length > 0) return refused(soundTexts.twoNotes);
  return { ok: true, line: { type: "compare", upper: upper[0]!, lower: lower[0]! } };
}

function refused(reason: string): SoundLineRead {
  return { ok: false, reason };
}
