import { ABBREVIATIONS, SHORT_WORDS } from "../lexicon/abbreviations.ts";
import { TICKS } from "../lexicon/outcomes/signs.ts";
import { END_OF_PIECE } from "../lexicon/places/bars.ts";
import { PLACE_TABLES } from "../lexicon/places/place-tables.ts";
import { NUMBERED } from "../lexicon/title-words.ts";
import { fold } from "../words/fold.ts";
import { BEATS } from "../words/terms.ts";
import { CODES } from "./character-codes.ts";
import {
  MARKED,
  NAMED_NUMBER,
  NOTE_FIRST,
  NOTE_LAST,
  NOTE_VALUES,
  NUMBER_FIRST,
  NUMBER_LAST,
  SMALL_NOTE_FIRST,
  SMALL_NOTE_LAST,
} from "./cut-words.ts";

// Whether a sign parts what stands beside it: each looks at a few characters. Columns are offsets in the text; a piece
// begins at `start`, the line ends at `to`.

const { HYPHEN, EN_DASH, EM_DASH, OPENING, CLOSING: CLOSING_BRACKET, OPENING_SQUARE, CLOSING_SQUARE } = CODES;

export function isDash(code: number): boolean {
  return code === HYPHEN || code === EN_DASH || code === EM_DASH;
}

export function isBracket(code: number): boolean {
  return code === OPENING || code === CLOSING_BRACKET || code === OPENING_SQUARE || code === CLOSING_SQUARE;
}

/** In UTF-16 units: what is looked at behind a dash, and before one. */
const BEHIND_DASH = 40;
const BEFORE_DASH = 8;
const LONGEST_WORD = 24;

/**
 * Whether a tempo, a sign or, in a row, a further number or note stands behind a dash, or a tempo with `@` does later:
 * then it begins no remark.
 */
export function goesOnBehindDash(text: string, start: number, i: number, to: number): boolean {
  const behind = text.slice(i + 1, Math.min(to, i + BEHIND_DASH)).trimStart();
  if (behind.startsWith("|") || MARKED.test(behind) || MARKED_LATER.test(behind)) return true; // nothing in its column
  const number = NAMED_NUMBER.exec(behind);
  if (number && (BEATS.has(fold(number[1]!)) || NOTE_VALUES.test(number[1]!))) return true;
  return isRowAt(text, start, i, to);
}

const MARKED_LATER = /\s@\s?\d{2,3}(?!\d)/;

/** `36 – 40 – 44`, `C - E`. */
function isRowAt(text: string, start: number, i: number, to: number): boolean {
  const before = text.slice(Math.max(start, i - BEFORE_DASH), i).trimEnd();
  const behind = text.slice(i + 1, Math.min(to, i + BEHIND_DASH)).trimStart();
  return (
    (NUMBER_LAST.test(before) && NUMBER_FIRST.test(behind)) ||
    (NOTE_LAST.test(before) && NOTE_FIRST.test(behind)) ||
    (SMALL_NOTE_LAST.test(before) && SMALL_NOTE_FIRST.test(behind) && (/['’]$/.test(before) || /^\S+['’]/.test(behind)))
  );
}

/** A hyphen between spaces that parts as a comma does: `Lip trills 3 mins - easy`; not `bars 9 - 12`, `✓ + -`. */
export function isDashBetween(text: string, start: number, i: number, to: number): boolean {
  if (text[i - 1] !== " " || text[i + 1] !== " " || i - 1 <= start) return false;
  const before = text.slice(Math.max(start, i - BEFORE_DASH), i).trimEnd();
  const behind = text.slice(i + 1, Math.min(to, i + BEHIND_DASH)).trimStart();
  if (before === "" || behind === "" || SIGN_LAST.test(before) || SIGN_FIRST.test(behind)) return false;
  if (/\d[-–]\d+$/.test(before)) return true; // `bars 17-32 - 54`
  if (/\d$/.test(before) && /^\d/.test(behind)) return false;
  return !isRowAt(text, start, i, to) && !(PLACE_LAST.test(before) && END_FIRST.test(behind));
}

const SIGN = `[${TICKS}+±~=<>→,;:–—-]`;
const SIGN_LAST = new RegExp(`${SIGN}$`, "u");
const SIGN_FIRST = new RegExp(`^${SIGN}`, "u");
const END_FIRST = new RegExp(`^(?:${END_OF_PIECE})\\b`, "i");
/** What a range may begin with: `17 - end`, `D - end`. */
const PLACE_LAST = /(?:\d[a-f]?|(?:^|\s)[A-Z])$/;

const TONIC_LAST = /(?:^|\s)[A-Ha-h][#b♯♭]?$/u;

/** Spaces between columns, three or more: `letter C   slow 66 ok   104 mess`. */
export function isGapBetween(text: string, start: number, i: number, to: number): boolean {
  if (TONIC_LAST.test(text.slice(Math.max(start, i - 4), i))) return false; // `D   minor`
  const before = text.slice(Math.max(start, i - 1), i);
  const behind = text.slice(i, Math.min(to, i + BEHIND_DASH));
  const gap = /^ {3,}(?=\S)/.exec(behind)?.[0];
  return (
    gap !== undefined && /[^\s([,;:|/<>=→–—-]/u.test(before) && !/^[)\],;:|/<>=→–—-]/u.test(behind.slice(gap.length))
  );
}

/** A bar between columns: `F major | 72 | clean`; not one between notes. */
export function isBarBetween(text: string, start: number, i: number, to: number): boolean {
  if (!isSpaceAt(text, i - 1) && !isSpaceAt(text, i + 1)) return false;
  const before = text.slice(Math.max(start, i - LONGEST_WORD), i).trimEnd();
  const behind = text.slice(i + 1, Math.min(to, i + LONGEST_WORD)).trimStart();
  return !(NOTELIKE_LAST.test(before) && NOTELIKE_FIRST.test(behind));
}

/** Notes, also such as there are none. */
const NOTELIKE = "[A-Ha-h][#b♯♭x𝄪𝄫]{0,6}\\d?['’]*";
const NOTELIKE_LAST = new RegExp(`(?:^|\\s)${NOTELIKE}$`, "u");
const NOTELIKE_FIRST = new RegExp(`^${NOTELIKE}(?:\\s|,|$)`, "u");

/**
 * A slash between the columns of a line, of which one has the tempo: `G minor / 2 octaves / ♩=66 / fine`. Not one in a
 * row of numbers, notes, ways or outcomes: `60 / 66`, `72 ok / 80 no`, `slurred / tongued`.
 *
 * @param line where the line begins
 * @param numberEnd where the number ends that the piece has; -1 where it has none
 */
export function isSlashBetween(
  text: string,
  { line, start, numberEnd, to }: { line: number; start: number; numberEnd: number; to: number },
  i: number,
): boolean {
  if (!isSpaceAt(text, i - 1) || !isSpaceAt(text, i + 1) || i - 1 <= start) return false;
  const behind = text.slice(i + 1, Math.min(to, i + BEHIND_DASH)).trimStart();
  if (behind === "" || SIGN_FIRST.test(behind) || !TEMPO_COLUMN.test(text.slice(line, to))) return false;
  if (numberEnd >= 0) return !/^[@\d]/.test(behind) && text.slice(numberEnd, i).trim() === "";
  return !isRowAt(text, start, i, to) && !(/\d\s+$/.test(text.slice(start, i)) && /^\d/.test(behind));
}

const TEMPO_COLUMN = /[^\d\s]\s+\/\s+(?:[@♩♪]|\d{2,3}\b|\p{L}{1,10}\.?\s?=)/u;

function isSpaceAt(text: string, i: number): boolean {
  return text[i] === " " || text[i] === "\t";
}

const CLOSING: Readonly<Record<string, string>> = { "(": ")", "[": "]" };

/** A bracket around words or numbers, with a space or a sign that parts outside of it: `(2 octaves)`; not `66(ok)`. */
export function isBracketApart(text: string, i: number, to: number): boolean {
  const open = text[i] === "(" || text[i] === ")" ? "(" : "[";
  const close = CLOSING[open]!;
  const opening = text[i] === open ? i : text.lastIndexOf(open, i);
  const closing = text[i] === close ? i : text.indexOf(close, i);
  if (opening < 0 || closing < opening || closing >= to) return false;
  const isFree =
    /^(?:\s|)$/.test(text[opening - 1] ?? "") && /^(?:[\s,;.:!]|)$/.test(closing + 1 < to ? text[closing + 1]! : "");
  return isFree && /^[^()[\]]*(?:\p{Ll}{2}|\d)[^()[\]]*$/u.test(text.slice(opening + 1, closing));
}

/** A full stop behind a word or a number, with a new sentence behind it: `tongued. Nearly.` */
export function isSentenceEnd(text: string, start: number, i: number, to: number): boolean {
  if (text[i + 1] !== " " || !/^\s+["“(]?[\p{Lu}\d]/u.test(text.slice(i + 1, Math.min(to, i + 6)))) return false;
  const before = text.slice(Math.max(start, i - LONGEST_WORD), i);
  const word = /(?:^|[\s(/])([\p{L}\p{M}'’]+)$/u.exec(before)?.[1];
  if (word === undefined)
    return (
      /\)$/.test(before) || ((NUMBERED_LAST.test(before) || TEMPO_LAST.test(before)) && !isOrdinalPlace(text, i, to))
    );
  return word.length >= SHORTEST_WORD ? !ABBREVIATIONS.has(fold(word)) : SHORT_WORDS.has(fold(word));
}

/** `No 15. Awful`: the number of a piece. */
const NUMBERED_LAST = new RegExp(
  `(?:^|\\s)(?:no|nr|op|study|etude|étude|${[...NUMBERED].join("|")})\\.?\\s+\\d{1,3}$`,
  "iu",
);
const TEMPO_LAST = /(?:^|\s)(?:[3-9]\d|1\d\d)$/;

/** `60. Takt`: the point belongs to the number. */
function isOrdinalPlace(text: string, i: number, to: number): boolean {
  const next = /^\s+(\p{L}+)/u.exec(text.slice(i + 1, Math.min(to, i + LONGEST_WORD)))?.[1];
  return next !== undefined && COUNTED_PLACES.has(fold(next));
}

/** What is counted in pieces, in every language. */
export const COUNTED_PLACES: ReadonlySet<string> = new Set(
  Object.values(PLACE_TABLES).flatMap(({ numbered, parts }) =>
    [...Object.values(numbered), parts].flatMap((words) => words.split(" | ").map(fold)),
  ),
);

/** Most shorter words with a point are abbreviations. */
const SHORTEST_WORD = 5;

const JOINTS = ">→/–—";

/** Where a piece ends whose last sign joins it to the next: `@ 72 ok / @ 80`, `88 → 96 → 104`, `80 – @ 92`. */
export function withoutJoint(text: string, from: number, to: number): number {
  if (from >= to || !JOINTS.includes(text[to - 1]!)) return to;
  const joint = /(?:->|[→/–—])$/u.exec(text.slice(Math.max(from, to - 2), to))?.[0];
  if (joint === undefined) return to;
  const end = to - joint.length;
  const isArrow = joint === "→" || joint === "->";
  if (end > from && !/\s/.test(text[end - 1]!) && !isArrow) return to;
  const kept = from + text.slice(from, end).trimEnd().length;
  return kept > from ? kept : to;
}
