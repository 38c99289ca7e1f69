import { type Attributes, element, escapeXml } from "../../charts/svg.ts";
import type { Head } from "./system.ts";

/** Wider than a letter of a word beneath a staff usually is, in pixels: its font is the page's. */
const LETTER = 7.5;

/**
 * A ring about a head with its accidental, and a word beneath the staff: state is never told by colour. The word stays
 * within the drawing.
 *
 * @param right where the drawing ends at most
 */
export function markNote(
  head: Head,
  said: string,
  { baseline, right }: { readonly baseline: number; readonly right: number },
): { readonly markup: string; readonly right: number } {
  const x = head.x + head.width / 2;
  const ring = {
    cx: x - head.before / 2,
    cy: head.y,
    rx: (head.width + head.before) / 2 + 5,
    ry: head.before > 0 ? 13 : 10,
  };
  const line = { fill: "none", stroke: "currentColor", "stroke-width": 1.8 };
  const half = (said.length * LETTER) / 2;
  const middle = Math.max(half, Math.min(x, right - half));
  const beneath = word(said, { x: middle, y: baseline, "text-anchor": "middle" });
  const markup = element("g", { class: "staff-mark" }, element("ellipse", { ...ring, ...line }), beneath);
  return { markup, right: middle + half };
}

/** A word at a staff, in the page's own font. */
export function word(text: string, attributes: Attributes): string {
  const font = { class: "staff-word", "font-size": 13, "font-family": "system-ui, sans-serif" };
  return element("text", { ...font, ...attributes }, escapeXml(text));
}
