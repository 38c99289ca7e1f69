import type { StaveNote } from "vexflow/bravura";
import type { Stretch } from "../staff.ts";
import type { SvgContext } from "./svg-context.ts";

/** A place that a slur must leave free. */
interface Obstacle {
  readonly x: number;
  readonly y: number;
}

/** Between a slur's end and its head or stem, and between its curve and what lies beneath. */
const AWAY = 6;
const CLEAR = 5;

/** How far a slur rises, at least and at most, and how thick it is in its middle. */
const LEAST_RISE = 7;
const MOST_RISE = 60;
const THICKNESS = 2.2;

/** How far a slur that goes on reaches beyond the line's last or first head. */
const BEYOND = 16;

/**
 * Draws what of a slur lies in one line: at the heads where all stems point away from them, else above. Where it goes
 * on in another line it runs out at the edge.
 */
export function drawSlur(
  context: SvgContext,
  slur: Stretch,
  line: Stretch,
  notes: ReadonlyMap<number, StaveNote>,
): void {
  const from = Math.max(slur.from, line.from);
  const to = Math.min(slur.to, line.to);
  if (from > to || (from === to && slur.from === slur.to)) return;
  const held = Array.from({ length: to - from + 1 }, (_, i) => notes.get(from + i)!);
  const above = held.some((note) => note.getStemDirection() === -1);
  const way = above ? -1 : 1;
  const obstacles = held.map((note) => obstacleOf(note, above));
  const first = obstacles[0]!;
  const last = obstacles.at(-1)!;
  const start = { x: slur.from < from ? first.x - BEYOND : first.x, y: first.y + way * AWAY };
  const end = { x: slur.to > to ? last.x + BEYOND : last.x, y: last.y + way * AWAY };
  const inner = obstacles.slice(1, -1);
  context.within({ class: "staff-slur" }, () => drawCurve(context, start, end, way, riseOver(start, end, inner, way)));
}

/** The outermost point of a note on one side, in the middle of its head. */
function obstacleOf(note: StaveNote, above: boolean): Obstacle {
  const { topY, baseY } = note.getStemExtents();
  const head = note.getYs()[0]!;
  const stem = above ? Math.min(topY, baseY, head - 5) : Math.max(topY, baseY, head + 5);
  const atHead = above ? head - 5 : head + 5;
  const stemIsThere = (note.getStemDirection() === 1) === above && note.hasStem();
  return { x: note.getNoteHeadBeginX() + 6, y: stemIsThere ? stem : atHead };
}

/** The least rise with which the curve leaves every place free. */
function riseOver(start: Obstacle, end: Obstacle, inner: readonly Obstacle[], way: 1 | -1): number {
  const width = end.x - start.x;
  const usual = Math.min(24, LEAST_RISE + width / 14);
  const needed = inner.map(({ x, y }) => {
    const t = (x - start.x) / width;
    const chord = start.y + (end.y - start.y) * t;
    // What there is of the rise at t, with both middle points of the curve as high as each other.
    const share = Math.max(0.12, 3 * t * (1 - t));
    return (way * (y - chord) + CLEAR) / share;
  });
  return Math.min(MOST_RISE, Math.max(usual, ...needed));
}

function drawCurve(context: SvgContext, start: Obstacle, end: Obstacle, way: 1 | -1, rise: number): void {
  const quarter = (end.x - start.x) / 4;
  const slope = (end.y - start.y) / 4;
  const outer = way * rise;
  const inside = way * (rise - THICKNESS);
  context.beginPath();
  context.moveTo(start.x, start.y);
  context.bezierCurveTo(
    start.x + quarter,
    start.y + slope + outer,
    end.x - quarter,
    end.y - slope + outer,
    end.x,
    end.y,
  );
  context.bezierCurveTo(
    end.x - quarter,
    end.y - slope + inside,
    start.x + quarter,
    start.y + slope + inside,
    start.x,
    start.y,
  );
  context.closePath();
  context.fill();
}
