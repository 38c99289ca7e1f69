import type { StaveNote } from "vexflow/bravura";
import type { Staff, StaffNote, Stretch } from "../staff.ts";
import { type Curve, clearCurve, fillCurve, type Place, type Way } from "./curve.ts";
import { accidentalWidth } from "./spacing.ts";
import type { SvgContext } from "./svg-context.ts";

/** Between a slur's end and its head or stem. */
const AWAY = 6;

/** How far a slur that goes on reaches beyond the line's last or first head. */
const BEYOND = 16;

/** A head is so wide, and so high from its middle. */
const HEAD = 12;
const HALF_HEAD = 5;

/** From a head's middle to where accidentals end above it and below. Double sharps are no higher than heads. */
const ACCIDENTAL_ENDS: Readonly<Record<number, readonly [above: number, below: number]>> = {
  [-2]: [18, 7],
  [-1]: [18, 7],
  0: [14, 14],
  1: [14, 14],
  2: [5, 5],
};

/** One line of music, whose notes have their places. */
export interface DrawnLine {
  readonly staff: Staff;
  readonly line: Stretch;
  readonly notes: ReadonlyMap<number, StaveNote>;
}

/**
 * Draws what of a slur lies in one line: at the heads where all stems point away from them, else above. Where it goes
 * on in another line it keeps its side, and runs out at the edge clear of all that it has passed.
 */
export function drawSlur(context: SvgContext, slur: Stretch, { staff, line, notes }: DrawnLine): void {
  const from = Math.max(slur.from, line.from);
  const to = Math.min(slur.to, line.to);
  if (from > to || (from === to && slur.from === slur.to)) return;
  const held = Array.from({ length: to - from + 1 }, (_, i) => notes.get(from + i)!);
  const goesOn = slur.from < from || slur.to > to;
  const above = goesOn ? liesHigh(staff, slur) : held.some((note) => note.getStemDirection() === -1);
  const way = above ? -1 : 1;
  const ends = held.map((note) => outermost(note, above));
  const passed = held.flatMap((note, i) => placesOf(note, staff.notes[from + i]!, ends[i]!, way));
  const edge = way * Math.max(...passed.map(({ y }) => way * y)) + way * AWAY;
  const end = (i: number, isEdge: boolean): Place => {
    const x = held[i]!.getNoteHeadBeginX() + HEAD / 2;
    return isEdge ? { x: x + (i === 0 ? -BEYOND : BEYOND), y: edge } : { x, y: ends[i]! + way * AWAY };
  };
  const curve: Curve = { start: end(0, slur.from < from), end: end(held.length - 1, slur.to > to), way };
  const drawn = clearCurve(curve, passed);
  context.within({ class: "staff-slur" }, () => fillCurve(context, drawn));
}

/** Some of its notes have their stems down by themselves: those on the middle line and higher. */
function liesHigh({ notes }: Staff, { from, to }: Stretch): boolean {
  return notes.slice(from, to + 1).some(({ step }) => step >= 4);
}

/** How far a note reaches on one side, with its stem. */
function outermost(note: StaveNote, above: boolean): number {
  const { topY, baseY } = note.getStemExtents();
  const head = note.getYs()[0]!;
  const atHead = above ? head - HALF_HEAD : head + HALF_HEAD;
  const stemIsThere = (note.getStemDirection() === 1) === above && note.hasStem();
  if (!stemIsThere) return atHead;
  return above ? Math.min(topY, baseY, atHead) : Math.max(topY, baseY, atHead);
}

/** The outermost points of a note and of its accidental. */
function placesOf(note: StaveNote, written: StaffNote, end: number, way: Way): readonly Place[] {
  const left = note.getNoteHeadBeginX();
  const head = [left, left + HEAD].map((x) => ({ x, y: end }));
  if (written.accidental === null) return head;
  const [above, below] = ACCIDENTAL_ENDS[written.accidental]!;
  const y = note.getYs()[0]! + (way === -1 ? -above : below);
  const width = accidentalWidth(written);
  return [...head, ...[left - width, left - width / 2, left - 2].map((x) => ({ x, y }))];
}
