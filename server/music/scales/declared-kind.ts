import { areInCents, type Degree, MAJOR_SEMITONES, readDegree } from "../notes/degree.ts";
import { declaredKindTexts } from "./declared-kind-texts.ts";
import type { ScaleKind, SignatureRule } from "./kind.ts";

export type DeclaredKind =
  | { readonly ok: true; readonly kind: ScaleKind }
  /** `at` is the word of the declaration's text that is to blame, from 0. */
  | { readonly ok: false; readonly reason: string; readonly at: number };

/** Where those degrees lie on the line of fifths, counted from the tonic. */
const MAJOR_FIFTHS = [0, 2, 4, -1, 1, 3, 5];
/** The letter for each semitone where there is not one letter for each degree: 1 b2 2 b3 3 4 #4 5 b6 6 b7 7. */
const USUAL_LETTERS = [0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6];

/** More notes than any scale that a player would type; more than twelve only where cents are given. */
const MOST_NOTES = 53;
/** The keys of the octave: more degrees cannot rise within it. */
const MOST_DEGREES = 12;

type Reading = { readonly ok: true; readonly degrees: readonly Degree[] } | Extract<DeclaredKind, { ok: false }>;

function refusal(reason: string, at: number): Extract<DeclaredKind, { ok: false }> {
  return { ok: false, reason, at };
}

function quoted(word: string): string {
  return `\`${word.slice(0, 40)}\``;
}

/** `first` is the place of the first degree among the declaration's words. */
function readDegrees(words: readonly string[], first: number): Reading {
  const degrees: Degree[] = [];
  for (const [index, word] of words.entries()) {
    const at = index + first;
    const degree = readDegree(word);
    if (!degree) {
      return refusal(declaredKindTexts.noDegree(quoted(word)), at);
    }
    if (degree.step === 7) {
      const closes = word === "8" && index === words.length - 1;
      if (!closes) return refusal(declaredKindTexts.passesOctave(quoted(word)), at);
      continue;
    }
    const before = degrees.at(-1);
    if (!before && word !== "1") return refusal(declaredKindTexts.startsOnOne(quoted(word)), at);
    if (before && word === "1" && index === words.length - 1) {
      return refusal(declaredKindTexts.closingTonic, at);
    }
    if (degrees.length === MOST_DEGREES) {
      return refusal(declaredKindTexts.oneTooMany(quoted(word), MOST_DEGREES), at);
    }
    if (before && degree.step < before.step) {
      return refusal(declaredKindTexts.notUpward(quoted(word), quoted(words[index - 1]!)), at);
    }
    if (before && degree.semitones <= before.semitones) {
      return refusal(declaredKindTexts.notHigher(quoted(word), quoted(words[index - 1]!)), at);
    }
    if (degree.semitones >= 12) return refusal(declaredKindTexts.reachesOctave(quoted(word)), at);
    degrees.push(degree);
  }
  return { ok: true, degrees };
}

/** Cents to degrees. Seven notes take a letter each; otherwise each takes the letter usual for its nearest key. */
function spelledCents(cents: readonly number[]): Degree[] {
  return cents.map((value, index) => {
    const semitones = Math.min(11, Math.round(value / 100));
    const step = cents.length === 7 ? index : USUAL_LETTERS[semitones]!;
    return { step, semitones, cents: value };
  });
}

/** `first` is the place of the first number among the declaration's words. */
function readCents(words: readonly string[], first: number): Reading {
  const cents: number[] = [];
  for (const [index, word] of words.entries()) {
    const at = index + first;
    const value = /^[0-9]{1,4}(\.[0-9]{1,4})?$/u.test(word) ? Number(word) : Number.NaN;
    if (Number.isNaN(value)) return refusal(declaredKindTexts.noCents(quoted(word)), at);
    if (index === 0 && value !== 0) return refusal(declaredKindTexts.centsFromNought(quoted(word)), at);
    if (index > 0 && value <= cents.at(-1)!) {
      return refusal(declaredKindTexts.notHigher(quoted(word), quoted(words[index - 1]!)), at);
    }
    const closes = value === 1200 && index === words.length - 1;
    if (value >= 1200 && !closes) return refusal(declaredKindTexts.centsReachOctave(quoted(word)), at);
    if (!closes) cents.push(value);
  }
  return { ok: true, degrees: spelledCents(cents) };
}

/**
 * The signature of a scale whose seven notes are those of some major key: seven neighbours on the line of fifths, which
 * begin one below that key's tonic. Others have none.
 */
function signatureRule(degrees: readonly Degree[]): SignatureRule | null {
  if (degrees.length !== 7 || areInCents(degrees)) return null;
  const fifths = degrees.map(({ step, semitones }) => MAJOR_FIFTHS[step]! + 7 * (semitones - MAJOR_SEMITONES[step]!));
  const lowest = Math.min(...fifths);
  const areNeighbours = new Set(fifths).size === 7 && Math.max(...fifths) - lowest === 6;
  if (!areNeighbours) return null;
  const hasMinorThird = degrees.some(({ step, semitones }) => step === 2 && semitones === 3);
  return { own: lowest + 1, parallel: hasMinorThird ? -3 : 0 };
}

/** The keys on its tonic that a scale is written in: by its third; either where that says nothing. */
function modesOf(degrees: readonly Degree[]): readonly ("major" | "minor")[] {
  const has = (semitones: number): boolean => degrees.some((each) => each.step === 2 && each.semitones === semitones);
  if (areInCents(degrees) || has(3) === has(4)) return ["major", "minor"];
  return has(3) ? ["minor"] : ["major"];
}

const UP = /^up$/i;
const DOWN = /^down$/i;
const CENTS = /^cents$/i;

/** The notes that stand from a word on; a falling form may be typed as it falls, `8 b7 b6 5 4 b3 2 1`. */
function readForm(words: readonly string[], from: number, inCents: boolean): Reading {
  const first = CENTS.test(words[0] ?? "") ? 1 : 0;
  const own = words.slice(first);
  const falls = own.length > 1 && own.at(-1) === (inCents ? "0" : "1");
  const read = inCents ? readCents : readDegrees;
  if (!falls) return read(own, from + first);
  const reading = read(own.toReversed(), 0);
  return reading.ok ? reading : { ...reading, at: from + first + Math.max(0, own.length - 1 - reading.at) };
}

/**
 * A scale that a journal declares: `1 b2 3 4 5 b6 7`, or `cents 0 150 300 …` above the tonic; behind `down` the falling
 * form, where it differs, with as many notes and in the same unit. Spaces or commas part the words; a closing `8` or
 * `1200` is welcome and adds nothing.
 */
export function declaredKind(name: string, text: string): DeclaredKind {
  const words = text.split(/[\s,]+/u).filter((word) => word !== "");
  const start = UP.test(words[0] ?? "") ? 1 : 0;
  const turn = words.findIndex((word) => DOWN.test(word));
  const rising = words.slice(start, turn < 0 ? undefined : turn);
  const inCents = CENTS.test(rising[0] ?? "");
  const reading = (inCents ? readCents : readDegrees)(inCents ? rising.slice(1) : rising, start + Number(inCents));
  if (!reading.ok) return reading;
  const { degrees } = reading;
  if (degrees.length < 2) return refusal(declaredKindTexts.twoNotes, start + rising.length);
  if (degrees.length > MOST_NOTES) return refusal(declaredKindTexts.atMost(MOST_NOTES), start + MOST_NOTES);
  const back = turn < 0 ? undefined : readForm(words.slice(turn + 1), turn + 1, inCents);
  if (back && !back.ok) return back;
  const falling = back?.degrees;
  if (falling && falling.length !== degrees.length)
    return refusal(declaredKindTexts.unequalWays(degrees.length, falling.length), turn);
  const signature = signatureRule(degrees) ?? (falling ? signatureRule(falling) : null);
  const sentence = declaredKindTexts.sentence(name, words.slice(0, 2 * MOST_NOTES + 5).join(" "));
  const kind: ScaleKind = {
    id: name,
    names: [name],
    degrees,
    ...(falling && { falling }),
    family: "declared",
    signature,
    otherSignatures: { ...(signature ? {} : { none: true }), onTonic: modesOf(degrees) },
    sentence,
  };
  return { ok: true, kind };
}
