import { sameName } from "../../music/notes/note.ts";
import { scaleNames } from "../../music/scales/scale.ts";
import type { ClaimedNote } from "../../syntax/line/line.ts";
import { type Finding, type FindingEdit, type FindingFix, finding } from "../finding.ts";
import { bestReading } from "./best-reading.ts";
import { checkChromaticSpelling, inPlayersConvention } from "./chromatic-spelling.ts";
import { type ClaimedExercise, patternName } from "./claimed-exercise.ts";
import { ownNotes } from "./leaps-reading.ts";
import {
  type Compared,
  codeOf,
  type Difference,
  differencesOf,
  enharmonicName,
  expectedText,
  findingOf,
  namesOf,
} from "./note-findings.ts";
import { styleInPlaceOf, styleOf } from "./note-style.ts";
import { noteTexts } from "./note-texts.ts";

export type { ClaimedExercise };

/** More findings than this on one list are told as one. */
const MOST_FINDINGS = 8;
/** The most notes that the message on a whole list shows. */
const SHOWN = 16;
/** The longest list that a fix writes out, in characters. */
const LONGEST_TEXT = 2000;

/** How many of the typed notes are not as they should be; notes missing in a row count as one. */
function countDiffering(differences: readonly Difference[]): number {
  return differences.reduce((sum, steps) => sum + (steps[0].type === "missing" ? 1 : steps.length), 0);
}

/** The one kind of difference that all are, if so. */
function onlyType(differences: readonly Difference[]): Difference[0]["type"] {
  const types = new Set(differences.map(([{ type }]) => type));
  return types.size === 1 ? [...types][0]! : "wrong";
}

function wholeMessage(compared: Compared, differences: readonly Difference[]): string {
  const { notes, claimed, best } = compared;
  const { subjectText } = claimed;
  const shown = namesOf(compared, best.reading.notes, SHOWN);
  const type = onlyType(differences);
  const what = best.reading.patterned ? noteTexts.inPattern(subjectText, patternName(claimed)) : subjectText;
  if (type === "spelling") {
    const other = enharmonicName(compared);
    return other ? noteTexts.spells(other, what, shown) : noteTexts.otherNames(what, shown);
  }
  const all = notes.length;
  if (best.reading.unordered) {
    const own = namesOf(compared, ownNotes(best.reading), SHOWN);
    return noteTexts.notIn(countDiffering(differences), all, subjectText, own);
  }
  if (type === "octave") return noteTexts.onlyOctaves(what, shown);
  if (type === "missing" || type === "extra") return noteTexts.otherLength(what, shown, best.reading.notes.length, all);
  return noteTexts.differ(Math.min(all, countDiffering(differences)) || all, all, what, shown);
}

/** Note for note where none is missing or too many, so that what stands between them stays. */
function wholeEdits(compared: Compared): FindingEdit[] {
  const { notes, best, style } = compared;
  const { steps } = best.alignment;
  const isOneToOne = steps.length > 0 && steps.every(({ type }) => type !== "missing" && type !== "extra");
  if (!isOneToOne) {
    const text = best.reading.notes.map((expected) => expectedText(compared, expected, style)).join(" ");
    return [{ start: notes[0]!.start, end: notes.at(-1)!.end, text }];
  }
  return steps.flatMap(({ type, typed, expected }) => {
    const note = notes[typed]!;
    if (type === "same") return [];
    const text = expectedText(compared, best.reading.notes[expected]!, styleInPlaceOf(note, style));
    return [{ start: note.start, end: note.end, text }];
  });
}

/** None for leaps that are mostly wrong: what was meant by them nobody can tell. */
function wholeFixes(compared: Compared, type: Difference[0]["type"]): FindingFix[] {
  if (compared.best.reading.unordered && type !== "spelling") return [];
  const edits = wholeEdits(compared);
  const length = edits.reduce((sum, { text }) => sum + text.length, 0);
  if (length > LONGEST_TEXT) return [];
  return [{ title: noteTexts.writeNotes(compared.claimed.subjectText), safe: false, edits }];
}

function wholeFinding(compared: Compared, differences: readonly Difference[]): Finding {
  const { notes, best } = compared;
  const whole = { start: notes[0]!.start, end: notes.at(-1)!.end };
  const type = onlyType(differences);
  return finding(codeOf(type, best), whole, wholeMessage(compared, differences), wholeFixes(compared, type));
}

/**
 * One octave of a scale by its own names, up or up and down, with or without the closing tonic: what nearly
 * every list is, and told at a glance. Any other list is compared with all that it may be.
 */
function isWrittenOut(notes: readonly ClaimedNote[], { subject, pattern, direction, reach }: ClaimedExercise): boolean {
  if (subject.type !== "scale" || pattern !== undefined || direction !== undefined || reach !== undefined) return false;
  const up = scaleNames(subject.tonic, subject.kind, "up");
  const down = scaleNames(subject.tonic, subject.kind, "down");
  const octave = up.length;
  if (notes.length !== octave && notes.length !== octave + 1 && notes.length !== 2 * octave + 1) return false;
  return notes.every(({ note }, i) => {
    const expected = i < octave ? up[i]! : i === octave ? up[0]! : down[2 * octave - i]!;
    return note !== undefined && note.octave === undefined && sameName(note, expected);
  });
}

/**
 * Whether a list is the scale, arpeggio or pattern that it stands beside; syntaxes/FORMAT.md, "Claims". At most eight
 * findings: a list of which more than half differs, or that is a respelling throughout, is told as one. Of leaps each
 * note is looked at by itself, as their order is not to be known.
 */
export function checkNoteList(notes: readonly ClaimedNote[], claimed: ClaimedExercise): readonly Finding[] {
  if (isWrittenOut(notes, claimed)) return [];
  const found = notes.length === 0 ? undefined : bestReading(notes, claimed);
  if (!found) return [];
  const best = found.reading.unordered ? found : inPlayersConvention(notes, found);
  const style = styleOf(notes, claimed.names);
  const compared: Compared = { notes, claimed, best, style };
  if (best.alignment.differences === 0) {
    return best.reading.unordered ? [] : checkChromaticSpelling(notes, best, style);
  }
  const differences = differencesOf(best.alignment.steps);
  const isMostlyOff = differences.length > 1 && 2 * countDiffering(differences) > notes.length;
  if (differences.length === 0 || differences.length > MOST_FINDINGS || isMostlyOff) {
    return [wholeFinding(compared, differences)];
  }
  return differences.map((difference) => findingOf(compared, difference));
}
