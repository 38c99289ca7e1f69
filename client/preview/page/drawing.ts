const SVG = "http://www.w3.org/2000/svg";

/** All that the charts are made of. */
const ELEMENTS = ["svg", "g", "path", "circle", "rect", "text", "title", "desc", "defs", "pattern"];
const PAINTS = ["fill", "stroke"];
const ATTRIBUTES = [
  ...["id", "class", "role", "aria-labelledby", "aria-describedby", "viewBox", "width", "height", "transform"],
  ...["x", "y", "cx", "cy", "r", "d", "patternUnits", "font-size", "text-anchor"],
  ...["fill-opacity", "stroke-opacity", "stroke-width", "stroke-linecap", "stroke-linejoin"],
];

/** The page's own colours, or a pattern of the same chart. */
const PAINT = /^(?:none|currentColor|var\(--chart-[a-z]+, (?:none|currentColor)\)|url\(#chart-[\w-]+\))$/;
/** Figures, names and paths; nothing that could be an address. */
const PLAIN = /^[-\w .,()]*$/;

/**
 * A chart built anew from SVG text, of the elements and attributes that charts are made of; undefined where it is none.
 */
export function drawing(text: string): SVGElement | undefined {
  const root = new DOMParser().parseFromString(text, "image/svg+xml").documentElement;
  return root.namespaceURI === SVG && root.localName === "svg" ? rebuilt(root) : undefined;
}

function rebuilt(source: Element): SVGElement {
  const made = document.createElementNS(SVG, source.localName) as SVGElement;
  for (const { name, value } of source.attributes) {
    const isSafe = PAINTS.includes(name) ? PAINT.test(value) : ATTRIBUTES.includes(name) && PLAIN.test(value);
    if (isSafe) made.setAttribute(name, value);
  }
  for (const child of source.childNodes) {
    if (child instanceof Text) made.append(child.data);
    else if (child instanceof Element && child.namespaceURI === SVG && ELEMENTS.includes(child.localName))
      made.append(rebuilt(child));
  }
  return made;
}
