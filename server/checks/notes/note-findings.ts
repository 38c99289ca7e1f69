import { ordinal } from "../../music/scales/scale.ts";
import type { ClaimedNote } from "../../syntax/line/line.ts";
import type { Code } from "../codes.ts";
import { type Finding, type FindingFix, finding, quoted, replacement } from "../finding.ts";
import type { AlignmentStep } from "./alignment.ts";
import type { BestReading } from "./best-reading.ts";
import { type ClaimedExercise, type ExpectedNote, patternName } from "./claimed-exercise.ts";
import { belongs, reason, wayOf } from "./note-reasons.ts";
import { hasStrokes, type NoteStyle, shownName, styleInPlaceOf, writtenNote } from "./note-style.ts";
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
  const more = expected.length - names.length;
  return names.join(" ") + (more > 0 ? ` and ${more} more` : "");
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

/** Patterns named by what each of their figures is. */
const NAMED_BY_FIGURE = /^(?:thirds|fourths|fifths|sixths|sevenths|octaves|tenths|triads)$/;

/** `The fourth third going up is F A`; of other patterns, and far up, `Figure 3 of threes, going up, is E F G`. */
function figureClause(compared: Compared, expected: ExpectedNote): string {
  const whole = figureOf(compared, expected).map((i) => compared.best.reading.notes[i]!);
  const way = expected.falling ? "going down" : "going up";
  const pattern = patternName(compared.claimed);
  const place = expected.figure + 1;
  const which =
    NAMED_BY_FIGURE.test(pattern) && place <= 20
      ? `The ${ordinal(place)} ${pattern.slice(0, -1)} ${way}`
      : `${whole.length === 1 ? "Note" : "Figure"} ${place} of ${pattern}, ${way},`;
  return `${which} is ${namesOf(compared, whole)}`;
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
  const german =
    claimed.names.words === null && /^h/iu.test(typed.text)
      ? " (H is German for B: declare `names german` to use it)"
      : "";
  const signs = /[#♯b♭x𝄪𝄫]{3}/u.test(typed.text) ? " (a note has at most two sharps or flats)" : "";
  const none = `${quoted(typed.text)} is not a note name${german}${signs}`;
  if (compared.best.reading.unordered) return `${none}.`;
  return `${none}: ${claimed.subjectText} has ${shownName(expected.note, style)} here.`;
}

function wrongMessage(compared: Compared, typed: ClaimedNote, expected: ExpectedNote, at: number): string {
  const { claimed, best, style } = compared;
  const { note } = typed;
  if (!note) return noNoteMessage(compared, typed, expected);
  const [right, wrong] = [shownName(expected.note, style), typedName(typed, style)];
  if (expected.resolves) return `${claimed.subjectText} resolves on ${right}, its tonic, not on ${wrong}.`;
  if (best.reading.patterned)
    return `${figureClause(compared, expected)}, not ${figureTyped(compared, expected, typed)}.`;
  const way = wayOf(best.reading, expected);
  if (way === "" && belongs(best.reading, note)) {
    const before = best.reading.notes[at - 1];
    if (!before) return `${claimed.subjectText} begins on ${right} here, not on ${wrong}.`;
    return `After ${shownName(before.note, style)}, ${claimed.subjectText} goes to ${right}, not to ${wrong}.`;
  }
  return `${claimed.subjectText} has ${right}${way}, not ${wrong}: ${reason(best.reading, expected, note, style)}.`;
}

function spellingMessage({ claimed, best, style }: Compared, typed: ClaimedNote, expected: ExpectedNote): string {
  const [right, wrong] = [shownName(expected.note, style), typedName(typed, style)];
  if (expected.resolves) return `${claimed.subjectText} resolves on ${right}, its tonic, not on ${wrong}.`;
  const way = wayOf(best.reading, expected);
  return `${claimed.subjectText} has ${right}${way}, not ${wrong}: ${reason(best.reading, expected, typed.note!, style)}.`;
}

function octaveMessage(compared: Compared, typed: ClaimedNote, expected: ExpectedNote): string {
  const strokes = hasStrokes(typed.text);
  const right = expectedText(compared, expected, {
    ...compared.style,
    octaves: strokes ? "strokes" : "numbers",
    lower: strokes && /^\p{Ll}/u.test(typed.text),
    spelling: "plain",
  });
  const wrong = quoted(typed.text);
  const [last, first] = (["B", "C"] as const).map((letter) => shownName({ letter, alter: 0 }, compared.style));
  const hint = "BC".includes(expected.note.letter)
    ? ` ${strokes ? "Octaves" : "Octave numbers"} change from ${last} to ${first}.`
    : "";
  return `${wrong} is the right note in the wrong octave: write ${right}.${hint}`;
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
  const fix = replacement(`Change ${quoted(typed.text)} to ${text}`, typed, text, step.type === "spelling");
  const isGuess = best.reading.unordered === true && !typed.note;
  return finding(codeOf(step.type, best), typed, message, isGuess ? [] : [fix]);
}

function whereMissing({ notes, style }: Compared, next: number): string {
  const [before, after] = [notes[next - 1], notes[next]].map((note) => note && typedName(note, style));
  if (before && after) return `between ${before} and ${after}`;
  return before ? `after ${before}` : `before ${after}`;
}

function missing(compared: Compared, difference: Difference): Finding {
  const { notes, claimed, best, style } = compared;
  const next = difference[0].typed;
  const gap = difference.map(({ expected }) => best.reading.notes[expected]!);
  const names = `${namesOf(compared, gap)} ${gap.length === 1 ? "is" : "are"} missing ${whereMissing(compared, next)}`;
  const first = difference[0].expected;
  const around = best.reading.notes.slice(Math.max(0, first - 1), first + Math.min(gap.length, NAMED) + 1);
  const message = best.reading.patterned
    ? `${figureClause(compared, gap[0]!)}: ${names}.`
    : `${names}: ${claimed.subjectText} goes ${namesOf(compared, around, NAMED + 2)}.`;
  const text = gap.map((expected) => expectedText(compared, expected, style)).join(" ");
  const [place, at] = notes[next] ? [notes[next], notes[next].start] : [notes.at(-1)!, notes.at(-1)!.end];
  const written = notes[next] ? `${text} ` : ` ${text}`;
  const title = gap.length === 1 ? `Put in ${text}` : `Put in the ${gap.length} missing notes`;
  const fixes = text.length > LONGEST_TEXT ? [] : [replacement(title, { start: at, end: at }, written)];
  return finding(codeOf("missing", best), place, message, fixes);
}

/** Where the list should go on: `it goes from A to Bb`. */
function goesOn(compared: Compared, at: number): string {
  const { best, style } = compared;
  const [before, after] = [best.reading.notes[at - 1], best.reading.notes[at]].map(
    (expected) => expected && shownName(expected.note, style),
  );
  if (before && after) return `goes from ${before} to ${after}`;
  return before ? `ends on ${before}` : `begins on ${after}`;
}

function extraMessage(compared: Compared, difference: Difference): string {
  const { notes, claimed, best, style } = compared;
  const typed = difference.slice(0, NAMED).map((step) => typedName(notes[step.typed]!, style));
  const more = difference.length - typed.length;
  const names = typed.join(" ") + (more > 0 ? ` and ${more} more` : "");
  const at = difference[0].expected;
  const near = best.reading.notes[at] ?? best.reading.notes.at(-1)!;
  const verb = difference.length === 1 ? "is one too many" : "are too many";
  if (best.reading.patterned) return `${figureClause(compared, near)}: ${names} ${verb} here.`;
  const only = difference.length === 1 ? notes[difference[0].typed]!.note : undefined;
  if (only && !belongs(best.reading, only)) {
    return `${claimed.subjectText} has no ${names}: here it ${goesOn(compared, at)}.`;
  }
  return `${names} ${verb}: here ${claimed.subjectText} ${goesOn(compared, at)}.`;
}

function removal(notes: readonly ClaimedNote[], first: number, last: number): FindingFix[] {
  const [before, after] = [notes[first - 1], notes[last + 1]];
  if (!before && !after) return [];
  const start = before ? before.end : notes[first]!.start;
  const end = before ? notes[last]!.end : after!.start;
  const title = first === last ? `Take out ${quoted(notes[first]!.text)}` : `Take out ${last - first + 1} notes`;
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
