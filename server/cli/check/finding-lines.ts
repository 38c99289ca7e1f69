import stringWidth from "string-width";
import { wrapped } from "../wrapped.ts";

/** A finding in words, the first three padded where they stand in columns. */
export interface FindingText {
  readonly place: string;
  readonly severity: string;
  readonly code: string;
  readonly message: string;
}

/** A message has at least so many columns beside its code; else it goes below. */
const LEAST_BESIDE = 40;
const BELOW = "    ";

/**
 * A finding on a terminal: in one line if it fits; else its message goes on below its own beginning, or all of it goes
 * below the rest.
 *
 * @param paint what the severity is painted with, which takes up no columns
 */
export function findingLines(
  { place, severity, code, message }: FindingText,
  columns: number,
  paint: (severity: string) => string,
): string[] {
  const width = stringWidth(`${place} ${severity} ${code} `);
  const head = `${place} ${paint(severity)} ${code}`;
  if (width + stringWidth(message) <= columns) return [`${head} ${message}`];
  if (columns - width >= LEAST_BESIDE) {
    const [first, ...rest] = indented(message, " ".repeat(width), columns);
    return [`${head} ${first!.slice(width)}`, ...rest];
  }
  const bare = code.trimEnd();
  const fits = stringWidth(`${place} ${severity} ${bare}`) <= columns;
  const heads = fits ? [head.trimEnd()] : [place.trimEnd(), `${BELOW}${paint(severity.trimEnd())} ${bare}`];
  return [...heads, ...indented(message, BELOW, columns)];
}

function indented(message: string, indent: string, columns: number): string[] {
  return wrapped(message, columns - indent.length, stringWidth).map((line) => indent + line);
}
