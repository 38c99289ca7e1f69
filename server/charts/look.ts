import { type Attributes, element, escapeXml, idFrom } from "./svg.ts";

/** Where a chart is drawn, and with which colours. */
export type Look = PageLook | PictureLook;

/**
 * In a page, which has the colours: every mark has a class, `chart-…`, and the style sheet speaks to it. It is as wide
 * as its place; texts keep their size.
 */
export interface PageLook {
  readonly kind: "page";
  /** Different for each chart on one page, so that ids are. Any text. */
  readonly id: string;
}

/** A picture of one width, with colours of its own, as it cannot see the page that it stands in. */
export interface PictureLook {
  readonly kind: "picture";
  readonly id: string;
  readonly palette: ChartPalette;
}

/** CSS colours. */
export interface ChartPalette {
  readonly foreground: string;
  readonly background: string;
  readonly amount: string;
}

/** What a mark of a chart is, which is its class behind `chart-`. */
export type Ink =
  | "month"
  | "best"
  | "join"
  | "band"
  | "reached"
  | "other"
  | "inside"
  | "tick"
  | "aim"
  | "grid"
  | "pause";

/** `#1f6feb`, `teal`, `rgb(31 111 235 / 80%)`; nothing that could name a file or an address. */
const COLOUR =
  /^(?:#[0-9a-f]{3,8}|[a-z]+|(?:rgb|hsl|hwb|lab|lch|oklab|oklch)a?\([\d\s.,%/+-]+(?:deg)?[\d\s.,%/+-]*\))$/i;

const LONGEST_COLOUR = 80;

/** What is not a plain CSS colour in a palette gives way to the picture's own. */
function coloursOf({ foreground, background, amount }: ChartPalette): ChartPalette {
  const plain = (colour: string, otherwise: string) =>
    colour.length <= LONGEST_COLOUR && COLOUR.test(colour.trim()) ? colour.trim() : otherwise;
  return {
    foreground: plain(foreground, "currentColor"),
    background: plain(background, "none"),
    amount: plain(amount, "currentColor"),
  };
}

/** How a mark is painted: by its class in a page, by colours of its own in a picture. */
export function paint(look: Look, ink: Ink): Attributes {
  const named = { class: `chart-${ink}` };
  return look.kind === "page" ? named : { ...named, ...PAINTS[ink](coloursOf(look.palette)) };
}

/** The diameter of a dot where there is room, in pixels, and of the inside of an open one. */
const DOT = 4.5;
const INSIDE = 2.5;

const PAINTS: Readonly<Record<Ink, (colours: ChartPalette) => Attributes>> = {
  month: ({ foreground }) => ({ ...lineOf(foreground, 1), "stroke-opacity": 0.16, "shape-rendering": "crispEdges" }),
  grid: ({ foreground }) => ({ ...lineOf(foreground, 1), "stroke-opacity": 0.16, "shape-rendering": "crispEdges" }),
  best: ({ amount }) => lineOf(amount, 1.5),
  join: ({ amount }) => ({ ...lineOf(amount, 1), "stroke-opacity": 0.6 }),
  band: ({ amount }) => ({ fill: amount, "fill-opacity": 0.25 }),
  reached: ({ foreground }) => dotOf(foreground, DOT),
  other: ({ foreground }) => dotOf(foreground, DOT),
  inside: ({ background }) => dotOf(background, INSIDE),
  tick: ({ foreground }) => ({ ...lineOf(foreground, 1), "stroke-opacity": 0.7 }),
  aim: ({ foreground }) => lineOf(foreground, 2),
  pause: ({ foreground }) => ({ ...lineOf(foreground, 1), "stroke-opacity": 0.7 }),
};

function lineOf(stroke: string, width: number): Attributes {
  return { fill: "none", stroke, "stroke-width": width };
}

function dotOf(stroke: string, width: number): Attributes {
  return { ...lineOf(stroke, width), "stroke-linecap": "round" };
}

/** How wide the space is that marks are placed in, whatever its width in pixels. */
export const WIDE = 1000;

/**
 * A path in a space `WIDE` across and in pixels downwards. What is drawn across is stretched; the width of its lines is
 * not.
 */
export function mark(look: Look, ink: Ink, d: string): string {
  return d === "" ? "" : element("path", { ...paint(look, ink), d, "vector-effect": "non-scaling-stroke" });
}

/** The space that `mark` draws in, as wide as what it stands in. */
export function stretched(height: number, ...marks: readonly string[]): string {
  const box = {
    width: "100%",
    height,
    viewBox: `0 0 ${WIDE} ${height}`,
    preserveAspectRatio: "none",
    overflow: "visible",
    "aria-hidden": "true",
  };
  return element("svg", { class: "chart-plot", ...box }, ...marks);
}

/** A dot at each place: a line without length, whose round ends make the dot. */
export function dots(places: readonly { readonly x: number; readonly y: number }[]): string {
  return places.map(({ x, y }) => `M${tenth(x)},${tenth(y)}h0`).join("");
}

/** To one decimal, as it stands in a path. */
export function tenth(value: number): string {
  return String(Math.round(value * 10) / 10);
}

/** A place in the stretched space as a share of the width, for what is not stretched. */
export function share(x: number): string {
  return `${tenth(x / (WIDE / 100))}%`;
}

/** In pixels, in a picture. A page says so itself. */
export const FONT_SIZE = 11;
/** About how wide a character is, in parts of the font's size: enough to keep texts apart. */
const CHARACTER_WIDTH = 0.6;

/** About how wide a text is, in pixels. */
export function textWidth(text: string): number {
  return [...text].length * FONT_SIZE * CHARACTER_WIDTH;
}

/** A text of a chart. */
export function label(text: string, attributes: Attributes): string {
  return element("text", { class: "chart-label", ...attributes }, escapeXml(text));
}

/** A chart that a screen reader is told of: its name, and what it shows in words. */
export interface Told {
  readonly title: string;
  readonly text: string;
}

/** `parts` with the name and the words of the whole, and the attributes that tie them to it. */
export function told(look: Look, { title, text }: Told): { readonly attributes: Attributes; readonly words: string } {
  const id = idFrom(look.id);
  return {
    attributes: { role: "img", "aria-labelledby": `${id}-title`, "aria-describedby": `${id}-desc` },
    words:
      element("title", { id: `${id}-title` }, escapeXml(title)) +
      element("desc", { id: `${id}-desc` }, escapeXml(text)),
  };
}

const XMLNS = "http://www.w3.org/2000/svg";

/**
 * A chart that stands in a page. Its left edge is that of what it shows: numbers hang out to the left, and it is the
 * page that leaves room for them.
 */
export function inPage(kind: string, height: number, attributes: Attributes, ...parts: readonly string[]): string {
  return element("svg", { xmlns: XMLNS, class: `chart ${kind}`, width: "100%", height, ...attributes }, ...parts);
}

/** In pixels: what numbers on the left, and half a word on the right, take of a picture. */
const LEFT = 32;
const RIGHT = 6;

/** The same as a picture of its own, with room for the numbers. */
export function asPicture(
  { palette }: PictureLook,
  { width, height }: { readonly width: number; readonly height: number },
  attributes: Attributes,
  words: string,
  ...parts: readonly string[]
): string {
  const { foreground } = coloursOf(palette);
  const plot = { x: LEFT, width: width - LEFT - RIGHT, height, overflow: "visible", "aria-hidden": "true" };
  const font = { "font-size": FONT_SIZE, "font-family": "system-ui, sans-serif", fill: foreground };
  const box = { width, height, viewBox: `0 0 ${width} ${height}` };
  const whole = { xmlns: XMLNS, class: "chart", ...box, ...font, ...attributes };
  return element("svg", whole, words, element("svg", plot, ...parts));
}
