import type { ClaimedNote } from "../../syntax/line/line.ts";
import type { Code } from "../codes.ts";
import { type Finding, type FindingFix, finding, quoted, replacement } from "../finding.ts";
import { listTexts } from "../list-texts.ts";
import type { AlignmentStep } from "./alignment.ts";
import type { BestReading } from "./best-reading.ts";
import { type ClaimedExercise, type ExpectedNote, patternName } from "./claimed-exercise.ts";
import { belongs, reason, wayOf } from "./note-reasons.ts";
import { hasStrokes, type NoteStyle, shownName, styleInPlaceOf, writtenNote } from "./note-style.ts";
import { noteTexts } from "./note-texts.ts";
import { chordName, scaleName } from "./subject-name.ts";

/** All that a finding on a list is made from. */
export interface Compared {
  readonly notes: readonly ClaimedNote[];
  readonly claimed: ClaimedExercise;
  readonly best: BestReading;
  readonly style: NoteStyle;
}

/** One difference, or a run of missing or extra notes. */
export type Difference = readonly [AlignmentStep, ...AlignmentStep[]];

/** The most missing notes that a message names, and the most characters that a fix writes. */
const NAMED = 8;
const LONGEST_TEXT = 2000;

/** The differences in order; notes that are missing, or too many, in a row are one. */
export function differencesOf(steps: readonly AlignmentStep[]): Difference[] {
  const differences: [AlignmentStep, ...AlignmentStep[]][] = [];
  let before: AlignmentStep | undefined;
  for (const step of steps) {
    const goesOn = before?.type === step.type && (step.type === "missing" || step.type === "extra");
    if (goesOn) differences.at(-1)!.push(step);
    else if (step.type !== "same") differences.push([step]);
    before = step;
  }
  return differences;
}

/** The code for one kind of difference: beside a pattern, all but spellings are `pattern-notes`. */
export function codeOf(type: AlignmentStep["type"], { reading }: BestReading): Code {
  if (type === "spelling") return "scale-spelling";
  if (reading.patterned) return "pattern-notes";
  if (type === "missing") return "missing-note";
  if (type === "extra") return "extra-note";
  return reading.subject.type === "chord" ? "arpeggio-note" : "scale-note";
}

/** The expected note as it stands in the player's list: its octave number counted as theirs. */
export function expectedText({ best }: Compared, { note }: ExpectedNote, style: NoteStyle): string {
  return writtenNote({ ...note, octave: note.octave + best.octaves }, style);
}

/** `F A`, or the first of many. */
export function namesOf({ style }: Compared, expected: readonly ExpectedNote[], most = NAMED): string {
  const names = expected.slice(0, most).map(({ note }) => shownName(note, style));
  return withMore(names.join(" "), expected.length - names.length);
}

function withMore(names: string, more: number): string {
  return more > 0 ? listTexts.more(names, more) : names;
}

function typedName({ note, text }: ClaimedNote, style: NoteStyle): string {
  return note ? shownName(note, style) : quoted(text);
}

/** The notes of the figure that one belongs to, by their places among those expected. */
function figureOf({ best: { reading } }: Compared, { falling, figure }: ExpectedNote): readonly number[] {
  return [...reading.notes.keys()].filter((i) => {
    const each = reading.notes[i]!;
    return each.figure === figure && each.falling === falling;
  });
}

/** `The fourth third going up is F A`; of other patterns, and far up, `Figure 3 of threes, going up, is E F G`. */
function figureClause(compared: Compared, expected: ExpectedNote): string {
  const whole = figureOf(compared, expected).map((i) => compared.best.reading.notes[i]!);
  const way = expected.falling ? "down" : "up";
  const pattern = patternName(compared.claimed);
  const place = expected.figure + 1;
  const notes = namesOf(compared, whole);
  const named = place <= 20 ? noteTexts.figures.get(pattern) : undefined;
  if (named) return noteTexts.figureByName(place, named, way, notes);
  return (whole.length === 1 ? noteTexts.noteOfPattern : noteTexts.figure)(place, pattern, way, notes);
}

/** The same figure as it was typed; a note of it alone where others are missing, or too many. */
function figureTyped(compared: Compared, expected: ExpectedNote, typed: ClaimedNote): string {
  const { notes, best, style } = compared;
  const figure = figureOf(compared, expected);
  const steps = best.alignment.steps.filter((step) => figure.includes(step.expected));
  const isWhole = steps.length === figure.length && steps.every(({ type }) => type !== "extra" && type !== "missing");
  const shown = isWhole ? steps.map((step) => notes[step.typed]!) : [typed];
  return shown.map((note) => typedName(note, style)).join(" ");
}

function noNoteMessage(compared: Compared, typed: ClaimedNote, expected: ExpectedNote): string {
  const { claimed, style } = compared;
  const german = claimed.names.words === null && /^h/iu.test(typed.text) ? noteTexts.germanB : "";
  const signs = /[#♯b♭x𝄪𝄫]{3}/u.test(typed.text) ? noteTexts.tooManySigns : "";
  const none = noteTexts.notANote(quoted(typed.text)) + german + signs;
  if (compared.best.reading.unordered) return `${none}.`;
  return noteTexts.hasHere(none, claimed.subjectText, shownName(expected.note, style));
}

function wrongMessage(compared: Compared, typed: ClaimedNote, expected: ExpectedNote, at: number): string {
  const { claimed, best, style } = compared;
  const { note } = typed;
  if (!note) return noNoteMessage(compared, typed, expected);
  const [right, wrong] = [shownName(expected.note, style), typedName(typed, style)];
  if (expected.resolves) return noteTexts.resolves(claimed.subjectText, right, wrong);
  if (best.reading.patterned)
    return noteTexts.figureNot(figureClause(compared, expected), figureTyped(compared, expected, typed));
  const way = wayOf(best.reading, expected);
  if (!way && belongs(best.reading, note)) {
    const before = best.reading.notes[at - 1];
    if (!before) return noteTexts.begins(claimed.subjectText, right, wrong);
    return noteTexts.goesAfter(shownName(before.note, style), claimed.subjectText, right, wrong);
  }
  return noteTexts.has(claimed.subjectText, right, way, wrong, reason(best.reading, expected, note, style));
}

function spellingMessage({ claimed, best, style }: Compared, typed: ClaimedNote, expected: ExpectedNote): string {
  const [right, wrong] = [shownName(expected.note, style), typedName(typed, style)];
  if (expected.resolves) return noteTexts.resolves(claimed.subjectText, right, wrong);
  const way = wayOf(best.reading, expected);
  return noteTexts.has(claimed.subjectText, right, way, wrong, reason(best.reading, expected, typed.note!, style));
}

function octaveMessage(compared: Compared, typed: ClaimedNote, expected: ExpectedNote): string {
  const strokes = hasStrokes(typed.text);
  const right = expectedText(compared, expected, {
    ...compared.style,
    octaves: strokes ? "strokes" : "numbers",
    lower: strokes && /^\p{Ll}/u.test(typed.text),
    spelling: "plain",
  });
  const message = noteTexts.wrongOctave(quoted(typed.text), right);
  if (!"BC".includes(expected.note.letter)) return message;
  const [last, first] = (["B", "C"] as const).map((letter) => shownName({ letter, alter: 0 }, compared.style));
  return message + (strokes ? noteTexts.octavesChange : noteTexts.octaveNumbersChange)(last!, first!);
}

function replaced(compared: Compared, step: AlignmentStep): Finding {
  const { notes, best, style } = compared;
  const typed = notes[step.typed]!;
  const expected = best.reading.notes[step.expected]!;
  const text = expectedText(compared, expected, styleInPlaceOf(typed, style));
  const message =
    step.type === "spelling"
      ? spellingMessage(compared, typed, expected)
      : step.type === "octave"
        ? octaveMessage(compared, typed, expected)
        : wrongMessage(compared, typed, expected, step.expected);
  const fix = replacement(noteTexts.change(quoted(typed.text), text), typed, text, step.type === "spelling");
  const isGuess = best.reading.unordered === true && !typed.note;
  return finding(codeOf(step.type, best), typed, message, isGuess ? [] : [fix]);
}

function whereMissing({ notes, style }: Compared, next: number): string {
  const [before, after] = [notes[next - 1], notes[next]].map((note) => note && typedName(note, style));
  if (before && after) return noteTexts.between(before, after);
  return before ? noteTexts.after(before) : noteTexts.before(after!);
}

function missing(compared: Compared, difference: Difference): Finding {
  const { notes, claimed, best, style } = compared;
  const next = difference[0].typed;
  const gap = difference.map(({ expected }) => best.reading.notes[expected]!);
  const names = noteTexts.missing(namesOf(compared, gap), gap.length, whereMissing(compared, next));
  const first = difference[0].expected;
  const around = best.reading.notes.slice(Math.max(0, first - 1), first + Math.min(gap.length, NAMED) + 1);
  const message = best.reading.patterned
    ? noteTexts.figureMissing(figureClause(compared, gap[0]!), names)
    : noteTexts.goes(names, claimed.subjectText, namesOf(compared, around, NAMED + 2));
  const text = gap.map((expected) => expectedText(compared, expected, style)).join(" ");
  const [place, at] = notes[next] ? [notes[next], notes[next].start] : [notes.at(-1)!, notes.at(-1)!.end];
  const written = notes[next] ? `${text} ` : ` ${text}`;
  const title = gap.length === 1 ? noteTexts.putIn(text) : noteTexts.putInAll(gap.length);
  const fixes = text.length > LONGEST_TEXT ? [] : [replacement(title, { start: at, end: at }, written)];
  return finding(codeOf("missing", best), place, message, fixes);
}

/** Where the list should go on: `here it goes from A to Bb`. */
function goesOn(compared: Compared, at: number, exercise?: string): string {
  const { best, style } = compared;
  const [before, after] = [best.reading.notes[at - 1], best.reading.notes[at]].map(
    (expected) => expected && shownName(expected.note, style),
  );
  if (before && after) return noteTexts.goesFrom(before, after, exercise);
  return before ? noteTexts.endsOn(before, exercise) : noteTexts.beginsOn(after!, exercise);
}

function extraMessage(compared: Compared, difference: Difference): string {
  const { notes, claimed, best, style } = compared;
  const count = difference.length;
  const typed = difference.slice(0, NAMED).map((step) => typedName(notes[step.typed]!, style));
  const names = withMore(typed.join(" "), count - typed.length);
  const at = difference[0].expected;
  const near = best.reading.notes[at] ?? best.reading.notes.at(-1)!;
  if (best.reading.patterned) return noteTexts.figureTooMany(figureClause(compared, near), names, count);
  const only = count === 1 ? notes[difference[0].typed]!.note : undefined;
  if (only && !belongs(best.reading, only)) return noteTexts.hasNo(claimed.subjectText, names, goesOn(compared, at));
  return noteTexts.tooMany(names, count, goesOn(compared, at, claimed.subjectText));
}

function removal(notes: readonly ClaimedNote[], first: number, last: number): FindingFix[] {
  const [before, after] = [notes[first - 1], notes[last + 1]];
  if (!before && !after) return [];
  const start = before ? before.end : notes[first]!.start;
  const end = before ? notes[last]!.end : after!.start;
  const title = first === last ? noteTexts.takeOut(quoted(notes[first]!.text)) : noteTexts.takeOutAll(last - first + 1);
  return [replacement(title, { start, end }, "")];
}

function extra(compared: Compared, difference: Difference): Finding {
  const { notes, best } = compared;
  const [first, last] = [difference[0].typed, difference.at(-1)!.typed];
  const stretch = { start: notes[first]!.start, end: notes[last]!.end };
  return finding(codeOf("extra", best), stretch, extraMessage(compared, difference), removal(notes, first, last));
}

/** The finding for one difference. */
export function findingOf(compared: Compared, difference: Difference): Finding {
  const [step] = difference;
  if (step.type === "missing") return missing(compared, difference);
  if (step.type === "extra") return extra(compared, difference);
  return replaced(compared, step);
}

/** The scale that the list spells from another name of its tonic: `Gb major` for F# major. */
export function enharmonicName({ notes, best, claimed: { names } }: Compared): string | undefined {
  const { subject } = best.reading;
  const tonicStep = best.alignment.steps.find(({ expected, type }) => {
    return type === "spelling" && best.reading.notes[expected]!.degree === 1;
  });
  const name = tonicStep && notes[tonicStep.typed]!.note;
  return name && (subject.type === "chord" ? chordName(subject, name, names) : scaleName(subject, name, names));
}
