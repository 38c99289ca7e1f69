import { noteOnDegree } from "../../music/notes/degree.ts";
import { midi, type Note } from "../../music/notes/note.ts";
import { figureLengths } from "../../music/patterns/figures.ts";
import { MOST_DEGREES, notesToPlay } from "../../music/patterns/notes-to-play.ts";
import type { Cell, DegreeIntervals } from "../../music/patterns/pattern.ts";
import { lengthFormula, patternDegrees } from "../../music/patterns/pattern-forms.ts";
import type { Direction, Reach } from "../../music/patterns/reach.ts";
import { degreesOf } from "../../music/scales/scale.ts";
import { type FurtherForm, furtherForms } from "./carried-forms.ts";
import {
  type ClaimedExercise,
  type ExpectedNote,
  kindsMeant,
  patternNamed,
  type Reading,
  rungsIn,
} from "./claimed-exercise.ts";

/** A way in which a list may be meant, told by its length before its notes are made. */
export interface PossibleReading {
  /** How many notes it has: one or more. */
  readonly length: number;
  readonly patterned: boolean;
  readonly read: () => Reading;
}

type Subject = ClaimedExercise["subject"];

interface Form {
  readonly notes: readonly Note[];
  readonly degrees: readonly number[];
  readonly falling: boolean;
  /** How many notes of the form's first figure are not repeated. */
  readonly skipped?: number;
  /** A falling form takes the rising notes below this degree. */
  readonly risesBelow?: number;
}

/** More octaves than any instrument has. */
const MOST_OCTAVES = 10;

function rungsOf(subject: Subject): DegreeIntervals {
  // Not as spelled on its tonic: where the third lies is the kind's.
  const rising = subject.type === "scale" ? degreesOf(subject.kind, "up") : rungsIn(subject, false);
  const third = rising.findIndex(({ step }) => step >= 2);
  return { octave: rising.length, third: Math.max(1, third) };
}

function startOf(subject: Subject): number {
  return subject.type === "chord" ? subject.inversion + 1 : 1;
}

/** The forms of an exercise over one reach, each made once, when it is asked for. */
class FormsOver {
  private readonly known = new Map<string, Form>();

  constructor(
    private readonly claimed: ClaimedExercise,
    readonly reach: Reach,
  ) {}

  form(pattern: string | Cell, falling: boolean): Form {
    const key = `${pattern === "straight" ? "scale" : "pattern"} ${falling}`;
    const form = this.known.get(key) ?? formOf(this.claimed, pattern, this.reach, falling);
    this.known.set(key, form);
    return form;
  }
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

/** A way to play the scale or chord itself, or the pattern. */
interface Way {
  readonly pattern?: string | Cell;
  /** How many notes it has over so many degrees. */
  readonly length: (degrees: number) => number;
  readonly forms: (over: FormsOver) => Form[];
}

/** The scale or chord itself: up, down, up and down, down and up. */
const STRAIGHT: readonly Way[] = [
  { length: (degrees) => degrees, forms: (over) => [over.form("straight", false)] },
  { length: (degrees) => degrees, forms: (over) => [over.form("straight", true)] },
  ...[false, true].map((falling) => ({
    length: (degrees: number) => 2 * degrees - 1,
    forms: (over: FormsOver) => [over.form("straight", falling), withoutFirst(over.form("straight", !falling))],
  })),
];

/** The forms that a stated direction leaves; back and forth is up and down. */
function inDirection<T>(forms: { up: T; down: T; upDown: T; downUp: T }, direction: Direction | undefined): T[] {
  const { up, down, upDown, downUp } = forms;
  if (direction === undefined) return [up, down, upDown, downUp];
  if (direction === "up") return [up];
  if (direction === "down") return [down];
  return direction === "down and up" ? [downUp] : [upDown];
}

/** Forms by their degrees, 1 being the first note of the scale as it is played straight. */
function placed(claimed: ClaimedExercise, scale: Form, forms: readonly FurtherForm[], raised: boolean): Form[] {
  const { subject } = claimed;
  const [lowest, first] = [scale.notes[0], scale.degrees[0]];
  if (!lowest || first === undefined) return [];
  const name = subject.type === "scale" ? subject.tonic : subject.root;
  const tonic = { ...name, octave: lowest.octave };
  const shift = lowest.octave - noteOnDegree(tonic, rungsIn(subject, false), first).octave;
  const on = { ...tonic, octave: tonic.octave + shift };
  return forms.map(({ degrees: own, falling, skipped }) => {
    const degrees = own.map((degree) => degree + first - 1);
    const risesBelow = raised && falling ? first : undefined;
    const notes = degrees.map((degree) =>
      noteOnDegree(on, rungsIn(subject, fallsAt(degree, falling, risesBelow)), degree),
    );
    return { notes, degrees, falling, skipped, risesBelow };
  });
}

function fallsAt(degree: number, falling: boolean, risesBelow: number | undefined): boolean {
  return falling && !(risesBelow !== undefined && degree < risesBelow);
}

/** The melodic minor's last turn may keep its leading note raised: F D E C# D. */
function mayKeepRaised({ subject }: ClaimedExercise): boolean {
  return subject.type === "scale" && subject.kind.id === "melodic minor";
}

/** The pattern in each direction: plain, turned, carried on to the octave. */
function patternWays(claimed: ClaimedExercise, pattern: string | Cell): readonly Way[] {
  const { variant, direction } = claimed;
  const intervals = rungsOf(claimed.subject);
  const formLength = (degrees: number): number =>
    typeof pattern === "string"
      ? lengthFormula(pattern, degrees, variant, intervals)
      : patternDegrees(pattern, variant, degrees, true, intervals).length;
  const plain = (...ways: readonly boolean[]): Way => ({
    pattern,
    length: (degrees) => ways.length * formLength(degrees),
    forms: (over) => ways.map((falling) => over.form(pattern, falling)),
  });
  const further = (way: Direction): readonly Way[] => {
    const keepings = mayKeepRaised(claimed) && way !== "up" ? [false, true] : [false];
    return furtherForms({ pattern, variant, intervals }, way).flatMap((forms) =>
      keepings.map((raised) => ({
        pattern,
        length: (degrees: number) => forms(degrees).reduce((sum, form) => sum + form.degrees.length, 0),
        forms: (over: FormsOver) => {
          const scale = over.form("straight", false);
          return placed(claimed, scale, forms(scale.notes.length), raised);
        },
      })),
    );
  };
  const ways = { up: plain(false), down: plain(true), upDown: plain(false, true), downUp: plain(true, false) };
  const beyond = {
    up: further("up"),
    down: further("down"),
    upDown: further("up and down"),
    downUp: further("down and up"),
  };
  return [...inDirection(ways, direction), ...inDirection<readonly Way[]>(beyond, direction).flat()];
}

function expectedOf(form: Form, lengths: readonly number[]): ExpectedNote[] {
  const expected: ExpectedNote[] = [];
  let [figure, left] = [0, (lengths[0] ?? 1) - (form.skipped ?? 0)];
  for (const [index, note] of form.notes.entries()) {
    while (left <= 0) left = lengths[++figure] ?? lengths.at(-1) ?? 1;
    const degree = form.degrees[index]!;
    expected.push({ note, degree, falling: fallsAt(degree, form.falling, form.risesBelow), figure });
    left--;
  }
  return expected;
}

function isPlaced(subject: Subject, reach: Reach): boolean {
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

/** What the ways come to over a reach that is known. */
function readingsOver(claimed: ClaimedExercise, ways: readonly Way[], over: FormsOver): PossibleReading[] {
  const { reach } = over;
  const isFullScale = reach.type === "full range" && ways === STRAIGHT;
  const readings = ways.map(({ pattern, forms }) => readingOf(claimed, forms(over), reach, pattern));
  const all = isFullScale ? [...readings, readingOf(claimed, overFullRange(claimed), reach)] : readings;
  return all.map((reading) => ({ length: reading.notes.length, patterned: reading.patterned, read: () => reading }));
}

/** Over one octave, two, and so on: what comes nearest to the list's length, in each way of playing. */
function readingsNear(
  claimed: ClaimedExercise,
  ways: readonly Way[],
  octaves: (count: number) => FormsOver,
  length: number,
): PossibleReading[] {
  const octave = rungsIn(claimed.subject, false).length;
  const near = ways.map((): { readonly count: number; readonly length: number }[] => []);
  for (let count = 1; count <= MOST_OCTAVES; count++) {
    const degrees = Math.min(MOST_DEGREES, count * octave + 1);
    const lengths = ways.map((way) => way.length(degrees));
    for (const [way, own] of lengths.entries()) {
      const last = near[way]!.at(-1);
      if (!last || last.length <= length) near[way] = [...near[way]!, { count, length: own }].slice(-2);
    }
    // Octaves and tenths have nothing over one octave.
    if (count > 1 && lengths.every((own) => own === 0 || own > length)) break;
  }
  return ways.flatMap(({ pattern, forms }, way) =>
    near[way]!.map(({ count, length: own }) => ({
      length: own,
      patterned: pattern !== undefined,
      read: () => readingOf(claimed, forms(octaves(count)), octaves(count).reach, pattern),
    })),
  );
}

/**
 * The ways in which a list of `length` notes may be meant, in the order in which they go first where they fit as well:
 * the scale or chord up, down, up and down, down and up, then the pattern named. Over the span named; without one over
 * whole octaves, as many as come nearest to the length.
 */
export function readings(claimed: ClaimedExercise, length: number): PossibleReading[] {
  const { reach, instrument } = claimed;
  const known = reach?.type === "full range" && !instrument ? undefined : reach;
  return kindsMeant(claimed)
    .flatMap((meant) => readingsOf(meant, known, length))
    .filter((reading) => reading.length > 0)
    .flatMap((reading) => [reading, ...resolved(reading, claimed.subject)]);
}

/** A dominant seventh by the name of its key may go on to the tonic, in any octave. Common practice, no source. */
function resolved(reading: PossibleReading, subject: Subject): PossibleReading[] {
  if (subject.type === "scale" || !subject.key) return [];
  const { letter, alter } = subject.key;
  const read = (): Reading => {
    const own = reading.read();
    const last = own.notes.at(-1)!;
    const level = { letter, alter, octave: last.note.octave };
    const note = midi(level) < midi(last.note) ? { ...level, octave: level.octave + 1 } : level;
    const tonic: ExpectedNote = { ...last, note, figure: last.figure + 1, resolves: true };
    return { ...own, notes: [...own.notes, tonic], closes: false };
  };
  return [{ ...reading, length: reading.length + 1, read }];
}

function readingsOf(claimed: ClaimedExercise, reach: Reach | undefined, length: number): PossibleReading[] {
  const pattern = patternNamed(claimed);
  const groups = pattern === undefined ? [STRAIGHT] : [STRAIGHT, patternWays(claimed, pattern)];
  if (reach) {
    const over = new FormsOver(claimed, reach);
    return groups.flatMap((ways) => readingsOver(claimed, ways, over));
  }
  const known = new Map<number, FormsOver>();
  const octaves = (count: number): FormsOver => {
    const over = known.get(count) ?? new FormsOver(claimed, { type: "octaves", count });
    known.set(count, over);
    return over;
  };
  return groups.flatMap((ways) => readingsNear(claimed, ways, octaves, length));
}
