import patterns from "../reference/patterns.json" with { type: "json" };

/** A row of test/reference/patterns.json as a journal says it, on C. */
export interface RowInWords {
  readonly row: string;
  /** What has the degrees of `T8`. */
  readonly words: string;
  /** What has those of `T8_descending_mirror`; where it has none, none is said. */
  readonly mirror?: string;
  readonly T8: readonly number[];
  readonly mirrored?: readonly number[];
}

/**
 * Every row has words. Nearly all are a pattern, up; its mirror is the same pattern, down. Others:
 *
 * - `straight`, `top_down` and `five_note` are directions and spans of `straight`, and so is the mirror of `five_note`, which hangs
 *   from the octave: a span between two notes.
 * - `pedal_top` is `pedal`, down: the mirror is how a pattern falls.
 * - `arpeggio` and the broken chords are no patterns of a scale here but subjects, which count their chord's notes. Their mirrors
 *   are other chords, as 8 6 4 1 of C major is F major with its fifth in the bass.
 * - `chromatic_threes` is threes over the chromatic scale; the reference counts its semitones from 0.
 *
 * What the reference names beside its rows and the format has no word for is the retrograde, a form played backwards. Of intervals,
 * groups and chords on each note it is the mirror; of the others (`pedal`, `growing`, turns) a declared pattern says part of it.
 */
const WORDS: Readonly<Record<string, readonly [up: string, mirror?: string]>> = {
  straight_up: ["C major, straight, up", "C major, straight, down"],
  straight: ["C major, straight, up and down", "C major, straight, top down"],
  top_down: ["C major, top down", "C major, up and down"],
  five_note: ["C major, five notes, up and down", "C major, from F4 to C5, top down"],
  five_note_on_each: ["C major, five notes on each, up", "C major, five notes on each, down"],
  "intervals:2": ["C major, thirds, up", "C major, thirds, down"],
  "intervals:3": ["C major, fourths, up", "C major, fourths, down"],
  "intervals:4": ["C major, fifths, up", "C major, fifths, down"],
  "intervals:5": ["C major, sixths, up", "C major, sixths, down"],
  "intervals:6": ["C major, sevenths, up", "C major, sevenths, down"],
  "intervals:7": ["C major, octaves, 1 octave, up", "C major, octaves, 1 octave, down"],
  "intervals:9": ["C major, tenths, 1 octave, up", "C major, tenths, 1 octave, down"],
  "intervals_alternating:2": ["C major, thirds, alternating, up", "C major, thirds, alternating, down"],
  "groups:3": ["C major, threes, up", "C major, threes, down"],
  "groups:4": ["C major, fours, up", "C major, fours, down"],
  "groups:5": ["C major, fives, up", "C major, fives, down"],
  "groups_linked_down:4": ["C major, fours, linked, up", "C major, fours, linked, down"],
  growing: ["C major, growing, up", "C major, growing, down"],
  growing_return: ["C major, growing, returning, up", "C major, growing, returning, down"],
  pedal: ["C major, pedal, up", "C major, pedal, down"],
  pedal_top: ["C major, pedal, down", "C major, pedal, up"],
  triads: ["C major, triads, up", "C major, triads, down"],
  triads_alternating: ["C major, triads, alternating, up", "C major, triads, alternating, down"],
  triads_broken: ["C major, triads, broken, up", "C major, triads, broken, down"],
  sevenths: ["C major, seventh chords, up", "C major, seventh chords, down"],
  sevenths_alternating: ["C major, seventh chords, alternating, up", "C major, seventh chords, alternating, down"],
  arpeggio: ["C major arpeggio, up and down", "F major arpeggio, 2nd inversion, top down"],
  "broken_chord:3": ["C major broken chord, up", "F major broken chord, 2nd inversion, down"],
  "broken_chord:4": ["C major broken chord, fours, up", "F major broken chord, fours, 2nd inversion, down"],
  upper_neighbour: ["C major, upper neighbours, up", "C major, upper neighbours, down"],
  lower_neighbour: ["C major, lower neighbours, up", "C major, lower neighbours, down"],
  turn: ["C major, turns, up", "C major, turns, down"],
  inverted_turn: ["C major, inverted turns, up", "C major, inverted turns, down"],
  "skip:2": ["C major, skips, up", "C major, skips, down"],
  chromatic_threes: ["C chromatic, threes, up"],
};

/** The rows in words; a row without words fails. */
export const ROWS: readonly RowInWords[] = patterns.patterns.map(({ id, T8, T8_descending_mirror: mirrored }) => {
  const said = WORDS[id];
  if (!said) throw new Error(`the row ${id} has no words`);
  const [words, mirror] = said;
  if ((mirror === undefined) !== (mirrored === undefined)) throw new Error(`the mirror of ${id} has no words`);
  return { row: id, words, mirror, T8, mirrored };
});

/** Degrees of C major from C4 as semitones above it. */
export function semitonesOf(degrees: readonly number[]): number[] {
  return degrees.map((degree) => [0, 2, 4, 5, 7, 9, 11][(degree - 1) % 7]! + 12 * Math.floor((degree - 1) / 7));
}
