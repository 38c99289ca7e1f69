import { describeAcceptedSignature } from "../checks/signature-claim.ts";
import type { Conventions } from "../journal/conventions.ts";
import { instrumentOf } from "../journal/conventions.ts";
import { subjectToPlay } from "../journal/to-play.ts";
import { chordById } from "../music/chord.ts";
import { type ExerciseInput, exercise } from "../music/exercise.ts";
import { type NoteName, nameAtFifths, printName } from "../music/note.ts";
import { describeFifths, parallelSignature, signatureAccidentals } from "../music/signature.ts";
import { printSteps } from "../music/steps.ts";
import type { SubjectMeaning } from "../syntax/meaning.ts";
import { explainKind, sentenceCase } from "./explain.ts";
import { tuningOf } from "./hover-tuning.ts";
import { escapeMarkdown } from "./markdown.ts";
import { collectionWords, relatedWords } from "./related-words.ts";

export type Explain = "signature" | "steps" | "both" | "none";

/** The most notes that a hover writes out. */
const MOST_NOTES = 64;

/** Names of notes, parted by spaces; a long row is cut. */
export function noteNames(notes: readonly NoteName[]): string {
  return cutRow(notes.map(printName));
}

/** A row of words, cut where it is too long to be read. */
export function cutRow(words: readonly (string | number)[]): string {
  return words.length > MOST_NOTES ? `${words.slice(0, MOST_NOTES).join(" ")} …` : words.join(" ");
}

/** What theory says of an exercise: its notes, its signature and its steps, each as one line of Markdown. */
export function theoryOf(input: ExerciseInput, explain: Explain): readonly string[] {
  if (explain === "none") return [];
  return [
    ...notesOf(input),
    ...(explain === "steps" ? [] : [...signatureOf(input), ...relationsOf(input.subject)]),
    ...(explain === "signature" ? [] : stepsIn(input)),
  ];
}

/** The same of a subject by itself, over an octave. */
export function theoryOfSubject(
  subject: SubjectMeaning,
  conventions: Conventions,
  explain: Explain,
): readonly string[] {
  const played = subjectToPlay(subject, 0, conventions);
  if (!played || explain === "none") return [];
  const input = { subject: played, instrument: instrumentOf(conventions.instrument, conventions) };
  return [...theoryOf(input, explain), ...tuningOf(input, conventions)];
}

/** What kind of scale or chord it is, in a sentence. */
export function sentenceOf(subject: SubjectMeaning, conventions: Conventions): string | undefined {
  if (subject.type === "chord") return chordById(subject.chord)?.sentence;
  if (subject.type !== "scale") return undefined;
  if (!subject.declared) return explainKind(subject.kind, subject.unsaid);
  const played = subjectToPlay(subject, 0, conventions);
  const sentence = played?.type === "scale" ? played.kind.sentence : undefined;
  return sentence && escapeMarkdown(sentence);
}

function notesOf(input: ExerciseInput): string[] {
  const { up, down } = exercise({ ...input, pattern: "straight", variant: undefined, direction: "up" });
  const rising = noteNames(up);
  if (rising === "") return [];
  const falling = noteNames(down.toReversed());
  if (falling === rising) return [`Notes: ${rising}`];
  return [`Notes going up: ${rising}`, `Going down: ${noteNames(down)}`];
}

function signatureOf({ subject }: ExerciseInput): string[] {
  const { signature } = exercise({ subject });
  if (!signature) return ["Signature: none, it belongs to no key"];
  const own = `Signature: ${signatureInFull(signature.fifths)}`;
  const parallel = subject.type === "scale" ? parallelSignature(subject.tonic, subject.kind) : null;
  if (subject.type !== "scale" || !parallel || parallel.fifths === signature.fifths) return [own];
  const mode = subject.kind.signature?.parallel === 0 ? "major" : "minor";
  return [`${own}; also written with ${describeFifths(parallel.fifths)}, as ${printName(subject.tonic)} ${mode} is`];
}

/** Its relative and parallel keys, or for a symmetrical scale or chord which of the few it is. */
function relationsOf(subject: ExerciseInput["subject"]): string[] {
  const words = [relatedWords(subject), collectionWords(subject)].filter((each) => each !== undefined);
  return words.map(sentenceCase);
}

/** `6 sharps (F# C# G# D# A# E#)`. */
export function signatureInFull(fifths: number): string {
  const accidentals = signatureAccidentals(fifths);
  return accidentals.length ? `${describeFifths(fifths)} (${accidentals.join(" ")})` : describeFifths(fifths);
}

/** Steps belong to scales; a scale in cents has none that letters could say. */
function stepsIn(input: ExerciseInput): string[] {
  const { subject } = input;
  if (subject.type !== "scale" || subject.kind.degrees.some(({ cents }) => cents !== undefined)) return [];
  return [`Steps: ${printSteps(exercise({ subject }).steps, "TS")}`];
}

/** Which keys have a signature, and which of its own it is for what is practised. */
export function signatureHover(fifths: number, subject: ExerciseInput["subject"] | undefined): string {
  const name = (place: number): string => printName(nameAtFifths(place));
  const keys =
    Math.abs(fifths) > 7 ? "No key in use has it." : `${name(fifths)} major and ${name(fifths + 3)} minor have it.`;
  const what = subject && describeAcceptedSignature(fifths, subject);
  const opening = `${sentenceCase(signatureInFull(fifths))}. ${keys}`;
  return what ? `${opening} Here: ${what}.` : opening;
}

/** The notes of a row as they are played, and the degrees that they stand on. */
export function rowOf(input: ExerciseInput): { readonly degrees: string; readonly notes: string } {
  const { degrees, notes } = exercise(input);
  return { degrees: cutRow(degrees), notes: noteNames(notes) };
}
