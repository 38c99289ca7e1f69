import type { DayNumber } from "../journal/calendar.ts";

/** What a plan keeps to that a player may choose. */
export interface PlanSettings {
  /** The part of the time that goes to pieces, where one is in hand: 0 to 1. */
  readonly pieces: number;
  /** The part of what is left after them and the warm-up that is slow work: 0 to 1. */
  readonly groundwork: number;
  /** In minutes: no line is longer, but a piece played through. */
  readonly longestLine: number;
  /** In minutes: after so long comes a pause. */
  readonly playBeforePause: number;
  /** After two days on which something was pushed comes one on which nothing is. */
  readonly unhurriedDays: boolean;
}

export const USUAL_PLAN: PlanSettings = {
  pieces: 0.5,
  groundwork: 0.6,
  longestLine: 15,
  playBeforePause: 30,
  unhurriedDays: true,
};

/** The day that a plan is for, and the wishes of who plays. */
export interface PlanAsked {
  readonly day: DayNumber;
  /** Whole minutes; missing: as long as usual. */
  readonly minutes?: number;
  /** Its id; missing: the journal's own, or the one practised most. */
  readonly instrument?: string;
  readonly settings: PlanSettings;
}

/** What a day turned out to be for; `none` where nothing needs a plan. */
export type PlanKind = "usual" | "unhurried" | "sparing" | "return" | "concert" | "noInstrument" | "rest" | "none";

/** Which rule put a line there. */
export type PlanRule =
  | "warm-up"
  | "set"
  | "long ago"
  | "aim"
  | "key of a piece"
  | "finger change"
  | "others"
  | "next key"
  | "again"
  | "plain"
  | "place not reached"
  | "bars left alone"
  | "bars in turn"
  | "whole piece"
  | "run-through"
  | "away";

export type PlanPhase = "warm-up" | "groundwork" | "fluency" | "pieces" | "away";

/** A line to be played. */
export interface PlanLine {
  /** As it stands in the journal, with its minutes. */
  readonly text: string;
  readonly phase: PlanPhase;
  readonly minutes: number;
  readonly rule: PlanRule;
  /** What is practised, by its name; null for what the history follows no further. */
  readonly exercise: string | null;
  /** Sentences, at least one. */
  readonly reasons: readonly string[];
}

/** A pause before one of the lines. */
export interface PlanBreak {
  /** The line's index. */
  readonly before: number;
  readonly minutes: number;
}

/** A session for one day. A suggestion: what is not played of it counts for nothing. */
export interface Plan {
  readonly date: DayNumber;
  /** The minutes wished for, or those that are usual. */
  readonly asked: number;
  /** Those of the lines and the pauses together; never more than were asked for. */
  readonly minutes: number;
  readonly kind: PlanKind;
  /** What is said first, and left out by no option: sentences about the body. */
  readonly care: readonly string[];
  /** Why the time is shorter, what kind of day it is, why there is no plan. */
  readonly notes: readonly string[];
  /** What is set in free words, as written. */
  readonly setInWords: readonly string[];
  readonly lines: readonly PlanLine[];
  readonly breaks: readonly PlanBreak[];
}

/** A line before its minutes are known. */
export interface LineDraft {
  /** Without minutes. */
  readonly text: string;
  readonly phase: PlanPhase;
  readonly rule: PlanRule;
  readonly exercise: string | null;
  readonly reasons: readonly string[];
  /** A piece played through, which may take longer in one go. */
  readonly whole?: boolean;
  /** Of a title: what makes two places the same (`LineRead.place`). */
  readonly place?: string;
  /** The keys of all exercises that it practises. */
  readonly exerciseKeys?: readonly string[];
  /** Its tempo is steady. */
  readonly steady?: boolean;
}
