import { DOTTED_BEFORE, DOTTED_BEHIND, SAID_WITHOUT_EQUALS } from "../lexicon/beats.ts";
import {
  ABOUT_AMOUNT,
  COUNTED_BEHIND,
  FREE_WORDS_BEHIND,
  HOURS_BEHIND,
  JOINED_TO_NUMBER,
  MINUTES_BEHIND,
  OF_ANOTHER_DAY,
  VALUES_BESIDE_NUMBER,
} from "../lexicon/beside-numbers.ts";
import { TICKS } from "../lexicon/outcomes/signs.ts";
import { APPROXIMATELY, AT_WORDS, TEMPO_WORDS } from "../lexicon/tempo-marks.ts";

// What `LineCuts` looks for beside a number or a dash, in a few characters at a time.

export const AT = /^(?:at|@)$/;
export const GOAL = new RegExp(`(?:^|\\s)(?:${OF_ANOTHER_DAY})\\s+$`, "i");
export const BPM = /^\s?bpm(?![a-z])/i;
/** Words before a number that make it a tempo by themselves. */
export const MARKS: ReadonlySet<string> = new Set([
  ...TEMPO_WORDS,
  ...AT_WORDS,
  ...APPROXIMATELY,
  ...SAID_WITHOUT_EQUALS,
]);
/** Such words as are something else right behind a number: its unit, or `up to`. */
export const BEHIND_NUMBERS: ReadonlySet<string> = new Set(["à", "bpm", "b.p.m."]);
/** What may stand before such a word, or before `at`, and belongs to it. */
export const MARK_OPENERS: ReadonlySet<string> = new Set(["at", "@", ...TEMPO_WORDS, ...AT_WORDS, ...DOTTED_BEFORE]);
/** Between a beat and its sign: `noire pointée =`, `quarter note =`. */
export const BEHIND_BEAT: ReadonlySet<string> = new Set([".", "note", ...DOTTED_BEHIND]);
export const NOTE_VALUES = new RegExp(`^(?:${VALUES_BESIDE_NUMBER})$`);
export const TO_THE_BEAT = /^\s+to (?:the|a)\s/;
export const ROW_SIGN = /^(?:\/|-|–|—|→|->|>)$/;
export const JOINT_BEHIND = /^\s*(?:\/|-|–|—|→|->|to\s)\s*\d\d/;
export const UNIT = /^\s+([^\s,]+)/;
/** `:)`, where a colon cuts nothing. */
export const FACE = /^:[()/|]$/;
/** Behind a dash: tempos with a mark, and signs. */
export const MARKED = new RegExp(
  `^(?:@\\s*\\d|at\\s+\\d|\\d{2,3}\\s?bpm|[${TICKS}♩♪]|(?:dotted\\s)?[^\\s=]{1,12}\\s?=\\s?\\d)`,
  "iu",
);
export const NAMED_NUMBER = /^(\S+)\s+[1-9]\d{1,2}(?=\s|,|$)/;
export const NUMBER_LAST = /(?:^|[^\d.:])[1-9]\d{1,2}(?:\s?bpm)?$/i;
export const NUMBER_FIRST = /^[1-9]\d{1,2}(?:\s?bpm)?[.!]*(?:\s|,|$)/i;
export const NOTE_LAST = /(?:^|\s)[A-G][#b♯♭]?$/;
/** `e - c'''`: small letters, of which one has strokes for its octave. */
export const SMALL_NOTE_LAST = /(?:^|\s)[a-h](?:is|es|s|[#b♯♭])?['’]{0,3}$/u;
export const SMALL_NOTE_FIRST = /^[a-h](?:is|es|s|[#b♯♭])?['’]{0,3}(?:\s|,|$)/u;
export const NOTE_FIRST = /^[A-G][#b♯♭]?(?:\s|,|$)/;
export const MINUTES = new RegExp(`^\\s+(?:${MINUTES_BEHIND})(?:\\s|,|$)`, "i");
/** Belongs to the amount behind it. */
export const ABOUT = new RegExp(`^(?:${ABOUT_AMOUNT})$`, "i");
/** What follows them is as typed, numbers too. */
export const FREE_WORDS = new RegExp(`(?:^|\\s)(?:${FREE_WORDS_BEHIND})\\s`, "i");
/** Words that a number belongs to: `60 to 72`, `bars 17 and 32`, `goal 84`, `1 h 20`. */
export const JOINS = new RegExp(`^(?:${JOINED_TO_NUMBER})$`, "i");
export const DECIMAL_HOURS = new RegExp(`^,\\d{1,2}\\s*(?:${HOURS_BEHIND})(?:\\s|[,.]|$)`, "i");
/** `88 v 96 x`: behind a further tempo it says how it went. */
export const CROSS = /^\s+x(?:\s*$|\s*[,;.]|\s+\d{2,3}\b)/i;
export const COUNTED = new RegExp(`^\\s+(?:${COUNTED_BEHIND})(?:\\s|,|$)`, "i");
