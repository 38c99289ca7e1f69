import { chordById } from "../chords/chord.ts";
import type { ChordKind } from "../chords/chord-kinds.ts";
import { chordSignature } from "../chords/chord-signature.ts";
import { type Instrument, isInRange, type Range, soundingNote } from "../instruments/instrument.ts";
import { type Degree, noteOnDegree } from "../notes/degree.ts";
import { midi, type Note, type NoteName, printName, samePitch } from "../notes/note.ts";
import type { ScaleKind } from "../scales/kind.ts";
import { degreesOf } from "../scales/scale.ts";
import { type KeySignature, keySignature } from "../scales/signature.ts";
import { stepsBetween } from "../scales/steps.ts";
import { leapOrder } from "./leaps.ts";
import { type Cell, type DegreeIntervals, isDrawn, type Pattern, patternById, type Variant } from "./pattern.ts";
import { type PlayedForm, playedForms } from "./pattern-forms.ts";
import type { Direction, Reach } from "./reach.ts";

export interface ScaleToPlay {
  readonly type: "scale";
  readonly tonic: NoteName;
  /** The octave of the lowest tonic, where the player named one. */
  readonly octave?: number;
  readonly kind: ScaleKind;
}

export interface ChordToPlay {
  readonly type: "chord";
  readonly root: NoteName;
  readonly octave?: number;
  /** An id of `CHORDS`; any other is a programming error. */
  readonly chord: string;
  /** 0 is root position, 1 starts from the third, and so on. */
  readonly inversion: number;
  /** In groups of three, unless a pattern is named. */
  readonly broken: boolean;
  /** The tonic of the key whose signature the chord carries. */
  readonly key?: NoteName;
  /** Major where none is named. */
  readonly keyMode?: "minor";
}

/** A scale or a chord, and how it is to be played. */
export interface WhatToPlay {
  readonly subject: ScaleToPlay | ChordToPlay;
  /** An id of `PATTERNS` or a declared cell; straight by default. */
  readonly pattern?: string | Cell;
  readonly variant?: Variant;
  /** Up and down by default. */
  readonly direction?: Direction;
  /** One octave by default, two for octaves and tenths. */
  readonly reach?: Reach;
  readonly instrument?: Pick<Instrument, "low" | "high" | "sounding">;
  /**
   * The day that `leaps` are drawn for, in days since 1970-01-01; that day itself by default. Nothing else asks for it.
   */
  readonly day?: number;
}

/** The notes that come of it, and what is known of them. */
export interface NotesToPlay {
  /** The scale's or chord's own notes over the reach, low to high. */
  readonly up: readonly Note[];
  /** The same in the falling form, high to low. */
  readonly down: readonly Note[];
  /** As played, in order, as written. */
  readonly notes: readonly Note[];
  /** The degree of each of `notes`, 1 being the tonic or root; 0 and below lie under it. */
  readonly degrees: readonly number[];
  /** Semitones of one octave, rising form. */
  readonly steps: readonly number[];
  readonly signature: KeySignature | null;
  /** The lowest and highest of `notes`; null where nothing is left to play. */
  readonly range: Range | null;
  /** Each of `notes` that the instrument does not have, once, in the order of playing. */
  readonly outOfRange: readonly Note[];
  /** What sounds, for each of `notes`. */
  readonly sounding: readonly Note[];
}

/** A scale or chord placed on the staff: degree 1 stands on `tonic`. */
interface PlacedDegrees {
  readonly tonic: Note;
  readonly rising: readonly Degree[];
  readonly falling: readonly Degree[];
  /** The rising ones as the kind has them on any tonic: what thirds and twelfths go by. */
  readonly counted: readonly Degree[];
}

/** The degrees that an exercise covers, both ends included; empty when `last` is below `first`. */
interface Span {
  readonly first: number;
  readonly last: number;
}

/** More degrees than any instrument has; keeps a mistyped `9999 octaves` harmless. */
export const MOST_DEGREES = 128;

function chordOf(id: string): ChordKind {
  const chord = chordById(id);
  if (!chord) throw new RangeError(`no chord has the id ${id}`);
  return chord;
}

function noteAt(placed: PlacedDegrees, degree: number, falling: boolean): Note {
  return noteOnDegree(placed.tonic, falling ? placed.falling : placed.rising, degree);
}

/** The lowest octave in which the note on `degree` is not below `floor`. */
function lowestPlacement(placed: PlacedDegrees, degree: number, floor: Note): Note {
  const short = midi(floor) - midi(noteAt(placed, degree, false));
  return { ...placed.tonic, octave: placed.tonic.octave + Math.ceil(short / 12) };
}

/** The degrees around 1 whose notes, rising and falling, lie from `low` to `high`. */
function degreesWithin(placed: PlacedDegrees, { low, high }: Range): Span {
  const fits = (degree: number): boolean =>
    [true, false].every((falling) => isInRange({ low, high }, noteAt(placed, degree, falling)));
  const around = Array.from({ length: 2 * MOST_DEGREES }, (_, index) => index - MOST_DEGREES);
  const first = around.find(fits);
  return first === undefined ? { first: 1, last: 0 } : { first, last: around.findLast(fits)! };
}

/** The place of the fifth above the octave: a perfect one where there is one, else the last note on that letter. */
function twelfthOf({ counted }: PlacedDegrees): number {
  const perfect = counted.findIndex(({ semitones }) => semitones === 7);
  const place = perfect !== -1 ? perfect : counted.findLastIndex(({ step }) => step <= 4);
  return counted.length + place + 1;
}

/** How many degrees a counted reach has. */
function degreeCount(placed: PlacedDegrees, reach: Reach): number {
  const size = placed.rising.length;
  if (reach.type === "degrees") return Math.min(MOST_DEGREES, Math.max(0, Math.floor(reach.count)));
  if (reach.type === "octaves") return Math.min(MOST_DEGREES, Math.max(0, Math.floor(reach.count * size)) + 1);
  return reach.type === "twelfth" ? twelfthOf(placed) : size + 1;
}

function degreesOfSubject(subject: ScaleToPlay | ChordToPlay): PlacedDegrees {
  if (subject.type === "scale") {
    const { tonic, octave = 4, kind } = subject;
    const [rising, falling] = [degreesOf(kind, "up", tonic), degreesOf(kind, "down", tonic)];
    return { tonic: { ...tonic, octave }, rising, falling, counted: degreesOf(kind, "up") };
  }
  const { degrees } = chordOf(subject.chord);
  return {
    tonic: { ...subject.root, octave: subject.octave ?? 4 },
    rising: degrees,
    falling: degrees,
    counted: degrees,
  };
}

/** With degree 1 on the lowest tonic of the range, or where the player put it. */
function placedFrom(subject: ScaleToPlay | ChordToPlay, placed: PlacedDegrees, floor: Note | undefined): PlacedDegrees {
  if (!floor || subject.octave !== undefined) return placed;
  return { ...placed, tonic: lowestPlacement(placed, startOf(subject), floor) };
}

function rangeBetween(from: Note, to: Note): Range {
  return midi(from) <= midi(to) ? { low: from, high: to } : { low: to, high: from };
}

/** The lowest tonic of the range; where it holds none, the one below it. */
function tonicWithin(placed: PlacedDegrees, range: Range): Note {
  const tonic = lowestPlacement(placed, 1, range.low);
  return isInRange(range, tonic) ? tonic : { ...tonic, octave: tonic.octave - 1 };
}

/** The degree that an exercise starts from: 1, or the bass note of an inversion. */
function startOf(subject: ScaleToPlay | ChordToPlay): number {
  return subject.type === "chord" ? subject.inversion + 1 : 1;
}

function placeOn(input: WhatToPlay, reach: Reach): { placed: PlacedDegrees; span: Span } {
  const { subject, instrument } = input;
  const usual = degreesOfSubject(subject);
  if (reach.type === "between") {
    const range = rangeBetween(reach.from, reach.to);
    const placed = { ...usual, tonic: tonicWithin(usual, range) };
    return { placed, span: degreesWithin(placed, range) };
  }
  const placed = placedFrom(subject, usual, instrument?.low);
  if (reach.type === "full range" && instrument) return { placed, span: degreesWithin(placed, instrument) };
  const first = startOf(subject);
  return { placed, span: { first, last: first + degreeCount(placed, reach) - 1 } };
}

function patternOf({ subject, pattern }: WhatToPlay): Pattern | Cell {
  const wanted = pattern ?? (subject.type === "chord" && subject.broken ? "threes" : "straight");
  if (typeof wanted !== "string") return wanted;
  const known = patternById(wanted);
  if (!known) throw new RangeError(`no pattern has the id ${wanted}`);
  return known;
}

function defaultReach(pattern: Pattern | Cell): Reach {
  return { type: "octaves", count: "form" in pattern && pattern.form.type === "octave" ? 2 : 1 };
}

function run(from: number, to: number): number[] {
  const way = from <= to ? 1 : -1;
  return Array.from({ length: Math.abs(to - from) + 1 }, (_, index) => from + way * index);
}

/** From the tonic to the top, down to the lowest note and back; the notes it turns on are not repeated. */
function straightOverFullRange(start: number, { first, last }: Span): PlayedForm[] {
  return [
    { degrees: run(start, last), falling: false },
    { degrees: run(last, first).slice(1), falling: true },
    { degrees: run(first, start).slice(1), falling: false },
  ];
}

function intervalsOf({ counted }: PlacedDegrees): DegreeIntervals {
  return {
    octave: counted.length,
    third: Math.max(
      1,
      counted.findIndex(({ step }) => step >= 2),
    ),
  };
}

function formsOver(
  pattern: Pattern | Cell,
  input: WhatToPlay,
  reach: Reach,
  span: Span,
  placed: PlacedDegrees,
): PlayedForm[] {
  const direction = input.direction ?? "up and down";
  const isStraight = "id" in pattern && pattern.id === "straight";
  const start = startOf(input.subject);
  const hasStart = span.first <= start && start <= span.last;
  if (isDrawn(pattern)) return [leapsOver(input, span, hasStart ? start : span.first)];
  const upAndDown = direction === "up and down" || direction === "back and forth";
  if (reach.type === "full range" && input.instrument && isStraight && upAndDown && hasStart) {
    return straightOverFullRange(start, span);
  }
  const count = span.last - span.first + 1;
  const shift = span.first - 1;
  return playedForms(pattern, input.variant, count, direction, intervalsOf(placed)).map(({ degrees, falling }) => ({
    degrees: degrees.map((degree) => degree + shift),
    falling,
  }));
}

/**
 * The day's order, in rising notes. It is drawn for the day, the scale or chord and the number of degrees, and not for
 * the instrument: whoever practises the same exercise on the same day may play it together.
 */
function leapsOver({ subject, day = 0 }: WhatToPlay, { first, last }: Span, home: number): PlayedForm {
  const called =
    subject.type === "scale"
      ? `${printName(subject.tonic)} ${subject.kind.id}`
      : `${printName(subject.root)} ${subject.chord} chord, inversion ${subject.inversion}`;
  const T = Math.max(0, last - first + 1);
  const order = leapOrder(T, home - first + 1, `day ${day}, ${called}, ${T} degrees`);
  return { degrees: order.map((degree) => degree + first - 1), falling: false };
}

function outsideOf(notes: readonly Note[], range: Range | undefined): Note[] {
  if (!range) return [];
  const outside: Note[] = [];
  for (const note of notes) {
    if (!isInRange(range, note) && !outside.some((seen) => samePitch(seen, note))) outside.push(note);
  }
  return outside;
}

function rangeOf(notes: readonly Note[]): Range | null {
  if (notes.length === 0) return null;
  const lower = (a: Note, b: Note): Note => (midi(b) < midi(a) ? b : a);
  const higher = (a: Note, b: Note): Note => (midi(b) > midi(a) ? b : a);
  return { low: notes.reduce(lower), high: notes.reduce(higher) };
}

function signatureOf(subject: ScaleToPlay | ChordToPlay): KeySignature | null {
  if (subject.type === "scale") return keySignature(subject.tonic, subject.kind);
  return chordSignature(subject.root, chordOf(subject.chord), subject.key, subject.keyMode);
}

/** Whether a scale has other notes going down than going up, as melodic minor does. */
export function fallsOtherwise(subject: ScaleToPlay | ChordToPlay): boolean {
  if (subject.type !== "scale") return false;
  const steps = (direction: "up" | "down"): string => JSON.stringify(degreesOf(subject.kind, direction));
  return steps("up") !== steps("down");
}

/**
 * What an exercise is, note by note. It starts on the lowest tonic (for an inversion, the lowest such bass note) that
 * the instrument has, or in octave 4; rising forms take the rising notes of a scale, falling forms the falling ones.
 */
export function notesToPlay(input: WhatToPlay): NotesToPlay {
  const pattern = patternOf(input);
  const reach = input.reach ?? defaultReach(pattern);
  const { placed, span } = placeOn(input, reach);
  const forms = formsOver(pattern, input, reach, span, placed);
  const notes = forms.flatMap(({ degrees, falling }) => degrees.map((degree) => noteAt(placed, degree, falling)));
  const covered = span.last < span.first ? [] : run(span.first, span.last);
  const { instrument } = input;
  return {
    up: covered.map((degree) => noteAt(placed, degree, false)),
    down: covered.toReversed().map((degree) => noteAt(placed, degree, true)),
    notes,
    degrees: forms.flatMap(({ degrees }) => [...degrees]),
    steps: stepsBetween(placed.rising),
    signature: signatureOf(input.subject),
    range: rangeOf(notes),
    outOfRange: outsideOf(notes, instrument),
    sounding: instrument ? notes.map((note) => soundingNote(instrument, note)) : notes,
  };
}
