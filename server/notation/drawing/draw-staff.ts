import { element, escapeXml, figure } from "../../charts/svg.ts";
import type { Staff } from "../staff.ts";
import type { StaffDrawing, StaffLook } from "../staff-look.ts";
import { columnHeight, holeColumn } from "./hole-drawing.ts";
import { markNote, word } from "./note-mark.ts";
import { commonWidth, lastWidth, linesOf, type NoteWidth, noteWidths } from "./spacing.ts";
import { Shapes } from "./svg-context.ts";
import { type DrawnOn, drawSystem, headWidth, RIGHT_MARGIN, type System } from "./system.ts";

/** Between two lines of music, and around the whole, in pixels of a staff whose lines lie ten apart. */
const BETWEEN = 16;
const MARGIN = 4;

/** Space for a word beneath a note. */
const WORD = 16;

const XMLNS = "http://www.w3.org/2000/svg";

/**
 * Several staves above each other, line by line, as a claim and what is right; usually one. Staves with as many notes
 * stand with their notes above each other.
 */
export function drawStaves(staves: readonly Staff[], look: StaffLook): StaffDrawing {
  const width = look.width / look.scale;
  const shapes = new Shapes(`${look.id}-shape`);
  const systems = inOrder(staves, width - 2 * MARGIN, shapes);
  let y = MARGIN;
  let right = 0;
  const parts = systems.map(({ staff, system }) => {
    const { top, bottom, markup, ...drawn } = withWhatStandsAround(staff, system, width - 2 * MARGIN);
    right = Math.max(right, drawn.right);
    const place = { class: "staff-system", transform: `translate(${MARGIN},${figure(y - top)})` };
    y += bottom - top + BETWEEN;
    return element("g", place, markup);
  });
  const height = Math.ceil((y - BETWEEN + MARGIN) * look.scale);
  const shown = Math.min(look.width, Math.ceil((right + 2 * MARGIN) * look.scale));
  const svg = element(
    "svg",
    {
      xmlns: XMLNS,
      class: "staff-drawing",
      width: shown,
      height,
      viewBox: `0 0 ${figure(shown / look.scale)} ${figure(height / look.scale)}`,
      fill: "currentColor",
      color: look.colour,
      role: "img",
      "aria-labelledby": `${look.id}-title`,
      "aria-describedby": `${look.id}-desc`,
    },
    element("title", { id: `${look.id}-title` }, escapeXml(staves.map(({ title }) => title).join("; "))),
    element("desc", { id: `${look.id}-desc` }, escapeXml(staves.map(({ text }) => text).join(" "))),
    shapes.markup,
    ...parts,
  );
  return { svg, width: shown, height, lines: systems.length };
}

/** Whether a staff fits in one line of music. */
export function fitsOneLine(staff: Staff, { width, scale }: Pick<StaffLook, "width" | "scale">): boolean {
  const available = width / scale - 2 * MARGIN - headWidth(staff) - RIGHT_MARGIN;
  return linesOf(noteWidths(staff), staff.beams, available).length <= 1;
}

interface StaffSystem {
  readonly staff: Staff;
  readonly system: System;
}

/** The lines of music from top to bottom: the first of each staff, then the second. */
function inOrder(staves: readonly Staff[], width: number, shapes: Shapes): readonly StaffSystem[] {
  const alike = staves.every(({ notes }) => notes.length === staves[0]!.notes.length);
  const natural = staves.map(noteWidths);
  const widths = alike ? natural.map(() => widest(natural)) : natural;
  const start = Math.max(...staves.map(headWidth));
  let firstNumber = 0;
  const systems = staves.map((staff, i) => {
    const on = { shapes, firstNumber };
    firstNumber += staff.notes.length;
    return systemsOf(staff, widths[i]!, width - start - RIGHT_MARGIN, on);
  });
  const most = Math.max(...systems.map(({ length }) => length));
  return Array.from({ length: most }, (_, line) =>
    staves.flatMap((staff, i) => (systems[i]![line] ? [{ staff, system: systems[i]![line] }] : [])),
  ).flat();
}

/** Of several staves with as many notes, the most that each note takes up. */
function widest(natural: readonly (readonly NoteWidth[])[]): readonly NoteWidth[] {
  return natural[0]!.map((_, i) => ({
    advance: Math.max(...natural.map((each) => each[i]!.advance)),
    before: Math.max(...natural.map((each) => each[i]!.before)),
  }));
}

function systemsOf(staff: Staff, widths: readonly NoteWidth[], available: number, on: DrawnOn): readonly System[] {
  const lines = linesOf(widths, staff.beams, available);
  const common = commonWidth(lines, available);
  return lines.map((line, i) => {
    const isLast = i === lines.length - 1;
    return drawSystem(staff, widths, line, { width: isLast ? lastWidth(lines, common) : common, isLast, ...on });
  });
}

/** A line of music with its label, the marks and the fingerings of its notes, and from where to where that reaches. */
function withWhatStandsAround(
  staff: Staff,
  { heads, box, markup }: System,
  right: number,
): { readonly top: number; readonly bottom: number; readonly right: number; readonly markup: string } {
  const marked = [...heads].filter(([index]) => staff.notes[index]!.mark !== undefined);
  const words = marked.length === 0 ? 0 : WORD * Math.min(2, marked.length) + 4;
  const marks = marked.map(([index, head], i) =>
    markNote(head, staff.notes[index]!.mark!, { baseline: box.bottom + WORD * ((i % 2) + 1), right }),
  );
  const fingered = [...heads].filter(([index]) => staff.notes[index]!.fingering);
  const below = box.bottom + words + 6;
  const columns = fingered.map(([index, { x, width }]) =>
    holeColumn(staff.notes[index]!.fingering!, x + width / 2, below),
  );
  const label = staff.label === undefined ? "" : word(staff.label, { x: 0, y: box.top - 5 });
  return {
    top: box.top - (label === "" ? 0 : WORD),
    bottom: fingered.length === 0 ? box.bottom + words : below + columnHeight(),
    right: Math.max(box.right, ...marks.map((mark) => mark.right)),
    markup: [label, markup, ...marks.map((mark) => mark.markup), ...columns].join(""),
  };
}
