import { type ChordKind, chordById } from "../chords/chord.ts";
import { type Instrument, isInRange, type Range, soundingNote } from "../instruments/instrument.ts";
import { midi, type Note, type NoteName, printName, samePitch } from "../notes/note.ts";
import type { Degree, ScaleKind } from "../scales/kind.ts";
import { degreesOf } from "../scales/scale.ts";
import { degreeOnLadder } from "../scales/scale-degrees.ts";
import { chordSignature, type KeySignature, keySignature } from "../scales/signature.ts";
import { stepsBetween } from "../scales/steps.ts";
import { leapOrder } from "./leaps.ts";
import { type Cell, isDrawn, type Pattern, patternById, type Rungs, type Variant } from "./pattern.ts";
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
  /** The major key whose signature the chord carries. */
  readonly key?: NoteName;
}

export interface ExerciseInput {
  readonly subject: ScaleToPlay | ChordToPlay;
  /** An id of `PATTERNS` or a declared cell; straight by default. */
  readonly pattern?: string | Cell;
  readonly variant?: Variant;
  /** Up and down by default. */
  readonly direction?: Direction;
  /** One octave by default, two for octaves and tenths. */
  readonly reach?: Reach;
  readonly instrument?: Pick<Instrument, "low" | "high" | "sounding">;
  /** The day that `leaps` are drawn for, in days since 1970-01-01; that day itself by default. Nothing else asks for it. */
  readonly day?: number;
}

export interface Exercise {
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
interface Ladder {
  readonly tonic: Note;
  readonly rising: readonly Degree[];
  readonly falling: readonly Degree[];
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

function noteAt(ladder: Ladder, degree: number, falling: boolean): Note {
  return degreeOnLadder(ladder.tonic, falling ? ladder.falling : ladder.rising, degree);
}

/** The lowest octave in which the note on `degree` is not below `floor`. */
function lowestPlacement(ladder: Ladder, degree: number, floor: Note): Note {
  const short = midi(floor) - midi(noteAt(ladder, degree, false));
  return { ...ladder.tonic, octave: ladder.tonic.octave + Math.ceil(short / 12) };
}

/** The degrees around 1 whose notes, rising and falling, lie from `low` to `high`. */
function degreesWithin(ladder: Ladder, { low, high }: Range): Span {
  const fits = (degree: number): boolean =>
    [true, false].every((falling) => isInRange({ low, high }, noteAt(ladder, degree, falling)));
  const around = Array.from({ length: 2 * MOST_DEGREES }, (_, index) => index - MOST_DEGREES);
  const first = around.find(fits);
  return first === undefined ? { first: 1, last: 0 } : { first, last: around.findLast(fits)! };
}

/** The place of the fifth above the octave: a perfect one where there is one, else the last note on that letter. */
function twelfthOf({ rising }: Ladder): number {
  const perfect = rising.findIndex(({ semitones }) => semitones === 7);
  const place = perfect !== -1 ? perfect : rising.findLastIndex(({ step }) => step <= 4);
  return rising.length + place + 1;
}

/** How many degrees a counted reach has. */
function degreeCount(ladder: Ladder, reach: Reach): number {
  const size = ladder.rising.length;
  if (reach.type === "degrees") return Math.min(MOST_DEGREES, Math.max(0, Math.floor(reach.count)));
  if (reach.type === "octaves") return Math.min(MOST_DEGREES, Math.max(0, Math.floor(reach.count * size)) + 1);
  return reach.type === "twelfth" ? twelfthOf(ladder) : size + 1;
}

function ladderOf(subject: ScaleToPlay | ChordToPlay): Ladder {
  if (subject.type === "scale") {
    const { tonic, octave = 4, kind } = subject;
    return { tonic: { ...tonic, octave }, rising: degreesOf(kind, "up"), falling: degreesOf(kind, "down") };
  }
  const { degrees } = chordOf(subject.chord);
  return { tonic: { ...subject.root, octave: subject.octave ?? 4 }, rising: degrees, falling: degrees };
}

/** The ladder with degree 1 on the lowest tonic of the range, or where the player put it. */
function placed(subject: ScaleToPlay | ChordToPlay, ladder: Ladder, floor: Note | undefined): Ladder {
  if (!floor || subject.octave !== undefined) return ladder;
  return { ...ladder, tonic: lowestPlacement(ladder, startOf(subject), floor) };
}

function rangeBetween(from: Note, to: Note): Range {
  return midi(from) <= midi(to) ? { low: from, high: to } : { low: to, high: from };
}

/** The lowest tonic of the range; where it holds none, the one below it. */
function tonicWithin(ladder: Ladder, range: Range): Note {
  const tonic = lowestPlacement(ladder, 1, range.low);
  return isInRange(range, tonic) ? tonic : { ...tonic, octave: tonic.octave - 1 };
}

/** The degree that an exercise starts from: 1, or the bass note of an inversion. */
function startOf(subject: ScaleToPlay | ChordToPlay): number {
  return subject.type === "chord" ? subject.inversion + 1 : 1;
}

function placeOn(input: ExerciseInput, reach: Reach): { ladder: Ladder; span: Span } {
  const { subject, instrument } = input;
  const unplaced = ladderOf(subject);
  if (reach.type === "between") {
    const range = rangeBetween(reach.from, reach.to);
    const ladder = { ...unplaced, tonic: tonicWithin(unplaced, range) };
    return { ladder, span: degreesWithin(ladder, range) };
  }
  const ladder = placed(subject, unplaced, instrument?.low);
  if (reach.type === "full range" && instrument) return { ladder, span: degreesWithin(ladder, instrument) };
  const first = startOf(subject);
  return { ladder, span: { first, last: first + degreeCount(ladder, reach) - 1 } };
}

function patternOf({ subject, pattern }: ExerciseInput): Pattern | Cell {
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

function rungsOf({ rising }: Ladder): Rungs {
  return {
    octave: rising.length,
    third: Math.max(
      1,
      rising.findIndex(({ step }) => step >= 2),
    ),
  };
}

function formsOver(
  pattern: Pattern | Cell,
  input: ExerciseInput,
  reach: Reach,
  span: Span,
  ladder: Ladder,
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
  return playedForms(pattern, input.variant, count, direction, rungsOf(ladder)).map(({ degrees, falling }) => ({
    degrees: degrees.map((degree) => degree + shift),
    falling,
  }));
}

/**
 * The day's order, in rising notes. It is drawn for the day, the scale or chord and the number of degrees, and not for the
 * instrument: whoever practises the same exercise on the same day may play it together.
 */
function leapsOver({ subject, day = 0 }: ExerciseInput, { first, last }: Span, home: number): PlayedForm {
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
  return chordSignature(subject.root, chordOf(subject.chord), subject.key);
}

/**
 * What an exercise is, note by note. It starts on the lowest tonic (for an inversion, the lowest such bass note) that the
 * instrument has, or in octave 4; rising forms take the rising notes of a scale, falling forms the falling ones.
 */
export function exercise(input: ExerciseInput): Exercise {
  const pattern = patternOf(input);
  const reach = input.reach ?? defaultReach(pattern);
  const { ladder, span } = placeOn(input, reach);
  const forms = formsOver(pattern, input, reach, span, ladder);
  const notes = forms.flatMap(({ degrees, falling }) => degrees.map((degree) => noteAt(ladder, degree, falling)));
  const covered = span.last < span.first ? [] : run(span.first, span.last);
  const { instrument } = input;
  return {
    up: covered.map((degree) => noteAt(ladder, degree, false)),
    down: covered.toReversed().map((degree) => noteAt(ladder, degree, true)),
    notes,
    degrees: forms.flatMap(({ degrees }) => [...degrees]),
    steps: stepsBetween(ladder.rising),
    signature: signatureOf(input.subject),
    range: rangeOf(notes),
    outOfRange: outsideOf(notes, instrument),
    sounding: instrument ? notes.map((note) => soundingNote(instrument, note)) : notes,
  };
}
