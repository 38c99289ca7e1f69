import { element, escapeXml } from "../../charts/svg.ts";
import { sheetTexts } from "./sheet-texts.ts";

/** A page that can be printed and handed on. */
export interface PrintedPage {
  readonly title: string;
  /** CSS, beside what all such pages have. */
  readonly style: string;
  /** Markup below the title. */
  readonly content: readonly string[];
}

/** One file of HTML, without scripts, links or fonts, which fetches nothing: black on white, in the reader's serif. */
export function printedPage({ title, style, content }: PrintedPage): string {
  const head = element(
    "head",
    {},
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${POLICY}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    element("title", {}, escapeXml(title)),
    element("style", {}, COMMON_STYLE + style),
  );
  const body = element("body", {}, element("main", {}, element("h1", {}, escapeXml(title)), ...content));
  return `<!doctype html>\n${element("html", { lang: sheetTexts.language }, head, body)}\n`;
}

const POLICY = "default-src 'none'; style-src 'unsafe-inline'";

/** One column of 170 mm, which A4 and US Letter have between margins of 20 mm. */
const COMMON_STYLE = `
:root { color-scheme: light; }
body { margin: 0; background: #fff; color: #000; font: 11pt/1.4 serif; }
main { box-sizing: content-box; max-width: 170mm; margin: 0 auto; padding: 20mm 5mm; overflow-wrap: break-word; }
h1, h2 { margin: 0; font-size: 13pt; line-height: 1.3; }
h1 { font-size: 15pt; text-wrap: balance; }
h3 { margin: 0; font-size: 11pt; }
section { margin-top: 7mm; padding-top: 2mm; border-top: 0.25pt solid #000; }
p, ul, figure, pre { margin: 0; }
@media print {
  main { max-width: none; padding: 0; }
  h1, h2, h3 { break-after: avoid; }
  article { break-inside: avoid; }
}
`;

/** The margins of a printed page, with who plays and the page's number at its foot. */
export function pageMargins(name: string, size?: "A4"): string {
  return `@page {
${size ? `  size: ${size};\n` : ""}  margin: 20mm;
  @bottom-left { content: ${cssString(name)}; font: 9pt serif; }
  @bottom-right { content: counter(page); font: 9pt serif; }
}
`;
}

/** Any text as a string of CSS, in which nothing but letters and digits stands as itself. */
export function cssString(text: string): string {
  const escaped = [...text].map((character) =>
    /[A-Za-z0-9]/.test(character) ? character : `\\${character.codePointAt(0)!.toString(16)} `,
  );
  return `"${escaped.join("")}"`;
}
