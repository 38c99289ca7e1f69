import { acceptedSignatures, describeAcceptedSignature } from "../../checks/notes/signature-claim.ts";
import { type Conventions, instrumentOf } from "../../journal/conventions.ts";
import { subjectToPlay } from "../../journal/entry-exercise.ts";
import { chordById } from "../../music/chords/chord.ts";
import { areInCents } from "../../music/notes/degree.ts";
import { type NoteName, nameAtFifths } from "../../music/notes/note.ts";
import { type NoteNames, nameBetween } from "../../music/notes/note-names.ts";
import { notesToPlay, type WhatToPlay } from "../../music/patterns/notes-to-play.ts";
import { signatureAccidentals } from "../../music/scales/signature.ts";
import { signatureTexts } from "../../music/scales/signature-texts.ts";
import { centsOf, printSteps, stepsOf } from "../../music/scales/steps.ts";
import type { SubjectMeaning } from "../../syntax/words/meaning.ts";
import { explainKind, sentenceCase } from "./explain.ts";
import { escapeMarkdown } from "./markdown.ts";
import { collectionWords, relatedWords } from "./related-words.ts";
import { theorySentenceTexts } from "./theory-sentence-texts.ts";
import { theoryTexts } from "./theory-texts.ts";
import { tuningOf } from "./tuning.ts";

export type Explain = "signature" | "steps" | "both" | "none";

/** How theory is told. */
export interface Telling {
  readonly explain: Explain;
  readonly names: NoteNames;
  /** Names of notes are left out. */
  readonly hidden: boolean;
}

/** The most notes that a hover writes out. */
const MOST_NOTES = 64;

/** Names of notes, parted by spaces; a long row is cut. */
export function notesInRow(notes: readonly NoteName[], names: NoteNames): string {
  return cutRow(notes.map((note) => nameBetween(note, names)));
}

/** A row of words, cut where it is too long to be read. */
export function cutRow(words: readonly (string | number)[]): string {
  return words.length > MOST_NOTES ? `${words.slice(0, MOST_NOTES).join(" ")} …` : words.join(" ");
}

/**
 * What theory says of an exercise: its notes, its signature, its steps and its tuning, each as one line of Markdown.
 */
export function theoryOf(
  input: WhatToPlay,
  telling: Telling,
  { tuning }: Pick<Conventions, "tuning">,
): readonly string[] {
  const { explain, names, hidden } = telling;
  if (explain === "none") return [];
  return [
    ...(hidden ? [theoryTexts.hidden] : notesOf(input, names)),
    ...(explain === "steps" ? [] : [...signatureOf(input, telling), ...relationsOf(input.subject, telling)]),
    ...(explain === "signature" ? [] : stepsIn(input)),
    ...(hidden ? [] : tuningOf(input, { tuning, names })),
  ];
}

/**
 * The notes of an exercise and its signature on one line: `D E F G A B C# D, down C Bb A G F E D; one flat.`; steps in
 * place of the signature where those alone are told. Undefined where it has none.
 */
export function notesAndSignature(input: WhatToPlay, { explain, names, hidden }: Telling): string | undefined {
  const notes = hidden ? theoryTexts.hidden : notesInLine(input, names);
  const { signature } = notesToPlay({ subject: input.subject });
  const words = signature ? signatureTexts.accidentalsInWords(signature.fifths) : theoryTexts.noSignature;
  const parts = [...(notes === "" ? [] : [notes]), ...(explain === "steps" ? [] : [words])];
  return parts.length === 0 ? undefined : `${parts.join("; ")}.`;
}

function notesInLine(input: WhatToPlay, names: NoteNames): string {
  const { subject } = input;
  const row = risingAndFalling(input, names);
  return subject.type === "scale" && areInCents(subject.kind.degrees) ? row + theoryTexts.quarterTones : row;
}

function risingAndFalling(input: WhatToPlay, names: NoteNames): string {
  const { up, down } = notesToPlay({ ...input, pattern: "straight", variant: undefined, direction: "up" });
  const rising = notesInRow(up, names);
  if (notesInRow(down.toReversed(), names) === rising) return rising;
  const [top, ...falling] = down;
  const further = up.at(-1) && top && nameBetween(top, names) === nameBetween(up.at(-1)!, names) ? falling : down;
  return theoryTexts.risingAndFalling(rising, notesInRow(further, names));
}

/** What else theory says of it, each as one line of Markdown: the rest of what `theoryOf` gives. */
export function furtherTheory(
  input: WhatToPlay,
  telling: Telling,
  { tuning }: Pick<Conventions, "tuning">,
): readonly string[] {
  const { explain, names, hidden } = telling;
  return [
    ...(explain === "steps" ? [] : [...signaturesBeside(input, telling), ...relationsOf(input.subject, telling)]),
    ...(explain === "signature" ? [] : stepsIn(input)),
    ...(hidden ? [] : tuningOf(input, { tuning, names })),
  ];
}

/** The same of a subject by itself, over an octave. */
export function theoryOfSubject(
  subject: SubjectMeaning,
  conventions: Conventions,
  { explain, hidden = conventions.hidesNotes }: { readonly explain: Explain; readonly hidden?: boolean },
): readonly string[] {
  const played = subjectToPlay(subject, 0, conventions);
  if (!played) return [];
  const input = { subject: played, instrument: instrumentOf(conventions.instrument, conventions) };
  return theoryOf(input, { explain, names: conventions.names, hidden }, conventions);
}

/** What kind of scale or chord it is, in a sentence. */
export function sentenceOf(subject: SubjectMeaning, conventions: Conventions): string | undefined {
  if (subject.type === "chord") return theorySentence(chordById(subject.chord)?.sentence);
  if (subject.type !== "scale") return undefined;
  if (!subject.declared) return explainKind(subject.kind, subject.unsaid, conventions.names);
  const played = subjectToPlay(subject, 0, conventions);
  const sentence = played?.type === "scale" ? played.kind.sentence : undefined;
  return sentence && escapeMarkdown(sentence);
}

function theorySentence(sentence: string | undefined): string | undefined {
  return sentence && theorySentenceTexts.of(sentence);
}

function notesOf(input: WhatToPlay, names: NoteNames): string[] {
  const { subject } = input;
  const nearest = subject.type === "scale" && areInCents(subject.kind.degrees) ? theoryTexts.quarterTones : "";
  const { up, down } = notesToPlay({ ...input, pattern: "straight", variant: undefined, direction: "up" });
  const rising = notesInRow(up, names);
  if (rising === "") return [];
  const falling = notesInRow(down.toReversed(), names);
  if (falling === rising) return [theoryTexts.notes(nearest, rising)];
  return [theoryTexts.notesUp(nearest, rising), theoryTexts.down(notesInRow(down, names))];
}

/** Its signature in full where it is written with others as well. */
function signaturesBeside(input: WhatToPlay, telling: Telling): string[] {
  return othersOf(input, telling).length > 0 ? signatureOf(input, telling) : [];
}

function signatureOf(input: WhatToPlay, telling: Telling): string[] {
  const { signature } = notesToPlay({ subject: input.subject });
  const own = signature ? signatureInFull(signature.fifths, telling) : theoryTexts.noKey;
  return [theoryTexts.signature(own, othersOf(input, telling))];
}

function othersOf({ subject }: WhatToPlay, telling: Telling): readonly string[] {
  const { signature } = notesToPlay({ subject });
  // A chord that is at home in several keys names its own alone.
  const others = signature && subject.type === "chord" ? [] : acceptedSignatures(subject, telling.names);
  const further = others.filter(({ fifths }) => fifths !== (signature?.fifths ?? 0));
  return further.map(({ fifths, key }) =>
    key ? theoryTexts.asKeyIs(signatureTexts.withAccidentals(fifths), key) : theoryTexts.withNone,
  );
}

/** Its relative and parallel keys, or for a symmetrical scale or chord which of the few it is. */
function relationsOf(subject: WhatToPlay["subject"], { names, hidden }: Telling): string[] {
  const words = [relatedWords(subject, names), hidden ? undefined : collectionWords(subject, names)].filter(
    (each) => each !== undefined,
  );
  return words.map(sentenceCase);
}

/** `6 sharps (F# C# G# D# A# E#)`; how many alone where notes are hidden. */
function signatureInFull(fifths: number, { names, hidden }: Omit<Telling, "explain">): string {
  const accidentals = (hidden ? [] : signatureAccidentals(fifths)).map((each) => names.name(each));
  const count = signatureTexts.accidentals(fifths);
  return accidentals.length ? `${count} (${accidentals.join(" ")})` : count;
}

/** Steps belong to scales; those of a scale in cents are in cents. */
function stepsIn(input: WhatToPlay): string[] {
  const { subject } = input;
  if (subject.type !== "scale") return [];
  if (areInCents(subject.kind.degrees)) return [theoryTexts.stepsInCents(printSteps(centsOf(subject.kind), "cents"))];
  const rising = printSteps(stepsOf(subject.kind), "TS");
  const falling = stepsOf(subject.kind, "down");
  if (printSteps(falling, "TS") === rising) return [theoryTexts.steps(rising)];
  return [theoryTexts.stepsUp(rising), theoryTexts.down(printSteps(falling.toReversed(), "TS"))];
}

/** Which keys have a signature, and which of its own it is for what is practised. */
export function explainSignature(
  fifths: number,
  subject: WhatToPlay["subject"] | undefined,
  telling: Omit<Telling, "explain">,
): string {
  const { names } = telling;
  const key = (place: number, mode: string): string => names.key(nameAtFifths(place), mode);
  const keys =
    Math.abs(fifths) > 7
      ? theoryTexts.noKeyHasIt
      : theoryTexts.keysHaveIt(key(fifths, "major"), key(fifths + 3, "minor"));
  const what = subject && describeAcceptedSignature(fifths, subject, names);
  const opening = `${sentenceCase(signatureInFull(fifths, telling))}. ${keys}`;
  return what ? opening + theoryTexts.signatureHere(what) : opening;
}

/** The notes of a row as they are played, and the degrees that they stand on. */
export function rowOf(input: WhatToPlay, names: NoteNames): { readonly degrees: string; readonly notes: string } {
  const { degrees, notes } = notesToPlay(input);
  return { degrees: cutRow(degrees), notes: notesInRow(notes, names) };
}
