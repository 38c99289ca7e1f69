/**
 * C0 and C1 controls, delete, line and paragraph separators, byte order mark, and what changes the direction of
 * writing.
 */
const UNPRINTABLE = /[\u0000-\u001F\u007F-\u009F\u061C\u200E\u200F\u2028-\u202E\u2066-\u2069\uFEFF]/g;

/** Text of a journal, or a path, for a terminal: what could steer the terminal is shown as `\u202E`. */
export function printable(text: string): string {
  return text.replace(UNPRINTABLE, codePoint);
}

/** One line of JSON. What could steer a terminal is escaped, which changes no value. */
export function jsonText(value: unknown): string {
  return `${printable(JSON.stringify(value))}\n`;
}

function codePoint(character: string): string {
  return `\\u${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}`;
}
