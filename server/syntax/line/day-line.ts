/** A date-like word and where it stands; the end is excluded. */
export interface DateWord {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/**
 * Whether a line begins a day: its first word is date-like, three groups of digits joined by `-`, `.`, `/` or a dash,
 * the first or the last of four digits. It need not be a date that exists, nor be written as ISO 8601.
 */
export function isDayLine(line: string): boolean {
  return dateWord(line) !== undefined;
}

/** Where the date-like word of a day line stands; undefined on any other line. */
export function dateWord(line: string): DateWord | undefined {
  const start = afterBullet(line, skipSpace(line, 0));
  const first = skipDigits(line, start);
  if (first === start || !isSign(line[first])) return undefined;
  const second = skipDigits(line, first + 1);
  if (second === first + 1 || !isSign(line[second])) return undefined;
  const end = skipDigits(line, second + 1);
  if (end === second + 1 || (first - start !== 4 && end - second - 1 !== 4) || !endsWord(line, end)) return undefined;
  return { text: line.slice(start, end), start, end };
}

/** What may stand between the groups: `-`, `.`, `/`, and the dashes that an editor puts in the place of `-`. */
export const DATE_SIGNS = "-./‐‑–—−";

function isSign(character: string | undefined): boolean {
  return character !== undefined && DATE_SIGNS.includes(character);
}

function afterBullet(line: string, at: number): number {
  const bullet = line[at] === "-" || line[at] === "*" || line[at] === "•";
  return bullet && isSpace(line.charCodeAt(at + 1)) ? skipSpace(line, at + 1) : at;
}

function skipSpace(line: string, at: number): number {
  let i = at;
  while (isSpace(line.charCodeAt(i))) i++;
  return i;
}

function skipDigits(line: string, at: number): number {
  let i = at;
  while (line.charCodeAt(i) >= 48 && line.charCodeAt(i) <= 57) i++;
  return i;
}

/** Nothing, a space or a separator follows; a full stop only at the end of the word. */
function endsWord(line: string, at: number): boolean {
  const next = line[at];
  if (next === undefined || next === "," || next === ";" || next === ":" || isSpace(line.charCodeAt(at))) return true;
  return next === "." && (at + 1 === line.length || isSpace(line.charCodeAt(at + 1)));
}

/** White space in a line, a byte order mark among it. NaN, past the end, is none. */
export function isSpace(code: number): boolean {
  return (
    code === 32 ||
    (code >= 9 && code <= 13) ||
    code === 0xa0 ||
    code === 0xfeff ||
    (code >= 0x1680 &&
      (code === 0x1680 ||
        (code >= 0x2000 && code <= 0x200a) ||
        code === 0x2028 ||
        code === 0x2029 ||
        code === 0x202f ||
        code === 0x205f ||
        code === 0x3000))
  );
}
