import type { Drawing } from "../../server/charts/svg.ts";

/** One element of a picture, its text and attributes as they read after their entities are resolved. */
export interface SvgElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly SvgElement[];
  /** What stands in it outside its children. */
  readonly text: string;
}

const NAME = /[A-Za-z][\w-]*/y;
const ATTRIBUTE = /\s+([A-Za-z][\w-]*)="([^"<]*)"/y;
const ENTITIES: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', "#39": "'" };

/**
 * Reads the part of XML 1.0 that the charts are written in: elements, attributes in double quotes, text, five entities.
 * Throws at anything else, at a tag that is not closed in turn, at an attribute given twice, at a character that XML
 * does not allow.
 */
export function readSvg(text: string): SvgElement {
  // XML 1.0, production 2: Char.
  const strange = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/u.exec(text);
  if (strange) throw new Error(`character U+${strange[0].codePointAt(0)!.toString(16)} at ${strange.index}`);
  const { element, end } = readElement(text, 0);
  if (end !== text.length) throw new Error(`something follows the picture at ${end}`);
  return element;
}

function readElement(text: string, start: number): { readonly element: SvgElement; readonly end: number } {
  if (text[start] !== "<") throw new Error(`no tag at ${start}`);
  const name = match(NAME, text, start + 1);
  if (!name) throw new Error(`no name at ${start + 1}`);
  let at = start + 1 + name[0].length;
  const attributes: Record<string, string> = {};
  for (let found = match(ATTRIBUTE, text, at); found; found = match(ATTRIBUTE, text, at)) {
    if (found[1]! in attributes) throw new Error(`${found[1]} given twice at ${at}`);
    attributes[found[1]!] = resolved(found[2]!);
    at += found[0].length;
  }
  if (text.startsWith("/>", at)) return { element: { name: name[0], attributes, children: [], text: "" }, end: at + 2 };
  if (text[at] !== ">") throw new Error(`the tag is not closed at ${at}`);
  return readContent(text, at + 1, name[0], attributes);
}

function readContent(text: string, start: number, name: string, attributes: Readonly<Record<string, string>>) {
  const children: SvgElement[] = [];
  let at = start;
  let own = "";
  while (!text.startsWith("</", at)) {
    const next = text.indexOf("<", at);
    if (next === -1) throw new Error(`${name} is not closed`);
    own += resolved(text.slice(at, next));
    at = next;
    if (text.startsWith("</", at)) break;
    const { element, end } = readElement(text, at);
    children.push(element);
    at = end;
  }
  const closing = `</${name}>`;
  if (!text.startsWith(closing, at)) throw new Error(`${name} is not closed at ${at}`);
  return { element: { name, attributes, children, text: own }, end: at + closing.length };
}

function match(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

function resolved(text: string): string {
  if (/&(?!(?:amp|lt|gt|quot|#39);)|>/.test(text)) throw new Error(`a bare mark in ${text}`);
  return text.replace(/&([^;]+);/g, (_, name: string) => ENTITIES[name]!);
}

/** The picture of a drawing that is expected to be one. */
export function pictureOf(drawing: Drawing): SvgElement {
  if (!drawing.ok) throw new Error(drawing.reason);
  return readSvg(drawing.svg);
}

/** An element and all within it, in the order of the text. */
export function within(element: SvgElement): SvgElement[] {
  return [element, ...element.children.flatMap(within)];
}

/** The elements of a class, wherever they stand. */
export function ofClass(element: SvgElement, name: string): SvgElement[] {
  return within(element).filter(({ attributes }) => attributes["class"]?.split(" ").includes(name));
}

/** A number among the attributes of an element. */
export function number(element: SvgElement, name: string): number {
  return Number(element.attributes[name]);
}

/** The texts that are seen, in order. */
export function textsOf(element: SvgElement): string[] {
  return within(element).flatMap(({ name, text }) => (name === "text" ? [text] : []));
}

/** Where the dots of a path are: `M12,8h0M20,8h0`. */
export function dotsOf(picture: SvgElement, name: string): { readonly x: number; readonly y: number }[] {
  const d = ofClass(picture, name)[0]?.attributes["d"] ?? "";
  return [...d.matchAll(/M([\d.-]+),([\d.-]+)h0/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));
}

/** The corners of each unbroken part of a path of level and upright lines. */
export function cornersOf(picture: SvgElement, name: string): [number, number][][] {
  const d = ofClass(picture, name)[0]?.attributes["d"] ?? "";
  return d
    .split("M")
    .slice(1)
    .map((part) => {
      const [start, ...moves] = part.split(/(?=[HV])/);
      let [x, y] = start!.split(",").map(Number) as [number, number];
      return [
        [x, y],
        ...moves.map((move): [number, number] => {
          if (move.startsWith("H")) x = Number(move.slice(1));
          else y = Number(move.slice(1));
          return [x, y];
        }),
      ];
    });
}
