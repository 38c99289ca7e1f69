import { scaleName } from "../../checks/notes/subject-name.ts";
import { chordById } from "../../music/chords/chord.ts";
import { collectionOfChord } from "../../music/chords/chord-collection.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import type { ChordToPlay, ScaleToPlay } from "../../music/patterns/notes-to-play.ts";
import { type Collection, collectionOfScale } from "../../music/scales/collection.ts";
import { parallelOf, relativeOf } from "../../music/scales/related-keys.ts";
import { theoryTexts } from "./theory-texts.ts";

type Subject = ScaleToPlay | ChordToPlay;

/** The names of a scale's relative and parallel scales; null where there is none, as for a chord. */
export function relatedNames(
  subject: Subject,
  names: NoteNames,
): { readonly relative: string | null; readonly parallel: string | null } {
  if (subject.type === "chord") return { relative: null, parallel: null };
  const { tonic, kind } = subject;
  const [relative, parallel] = [relativeOf(tonic, kind), parallelOf(tonic, kind)];
  return {
    relative: relative && scaleName(relative, relative.tonic, names),
    parallel: parallel && scaleName(parallel, parallel.tonic, names),
  };
}

/** `relative: F major; parallel: D major`. */
export function relatedWords(subject: Subject, names: NoteNames): string | undefined {
  const { relative, parallel } = relatedNames(subject, names);
  const words = [
    ...(relative ? [theoryTexts.relative(relative)] : []),
    ...(parallel ? [theoryTexts.parallel(parallel)] : []),
  ];
  return words.join("; ") || undefined;
}

/** Which of the few sets of notes a symmetrical scale or chord has; null for any other. */
export function collectionOf(subject: Subject): Collection | null {
  if (subject.type === "scale") return collectionOfScale(subject.tonic, subject.kind);
  return collectionOfChord(subject.root, chordById(subject.chord)!);
}

/** `collection: octatonic 3 of 3, with C and D; the same notes from F G# B`. */
export function collectionWords(subject: Subject, names: NoteNames): string | undefined {
  const found = collectionOf(subject);
  if (!found) return undefined;
  const marks = found.with.map((each) => names.name(each));
  const same = found.sameFrom.map((each) => names.name(each)).join(" ");
  return theoryTexts.collection(found.name, found, marks, same);
}
