import { type Attributes, element, escapeXml } from "../../charts/svg.ts";
import type { Head } from "./system.ts";

/** A ring about a head with its accidental, and a word beneath the staff: state is never told by colour. */
export function markNote(head: Head, said: string, baseline: number): string {
  const x = head.x + head.width / 2;
  const ring = {
    cx: x - head.before / 2,
    cy: head.y,
    rx: (head.width + head.before) / 2 + 5,
    ry: head.before > 0 ? 13 : 10,
  };
  const line = { fill: "none", stroke: "currentColor", "stroke-width": 1.8 };
  const beneath = word(said, { x, y: baseline, "text-anchor": "middle" });
  return element("g", { class: "staff-mark" }, element("ellipse", { ...ring, ...line }), beneath);
}

/** A word at a staff, in the page's own font. */
export function word(text: string, attributes: Attributes): string {
  const font = { class: "staff-word", "font-size": 13, "font-family": "system-ui, sans-serif" };
  return element("text", { ...font, ...attributes }, escapeXml(text));
}
