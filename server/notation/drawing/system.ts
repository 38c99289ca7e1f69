import {
  Accidental,
  Articulation,
  BarlineType,
  Beam,
  Dot,
  Glyph,
  ModifierContext,
  ModifierPosition,
  type RenderContext,
  Stave,
  StaveNote,
  TickContext,
} from "vexflow/bravura";
import { LETTERS, modulo } from "../../music/notes/note.ts";
import { hookSide } from "../beams.ts";
import type { Clef } from "../clef.ts";
import type { NoteSign, Staff, StaffNote, Stretch } from "../staff.ts";
import { tupletsOf } from "../tuplets.ts";
import { drawOutsideSign, standsOutside } from "./outside-sign.ts";
import { drawSlur } from "./slur.ts";
import { accidentalWidth, headPlaces, type Line, type NoteWidth } from "./spacing.ts";
import { type Box, type Shapes, SvgContext } from "./svg-context.ts";
import { drawTupletFigure } from "./tuplet.ts";

/** The lines of a staff lie so far apart. */
export const SPACE = 10;

/** Behind the last note. */
export const RIGHT_MARGIN = 22;

/** VexFlow places everything in treble clef, which the clef that is drawn has no part in: E4 is on the bottom line. */
const TREBLE_BOTTOM = 30;

const DURATIONS: Readonly<Record<Staff["value"]["base"], string>> = {
  1: "w",
  2: "h",
  4: "q",
  8: "8",
  16: "16",
  32: "32",
};
const ACCIDENTALS: Readonly<Record<number, string>> = { [-2]: "bb", [-1]: "b", 0: "n", 1: "#", 2: "##" };
const SIGNS: Readonly<Partial<Record<NoteSign, string>>> = { dot: "a.", line: "a-" };

/** One line of music: what was drawn of it, from its left edge at 0 and its top staff line at 0. */
export interface System {
  readonly markup: string;
  readonly box: Box;
  /** The head of each note, by the note's index in the staff. */
  readonly heads: ReadonlyMap<number, Head>;
}

/** What all lines of a drawing share. */
export interface DrawnOn {
  readonly shapes: Shapes;
  /** The number in the drawing that the staff's first note has. */
  readonly firstNumber: number;
}

/** Where a head stands. */
export interface Head {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  /** How wide its accidental is, with the space behind it; 0 for none. */
  readonly before: number;
}

/** How wide clef and signature are, in pixels. */
export function headWidth(staff: Pick<Staff, "clef" | "fifths">): number {
  return staveOf(staff, 1000, false).getNoteStartX() + NOTE_PADDING;
}

/** What VexFlow adds before every note, by the metrics of its font. */
const NOTE_PADDING = 12;

/** By which VexFlow calls signatures, from seven flats to seven sharps. */
const MAJOR_KEYS = ["Cb", "Gb", "Db", "Ab", "Eb", "Bb", "F", "C", "G", "D", "A", "E", "B", "F#", "C#"] as const;

function staveOf({ clef, fifths }: Pick<Staff, "clef" | "fifths">, width: number, isLast: boolean): Stave {
  const stave = new Stave(0, 0, width, { space_above_staff_ln: 0, left_bar: false, right_bar: isLast });
  stave.addClef(clef.name);
  if (fifths !== 0) stave.addKeySignature(MAJOR_KEYS[fifths + 7]!);
  stave.setBegBarType(BarlineType.NONE);
  stave.setEndBarType(isLast ? BarlineType.END : BarlineType.NONE);
  return stave;
}

/** Draws one line of music, whose notes take up a width. */
export function drawSystem(
  staff: Staff,
  widths: readonly NoteWidth[],
  line: Line,
  { width, isLast, shapes, firstNumber }: DrawnOn & { readonly width: number; readonly isLast: boolean },
): System {
  const context = new SvgContext(shapes);
  const places = headPlaces(widths, line, width);
  const stave = staveOf(staff, headWidth(staff) + width + RIGHT_MARGIN, isLast);
  stave.setContext(context);
  const notes = new Map<number, StaveNote>();
  for (let i = line.from; i <= line.to; i++) notes.set(i, noteOn(stave, staff.notes[i]!));
  const beams = beamsOn(staff, notes, line); // which turns stems, and signs stand by them
  for (const [index, note] of notes) {
    addSigns(note, staff.signs);
    placeAt(note, places[index - line.from]!);
  }
  context.within({ class: "staff-lines" }, () => stave.draw());
  drawOctave(context, staff.clef);
  for (const [index, note] of notes) {
    context.within({ class: "staff-note", "data-note": firstNumber + index }, () => note.setContext(context).draw());
  }
  for (const note of notes.values()) {
    for (const sign of staff.signs.filter(standsOutside)) drawOutsideSign(context, note, stave, sign);
  }
  for (const beam of beams) beam.levelled().setContext(context).draw();
  const groups = tupletsOf(staff).filter(({ from, to }) => from >= line.from && to <= line.to);
  for (const group of groups) drawTupletFigure(context, group, staff.value.tuplet!, notes);
  const heads = new Map([...notes].map(([index, note]) => [index, headOf(note, staff.notes[index]!)]));
  for (const slur of staff.slurs) drawSlur(context, slur, { staff, line, notes });
  return { markup: context.markup, box: context.box!, heads };
}

/** Where the 8 at a clef stands: its left edge and its middle. Its size is that of a small clef's. */
const OCTAVE_PLACES = {
  treble: { "8va": [13, -20], "8vb": [9, 64] },
  bass: { "8va": [6, -9], "8vb": [6, 49] },
} as const;
const OCTAVE_POINT = 23;

/** VexFlow has none for every clef. */
function drawOctave(context: SvgContext, { name, mark }: Clef): void {
  if (!mark || (name !== "treble" && name !== "bass")) return;
  const [x, y] = OCTAVE_PLACES[name][mark];
  context.within({ class: "staff-octave" }, () => Glyph.renderGlyph(context, x, y, OCTAVE_POINT, "timeSig8"));
}

/** The key that VexFlow calls a place on the staff, in treble clef: 0 is `e/4`. */
function keyAt(step: number): string {
  const place = TREBLE_BOTTOM + step;
  return `${LETTERS[modulo(place, 7)]!.toLowerCase()}/${Math.floor(place / 7)}`;
}

function noteOn(stave: Stave, { step, accidental, value: { base, dots } }: StaffNote): StaveNote {
  const note = new StaveNote({ keys: [keyAt(step)], duration: DURATIONS[base], dots, auto_stem: true });
  if (accidental !== null) note.addModifier(new Accidental(ACCIDENTALS[accidental]!), 0);
  if (dots) Dot.buildAndAttach([note], { all: true });
  note.setStave(stave);
  return note;
}

function placeAt(note: StaveNote, x: number): void {
  note.addToModifierContext(new ModifierContext());
  new TickContext().addTickable(note).preFormat().setX(x);
}

/** As VexFlow has them. */
const SIDES = { left: "L", right: "R" } as const;

/** The beams that lie in a line; their stems go where most of the notes want them. */
function beamsOn(
  { beams }: Staff,
  notes: ReadonlyMap<number, StaveNote>,
  { from, to }: Stretch,
): readonly SpacedBeam[] {
  const within = beams.filter((beam) => beam.from >= from && beam.to <= to);
  return within.map((beam) => {
    const beamed = Array.from({ length: beam.to - beam.from + 1 }, (_, i) => notes.get(beam.from + i)!);
    const drawn = new SpacedBeam(beamed, true);
    for (let i = beam.from; i <= beam.to; i++) drawn.setPartialBeamSideAt(i - beam.from, SIDES[hookSide(beam, i)]);
    return drawn;
  });
}

/**
 * Beams with a little more between them than VexFlow's quarter of a space, in which a staff line would close the gap.
 */
class SpacedBeam extends Beam {
  /** Climbs no more than so much from end to end, or long groups would cross the staff. Its notes have their places. */
  levelled(): this {
    const stems = this.getNotes().map((note) => (note as StaveNote).getStemX());
    const steepest = Math.min(this.render_options.max_slope, MOST_CLIMB / (stems.at(-1)! - stems[0]!));
    this.render_options.max_slope = steepest;
    this.render_options.min_slope = -steepest;
    return this;
  }

  protected override drawBeamLines(context: RenderContext): void {
    const first = this.getNotes()[0] as StaveNote;
    const startX = first.getStemX();
    const thickness = this.render_options.beam_width * first.getStemDirection();
    let y = this.getBeamYToDraw();
    for (const duration of ["4", "8", "16", "32"]) {
      for (const { start, end } of this.getBeamLines(duration)) {
        if (end === undefined) continue;
        const [left, right] = [start, end].map((x) => this.getSlopeY(x, startX, y, this.slope)) as [number, number];
        context.beginPath();
        context.moveTo(start, left).lineTo(start, left + thickness);
        context
          .lineTo(end + 1, right + thickness)
          .lineTo(end + 1, right)
          .closePath();
        context.fill();
      }
      y += thickness * BEAM_STEP;
    }
  }
}

/** A space and three quarters. Common practice is one to two, no source. */
const MOST_CLIMB = 1.75 * SPACE;

/** From one beam to the next, in thicknesses. */
const BEAM_STEP = 1.65;

/** Signs stand at the heads, away from the stems; those that stand outside the staff come later. */
function addSigns(note: StaveNote, signs: readonly NoteSign[]): void {
  for (const sign of signs) {
    const below = note.getStemDirection() === 1;
    const code = SIGNS[sign];
    if (code === undefined) continue;
    const articulation = new Articulation(code);
    articulation.setPosition(below ? ModifierPosition.BELOW : ModifierPosition.ABOVE);
    note.addModifier(articulation, 0);
  }
}

function headOf(drawn: StaveNote, note: StaffNote): Head {
  const before = accidentalWidth(note);
  return { x: drawn.getNoteHeadBeginX(), y: drawn.getYs()[0]!, width: drawn.getGlyphWidth(), before };
}
