import { areInCents } from "../../music/notes/degree.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import type { ChordToPlay, ScaleToPlay } from "../../music/patterns/notes-to-play.ts";
import type { Direction } from "../../music/patterns/reach.ts";
import { kindById } from "../../music/scales/kinds.ts";
import { degreesOf, scaleNames } from "../../music/scales/scale.ts";
import {
  centsOf,
  printLike,
  printSteps,
  readSteps,
  type StepStyle,
  stepsOf,
  type WrittenSteps,
} from "../../music/scales/steps.ts";
import { type Finding, finding, quoted, replacement } from "../finding.ts";
import { fixTexts } from "../fix-texts.ts";
import { claimTexts } from "./claim-texts.ts";
import { distanceInWords } from "./note-reasons.ts";

export interface StepClaim {
  readonly start: number;
  /** The end of the words too. */
  readonly end: number;
  /** Without the word `steps`, which may stand before them between `start` and `end`. */
  readonly words: string;
}

function fixTo(claim: StepClaim, text: string): Finding["fixes"] {
  const { start, end, words } = claim;
  const marked = end - start === words.length ? text : `steps ${text}`;
  return [replacement(fixTexts.changeTo(text), claim, marked)];
}

/** Where both go the same way the longest: the formula that the player meant, of two that are right. */
function nearest(formulas: readonly Formula[], claimed: readonly number[]): Formula {
  const agreement = ({ steps }: Formula): number => {
    const differs = steps.findIndex((step, index) => step !== claimed[index]);
    return differs === -1 ? steps.length : differs;
  };
  return formulas.reduce((best, formula) => (agreement(formula) > agreement(best) ? formula : best));
}

/** A formula that is right, and the way in which it is read. */
interface Formula {
  readonly steps: readonly number[];
  readonly falls: boolean;
}

/** Read upward; with `down` also downward, in the falling form. */
function formulasOf({ kind }: ScaleToPlay, direction: Direction | undefined): Formula[] {
  const kinds = kind.id === "octatonic" ? ["half-whole", "whole-half"].map((id) => kindById(id)!) : [kind];
  const rising = kinds.map((each) => ({ steps: stepsOf(each), falls: false }));
  if (direction !== "down") return rising;
  return [...rising, ...kinds.map((each) => ({ steps: stepsOf(each, "down").toReversed(), falls: true }))];
}

function namesAround(
  { tonic, kind }: ScaleToPlay,
  index: number,
  falls: boolean,
  { name }: NoteNames,
): readonly [string, string] {
  const rising = scaleNames(tonic, kind, falls ? "down" : "up");
  const notes = falls ? [rising[0]!, ...rising.toReversed()] : [...rising, rising[0]!];
  return [name(notes[index]!), name(notes[index + 1]!)];
}

/** `a minor third` where the scale leaves a letter out, as the pentatonic does; else as `distanceInWords`. */
function stepInWords({ tonic, kind }: ScaleToPlay, index: number, { steps, falls }: Formula): string {
  const degrees = degreesOf(kind, falls ? "down" : "up", tonic);
  const at = falls ? degrees.length - 1 - index : index;
  const letters = (degrees[at + 1]?.step ?? 7) - degrees[at]!.step;
  return distanceInWords(steps[index]!, letters);
}

function howItDiffers(
  subject: ScaleToPlay,
  subjectText: string,
  right: Formula,
  { steps: claimed }: WrittenSteps,
  shown: string,
  names: NoteNames,
): string {
  const { steps, falls } = right;
  const at = steps.findIndex((step, index) => claimed[index] !== undefined && step !== claimed[index]);
  if (at === -1) return claimTexts.countOfSteps(subjectText, steps.length, claimed.length, shown);
  // An octatonic scale read the other way round has other notes than `octatonic` names.
  const isOctatonic = subject.kind.id === "octatonic";
  const between = isOctatonic ? undefined : namesAround(subject, at, falls, names);
  const is = isOctatonic ? distanceInWords(steps[at]!) : stepInWords(subject, at, right);
  const isNot = distanceInWords(claimed[at]!);
  const missing = steps.length === claimed.length ? "" : claimTexts.andCount(steps.length, claimed.length);
  const rising = subject.kind.id === "melodic minor" && !falls ? claimTexts.risingForm : "";
  const way = falls ? "down" : "up";
  return claimTexts.step(at + 1, subjectText, way, between, is, isNot, shown) + missing + rising;
}

/** A scale in cents has steps in cents, as it was declared. */
function checkCents(claim: StepClaim, { kind }: ScaleToPlay, subjectText: string): readonly Finding[] {
  const right = centsOf(kind);
  const claimed = readSteps(claim.words);
  if (claimed?.style === "cents" && claimed.steps.join() === right.join()) return [];
  const shown = printSteps(right, "cents");
  return [finding("step-formula", claim, claimTexts.inCents(subjectText, shown), fixTo(claim, `cents ${shown}`))];
}

/**
 * Whether claimed steps are those of the scale: of the rising form upward, or, where it is played down, of the falling
 * one downward. Chords have none.
 */
export function checkSteps(
  claim: StepClaim,
  subject: ScaleToPlay | ChordToPlay,
  subjectText: string,
  names: NoteNames,
  direction?: Direction,
): readonly Finding[] {
  if (subject.type === "chord") {
    return [finding("step-formula", claim, claimTexts.noSteps(subjectText))];
  }
  if (areInCents(subject.kind.degrees)) return checkCents(claim, subject, subjectText);
  const formulas = formulasOf(subject, direction);
  const claimed = readSteps(claim.words);
  if (!claimed || claimed.style === "cents") {
    const shown = printSteps(formulas[0]!.steps, likelyStyle(claim.words));
    const message = claimTexts.stepsUnread(quoted(claim.words), subjectText, shown);
    return [finding("step-formula", claim, message, fixTo(claim, shown))];
  }
  if (formulas.some(({ steps }) => steps.join() === claimed.steps.join())) return [];
  const right = nearest(formulas, claimed.steps);
  const shown = printLike(right.steps, claimed);
  const message = howItDiffers(subject, subjectText, right, claimed, shown, names);
  return [finding("step-formula", claim, message, fixTo(claim, shown))];
}

/** The letters that words which cannot be read are nearest to. */
function likelyStyle(words: string): StepStyle {
  return /[WH]/iu.test(words) ? "WH" : "TS";
}
