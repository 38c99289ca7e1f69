import { midi, type Note } from "../music/notes/note.ts";
import { noteStarts, rhythmLengths } from "../music/notes/rhythm.ts";
import { DETACHED } from "../sound/passages.ts";
import type { ExerciseScore, ScoreFile } from "./exercise-score.ts";
import { scoreTexts } from "./score-texts.ts";

/** Ticks in a quarter: 32nds, triplets, sextuplets and fives are whole numbers of them. */
const TICKS = 480;

/** How hard each key goes down, 1 to 127: in the middle. */
const VELOCITY = 64;

/** Without a tempo: so many notes a minute, whatever their value. Slow enough for anything; nobody's tempo. */
const NOTES_A_MINUTE = 60;

/** The most microseconds of a quarter that a tempo event can hold: three bytes. */
const SLOWEST = 0xffffff;

/** What comes after so many ticks. */
interface Event {
  readonly at: number;
  readonly bytes: readonly number[];
}

/**
 * An exercise as a Standard MIDI File of one track (format 0), at concert pitch: name, tempo, key signature, and a key
 * down and up for each note. Notes between the keys of a piano are bent from the nearest one.
 *
 * Source of the layout: Standard MIDI Files 1.0 (RP-001), MIDI 1.0 Detailed Specification.
 */
export function midiFile(score: ExerciseScore): ScoreFile<Uint8Array> {
  const { sounding, staff } = score;
  if (sounding.length === 0) return { ok: false, reason: staff.ok ? "" : staff.reason };
  if (sounding.some((note) => midi(note) < 0 || midi(note) > 127)) return { ok: false, reason: scoreTexts.beyondKeys };
  const quarter = Math.round(60_000_000 / quartersAMinute(score));
  if (quarter > SLOWEST) return { ok: false, reason: scoreTexts.tooSlow };
  const events = [...opening(score, quarter), ...bendRange(sounding), ...notes(score)];
  return { ok: true, content: fileOf(events) };
}

function quartersAMinute({ tempo, value }: ExerciseScore): number {
  const { bpm, beat } = tempo ?? { bpm: NOTES_A_MINUTE, beat: value };
  return (4 * bpm * beat.numerator) / beat.denominator;
}

/** The name, the instrument, the tempo and the key. */
function opening({ title, instrument, concertKey }: ExerciseScore, quarter: number): readonly Event[] {
  const key = concertKey && meta(0x59, [concertKey.fifths & 0xff, concertKey.minor ? 1 : 0]);
  return [
    meta(0x03, text(title)),
    ...(instrument ? [meta(0x04, text(instrument.names[0]!))] : []),
    meta(0x51, [quarter >> 16, (quarter >> 8) & 0xff, quarter & 0xff]),
    ...(key ? [key] : []),
  ].map((bytes) => ({ at: 0, bytes }));
}

/** Semitones either way that the pitch wheel bends: what instruments begin with. */
const BEND_RANGE = 2;

/** Registered parameter 0 is that range; the last two numbers let go of it. */
function bendRange(sounding: readonly Note[]): readonly Event[] {
  if (!isBent(sounding)) return [];
  const controls = [
    [101, 0],
    [100, 0],
    [6, BEND_RANGE],
    [38, 0],
    [101, 127],
    [100, 127],
  ];
  return controls.map(([control, value]) => ({ at: 0, bytes: [0xb0, control!, value!] }));
}

function isBent(sounding: readonly Note[]): boolean {
  return sounding.some(({ off }) => off !== undefined);
}

function notes({ sounding, value, rhythm, held }: ExerciseScore): readonly Event[] {
  const each = (4 * TICKS * value.numerator) / value.denominator;
  const starts = noteStarts(rhythmLengths(rhythm), sounding.length);
  const bends = isBent(sounding);
  return sounding.flatMap((note, i) => {
    const key = midi(note);
    const start = starts[i]!;
    const length = starts[i + 1]! - start;
    const at = Math.round(start * each);
    const end = Math.round((start + length * (held[i] ? 1 : DETACHED)) * each);
    return [
      ...(bends ? [{ at, bytes: bend(note.off ?? 0) }] : []),
      { at, bytes: [0x90, key, VELOCITY] },
      { at: end, bytes: [0x80, key, VELOCITY] },
    ];
  });
}

/** The pitch wheel at so many cents: 14 bits, the lower seven first, the middle at rest. */
function bend(cents: number): readonly number[] {
  const place = 0x2000 + Math.round((cents / (100 * BEND_RANGE)) * 0x2000);
  return [0xe0, place & 0x7f, place >> 7];
}

function fileOf(events: readonly Event[]): Uint8Array {
  const end = meta(0x2f, []);
  const track = events.flatMap(({ at, bytes }, i) => [...variableLength(at - (events[i - 1]?.at ?? 0)), ...bytes]);
  const body = [...track, 0, ...end];
  return Uint8Array.from([
    ...text("MThd"),
    ...fourBytes(6),
    ...[0, 0, 0, 1, TICKS >> 8, TICKS & 0xff],
    ...text("MTrk"),
    ...fourBytes(body.length),
    ...body,
  ]);
}

function meta(type: number, data: readonly number[]): readonly number[] {
  return [0xff, type, ...variableLength(data.length), ...data];
}

/** Seven bits a byte, the highest first; all bytes but the last have their top bit set. */
function variableLength(value: number): readonly number[] {
  const bytes = [value & 0x7f];
  for (let rest = value >> 7; rest > 0; rest >>= 7) bytes.unshift((rest & 0x7f) | 0x80);
  return bytes;
}

function fourBytes(value: number): readonly number[] {
  return [24, 16, 8, 0].map((shift) => (value >> shift) & 0xff);
}

function text(characters: string): readonly number[] {
  return [...new TextEncoder().encode(characters)];
}
