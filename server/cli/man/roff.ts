/** What roff has names for, of the signs that the texts use. */
const NAMED: Readonly<Record<string, string>> = {
  "\\": "\\e",
  "-": "\\-",
  "“": "\\(lq",
  "”": "\\(rq",
  "’": "\\(cq",
  '"': "\\(dq",
  "…": "...",
};

/**
 * A line of text as roff shows it, in ASCII: other signs by their numbers, as groff_char(7) and mandoc_char(7) have
 * them. A dot or an apostrophe that begins a line would be a request, and has a sign of no width before it.
 */
export function roff(text: string): string {
  return escaped(text).replace(/^(?=[.'])/, "\\&");
}

function escaped(text: string): string {
  return [...text].map((sign) => NAMED[sign] ?? (sign > "~" ? numbered(sign) : sign)).join("");
}

function numbered(sign: string): string {
  return `\\[u${sign.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0")}]`;
}

export function bold(text: string): string {
  return `\\fB${escaped(text)}\\fR`;
}

/** An option, or a word in capitals that stands for what you type. */
const PARTS = /(--?[A-Za-z][\w-]*|\b[A-Z]{2,}\b)/;

/** A command line: options bold, what you put in cursive. */
export function synopsis(line: string): string {
  return line
    .split(PARTS)
    .map((part, i) => {
      if (i % 2 === 0) return escaped(part);
      return part.startsWith("-") ? bold(part) : `\\fI${escaped(part)}\\fR`;
    })
    .join("");
}

/** Lines that are shown as they are, further in. */
export function shown(lines: readonly string[]): readonly string[] {
  return [".PP", ".RS 4", ".nf", ...lines.map(roff), ".fi", ".RE"];
}

/** A term, which is roff already, and what it means. */
export function tagged(term: string, meaning: string): readonly string[] {
  return [".TP", term, roff(meaning)];
}
