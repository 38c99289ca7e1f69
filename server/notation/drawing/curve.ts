import type { SvgContext } from "./svg-context.ts";

/** In pixels, y downwards. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** A curve bends up, or down. */
export type Way = -1 | 1;

export interface Curve {
  readonly start: Place;
  readonly end: Place;
  readonly way: Way;
}

/** A curve with how far its middle points lie beyond the line from end to end, in pixels. */
export interface BentCurve extends Curve {
  readonly rise: number;
}

/** Between a curve and what lies beneath; less near its ends, which touch what they belong to nearly. */
const CLEAR = 5;
const CLEAR_AT_END = 2;
const NEAR_END = 20;

/** How far a curve rises, at least and at most, and how thick it is in its middle. */
const LEAST_RISE = 7;
const USUAL_RISE = 24;
const MOST_RISE = 90;
const THICKNESS = 2.2;

/** A curve is bent by so much, or its ends move outwards by so much, until it is clear. */
const STEP = 3;
const MOVE_COSTS = 2; // as much as two bends
const MOST_MOVES = 30;

/** The flattest curve that leaves every place between its ends free; those stay as near as they can. */
export function clearCurve(curve: Curve, places: readonly Place[]): BentCurve {
  const { start, end, way } = curve;
  const usual = Math.min(USUAL_RISE, LEAST_RISE + (end.x - start.x) / 14);
  const between = places.filter(({ x }) => x > start.x && x < end.x).sort((a, b) => a.x - b.x);
  const bent = (moves: number, bends: number): BentCurve => {
    const by = way * moves * STEP;
    const moved = { start: { ...start, y: start.y + by }, end: { ...end, y: end.y + by } };
    return { ...moved, way, rise: usual + bends * STEP };
  };
  const mostBends = Math.floor((MOST_RISE - usual) / STEP);
  for (let cost = 0; cost <= mostBends + MOVE_COSTS * MOST_MOVES; cost++) {
    for (let moves = 0; moves <= Math.min(MOST_MOVES, cost / MOVE_COSTS); moves++) {
      const bends = cost - MOVE_COSTS * moves;
      if (bends <= mostBends && isClear(bent(moves, bends), between)) return bent(moves, bends);
    }
  }
  return bent(MOST_MOVES, mostBends);
}

/** In so many parts a curve is looked at. */
const PARTS = 60;

/** @param places from left to right */
function isClear(curve: BentCurve, places: readonly Place[]): boolean {
  const { start, end, way } = curve;
  const points = Array.from({ length: PARTS + 1 }, (_, i) => innerPoint(curve, i / PARTS));
  let at = 0;
  return places.every(({ x, y }) => {
    while (at < PARTS - 1 && points[at + 1]!.x < x) at++;
    const [left, right] = [points[at]!, points[at + 1]!];
    const share = (x - left.x) / (right.x - left.x);
    const there = left.y + (right.y - left.y) * share;
    const room = x - start.x < NEAR_END || end.x - x < NEAR_END ? CLEAR_AT_END : CLEAR;
    return way * (there - y) >= room;
  });
}

/** A point on the side towards the notes: its middle points lie a quarter from either end, a cubic Bézier curve. */
function innerPoint({ start, end, way, rise }: BentCurve, t: number): Place {
  const along = t * (0.75 + 0.75 * t - 0.5 * t * t);
  const bent = way * (rise - THICKNESS) * 3 * t * (1 - t);
  return { x: start.x + (end.x - start.x) * along, y: start.y + (end.y - start.y) * along + bent };
}

/** Fills the curve, thicker in its middle. */
export function fillCurve(context: SvgContext, { start, end, way, rise }: BentCurve): void {
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
