import { cutLine } from "../../syntax/line/cut.ts";
import { fold } from "../../syntax/words/fold.ts";
import { closingQuote, isQuote, tokenise } from "../../syntax/words/token.ts";
import { LONGEST_PHRASE } from "../../syntax/words/vocabulary.ts";

/** A line and the cursor in it. Columns are UTF-16, from the beginning of the line. */
export interface Typing {
  readonly text: string;
  readonly cursor: number;
  /** The end of the word under the cursor; the cursor itself where none is being typed. */
  readonly end: number;
  /** The end of what is compared with what is offered: that of the word, or in a quote the cursor. */
  readonly typedTo: number;
  /** What separates the stretch that the cursor stands in from the one before it. */
  readonly after: "" | "," | ":" | ">";
  /** Where that stretch begins. */
  readonly stretch: number;
  /** Where the phrase that is being typed may begin, the longest phrase first. The last may be the cursor itself. */
  readonly starts: readonly number[];
  /** Where a quote opens that is not closed before the cursor. */
  readonly quote?: number;
  /** Where the remark begins, or the length of the line. */
  readonly remark: number;
}

/** What is being typed at a cursor from column `from` on; undefined in a remark, or before `from`. */
export function typingAt(text: string, cursor: number, from: number): Typing | undefined {
  const { remark } = cutLine(text, from);
  if (cursor < from || (remark < text.length && cursor >= remark)) return undefined;
  const before = text.slice(0, cursor);
  const cut = cutLine(before, from);
  if (cut.remark < before.length) return undefined;
  const quote = openQuote(before, from);
  const last = cut.cuts.at(-1)!;
  const opening = quote === undefined ? last : (cut.cuts.findLast(({ start }) => start <= quote) ?? last);
  const starts = phraseStarts(before, opening.start);
  const end = quote === undefined ? wordEnd(text, cursor) : quoteEnd(text, cursor);
  const typedTo = quote === undefined ? end : cursor;
  return { text, cursor, end, typedTo, after: opening.after, stretch: opening.start, starts, quote, remark };
}

function openQuote(before: string, from: number): number | undefined {
  for (let i = from; i < before.length; i++) {
    if (!isQuote(before[i]!)) continue;
    const close = closingQuote(before, i);
    if (close < 0) return i;
    i = close;
  }
  return undefined;
}

function phraseStarts(before: string, stretch: number): number[] {
  const tokens = tokenise(before.slice(stretch), stretch);
  const starts = tokens.slice(-LONGEST_PHRASE).map(({ start }) => start);
  const last = tokens.at(-1);
  if (!last || last.end < before.length) starts.push(before.length);
  return starts;
}

const WORD = /^[^\s,:>→=|"“”„«»‟]*/;

/** A word that goes on behind the cursor is replaced as a whole. */
function wordEnd(text: string, cursor: number): number {
  if (cursor === 0 || WORD.exec(text[cursor - 1]!)![0] === "") return cursor;
  return cursor + WORD.exec(text.slice(cursor))![0].length;
}

/** After an odd number of quotes the first one behind the cursor closes the one that is open. */
function quoteEnd(text: string, cursor: number): number {
  const quotes = [...text.slice(cursor)].filter(isQuote).length;
  if (quotes % 2 === 0) return cursor;
  let at = cursor;
  while (!isQuote(text[at]!)) at++;
  return at + 1;
}

/** The form in which what is typed is compared with what is offered: a hyphen is a space, runs of them are one. */
function plain(text: string): string {
  return fold(text)
    .replace(/[“”„«»‟]/g, '"')
    .replace(/[\s-]+/g, " ");
}

/** Whether a text may be meant by what is typed so far. A space that is typed ends a word. */
export function completes(offered: string, typed: string): boolean {
  if (typed === "") return true;
  if (differAtOnce(offered, typed)) return false;
  const wanted = plain(typed);
  const text = plain(offered);
  if (wanted.endsWith(" ") && text.length <= wanted.length) return false;
  if (text.startsWith(wanted)) return true;
  return !wanted.includes(" ") && text.replaceAll(" ", "").startsWith(wanted);
}

/** Told cheaply for most: both begin with a plain letter or figure, and not with the same. */
function differAtOnce(a: string, b: string): boolean {
  const [one, other] = [a.charCodeAt(0), b.charCodeAt(0)];
  return isPlain(one) && isPlain(other) && (one | 32) !== (other | 32);
}

function isPlain(code: number): boolean {
  return (code >= 48 && code <= 57) || (code >= 65 && code <= 90) || (code >= 97 && code <= 122);
}

/** Whether two texts are the same phrase. */
export function isSamePhrase(a: string, b: string): boolean {
  return plain(a).replaceAll(" ", "") === plain(b).replaceAll(" ", "");
}
