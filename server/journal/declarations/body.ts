import { cutLine, type Part } from "../../syntax/line/cut.ts";
import { partsOf } from "../../syntax/line/parts.ts";
import type { Item } from "../../syntax/words/meaning.ts";
import { type Token, tokenise } from "../../syntax/words/token.ts";
import { declarationTexts } from "./declaration-texts.ts";
import type { Body, Fault } from "./declared.ts";
import { fault } from "./declared.ts";

/** The quoted name that a body begins with, or the fault of there being none. */
export function quotedName(body: Body): {
  readonly name?: string;
  readonly end: number;
  readonly faults: readonly Fault[];
} {
  const token = tokenise(body.text.slice(body.start, body.end), body.start)[0];
  if (!token?.quote) {
    const words = token && /^[^:,"“”„«»]{1,60}/.exec(body.text.slice(token.start, body.end))?.[0].trimEnd();
    const at = words
      ? { start: token.start, end: token.start + words.length }
      : { start: body.start - body.word.length, end: body.start };
    return {
      end: at.end,
      faults: [fault(at, declarationTexts.nameInQuotes(body.word), words ? [`"${words}"`] : [])],
    };
  }
  if (!token.quote.closed) return { end: token.end, faults: [unclosed(token)] };
  const name = token.text.trim().replace(/\s+/g, " ");
  return name
    ? { name, end: token.end, faults: [] }
    : { end: token.end, faults: [fault(token, declarationTexts.noName)] };
}

export function unclosed(token: Pick<Token, "start" | "end">): Fault {
  return {
    start: token.start,
    end: token.end,
    code: "unclosed-quote",
    because: declarationTexts.unclosed,
  };
}

/** The parts of a body from a column on, those that are empty left out. */
export function bodyParts(body: Body, from: number): readonly Part[] {
  return partsOf(body.text.slice(0, body.end), cutLine(body.text.slice(0, body.end), from).cuts, body).filter(
    (part) => part.end > part.start,
  );
}

export function bodyItems(body: Body, from: number): readonly Item[] {
  return bodyParts(body, from).flatMap((part) => part.items);
}

/** Where the body goes on after a colon or spaces. */
export function afterColon(body: Body, from: number): number {
  const match = /^\s*:\s*/.exec(body.text.slice(from, body.end));
  return match ? from + match[0].length : from;
}

/** The rest of a body as typed, without the spaces around it. */
export function trimmed(
  body: Body,
  from: number,
): { readonly text: string; readonly start: number; readonly end: number } {
  const text = body.text.slice(from, body.end);
  const start = from + (text.length - text.trimStart().length);
  return { text: text.trim(), start, end: Math.max(start, from + text.trimEnd().length) };
}

/** Where the n-th word of a text stands, from 0; the whole text where it has not so many. */
export function wordAt(text: string, n: number, offset: number): { readonly start: number; readonly end: number } {
  const word = [...text.matchAll(/[^\s,]+/g)][n];
  return word
    ? { start: offset + word.index, end: offset + word.index + word[0].length }
    : { start: offset, end: offset + text.length };
}
