import type { NoteNames } from "../../music/notes/note-names.ts";
import type { ChordToPlay, ScaleToPlay } from "../../music/patterns/notes-to-play.ts";
import { kindById } from "../../music/scales/kinds.ts";
import { ordinal, scaleNames } from "../../music/scales/scale.ts";
import { parseSteps, printSteps, type StepStyle, stepsOf } from "../../music/scales/steps.ts";
import { type Finding, finding, quoted, replacement } from "../finding.ts";
import { distanceInWords } from "./note-reasons.ts";

export interface StepClaim {
  readonly start: number;
  /** The end of the words too. */
  readonly end: number;
  /** Without the word `steps`, which may stand before them between `start` and `end`. */
  readonly words: string;
}

/** Degrees are named in words up to the twelfth. */
const NAMED = 12;

function styleOf(words: string): StepStyle {
  if (/[WH]/iu.test(words)) return "WH";
  return /[TS]/iu.test(words) || !/\d/u.test(words) ? "TS" : "digits";
}

/** `TTSTTTS` where the player wrote them together, else with spaces. */
function inStyle(steps: readonly number[], words: string): string {
  const text = printSteps(steps, styleOf(words));
  return /[\s,|-]/u.test(words.trim()) ? text : text.replaceAll(" ", "");
}

function fixTo(claim: StepClaim, right: readonly number[]): Finding["fixes"] {
  const { start, end, words } = claim;
  const text = inStyle(right, words);
  const marked = end - start === words.length ? text : `steps ${text}`;
  return [replacement(`Change to ${text}`, claim, marked)];
}

/** Where both go the same way the longest: the formula that the player meant, of two that are right. */
function nearest(formulas: readonly (readonly number[])[], claimed: readonly number[]): readonly number[] {
  const agreement = (formula: readonly number[]): number => {
    const differs = formula.findIndex((step, index) => step !== claimed[index]);
    return differs === -1 ? formula.length : differs;
  };
  return formulas.reduce((best, formula) => (agreement(formula) > agreement(best) ? formula : best));
}

function formulasOf({ kind }: ScaleToPlay): number[][] {
  if (kind.id !== "octatonic") return [stepsOf(kind)];
  return ["half-whole", "whole-half"].map((id) => stepsOf(kindById(id)!));
}

function place(index: number): string {
  return index < NAMED ? `the ${ordinal(index + 1)} step` : `step ${index + 1}`;
}

function namesAround({ tonic, kind }: ScaleToPlay, index: number, { name }: NoteNames): string {
  const notes = scaleNames(tonic, kind, "up");
  return `${name(notes[index]!)} to ${name(notes[index + 1] ?? notes[0]!)}`;
}

function howItDiffers(
  subject: ScaleToPlay,
  subjectText: string,
  right: readonly number[],
  claimed: readonly number[],
  names: NoteNames,
): string {
  const at = right.findIndex((step, index) => claimed[index] !== undefined && step !== claimed[index]);
  const formula = printSteps(right, "TS");
  if (at === -1) {
    const count = `${subjectText} has ${right.length} steps up to the octave, and ${claimed.length} stand here`;
    return `${count}: ${formula}.`;
  }
  // An octatonic scale read the other way round has other notes than `octatonic` names.
  const where = subject.kind.id === "octatonic" ? "" : `, ${namesAround(subject, at, names)},`;
  const missing =
    right.length === claimed.length ? "" : ` It has ${right.length} steps, and ${claimed.length} stand here.`;
  const falls = subject.kind.id === "melodic minor" ? " Steps are those of the rising form." : "";
  return `${sentence(`${place(at)} of ${subjectText}`)}${where} is ${distanceInWords(right[at]!)}, not ${distanceInWords(claimed[at]!)}: ${formula}.${missing}${falls}`;
}

function sentence(words: string): string {
  return words[0]!.toUpperCase() + words.slice(1);
}

/** Whether claimed steps, read upward, are those of the scale's rising form. Chords have none. */
export function checkSteps(
  claim: StepClaim,
  subject: ScaleToPlay | ChordToPlay,
  subjectText: string,
  names: NoteNames,
): readonly Finding[] {
  if (subject.type === "chord") {
    const message = `${subjectText} has no step formula: steps belong to scales, and a chord moves by thirds and more.`;
    return [finding("step-formula", claim, message)];
  }
  const formulas = formulasOf(subject);
  const claimed = parseSteps(claim.words);
  if (!claimed) {
    const message = `${quoted(claim.words)} cannot be read as steps: write T and S, W and H, or semitones as digits (three are A or 3). ${subjectText} has ${printSteps(formulas[0]!, "TS")}.`;
    return [finding("step-formula", claim, message, fixTo(claim, formulas[0]!))];
  }
  if (formulas.some((formula) => formula.join() === claimed.join())) return [];
  const right = nearest(formulas, claimed);
  return [
    finding("step-formula", claim, howItDiffers(subject, subjectText, right, claimed, names), fixTo(claim, right)),
  ];
}
