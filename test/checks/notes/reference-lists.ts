import modes from "../../reference/modes.json" with { type: "json" };
import patterns from "../../reference/patterns.json" with { type: "json" };
import scales from "../../reference/scales.json" with { type: "json" };
import others from "../../reference/scales-other-and-arpeggios.json" with { type: "json" };
import type { Beside } from "./claims.ts";

/** A list as a reference has it, and what it stands beside. */
export interface ReferenceList {
  readonly subject: string;
  readonly terms: Beside;
  readonly notes: readonly string[];
  /** Whether the last note is a closing tonic, which may be left out. */
  readonly closes: boolean;
}

const reversed = (notes: readonly string[]) => [...notes].reverse();

/** The four ways through a scale that is given up and down, with the octave, and each without its last note. */
function ways(subject: string, up: readonly string[], down: readonly string[]): ReferenceList[] {
  const lists = [up, down, [...up, ...down.slice(1)], [...down, ...up.slice(1)]];
  return lists.flatMap((notes) => [
    { subject, terms: {}, notes, closes: true },
    { subject, terms: {}, notes: notes.slice(0, -1), closes: false },
  ]);
}

const withoutOctaves = (notes: readonly string[]) => notes.map((note) => note.replace(/\d/u, ""));
const octaveUp = (note: string) => note.replace(/\d/u, (octave) => String(Number(octave) + 1));

/** Over one octave and over two, with octave numbers and without. */
function octaves(subject: string, up: readonly string[], down: readonly string[]): ReferenceList[] {
  const upTwice = [...up, ...up.slice(1).map(octaveUp)];
  const downTwice = [...down.map(octaveUp), ...down.slice(1)];
  const lists = [...ways(subject, up, down), ...ways(subject, upTwice, downTwice)];
  return [...lists, ...lists.map((list) => ({ ...list, notes: withoutOctaves(list.notes) }))];
}

/** test/reference/scales.json (LilyPond 2.24.1): major, and minor in its three forms, with octaves. */
export function majorAndMinorLists(): ReferenceList[] {
  const major = scales.major.flatMap(({ tonic, scales: { major } }) => octaves(`${tonic} major`, major.up, major.down));
  const minor = scales.minor.flatMap(({ tonic, scales: forms }) =>
    Object.entries(forms).flatMap(([form, { up, down }]) => octaves(`${tonic} ${form} minor`, up, down)),
  );
  return [...major, ...minor];
}

/** A scale given by one octave of names: over one octave, and over two. */
function named(subject: string, up: readonly string[], falling = up): ReferenceList[] {
  const tonic = up[0]!;
  const lowToHigh = [...up, tonic];
  const highToLow = reversed([...falling, tonic]);
  const once = ways(subject, lowToHigh, highToLow);
  return [...once, ...ways(subject, [...up, ...lowToHigh], [...highToLow, ...highToLow.slice(1)])];
}

/** test/reference/modes.json (LilyPond 2.24.1). */
export function modeLists(): ReferenceList[] {
  return modes.modes.flatMap(({ mode, tonic, up }) => named(`${tonic} ${mode}`, up));
}

type ByTonic = Readonly<Record<string, string>>;
const OTHERS: Readonly<Record<string, ByTonic>> = others.scales;

function namedIn(group: string, kind: string, falling = group): ReferenceList[] {
  return Object.entries(OTHERS[group]!).flatMap(([tonic, up]) =>
    named(`${tonic} ${kind}`, up.split(" "), OTHERS[falling]![tonic]!.split(" ")),
  );
}

/** test/reference/scales-other-and-arpeggios.json (LilyPond 2.24.1 on formulas of common practice): the scales. */
export function otherScaleLists(): ReferenceList[] {
  return [
    ...namedIn("major pentatonic", "major pentatonic"),
    ...namedIn("minor pentatonic", "minor pentatonic"),
    ...namedIn("whole tone", "whole-tone"),
    ...namedIn("minor blues flat5", "blues"),
    ...namedIn("minor blues sharp4", "blues"),
    ...namedIn("minor blues sharp4", "blues", "minor blues flat5"),
    ...namedIn("major blues", "major blues"),
    ...namedIn("octatonic half-whole", "half-whole"),
    ...namedIn("octatonic whole-half", "whole-half"),
    ...namedIn("octatonic half-whole", "octatonic"),
    ...namedIn("octatonic whole-half", "octatonic"),
    ...namedIn("harmonic chromatic", "chromatic"),
    ...namedIn("melodic chromatic up", "chromatic", "melodic chromatic down (listed low to high)"),
  ];
}

/** The same file: the arpeggios. */
export function arpeggioLists(): ReferenceList[] {
  return [
    ...["major", "minor", "diminished", "augmented"].flatMap((triad) => namedIn(`arp ${triad}`, `${triad} arpeggio`)),
    ...["dominant", "diminished", "major", "minor", "half-diminished"].flatMap((chord) =>
      namedIn(`arp ${chord} 7th`, `${chord} seventh`),
    ),
  ];
}

/** Our names for the patterns of test/reference/patterns.json that have the same rising form. */
const PATTERN_TERMS: Readonly<Record<string, Beside>> = {
  "five_note_on_each|five_note_on_each": { pattern: "five notes on each" },
  "intervals:2|thirds": { pattern: "thirds" },
  "intervals:3|fourths": { pattern: "fourths" },
  "intervals:4|fifths": { pattern: "fifths" },
  "intervals:5|sixths": { pattern: "sixths" },
  "intervals:6|sevenths": { pattern: "sevenths" },
  "intervals_alternating:2|thirds up-down": { pattern: "thirds", variant: "alternating" },
  "groups:3|groups": { pattern: "threes" },
  "groups:4|groups": { pattern: "fours" },
  "groups:5|groups": { pattern: "fives" },
  "groups_linked_down:4|groups_linked_down": { pattern: "fours", variant: "linked" },
  "growing|growing": { pattern: "growing" },
  "growing_return|growing_return": { pattern: "growing", variant: "returning" },
  "pedal|pedal": { pattern: "pedal" },
  "triads|triads": { pattern: "triads" },
  "triads_alternating|triads_alternating": { pattern: "triads", variant: "alternating" },
  "triads_broken|triads_broken": { pattern: "triads", variant: "broken" },
  "sevenths|sevenths": { pattern: "seventh chords" },
  "sevenths_alternating|sevenths_alternating": { pattern: "seventh chords", variant: "alternating" },
  "upper_neighbour|upper_neighbour": { pattern: "upper neighbours" },
  "lower_neighbour|lower_neighbour": { pattern: "lower neighbours" },
  "turn|turn": { pattern: "turns" },
  "inverted_turn|inverted_turn": { pattern: "inverted turns" },
  "skip:2|skip": { pattern: "skips" },
};

export const PATTERNS_LISTED = Object.keys(PATTERN_TERMS).length;

/**
 * test/reference/patterns.json (common practice, no source) over the scales of scales.json: rising, falling, and both.
 * Melodic minor takes its falling notes in the falling form.
 */
export function patternLists(): ReferenceList[] {
  const grounds = [
    { subject: "Eb major", ...scales.major.find(({ tonic }) => tonic === "Eb")!.scales.major },
    { subject: "D melodic minor", ...scales.minor.find(({ tonic }) => tonic === "D")!.scales.melodic },
  ];
  return patterns.patterns.flatMap(({ id, term, T8, T8_descending_mirror }) => {
    const terms = PATTERN_TERMS[`${id}|${term}`];
    if (!terms) return [];
    return grounds.flatMap(({ subject, up, down }) => {
      const rising = T8.map((degree) => up[degree - 1]!);
      const falling = T8_descending_mirror!.map((degree) => reversed(down)[degree - 1]!);
      const tonic = up[0]!.replace(/\d/u, "");
      return [rising, falling, [...rising, ...falling], [...falling, ...rising]].map((notes) => {
        return { subject, terms, notes, closes: withoutOctaves(notes.slice(-1))[0] === tonic };
      });
    });
  });
}
