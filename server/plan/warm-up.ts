import { kindOf } from "../journal/conventions.ts";
import { keyOfPiece } from "../journal/likely-key.ts";
import { articulationsOf, holdsNotes } from "../music/instruments/articulations.ts";
import type { Instrument } from "../music/instruments/instrument.ts";
import { midi, type Note, type NoteName, transposed } from "../music/notes/note.ts";
import { noteText } from "../music/notes/note-names.ts";
import type { ScaleMeaning } from "../syntax/words/meaning.ts";
import { onInstrument } from "./exercise-lines.ts";
import { homeKeyOf, homeKeyText } from "./home-keys.ts";
import { modeOf } from "./keys-played.ts";
import type { PlannedPiece } from "./pieces-planned.ts";
import type { LineDraft } from "./plan.ts";
import type { PlanBasis } from "./plan-basis.ts";
import { planTexts } from "./plan-texts.ts";
import { phraseIn, type WrittenTerm } from "./practised-line.ts";
import { readLine } from "./read-line.ts";

/** Where a written octave is counted from while the instrument is not known. */
const USUAL_OCTAVE = 4;
const FIFTH = { steps: 4, semitones: 7 };
const MAJOR_THIRD = { steps: 2, semitones: 4 };
const MINOR_THIRD = { steps: 2, semitones: 3 };
const OCTAVE = { steps: 7, semitones: 12 };

/**
 * Easy lines to begin with: long tones on tonic, third and fifth in the lowest octave, and from two units on five notes
 * of the key; five notes alone where the instrument holds no note.
 */
export function warmUpLines(basis: PlanBasis, key: ScaleMeaning, count: number): readonly LineDraft[] {
  const reasons = [planTexts.warmUp];
  const five = fiveNotes(basis, key);
  const texts = [...(holdsNotes(basis.played) ? [longTones(basis, key)] : []), five];
  const drafts = texts.flatMap((text): LineDraft[] => {
    const line = `${text}, slow`;
    return readLine(basis, line)
      ? [{ text: line, phase: "warm-up", rule: "warm-up", exercise: text.split(",")[0]!, reasons }]
      : [];
  });
  return drafts.slice(0, count);
}

/** Notes are named unless the journal keeps their names out of sight. */
function longTones(basis: PlanBasis, key: ScaleMeaning): string {
  const { journal, conventions, played } = basis;
  const on = onInstrument(basis).map(({ words }) => `, ${words}`);
  const notes = conventions.hidesNotes ? undefined : lowestTriad(key, isMinor(basis, key), played);
  const named = notes?.map((note) => noteText(note, journal.names)).join(" ");
  return `long tones on ${named ?? homeKeyText(homeKeyOf(key), journal.names)}${on.join("")}`;
}

function fiveNotes(basis: PlanBasis, key: ScaleMeaning): string {
  return phraseIn([
    term("scale", homeKeyText(homeKeyOf(key), basis.journal.names)),
    term("span", "five notes"),
    term("articulation", articulationsOf(basis.played).joined),
    ...onInstrument(basis),
  ]);
}

export function term(type: WrittenTerm["type"], words: string): WrittenTerm {
  return { type, words, runsOn: false };
}

function isMinor({ conventions }: PlanBasis, { kind, declared }: ScaleMeaning): boolean {
  if (!declared && modeOf(kind) === "minor") return true;
  const known = kindOf(kind, declared, conventions);
  return known?.degrees.some(({ step, semitones }) => step === 2 && semitones === MINOR_THIRD.semitones) ?? false;
}

/** Undefined where the instrument has no such three notes. */
function lowestTriad({ tonic }: ScaleMeaning, minor: boolean, instrument?: Instrument): readonly Note[] | undefined {
  const low = lowestOf(tonic, instrument);
  const notes = [low, transposed(low, minor ? MINOR_THIRD : MAJOR_THIRD), transposed(low, FIFTH)];
  if (!instrument) return notes;
  const lowest = notes.map((note) => lowestOf(note, instrument)).sort((a, b) => midi(a) - midi(b));
  return midi(lowest[2]!) > midi(instrument.high) ? undefined : lowest;
}

/** The lowest note of a name that the instrument has. */
function lowestOf({ letter, alter }: NoteName, instrument?: Instrument): Note {
  const usual: Note = { letter, alter, octave: USUAL_OCTAVE };
  if (!instrument) return usual;
  let note: Note = { ...usual, octave: instrument.low.octave - 1 };
  while (midi(note) < midi(instrument.low)) note = transposed(note, OCTAVE);
  return note;
}

/** Of C, F and G major the one whose lowest tonic on the instrument is lowest; C without an instrument. */
export function plainKey({ played }: Pick<PlanBasis, "played">): ScaleMeaning {
  const keys = (["C", "F", "G"] as const).map(
    (letter): ScaleMeaning => ({ type: "scale", tonic: { letter, alter: 0 }, kind: "major", declared: false }),
  );
  if (!played) return keys[0]!;
  return keys.reduce((a, b) => (midi(lowestOf(b.tonic, played)) < midi(lowestOf(a.tonic, played)) ? b : a));
}

/** The key to begin in: of the first piece, else of the first slow line, else the plain one. */
export function warmUpKey(
  basis: PlanBasis,
  pieces: readonly PlannedPiece[],
  groundwork: readonly LineDraft[],
): ScaleMeaning {
  const ofPiece = pieces.map(({ facts }) => keyOfPiece(facts)?.key).find((key) => key !== undefined);
  if (ofPiece) return withoutOctave(ofPiece);
  for (const { text } of groundwork) {
    const subject = readLine(basis, text)?.entry.subject;
    if (subject?.type === "scale" && !subject.fromLowest && !subject.to && !subject.declared)
      return withoutOctave(subject);
    if (subject?.type === "chord" && (subject.chord === "major" || subject.chord === "minor")) {
      const kind = subject.chord === "minor" ? "natural minor" : "major";
      return withoutOctave({ type: "scale", tonic: subject.root, kind, declared: false });
    }
  }
  return plainKey(basis);
}

function withoutOctave(scale: ScaleMeaning): ScaleMeaning {
  const { letter, alter } = scale.tonic;
  return { ...scale, tonic: { letter, alter } };
}
