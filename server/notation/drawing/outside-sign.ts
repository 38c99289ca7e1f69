import { Glyph, type Stave, type StaveNote } from "vexflow/bravura";
import type { NoteSign } from "../staff.ts";
import type { SvgContext } from "./svg-context.ts";

/**
 * Signs as high as the space between two lines, by their glyphs in the music font: they stand outside the staff, where
 * VexFlow puts them between its lines. Common practice, no source.
 */
const GLYPHS: Readonly<Partial<Record<NoteSign, Readonly<Record<"above" | "below", string>>>>> = {
  accent: { above: "articAccentAbove", below: "articAccentBelow" },
  wedge: { above: "articStaccatissimoAbove", below: "articStaccatissimoBelow" },
};

/** In points, and how far from a head's middle, and from the staff, a sign begins at least. */
const POINT = 39;
const FROM_HEAD = 10;
const FROM_STAFF = 5;

export function standsOutside(sign: NoteSign): boolean {
  return GLYPHS[sign] !== undefined;
}

/** At a note that has its place, away from its stem. */
export function drawOutsideSign(context: SvgContext, note: StaveNote, stave: Stave, sign: NoteSign): void {
  const below = note.getStemDirection() === 1;
  const code = GLYPHS[sign]![below ? "below" : "above"];
  const width = new Glyph(code, POINT).getMetrics().width;
  const head = note.getYs()[0]!;
  const y = below
    ? Math.max(head + FROM_HEAD, stave.getYForLine(4) + FROM_STAFF)
    : Math.min(head - FROM_HEAD, stave.getYForLine(0) - FROM_STAFF);
  const x = note.getNoteHeadBeginX() + (note.getGlyphWidth() - width) / 2;
  context.within({ class: "staff-sign" }, () => Glyph.renderGlyph(context, x, y, POINT, code));
}
