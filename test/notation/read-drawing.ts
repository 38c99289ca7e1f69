// Reads music back from a drawing by its geometry and the outlines of its signs alone: it knows nothing of the data that
// the drawing was made from. Which outline is which sign is taken from the music font's own table.
import { Font } from "vexflow/font/bravura";
import { LETTERS, type Letter } from "../../server/music/notes/note.ts";

interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: Element[];
}

/** One element with all that is in it, of an SVG as our drawings write it; texts are passed over. */
export function parseSvg(svg: string): Element {
  const root: Element = { name: "", attributes: {}, children: [] };
  const open = [root];
  for (const [, closing, name, attributes, empty] of svg.matchAll(/<(\/?)([a-z]+)((?: [\w:-]+="[^"]*")*)(\/?)>/g)) {
    if (closing) {
      if (open.pop()?.name !== name) throw new Error(`</${name}> closes nothing`);
      continue;
    }
    const pairs = [...attributes!.matchAll(/ ([\w:-]+)="([^"]*)"/g)].map(([, key, value]) => [key!, value!] as const);
    const element: Element = { name: name!, attributes: Object.fromEntries(pairs), children: [] };
    open.at(-1)!.children.push(element);
    if (!empty) open.push(element);
  }
  if (open.length !== 1) throw new Error("an element is not closed");
  return root.children[0]!;
}

export function* elementsIn(element: Element): Generator<Element> {
  yield element;
  for (const child of element.children) yield* elementsIn(child);
}

export function withClass(element: Element, name: string): Element[] {
  return [...elementsIn(element)].filter(({ attributes }) => attributes["class"] === name);
}

/** A sign of the font at a place: its origin, which is on the line or space that it speaks of. */
export interface Sign {
  readonly sign: string;
  readonly x: number;
  readonly y: number;
}

const SIGNS = [
  "gClef",
  "fClef",
  "cClef",
  "timeSig8",
  "accidentalSharp",
  "accidentalFlat",
  "accidentalNatural",
  "accidentalDoubleSharp",
  "accidentalDoubleFlat",
  "noteheadBlack",
  "noteheadHalf",
  "noteheadWhole",
];

interface Outline {
  readonly sign: string;
  readonly start: readonly [x: number, y: number];
  /** Every further point as counted from the first, in font units and y upwards, in the order of an SVG's path. */
  readonly points: readonly number[];
}

const OUTLINES: readonly Outline[] = SIGNS.flatMap((sign) => {
  const glyph = (Font.data.glyphs as Readonly<Record<string, { readonly o?: string }>>)[sign];
  if (!glyph?.o) return [];
  const commands = [...glyph.o.matchAll(/([mlbq])((?: -?\d+)+)/g)].map(([, letter, numbers]) => {
    const [x, y, ...controls] = numbers!.trim().split(" ").map(Number);
    // The table has the end of a curve first, a path last.
    return letter === "m" || letter === "l" ? [x!, y!] : [...controls, x!, y!];
  });
  const start = [commands[0]![0]!, commands[0]![1]!] as const;
  return [
    {
      sign,
      start,
      points: commands
        .slice(1)
        .flat()
        .map((value, i) => value - start[i % 2]!),
    },
  ];
});

/** The sign that a path is, by its outline at whatever size. */
function signOf(path: string): { readonly outline: Outline; readonly size: number } | undefined {
  const numbers = (path.match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number).slice(2);
  for (const outline of OUTLINES) {
    if (outline.points.length !== numbers.length) continue;
    const widest = outline.points.reduce(
      (most, value, i) => (Math.abs(value) > Math.abs(outline.points[most]!) ? i : most),
      0,
    );
    const size = (numbers[widest]! * (widest % 2 === 0 ? 1 : -1)) / outline.points[widest]!;
    const fits = outline.points.every(
      (value, i) => Math.abs(numbers[i]! - value * size * (i % 2 === 0 ? 1 : -1)) < 0.06,
    );
    if (size > 0 && fits) return { outline, size };
  }
  return undefined;
}

export class Drawing {
  readonly #signs = new Map<string, ReturnType<typeof signOf>>();
  readonly root: Element;
  readonly #shapes: ReadonlyMap<string, string>;

  constructor(svg: string) {
    this.root = parseSvg(svg);
    const paths = [...elementsIn(this.root)].filter(({ attributes }) => attributes["id"] && attributes["d"]);
    this.#shapes = new Map(paths.map(({ attributes }) => [`#${attributes["id"]}`, attributes["d"]!]));
  }

  get systems(): readonly Element[] {
    return withClass(this.root, "staff-system");
  }

  #signOf(path: string): ReturnType<typeof signOf> {
    if (!this.#signs.has(path)) this.#signs.set(path, signOf(path));
    return this.#signs.get(path);
  }

  /** The signs of the font in an element, in the order in which they were drawn. */
  signsIn(element: Element): readonly Sign[] {
    return [...elementsIn(element)].flatMap(({ name, attributes }) => {
      const at = name === "use" ? [attributes["x"], attributes["y"]].map(Number) : placeOf(attributes["transform"]);
      const path = name === "use" ? this.#shapes.get(attributes["href"]!) : attributes["d"];
      const found = path && at ? this.#signOf(path) : undefined;
      if (!found || !at) return [];
      const [startX, startY] = found.outline.start;
      return [{ sign: found.outline.sign, x: at[0]! - startX * found.size, y: at[1]! + startY * found.size }];
    });
  }
}

function placeOf(transform: string | undefined): number[] | undefined {
  return /^translate\((-?[\d.]+),(-?[\d.]+)\)$/
    .exec(transform ?? "")
    ?.slice(1)
    .map(Number);
}

/** The straight lines in an element, as `M x yL x y`. */
export function linesIn(
  element: Element,
): readonly { readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number }[] {
  return [...elementsIn(element)].flatMap(({ attributes }) => {
    const numbers = /^M(-?[\d.]+) ?(-?[\d.]+)L(-?[\d.]+) ?(-?[\d.]+)$/
      .exec(attributes["d"] ?? "")
      ?.slice(1)
      .map(Number);
    if (!numbers) return [];
    const [x1, y1, x2, y2] = numbers as [number, number, number, number];
    return [{ x1, y1, x2, y2 }];
  });
}

/** A note as its place, the clef, the signature and its accidental say. */
export interface ReadNote {
  readonly index: number;
  /** Without an accidental of its own, null. */
  readonly accidental: number | null;
  readonly letter: Letter;
  readonly octave: number;
  readonly head: Sign;
  readonly accidentalSign?: Sign;
  readonly element: Element;
}

export interface ReadSystem {
  readonly clef: string;
  /** Octaves that the figure at the clef adds. */
  readonly octaves: number;
  readonly signature: ReadonlyMap<Letter, number>;
  readonly signatureSteps: readonly number[];
  readonly notes: readonly ReadNote[];
  readonly top: number;
  readonly right: number;
}

const ALTER: Readonly<Record<string, number>> = {
  accidentalSharp: 1,
  accidentalFlat: -1,
  accidentalNatural: 0,
  accidentalDoubleSharp: 2,
  accidentalDoubleFlat: -2,
};

/** The letters and octaves on the lines that clefs name, as places on the staff: G4, F3, C4, counted from C0. */
const NAMED: Readonly<Record<string, number>> = { gClef: 32, fClef: 24, cClef: 28 };

export function readSystem(drawing: Drawing, system: Element): ReadSystem {
  const lines = linesIn(withClass(system, "staff-lines")[0]!).filter(({ y1, y2 }) => y1 === y2);
  const [top, ...others] = lines.map(({ y1 }) => y1).sort((a, b) => a - b) as [number, ...number[]];
  if (others.length !== 4) throw new Error(`a staff has five lines, not ${lines.length}`);
  const half = (others[3]! - top) / 8;
  const clefs = withClass(system, "staff-clef");
  const [clef] = drawing.signsIn(clefs[0]!);
  const figures = withClass(system, "staff-octave").flatMap((each) => drawing.signsIn(each));
  const placeAt = (y: number): number => {
    const place = NAMED[clef!.sign]! + (clef!.y - y) / half;
    if (Math.abs(place - Math.round(place)) > 0.05) throw new Error(`between a line and a space: ${place}`);
    return Math.round(place);
  };
  const signature = withClass(system, "staff-signature").flatMap((each) => drawing.signsIn(each));
  return {
    clef: clef!.sign + Math.round((top + 8 * half - clef!.y) / half / 2 + 1),
    octaves: octavesOf(figures, clef!.y, others),
    signature: new Map(signature.map(({ sign, y }) => [LETTERS[placeAt(y) % 7]!, ALTER[sign]!])),
    signatureSteps: signature.map(({ y }) => placeAt(y)),
    notes: withClass(system, "staff-note").map((element) => readNote(drawing, element, placeAt)),
    top,
    right: Math.max(...lines.map(({ x2 }) => x2)),
  };
}

function octavesOf(figures: readonly Sign[], y: number, lines: readonly number[]): number {
  if (figures.length === 0) return 0;
  return figures[0]!.y < Math.min(y, lines[1]!) ? 1 : -1;
}

function readNote(drawing: Drawing, element: Element, placeAt: (y: number) => number): ReadNote {
  const signs = drawing.signsIn(element);
  const [head, ...heads] = signs.filter(({ sign }) => sign.startsWith("notehead"));
  const [accidental, ...accidentals] = signs.filter(({ sign }) => sign in ALTER);
  if (!head || heads.length > 0 || accidentals.length > 0)
    throw new Error("a note has one head, and one accidental at most");
  const place = placeAt(head.y);
  if (accidental && placeAt(accidental.y) !== place) throw new Error("an accidental stands beside its head");
  return {
    index: Number(element.attributes["data-note"]),
    accidental: accidental ? ALTER[accidental.sign]! : null,
    letter: LETTERS[place % 7]!,
    octave: Math.floor(place / 7),
    head,
    ...(accidental && { accidentalSign: accidental }),
    element,
  };
}
