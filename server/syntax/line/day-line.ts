import { MONTH_WORDS, WEEKDAY_WORDS } from "../lexicon/calendar-words.ts";

/** A date-like word and where it stands; the end is excluded. */
export interface DateWord {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/**
 * Whether a line begins a day: it opens with a date, in three groups of digits joined by `-`, `.`, `/` or a dash, the
 * first or the last of four digits; or as `28 Feb 2026`, `Saturday, February 28, 2026`, `20260228`. It need not be a
 * date that exists, nor be written as ISO 8601.
 */
export function isDayLine(line: string): boolean {
  return dateWord(line) !== undefined;
}

/** Where the date-like word of a day line stands; undefined on any other line. */
export function dateWord(line: string): DateWord | undefined {
  const start = afterBullet(line, skipSpace(line, 0));
  const first = skipDigits(line, start);
  if (first === start || !isSign(line[first])) return dateInWords(line, start);
  const second = skipDigits(line, first + 1);
  if (second === first + 1 || !isSign(line[second])) return undefined;
  const end = skipDigits(line, second + 1);
  if (end === second + 1 || (first - start !== 4 && end - second - 1 !== 4) || !endsWord(line, end)) return undefined;
  return { text: line.slice(start, end), start, end };
}

/** A date that a player writes in another way; only one with its year. */
function dateInWords(line: string, start: number): DateWord | undefined {
  const text = IN_WORDS.exec(line.slice(start, start + LONGEST_DATE))?.[0];
  const end = start + (text?.length ?? 0);
  return text !== undefined && endsWord(line, end) ? { text, start, end } : undefined;
}

/** In UTF-16 units; with a weekday before it. */
export const LONGEST_DATE = 48;

/** What may stand between the groups: `-`, `.`, `/`, and the dashes that an editor puts in the place of `-`. */
export const DATE_SIGNS = "-./‐‑–—−";

const MONTH = `(?:${wordsOf(MONTH_WORDS)})\\.?`;
const DAY = "\\d{1,2}(?:\\.|st|nd|rd|th|er|º)?";
const SIGN = `[${DATE_SIGNS.replace("-", "\\-")}]`;
const SPACE = "[ \\t\u00A0]+";
const OF = `(?:${SPACE}(?:of|de|di))?`;
/** `28 February`, `28. Februar`, `28 de febrero`, `February 28th`. */
const NAMED = `(?:${DAY}${OF}${SPACE}${MONTH}|${MONTH}${SPACE}${DAY})(?:,|${SPACE}de)?${SPACE}\\d{4}`;
const IN_FIGURES = `\\d{4}${SIGN}\\d{1,2}${SIGN}\\d{1,2}|\\d{1,2}${SIGN}\\d{1,2}${SIGN}\\d{4}|(?:19|20)\\d{6}`;
const ARTICLE = `(?:the|am|den|le|el)${SPACE}`;
const WEEKDAY = `(?:${wordsOf(WEEKDAY_WORDS)})[.,]{0,2}${SPACE}(?:${ARTICLE})?`;

const IN_WORDS = new RegExp(`^(?:${WEEKDAY}|${ARTICLE})?(?:${NAMED}|${IN_FIGURES})`, "iu");

/**
 * A date of a day line in figures: `2026-2-28` for `Sat 28 Feb 2026`, `2026-02-28` for `20260228`; any other as it is.
 * The weekday is what stands before it.
 */
export function inFigures(text: string): { readonly figures: string; readonly weekday?: string } {
  const before = BEFORE_DATE.exec(text)![0];
  const weekday = new RegExp(`^${ARTICLE}`, "i").test(before) ? undefined : /^\p{L}+/u.exec(before)?.[0];
  const date = text.slice(before.length);
  const month = MONTH_WORDS.findIndex((words) => namesOneOf(date, words)) + 1;
  const [day, year] = date.match(/\d+/g)!;
  const figures = month > 0 ? `${year}-${month}-${day}` : date.replace(/^(\d{4})(\d{2})(\d{2})$/, "$1-$2-$3");
  return { figures, ...(weekday === undefined ? {} : { weekday }) };
}

const BEFORE_DATE = new RegExp(`^(?:${WEEKDAY}|${ARTICLE})?`, "iu");

function namesOneOf(date: string, words: string): boolean {
  const word = /\p{L}{3,}/u.exec(date.replace(/\d+(?:st|nd|rd|th)/i, ""))?.[0].toLowerCase();
  return word !== undefined && words.split(" | ").includes(word);
}

/** What a date in words opens with, for an expression: `28 Feb`, `Feb 28`, `Sat 2`, eight digits. */
export function dateOpenings(): string {
  return `(?:19|20)\\d{6}|${DAY}${OF}${SPACE}${MONTH}|${MONTH}${SPACE}\\d|(?:${WEEKDAY}|${ARTICLE})(?:\\d|${MONTH})`;
}

function wordsOf(rows: readonly string[]): string {
  const words = rows.flatMap((row) => row.split(" | "));
  return words.sort((a, b) => b.length - a.length).join("|");
}

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
