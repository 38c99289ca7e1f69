import type { FaultySubject, Item, MeaningOf, SubjectMeaning, WrittenNote } from "../words/meaning.ts";

/** The remark at the end of a line, or the line that is one. */
export interface Remark {
  readonly start: number;
  readonly text: string;
}

/** A note in a claim; without `note` it is a note-like word that names none. */
export interface ClaimedNote {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  readonly note?: WrittenNote;
}

/** What a line says its exercise consists of. */
export type Claim =
  | { readonly type: "notes"; readonly start: number; readonly end: number; readonly notes: readonly ClaimedNote[] }
  | { readonly type: "signature"; readonly start: number; readonly end: number; readonly fifths: number }
  | { readonly type: "steps"; readonly start: number; readonly end: number; readonly words: string };

interface Base {
  readonly remark?: Remark;
  /** It is read so for what stands above it in its day. */
  readonly follows?: true;
}

/** `same`, `ditto`: words that stand for what the entry above says. */
export interface SameWords {
  readonly start: number;
  readonly end: number;
  /** Beside a subject of its own they stand for the terms above: `same in G`. */
  readonly terms: boolean;
}

export interface EntryLine extends Base {
  readonly type: "entry";
  readonly start: number;
  readonly end: number;
  readonly subject?: Item<SubjectMeaning | FaultySubject>;
  /** In the order of the line; bare numbers are already tempos or places. Notes and quoted texts are not resolved. */
  readonly items: readonly Item[];
  readonly claims: readonly Claim[];
  /** It goes on with the entry above it; by itself it may have no subject. */
  readonly same?: SameWords;
  /** Of those above it the terms that hold here, too; their columns are those of their own lines. */
  readonly above?: readonly Item[];
}

export interface DeclarationLine extends Base {
  readonly type: "declaration";
  readonly start: number;
  readonly end: number;
  readonly word: string;
  /** The end of the declaration word. */
  readonly wordEnd: number;
}

/** A line that frames those below it. */
interface FrameLine<T extends string> extends Base {
  readonly type: T;
  readonly start: number;
  readonly end: number;
  readonly items: readonly Item[];
}

/** How long was practised in all. Of more than its day it is kept, and counts as nothing: `week 5h20`. */
interface TotalLine extends FrameLine<"total"> {
  readonly longer?: true;
}

/** What is said of the player's body; an amount before it is the day's total: `35'. thumb stiff`. */
interface BodyLine extends Base {
  readonly type: "body";
  readonly start: number;
  readonly end: number;
  readonly sore: boolean;
  readonly total?: Item;
}

/** What is kept for the lesson: set work, the teacher's word, a question. What is said begins at `from`. */
interface SpokenLine<T extends string> extends Base {
  readonly type: T;
  readonly start: number;
  readonly end: number;
  readonly from: number;
  /** Nothing stands behind its words: the lines below are what is set, said or asked. */
  readonly opens?: true;
}

/** The lines of a journal. Columns are UTF-16, from the beginning of the line. Every text is one of these. */
export type Line =
  | ({ readonly type: "blank" } & Base)
  | ({ readonly type: "remark"; readonly start: number } & Base)
  | ({
      readonly type: "day";
      readonly start: number;
      readonly end: number;
      readonly date: string;
      readonly dateEnd: number;
      readonly items: readonly Item[];
    } & Base)
  | FrameLine<"session">
  | FrameLine<"phase">
  | FrameLine<"break">
  | FrameLine<"plan">
  | FrameLine<"rest">
  | TotalLine
  | SpokenLine<"set">
  | SpokenLine<"said">
  | SpokenLine<"asked">
  | BodyLine
  | DeclarationLine
  | EntryLine
  | ({
      readonly type: "near declaration";
      readonly start: number;
      readonly end: number;
      readonly word: Item<MeaningOf<"unknown">>;
      readonly nearest: string;
    } & Base)
  | ({ readonly type: "prose"; readonly start: number; readonly end: number } & Base)
  | ({ readonly type: "conflict marker"; readonly start: number; readonly end: number } & Base)
  | ({ readonly type: "too long"; readonly length: number } & Base);

/** What a line is to those around it: it frames those below it, or is a remark, or blank, or nothing of that. */
export type LineSort = "day" | "session" | "phase" | "remark" | "blank" | "other";

export function sortOf(type: Line["type"]): LineSort {
  const framing = type === "day" || type === "session" || type === "phase";
  return framing || type === "remark" || type === "blank" ? type : "other";
}

export type LineOf<T extends Line["type"]> = Extract<Line, { readonly type: T }>;
