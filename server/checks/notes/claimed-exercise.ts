import { chordById } from "../../music/chords/chord.ts";
import type { Instrument } from "../../music/instruments/instrument.ts";
import { type Degree, noteOnDegree } from "../../music/notes/degree.ts";
import type { Note } from "../../music/notes/note.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import { type ChordToPlay, notesToPlay, type ScaleToPlay } from "../../music/patterns/notes-to-play.ts";
import { type Cell, type DegreeIntervals, patternById, type Variant } from "../../music/patterns/pattern.ts";
import { turnedForms } from "../../music/patterns/pattern-forms.ts";
import type { Direction, Reach } from "../../music/patterns/reach.ts";
import { kindById } from "../../music/scales/kinds.ts";
import { degreesOf } from "../../music/scales/scale.ts";
import { figureLengths } from "./figures.ts";

/** The exercise that a note list stands beside. */
export interface ClaimedExercise {
  readonly subject: ScaleToPlay | ChordToPlay;
  /** As it is shown: `F# major`. */
  readonly subjectText: string;
  /** An id of `PATTERNS`, or a declared cell. */
  readonly pattern?: string | Cell;
  /** As it is shown: `thirds`. */
  readonly patternText?: string;
  readonly variant?: Variant;
  /** Only where one is stated. */
  readonly direction?: Direction;
  /** Only where one is stated. */
  readonly reach?: Reach;
  readonly instrument?: Pick<Instrument, "low" | "high" | "sounding">;
  /** How notes are called in messages and in what a fix writes. */
  readonly names: NoteNames;
}

export interface ExpectedNote {
  readonly note: Note;
  /** 1 is the tonic or root. */
  readonly degree: number;
  readonly falling: boolean;
  /** From 0, within the rising or falling form. */
  readonly figure: number;
}

/** One way in which a list may be meant. */
export interface Reading {
  /** The subject as this way takes it: an octatonic scale may be either one. */
  readonly subject: ScaleToPlay | ChordToPlay;
  readonly notes: readonly ExpectedNote[];
  /** Whether it is the pattern that is named, rather than the scale or chord itself. */
  readonly patterned: boolean;
  /** Whether its last note is a closing tonic, which may be left out. */
  readonly closes: boolean;
  /** Whether typed octave numbers are those of these notes, rather than counted from any octave. */
  readonly placed: boolean;
  /** Whether only each note by itself can be told: the order is nobody's to know (`leaps`). */
  readonly unordered?: true;
}

interface Form {
  readonly notes: readonly Note[];
  readonly degrees: readonly number[];
  readonly falling: boolean;
  /** How many notes of the form's first figure are not repeated. */
  readonly skipped?: number;
}

/** More octaves than any instrument has. */
const MOST_OCTAVES = 10;

/** The degrees of one octave of a scale or chord, low to high. */
export function rungsIn(subject: ScaleToPlay | ChordToPlay, falling: boolean): readonly Degree[] {
  if (subject.type === "scale") return degreesOf(subject.kind, falling ? "down" : "up");
  return chordById(subject.chord)!.degrees;
}

function rungsOf(subject: ScaleToPlay | ChordToPlay): DegreeIntervals {
  const rising = rungsIn(subject, false);
  const third = rising.findIndex(({ step }) => step >= 2);
  return { octave: rising.length, third: Math.max(1, third) };
}

function startOf(subject: ScaleToPlay | ChordToPlay): number {
  return subject.type === "chord" ? subject.inversion + 1 : 1;
}

/** `broken` chords go in threes unless a pattern is named. */
export function patternNamed({ subject, pattern }: ClaimedExercise): string | Cell | undefined {
  const named = pattern ?? (subject.type === "chord" && subject.broken ? "threes" : undefined);
  return named === "straight" ? undefined : named;
}

function formOf(claimed: ClaimedExercise, pattern: string | Cell, reach: Reach, falling: boolean): Form {
  const { subject, instrument } = claimed;
  const direction = falling ? "down" : "up";
  const variant = pattern === "straight" ? undefined : claimed.variant;
  const { notes, degrees } = notesToPlay({ subject, pattern, variant, direction, reach, instrument });
  return { notes, degrees, falling };
}

function withoutFirst({ notes, degrees, falling }: Form): Form {
  return { notes: notes.slice(1), degrees: degrees.slice(1), falling, skipped: 1 };
}

/** From the tonic to the top, down to the lowest note and back: what a scale over the full range is. */
function overFullRange({ subject, instrument }: ClaimedExercise): Form[] {
  const { notes, degrees } = notesToPlay({ subject, pattern: "straight", reach: { type: "full range" }, instrument });
  const top = degrees.indexOf(Math.max(...degrees)) + 1;
  const bottom = degrees.lastIndexOf(Math.min(...degrees)) + 1;
  const part = (from: number, to: number, falling: boolean): Form => ({
    notes: notes.slice(from, to),
    degrees: degrees.slice(from, to),
    falling,
  });
  if (bottom <= top) return [part(0, top, false), part(top, notes.length, true)];
  return [part(0, top, false), part(top, bottom, true), part(bottom, notes.length, false)];
}

/** The scale or chord itself: up, down, up and down, down and up. */
function straightForms(claimed: ClaimedExercise, reach: Reach): Form[][] {
  const up = formOf(claimed, "straight", reach, false);
  const down = formOf(claimed, "straight", reach, true);
  const forms = [[up], [down], [up, withoutFirst(down)], [down, withoutFirst(up)]];
  return reach.type === "full range" ? [...forms, overFullRange(claimed)] : forms;
}

/** The forms that a stated direction leaves; back and forth is up and down. */
function inDirection<T>(forms: { up: T; down: T; upDown: T; downUp: T }, direction: Direction | undefined): T[] {
  const { up, down, upDown, downUp } = forms;
  if (direction === undefined) return [up, down, upDown, downUp];
  if (direction === "up") return [up];
  if (direction === "down") return [down];
  return direction === "down and up" ? [downUp] : [upDown];
}

/** Both forms of a pattern, with a turn through the neighbours at either end. */
function turned(claimed: ClaimedExercise, pattern: string | Cell, scale: Form, direction: Direction): Form[] {
  const { subject, variant } = claimed;
  const [lowest, first] = [scale.notes[0], scale.degrees[0]];
  if (!lowest || first === undefined) return [];
  const rising = rungsIn(subject, false);
  const name = subject.type === "scale" ? subject.tonic : subject.root;
  const tonic = { ...name, octave: lowest.octave };
  const shift = lowest.octave - noteOnDegree(tonic, rising, first).octave;
  const placed = { ...tonic, octave: tonic.octave + shift };
  const forms = turnedForms(pattern, variant, scale.notes.length, direction, rungsOf(subject)) ?? [];
  return forms.map(({ degrees, falling }) => {
    const moved = degrees.map((degree) => degree + first - 1);
    return {
      notes: moved.map((degree) => noteOnDegree(placed, rungsIn(subject, falling), degree)),
      degrees: moved,
      falling,
    };
  });
}

function patternForms(claimed: ClaimedExercise, pattern: string | Cell, reach: Reach): Form[][] {
  const up = formOf(claimed, pattern, reach, false);
  const down = formOf(claimed, pattern, reach, true);
  return inDirection({ up: [up], down: [down], upDown: [up, down], downUp: [down, up] }, claimed.direction);
}

function turnedPatternForms(claimed: ClaimedExercise, pattern: string | Cell, reach: Reach): Form[][] {
  const scale = formOf(claimed, "straight", reach, false);
  const upDown = turned(claimed, pattern, scale, "up and down");
  const downUp = turned(claimed, pattern, scale, "down and up");
  return inDirection({ up: [], down: [], upDown, downUp }, claimed.direction);
}

function expectedOf(form: Form, lengths: readonly number[]): ExpectedNote[] {
  const expected: ExpectedNote[] = [];
  let [figure, left] = [0, (lengths[0] ?? 1) - (form.skipped ?? 0)];
  for (const [index, note] of form.notes.entries()) {
    while (left <= 0) left = lengths[++figure] ?? lengths.at(-1) ?? 1;
    expected.push({ note, degree: form.degrees[index]!, falling: form.falling, figure });
    left--;
  }
  return expected;
}

function isPlaced(subject: ScaleToPlay | ChordToPlay, reach: Reach): boolean {
  return reach.type === "between" || reach.type === "full range" || subject.octave !== undefined;
}

function readingOf(claimed: ClaimedExercise, forms: readonly Form[], reach: Reach, pattern?: string | Cell): Reading {
  const { subject, variant } = claimed;
  const lengths = pattern === undefined ? [1] : figureLengths(pattern, variant, forms[0]?.notes.length ?? 0);
  const notes = forms.flatMap((form) => expectedOf(form, lengths));
  const octave = rungsIn(subject, false).length;
  const last = notes.at(-1);
  const closes = last !== undefined && (last.degree - startOf(subject)) % octave === 0;
  return { subject, notes, patterned: pattern !== undefined, closes, placed: isPlaced(subject, reach) };
}

/** The scale or chord itself, or the pattern, in each direction, over a reach. */
type Ways = (reach: Reach) => Reading[];

function waysOf(claimed: ClaimedExercise): Ways[] {
  const straight: Ways = (reach) => straightForms(claimed, reach).map((forms) => readingOf(claimed, forms, reach));
  const pattern = patternNamed(claimed);
  if (pattern === undefined) return [straight];
  const patterned: Ways = (reach) =>
    [...patternForms(claimed, pattern, reach), ...turnedPatternForms(claimed, pattern, reach)].map((forms) =>
      readingOf(claimed, forms, reach, pattern),
    );
  return [straight, patterned];
}

/** Of readings over one octave, two, and so on: those whose lengths are next to the list's, in each way of playing. */
function readingsByLength(ways: Ways, length: number): Reading[] {
  const near = new Map<number, Reading[]>();
  for (let count = 1; count <= MOST_OCTAVES; count++) {
    const over = ways({ type: "octaves", count });
    for (const [way, reading] of over.entries()) {
      const kept = near.get(way) ?? [];
      if (kept.length === 0 || kept.at(-1)!.notes.length <= length) near.set(way, [...kept, reading].slice(-2));
    }
    // Octaves and tenths have nothing over one octave, and turns nothing where one way is stated.
    if (count > 1 && over.every(({ notes }) => notes.length === 0 || notes.length > length)) break;
  }
  return [...near.values()].flat();
}

/** `octatonic` may be either of two scales. */
export function kindsMeant(claimed: ClaimedExercise): ClaimedExercise[] {
  const { subject } = claimed;
  if (subject.type !== "scale" || subject.kind.id !== "octatonic") return [claimed];
  return ["half-whole", "whole-half"].map((id) => ({ ...claimed, subject: { ...subject, kind: kindById(id)! } }));
}

/**
 * The ways in which a list of `length` notes may be meant, in the order in which they go first where they fit as well:
 * the scale or chord up, down, up and down, down and up, then the pattern named. Over the span named; without one over
 * whole octaves, as many as come nearest to the length.
 */
export function readings(claimed: ClaimedExercise, length: number): Reading[] {
  const { reach, instrument } = claimed;
  const known = reach?.type === "full range" && !instrument ? undefined : reach;
  const ways = kindsMeant(claimed).flatMap(waysOf);
  const found = ways.flatMap((each) => (known ? each(known) : readingsByLength(each, length)));
  return found.filter(({ notes }) => notes.length > 0);
}

/** How a pattern is called in a message. */
export function patternName({ pattern, patternText, subject }: ClaimedExercise): string {
  if (patternText) return patternText;
  if (typeof pattern === "string") return patternById(pattern)?.names[0] ?? pattern;
  return subject.type === "chord" && subject.broken ? "a broken chord in threes" : "the pattern";
}
