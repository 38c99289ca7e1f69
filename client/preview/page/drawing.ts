const SVG = "http://www.w3.org/2000/svg";

/** All that the charts and staves are made of. */
const ELEMENTS = ["svg", "g", "path", "rect", "text", "title", "desc", "defs", "use", "circle", "ellipse"];
const ATTRIBUTES = [
  ...["id", "class", "role", "aria-labelledby", "aria-describedby", "aria-hidden"],
  ...["viewBox", "preserveAspectRatio", "width", "height", "x", "y", "dx", "d", "vector-effect", "text-anchor"],
  ...["cx", "cy", "r", "rx", "ry", "fill", "stroke", "stroke-width", "font-size", "data-note"],
];

/** Figures, shares, names and paths; nothing that could be an address. */
const PLAIN = /^[-\w .,%]*$/;

/** What a value of its own shape may be: a move, and a shape of the same drawing. */
const SHAPED: Readonly<Record<string, RegExp>> = {
  transform: /^translate\([-\d.]+,[-\d.]+\)$/,
  href: /^#[-\w]+$/,
};

/**
 * A chart or a staff built anew from SVG text, of the elements and attributes that those are made of; undefined where
 * it is none. Its colours are those of the style sheet.
 */
export function drawing(text: string): SVGElement | undefined {
  if (text === "") return undefined;
  const root = new DOMParser().parseFromString(text, "image/svg+xml").documentElement;
  return root.namespaceURI === SVG && root.localName === "svg" ? rebuilt(root) : undefined;
}

function rebuilt(source: Element): SVGElement {
  const made = document.createElementNS(SVG, source.localName) as SVGElement;
  for (const { name, value } of source.attributes)
    if (SHAPED[name]?.test(value) || (ATTRIBUTES.includes(name) && PLAIN.test(value))) made.setAttribute(name, value);
  for (const child of source.childNodes) {
    if (child instanceof Text) made.append(child.data);
    else if (child instanceof Element && child.namespaceURI === SVG && ELEMENTS.includes(child.localName))
      made.append(rebuilt(child));
  }
  return made;
}
