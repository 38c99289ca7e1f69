import { type Attributes, element, escapeXml, figure, idFrom } from "./svg.ts";

/** Where a chart is drawn, and with which colours. */
export type Look = PaletteLook | ClassesLook;

interface Frame {
  /** In pixels, as is the height; what is smaller than a chart needs is made larger. */
  readonly width: number;
  readonly height: number;
  /** Different for each chart on one page, so that ids are. Any text. */
  readonly id: string;
}

/** With colours of its own, for a picture that cannot see the page that it stands in. */
export interface PaletteLook extends Frame {
  readonly kind: "palette";
  readonly palette: ChartPalette;
}

/**
 * With the colours of the page: lines and text in `currentColor`, amounts in `--chart-amount` and the inside of open
 * dots in `--chart-background` where the page sets them. Every part has a class, `chart-…`, that a style sheet may
 * speak to.
 */
export interface ClassesLook extends Frame {
  readonly kind: "classes";
}

/** CSS colours. */
export interface ChartPalette {
  readonly foreground: string;
  readonly background: string;
  readonly amount: string;
}

/** In pixels: the size of a chart in a hover, and in a row of the preview. */
export const HOVER_SIZE = { width: 320, height: 92 } as const;
export const ROW_SIZE = { width: 304, height: 92 } as const;

const PAGE_COLOURS: ChartPalette = {
  foreground: "currentColor",
  background: "var(--chart-background, none)",
  amount: "var(--chart-amount, currentColor)",
};

/** `#1f6feb`, `teal`, `rgb(31 111 235 / 80%)`; nothing that could name a file or an address. */
const COLOUR =
  /^(?:#[0-9a-f]{3,8}|[a-z]+|(?:rgb|hsl|hwb|lab|lch|oklab|oklch)a?\([\d\s.,%/+-]+(?:deg)?[\d\s.,%/+-]*\))$/i;

const LONGEST_COLOUR = 80;

/** The colours to draw with. What is not a plain CSS colour in a palette gives way to the picture's own. */
export function coloursOf(look: Look): ChartPalette {
  if (look.kind === "classes") return PAGE_COLOURS;
  const { foreground, background, amount } = look.palette;
  const plain = (colour: string, otherwise: string) =>
    colour.length <= LONGEST_COLOUR && COLOUR.test(colour.trim()) ? colour.trim() : otherwise;
  return {
    foreground: plain(foreground, "currentColor"),
    background: plain(background, "none"),
    amount: plain(amount, "currentColor"),
  };
}

/** The size in whole pixels, at least what is needed and at most what a screen shows. */
export function sizeOf(look: Look, least: { readonly width: number; readonly height: number }): Size {
  const within = (value: number, from: number) =>
    Number.isFinite(value) ? Math.min(Math.max(Math.round(value), from), MOST_PIXELS) : from;
  return { width: within(look.width, least.width), height: within(look.height, least.height) };
}

const MOST_PIXELS = 4000;

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** In pixels. */
export const FONT_SIZE = 10;
/** About how wide a character is, in parts of the font's size: enough to keep texts apart. */
const CHARACTER_WIDTH = 0.62;

/** About how wide a text is, in pixels. */
export function textWidth(text: string): number {
  return [...text].length * FONT_SIZE * CHARACTER_WIDTH;
}

/** A text that is at most so many pixels wide, cut with an ellipsis where it is longer. */
export function fitted(text: string, width: number): string {
  const most = Math.max(1, Math.floor(width / (FONT_SIZE * CHARACTER_WIDTH)));
  const characters = [...text];
  return characters.length > most ? `${characters.slice(0, most - 1).join("")}…` : text;
}

/** A text of a chart. */
export function label(text: string, attributes: Attributes): string {
  return element("text", attributes, escapeXml(text));
}

/** The line that bars stand on, through the whole width, so many pixels from the top. */
export function baseline(y: number, { width }: Size, { foreground }: ChartPalette): string {
  const d = `M0,${figure(y)}H${width}`;
  return element("path", { class: "chart-grid", d, fill: "none", stroke: foreground, "stroke-opacity": 0.4 });
}

/**
 * The whole picture: an image to a screen reader, with its name and what it shows in words. `kind` is its class.
 */
export function picture(
  look: Look,
  size: Size,
  { kind, title, text }: { readonly kind: string; readonly title: string; readonly text: string },
  ...parts: readonly string[]
): string {
  const id = idFrom(look.id);
  const attributes: Attributes = {
    xmlns: "http://www.w3.org/2000/svg",
    class: `chart ${kind}`,
    role: "img",
    "aria-labelledby": `${id}-title`,
    "aria-describedby": `${id}-desc`,
    width: size.width,
    height: size.height,
    viewBox: `0 0 ${size.width} ${size.height}`,
    "font-size": FONT_SIZE,
    "font-family": look.kind === "palette" ? "system-ui, sans-serif" : undefined,
    fill: coloursOf(look).foreground,
  };
  return element(
    "svg",
    attributes,
    element("title", { id: `${id}-title` }, escapeXml(title)),
    element("desc", { id: `${id}-desc` }, escapeXml(text)),
    ...parts,
  );
}
