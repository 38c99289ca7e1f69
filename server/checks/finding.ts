import { plainText } from "../syntax/words/plain-text.ts";
import type { Code } from "./codes.ts";
import { fixTexts } from "./fix-texts.ts";

/** Replaces a stretch of the finding's line. */
export interface FindingEdit {
  readonly start: number;
  /** Counts on the line `further` lines below, where that is said. */
  readonly end: number;
  readonly further?: number;
  readonly text: string;
}

export interface FindingFix {
  readonly title: string;
  /** Cannot lose meaning, so that it may be applied unasked. */
  readonly safe: boolean;
  readonly edits: readonly FindingEdit[];
  /** A declaration to be put in above the first day, on a line of its own. */
  readonly head?: string;
}

/** What a check found on one line: UTF-16 columns, the end excluded. The line is added by whoever ran the check. */
export interface Finding {
  readonly code: Code;
  readonly start: number;
  readonly end: number;
  readonly message: string;
  readonly fixes: readonly FindingFix[];
}

/** A stretch of a line. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** A finding on a stretch. */
export function finding(
  code: Code,
  { start, end }: Stretch,
  message: string,
  fixes: readonly FindingFix[] = [],
): Finding {
  return { code, start, end, message, fixes };
}

/** A fix that puts another text in the place of a stretch. */
export function replacement(title: string, { start, end }: Stretch, text: string, safe = false): FindingFix {
  return { title, safe, edits: [{ start, end, text }] };
}

/** The most characters of a journal that a message quotes. */
const LONGEST_QUOTATION = 40;

/** A journal's words in a message: shortened, and without control or bidirectional characters. */
export function quoted(words: string): string {
  const plain = plainText(words, " ").trim();
  const characters = [...plain];
  return characters.length > LONGEST_QUOTATION ? `${characters.slice(0, LONGEST_QUOTATION - 1).join("")}…` : plain;
}

/** Words that are offered, in a sentence or a title: in quotes, unless they have their own. */
export function offered(words: string): string {
  return /^["“”„«»]/.test(words) ? quoted(words) : fixTexts.quoted(quoted(words));
}
