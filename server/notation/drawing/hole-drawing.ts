import { element, escapeXml } from "../../charts/svg.ts";
import type { Cover } from "../../music/fingering/fingering.ts";
import type { StaffFingering } from "../staff.ts";

/** The size of a hole, from one to the next, and between the hands; in pixels of a staff whose lines lie ten apart. */
const RADIUS = 3;
const STEP = 8.4;
const HANDS = 4;

/** How high a column of holes is. */
export function columnHeight(): number {
  return 8 * STEP + HANDS + 6;
}

/**
 * The holes of a recorder one below the other as the fingers lie, the thumb's at the left of the first: filled where
 * closed, a ring where open, its lower half filled where half closed or pinched. A closed bell is a bar beneath.
 */
export function holeColumn({ holes, text }: StaffFingering, x: number, top: number): string {
  const places = holes.holes.map((cover, i) => hole(cover, x + 2, top + RADIUS + i * STEP + (i >= 3 ? HANDS : 0)));
  const thumb = hole(holes.thumb, x - 7, top + RADIUS + STEP / 2);
  const bell = holes.bell ? [element("rect", { x: x - 2, y: top + 7 * STEP + HANDS + 1, width: 8, height: 2 })] : [];
  const words = element("title", {}, escapeXml(text));
  return element("g", { class: "staff-holes" }, words, thumb, ...places, ...bell);
}

function hole(cover: Cover, cx: number, cy: number): string {
  const ring = { cx, cy, r: RADIUS, stroke: "currentColor", "stroke-width": 1 };
  if (cover !== "half") return element("circle", { ...ring, fill: cover === "closed" ? "currentColor" : "none" });
  const half = `M${cx - RADIUS} ${cy}A${RADIUS} ${RADIUS} 0 0 0 ${cx + RADIUS} ${cy}Z`;
  return element("circle", { ...ring, fill: "none" }) + element("path", { d: half });
}
