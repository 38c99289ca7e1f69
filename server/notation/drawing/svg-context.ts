import { RenderContext, type TextMeasure } from "vexflow/bravura";
import { element, figure } from "../../charts/svg.ts";

/** What a drawing covers, in pixels. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A command of a path with its coordinates, x and y in turn. */
type Command = readonly [letter: "M" | "L" | "C" | "Q" | "Z", ...coordinates: readonly number[]];

/** Shorter paths are written where they stand. */
const SHORTEST_SHAPE = 80;

/** The shapes of one drawing, each once, however often it stands there. */
export class Shapes {
  readonly #ids = new Map<string, string>();

  /** @param id begins the ids of the shapes: different for each drawing on a page */
  constructor(private readonly id: string) {}

  /** Markup of a shape at a place. */
  placed(path: string, x: number, y: number): string {
    if (path.length < SHORTEST_SHAPE)
      return element("path", { transform: `translate(${figure(x)},${figure(y)})`, d: path });
    const id = this.#ids.get(path) ?? `${this.id}-${this.#ids.size}`;
    this.#ids.set(path, id);
    return element("use", { href: `#${id}`, x, y });
  }

  /** All shapes, to stand before what places them. */
  get markup(): string {
    return element("defs", {}, ...[...this.#ids].map(([d, id]) => element("path", { id, d })));
  }
}

/** Groups of VexFlow that keep a class of their own. */
const CLASSES: Readonly<Record<string, string>> = {
  notehead: "staff-head",
  stem: "staff-stem",
  beam: "staff-beam",
  clef: "staff-clef",
  keysignature: "staff-signature",
};

/**
 * Where VexFlow draws to: markup of an SVG as text, without a document. Every colour is `currentColor`, so that the
 * page or the picture has the say. A path that is filled begins at its own place, so that the same sign is the same
 * path anywhere. Texts are none of VexFlow's business here.
 */
export class SvgContext extends RenderContext {
  readonly #markup: string[] = [];
  readonly #shapes: Shapes;
  #path: Command[] = [];
  #lineWidth = 1;
  readonly #widths: number[] = [];
  #box: Box | undefined;

  constructor(shapes: Shapes) {
    super();
    this.#shapes = shapes;
  }

  /** All that was drawn. */
  get markup(): string {
    return this.#markup.join("");
  }

  /** What it covers; undefined where nothing was drawn. */
  get box(): Box | undefined {
    return this.#box;
  }

  /** Draws in a group with attributes of one's own. */
  within(attributes: Readonly<Record<string, string | number>>, draw: () => void): void {
    const empty = element("g", attributes);
    this.#markup.push(`${empty.slice(0, -2)}>`);
    draw();
    this.#markup.push("</g>");
  }

  openGroup(name?: string): undefined {
    const own = name === undefined ? undefined : CLASSES[name];
    this.#markup.push(own ? `<g class="${own}">` : "<g>");
  }

  closeGroup(): void {
    // A group that nothing was drawn in is left out.
    if (this.#markup.at(-1)?.startsWith("<g")) this.#markup.pop();
    else this.#markup.push("</g>");
  }

  beginPath(): this {
    this.#path = [];
    return this;
  }

  moveTo(x: number, y: number): this {
    this.#path.push(["M", x, y]);
    return this;
  }

  lineTo(x: number, y: number): this {
    this.#path.push(["L", x, y]);
    return this;
  }

  bezierCurveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): this {
    this.#path.push(["C", x1, y1, x2, y2, x, y]);
    return this;
  }

  quadraticCurveTo(x1: number, y1: number, x: number, y: number): this {
    this.#path.push(["Q", x1, y1, x, y]);
    return this;
  }

  /** Whole circles alone, as dots are; VexFlow draws nothing else of the kind that we ask for. */
  arc(x: number, y: number, radius: number): this {
    const k = 0.5523 * radius;
    return this.moveTo(x + radius, y)
      .bezierCurveTo(x + radius, y + k, x + k, y + radius, x, y + radius)
      .bezierCurveTo(x - k, y + radius, x - radius, y + k, x - radius, y)
      .bezierCurveTo(x - radius, y - k, x - k, y - radius, x, y - radius)
      .bezierCurveTo(x + k, y - radius, x + radius, y - k, x + radius, y);
  }

  closePath(): this {
    this.#path.push(["Z"]);
    return this;
  }

  fill(): this {
    const [first] = this.#path;
    if (!first) return this;
    const [, x = 0, y = 0] = first;
    this.#markup.push(this.#shapes.placed(pathFrom(this.#path, x, y), x, y));
    this.#coverPath(0);
    return this;
  }

  stroke(): this {
    if (this.#path.length === 0) return this;
    const line = { fill: "none", stroke: "currentColor", "stroke-width": this.#lineWidth };
    this.#markup.push(element("path", { ...line, d: pathFrom(this.#path, 0, 0) }));
    this.#coverPath(this.#lineWidth / 2);
    return this;
  }

  rect(x: number, y: number, width: number, height: number): this {
    return this.fillRect(x, y, width, height);
  }

  fillRect(x: number, y: number, width: number, height: number): this {
    this.#markup.push(element("rect", { x, y, width, height }));
    this.#cover({ left: x, top: y, right: x + width, bottom: y + height });
    return this;
  }

  setLineWidth(width: number): this {
    this.#lineWidth = width;
    return this;
  }

  save(): this {
    this.#widths.push(this.#lineWidth);
    return this;
  }

  restore(): this {
    this.#lineWidth = this.#widths.pop() ?? this.#lineWidth;
    return this;
  }

  #coverPath(margin: number): void {
    const numbers = this.#path.map(([, ...coordinates]) => coordinates);
    const xs = numbers.flatMap((each) => each.filter((_, i) => i % 2 === 0));
    const ys = numbers.flatMap((each) => each.filter((_, i) => i % 2 === 1));
    if (xs.length === 0) return;
    this.#cover({
      left: Math.min(...xs) - margin,
      top: Math.min(...ys) - margin,
      right: Math.max(...xs) + margin,
      bottom: Math.max(...ys) + margin,
    });
  }

  #cover({ left, top, right, bottom }: Box): void {
    const box = this.#box ?? { left, top, right, bottom };
    this.#box = {
      left: Math.min(box.left, left),
      top: Math.min(box.top, top),
      right: Math.max(box.right, right),
      bottom: Math.max(box.bottom, bottom),
    };
  }

  // Colours, texts and canvas matters: the page has the say, or nobody asks.
  clear(): void {}
  add(): void {}
  setFillStyle(): this {
    return this;
  }
  setBackgroundFillStyle(): this {
    return this;
  }
  setStrokeStyle(): this {
    return this;
  }
  setShadowColor(): this {
    return this;
  }
  setShadowBlur(): this {
    return this;
  }
  setLineCap(): this {
    return this;
  }
  setLineDash(): this {
    return this;
  }
  scale(): this {
    return this;
  }
  resize(): this {
    return this;
  }
  clearRect(): this {
    return this;
  }
  fillText(): this {
    return this;
  }
  measureText(): TextMeasure {
    return { x: 0, y: 0, width: 0, height: 0 };
  }
  setFont(): this {
    return this;
  }
  getFont(): string {
    return "";
  }
  set fillStyle(_style: string) {}
  get fillStyle(): string {
    return "";
  }
  set strokeStyle(_style: string) {}
  get strokeStyle(): string {
    return "";
  }
}

/** A path as text, counted from a place. */
function pathFrom(path: readonly Command[], x: number, y: number): string {
  return path
    .map(([letter, ...coordinates]) => {
      const counted = coordinates.map((value, i) => figure(value - (i % 2 === 0 ? x : y)));
      return letter + counted.join(" ").replaceAll(" -", "-");
    })
    .join("");
}
