import { bestReading } from "../../checks/notes/best-reading.ts";
import { rungsIn } from "../../checks/notes/claimed-exercise.ts";
import { subjectToPlay } from "../../journal/entry-exercise.ts";
import { notesHidden } from "../../journal/notes-hidden.ts";
import { subjectText } from "../../journal/subject-text.ts";
import { areInCents } from "../../music/notes/degree.ts";
import { modulo } from "../../music/notes/note.ts";
import type { ScaleKind } from "../../music/scales/kind.ts";
import { ordinal } from "../../music/scales/scale.ts";
import { centsOf, printLike, printSteps, readSteps, stepsOf } from "../../music/scales/steps.ts";
import type { Claim, ClaimedNote } from "../../syntax/line/line.ts";
import { claimedExercise } from "../explain/claimed-entry.ts";
import { escapedExtract, paragraphs } from "../explain/markdown.ts";
import { explainSignature } from "../explain/theory.ts";
import { claimTexts } from "./claim-texts.ts";
import { claimInMarkdown } from "./claimed-staff.ts";
import type { EntryAt } from "./entry.ts";

/** What is to be said of a claim, and of which columns. */
export interface ClaimHover {
  readonly start: number;
  readonly end: number;
  readonly markdown: string | undefined;
}

/** A claim, and for a note list the note of it at the column. */
export function claimHover(at: EntryAt, claim: Claim, character: number): ClaimHover | undefined {
  const { entry, journal, uri } = at;
  const conventions = journal.conventions(uri);
  const subject = entry.subject && subjectToPlay(entry.subject, entry.inversion ?? 0, conventions);
  const telling = { names: conventions.names, hidden: notesHidden(entry, conventions) };
  const stretch = { start: claim.start, end: claim.end };
  if (claim.type === "signature") return { ...stretch, markdown: explainSignature(claim.fifths, subject, telling) };
  if (claim.type === "steps") {
    const name = escapedExtract(subjectText(entry.subject!, conventions.names));
    const right = subject?.type === "scale" ? claimTexts.hasSteps(name, stepsLike(claim.words, subject.kind)) : "";
    return { ...stretch, markdown: claimTexts.steps + right };
  }
  const index = claim.notes.findLastIndex(({ start, end }) => start <= character && character <= end);
  const note = claim.notes[index];
  if (!note) return undefined;
  const markdown = paragraphs([noteHover(at, claim.notes, index), claimInMarkdown(at, claim.notes)]);
  return { start: note.start, end: note.end, markdown };
}

/** The steps of a kind as the player writes them. */
function stepsLike(words: string, kind: ScaleKind): string {
  if (areInCents(kind.degrees)) return claimTexts.cents(printSteps(centsOf(kind), "cents"));
  const written = readSteps(words);
  if (!written || written.style === "cents") return printSteps(stepsOf(kind), "TS");
  return printLike(stepsOf(kind), written);
}

function noteHover({ entry, journal, uri }: EntryAt, notes: readonly ClaimedNote[], index: number): string | undefined {
  const { note, text } = notes[index]!;
  if (!note) return claimTexts.noNote(escapedExtract(text));
  const claimed = claimedExercise(entry, journal.conventions(uri));
  const found = claimed && bestReading(notes, claimed);
  if (!claimed || !found) return undefined;
  const name = claimed.names.name(note);
  const { steps } = found.alignment;
  const step = steps.find((each) => each.typed === index && each.type !== "missing");
  const whole = escapedExtract(claimed.subjectText);
  const expected = step && step.type !== "extra" ? found.reading.notes[step.expected] : undefined;
  if (!expected) return claimTexts.oneMore(name, whole);
  if (expected.resolves) return claimTexts.resolves(claimed.names.name(expected.note), whole);
  const degree = modulo(expected.degree - 1, rungsIn(found.reading.subject, expected.falling).length) + 1;
  const placeOf = claimed.subject.type === "chord" ? claimTexts.chordNoteOf : claimTexts.degreeOf;
  const place = placeOf(ordinal(degree), whole);
  if (step!.type !== "same" && step!.type !== "octave")
    return claimTexts.shouldBe(name, claimed.names.name(expected.note), place);
  return claimTexts.is(name, place);
}
