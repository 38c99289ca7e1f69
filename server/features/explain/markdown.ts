/**
 * Characters that are not shown as themselves: controls, line and paragraph separators, a byte order mark, lone
 * surrogates, and those that turn the direction of what follows (Unicode Bidi_Control), which could make a text read as
 * something else.
 */
const UNSEEN = /[\p{Cc}\u2028\u2029\uFEFF\p{Cs}\p{Bidi_Control}]+/gu;

/** What Markdown or HTML would take as a mark anywhere in a line. */
const MARKS = /[\\`*_[\]~$|!@]/g;
/** What opens a heading, a list, a rule or a quotation at the start of a line. */
const OPENING = /^(?:[#+=-]|\d+(?=[.)]))/;
/** What GitHub's Markdown makes a link of by itself. */
const BARE_LINK = /:(?=\/)|(?<=www)\.|(?<=mailto|xmpp):/gi;

/** Text from a journal on one line, without what is not shown as itself. */
export function visible(text: string): string {
  return text.replace(UNSEEN, " ").trim();
}

/** Text from a journal as Markdown that shows it and nothing else: one line, no mark, link, picture or HTML. */
export function escapeMarkdown(text: string): string {
  return visible(text)
    .replace(MARKS, "\\$&")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replace(BARE_LINK, "\\$&")
    .replace(OPENING, (mark) => (/\d/.test(mark) ? `${mark}\\` : `\\${mark}`));
}

/** A drawing in the text itself, with what it shows in words. Parentheses would end the address. */
export function pictureInMarkdown(text: string, svg: string): string {
  const address = encodeURIComponent(svg).replaceAll("(", "%28").replaceAll(")", "%29").replaceAll("'", "%27");
  return `![${escapeMarkdown(text)}](data:image/svg+xml,${address})`;
}

/** A text, cut after so many characters. */
export function extract(text: string, most = 200): string {
  const characters = [...text];
  return characters.length > most ? `${characters.slice(0, most - 1).join("")}…` : text;
}

/** As `escapeMarkdown`, cut after so many characters. */
export function escapedExtract(text: string, most?: number): string {
  return escapeMarkdown(extract(text, most));
}

/** A table of cells that are Markdown already; columns from `right` on are aligned right. */
export function markdownTable(headings: readonly string[], rows: readonly (readonly string[])[], right = 1): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
  const rule = headings.map((_, column) => (column < right ? "---" : "--:"));
  return [headings, rule, ...rows].map(line).join("\n");
}

/** Paragraphs of Markdown, those left out that are empty; undefined where none is left. */
export function paragraphs(parts: readonly (string | undefined)[]): string | undefined {
  return parts.filter(Boolean).join("\n\n") || undefined;
}
