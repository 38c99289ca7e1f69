import { Glyph, type StaveNote } from "vexflow/bravura";
import type { Stretch } from "../staff.ts";
import type { SvgContext } from "./svg-context.ts";

/** Between a beam's middle, or a flag's tip, and the figure, in pixels. */
const AWAY = 9;
/** Of the figure, in points, and what it then measures in pixels. */
const POINT = 19;
const HEIGHT = 10;
const WIDTH = 9;

/** The figure of a group, at the middle of its beam on the side of the stems. */
export function drawTupletFigure(
  context: SvgContext,
  { from, to }: Stretch,
  tuplet: number,
  notes: ReadonlyMap<number, StaveNote>,
): void {
  const ends = [notes.get(from)!, notes.get(to)!];
  const up = ends[0]!.getStemDirection() === 1;
  const middleOf = (of: (note: StaveNote) => number): number => (of(ends[0]!) + of(ends[1]!)) / 2;
  const tip = middleOf((note) => note.getStemExtents().topY);
  const x = middleOf((note) => note.getStemX()) - WIDTH / 2;
  const y = up ? tip - AWAY : tip + AWAY + HEIGHT / 2;
  context.within({ class: "staff-tuplet" }, () => Glyph.renderGlyph(context, x, y, POINT, `timeSig${tuplet}`));
}
