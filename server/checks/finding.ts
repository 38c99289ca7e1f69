import type { Code } from "./codes.ts";

/** Replaces the columns from `start` to `end` of a line of the block by `text`; `line` defaults to the finding's own. */
export interface FindingEdit {
  readonly line?: number;
  /** Where the text to replace ends on another line than it begins. */
  readonly endLine?: number;
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export interface FindingFix {
  readonly title: string;
  /** Cannot lose meaning, so that it may be applied unasked. */
  readonly safe: boolean;
  readonly edits: readonly FindingEdit[];
}

/** What a check found on one line: UTF-16 columns, the end excluded. The line is added by whoever ran the check. */
export interface Finding {
  readonly code: Code;
  readonly start: number;
  readonly end: number;
  readonly message: string;
  readonly fixes: readonly FindingFix[];
}

/** The most characters of a journal that a message quotes. */
const LONGEST_QUOTATION = 40;

/** A journal's words in a message: shortened, and without control or bidirectional characters. */
export function quoted(words: string): string {
  const plain = words.replace(/[\u0000-\u001F\u007F-\u009F\u200E\u200F\u202A-\u202E\u2066-\u2069\uFEFF]/g, " ").trim();
  const characters = [...plain];
  return characters.length > LONGEST_QUOTATION ? `${characters.slice(0, LONGEST_QUOTATION - 1).join("")}…` : plain;
}
