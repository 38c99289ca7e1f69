import type { ScoreFile } from "./exercise-score.ts";

/** A key and the 14 bits above it: so many parts has a semitone, 0.0061 cents each. */
const PARTS = 2 ** 14;
const KEYS = 128;
const NAME_LENGTH = 16;

/** Three bytes that leave a key as it is. */
const NO_CHANGE = [0x7f, 0x7f, 0x7f];

const START = 0xf0;
const END = 0xf7;
/** Universal system exclusive messages that need not come at once. */
const NON_REAL_TIME = 0x7e;
const ALL_DEVICES = 0x7f;
const MIDI_TUNING = 0x08;
const BULK_DUMP = 0x01;
const OCTAVE_TWO_BYTES = 0x09;

/**
 * A bulk tuning dump of the MIDI Tuning Standard: the frequency of every key, to 0.0061 cents. A frequency that the
 * standard cannot say, below 8.1758 Hz or above 13,289.7 Hz, leaves its key as it is.
 *
 *     F0 7E 7F 08 01 tt <name, 16 bytes of ASCII> <xx yy zz for each of 128 keys> cc F7
 *
 * `tt` is the tuning program, `xx` a key of equal temperament at A = 440 Hz, `yy zz` 14 bits of the semitone above it,
 * and `cc` all bytes between F0 and itself by exclusive or. Source: MIDI Tuning, MIDI 1.0 Detailed Specification.
 *
 * @param hertz of the keys 0 to 127
 */
export function bulkTuningDump(name: string, hertz: readonly number[]): Uint8Array {
  const program = 0;
  const frequencies = Array.from({ length: KEYS }, (_, key) => frequencyBytes(hertz[key]!)).flat();
  const body = [NON_REAL_TIME, ALL_DEVICES, MIDI_TUNING, BULK_DUMP, program, ...nameBytes(name), ...frequencies];
  return Uint8Array.from([START, ...body, body.reduce((sum, byte) => sum ^ byte, 0), END]);
}

function frequencyBytes(hertz: number): readonly number[] {
  const parts = Math.round((69 + 12 * Math.log2(hertz / 440)) * PARTS);
  if (parts < 0 || parts > KEYS * PARTS - 2) return NO_CHANGE;
  return [Math.floor(parts / PARTS), (parts >> 7) & 0x7f, parts & 0x7f];
}

/** Sixteen characters of ASCII; letters with accents lose them, spaces fill up. */
function nameBytes(name: string): readonly number[] {
  const plain = name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/[^ -~]/gu, "?");
  const cut = plain.slice(0, NAME_LENGTH).padEnd(NAME_LENGTH, " ");
  return [...cut].map((character) => character.charCodeAt(0));
}

/** Cents either way that a note of an octave tuning may be from its key. */
const MOST_CENTS = 100;

/**
 * A scale/octave tuning in its two-byte form: by how much each key, C to B, is off equal temperament in every octave,
 * for all channels, to 0.0122 cents.
 *
 *     F0 7E 7F 08 09 03 7F 7F <ss tt for each of 12 keys> F7
 *
 * `ss tt` are 14 bits, of which 40 00 is no change, 00 00 is 100 cents down and 7F 7F as good as 100 up. Source: MIDI
 * Tuning Extensions, scale/octave tuning (CA-021).
 */
export function octaveTuning(cents: readonly number[]): ScoreFile<Uint8Array> {
  const places = cents.map((each) => 0x2000 + Math.round((each / MOST_CENTS) * 0x2000));
  if (places.some((place) => place < 0 || place > 0x3fff)) return { ok: false, reason: TOO_FAR };
  const channels = [0x03, 0x7f, 0x7f];
  const keys = places.flatMap((place) => [place >> 7, place & 0x7f]);
  const head = [START, NON_REAL_TIME, ALL_DEVICES, MIDI_TUNING, OCTAVE_TWO_BYTES];
  return { ok: true, content: Uint8Array.from([...head, ...channels, ...keys, END]) };
}

const TOO_FAR =
  "An octave tuning reaches 100 cents from A = 440 in equal temperament, and this tuning goes further. A whole tuning, without “--octave”, has no such limit.";
