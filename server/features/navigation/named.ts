import { nameKey, phraseKey } from "../../syntax/words/fold.ts";
import type { Range } from "../types.ts";

/** What may have a name of its own in a journal. */
export type NameKind =
  | "title"
  | "movement"
  | "concert"
  | "pattern"
  | "scale"
  | "articulation"
  | "outcome"
  | "focus"
  | "phase"
  | "activity"
  | "instrument"
  | "temperament"
  | "set work";

/** One thing that has a name: two are the same when kind and key are. */
export interface Name {
  readonly kind: NameKind;
  readonly key: string;
  /** As it is declared, or else as it was first written. */
  readonly name: string;
}

/** A place at which a line names something. Line within the block, UTF-16 columns; quotes are not part of it. */
export interface Mention extends Name {
  readonly line: number;
  readonly start: number;
  readonly end: number;
  readonly isDeclaration: boolean;
  /** Of a title: by all of its words, by the short name that is declared, or by some of its words. */
  readonly form: "whole" | "short name" | "short form";
  readonly isQuoted: boolean;
}

/** A stretch of a file, in absolute lines. */
export interface Location {
  readonly uri: string;
  readonly range: Range;
}

export function isSameName(a: Name, b: Name): boolean {
  return a.kind === b.kind && a.key === b.key;
}

/** Whether words are a name, apart from case, spaces and hyphens. */
export function isCalled(words: string, name: string): boolean {
  return nameKey(words) === nameKey(name) || phraseKey(words) === phraseKey(name);
}

export function rangeOn(line: number, { start, end }: { readonly start: number; readonly end: number }): Range {
  return { start: { line, character: start }, end: { line, character: end } };
}
