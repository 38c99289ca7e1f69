import type { Conventions } from "../journal/conventions.ts";
import { kindOf } from "../journal/conventions.ts";
import type { Subject } from "../journal/model.ts";
import { scaleText } from "../journal/subject-text.ts";
import { chordById } from "../music/chords/chord.ts";
import { chordSignature, leadingSignature } from "../music/chords/chord-signature.ts";
import { fifthsOf, type NoteName, nameAtFifths, printName } from "../music/notes/note.ts";
import type { NoteNames } from "../music/notes/note-names.ts";
import type { ScaleKind } from "../music/scales/kind.ts";
import { keySignature, keyTonic, usualKey } from "../music/scales/signature.ts";
import type { ScaleMeaning } from "../syntax/words/meaning.ts";
import { modeOf } from "./keys-played.ts";

/** A key that a piece is in, or that a scale or chord is practised for: any form of a minor is minor. */
export interface HomeKey {
  /** What makes two the same. */
  readonly id: string;
  readonly scale: ScaleMeaning;
}

/** The key of a scale, which is that of a piece as well. */
export function homeKeyOf(scale: ScaleMeaning): HomeKey {
  return { id: idOf(scale.declared ? `"${scale.kind}"` : modeOf(scale.kind), scale.tonic), scale };
}

function idOf(mode: string, tonic: NoteName): string {
  return `${mode} ${printName(tonic)}`;
}

/** `G minor`, `D dorian`: minor without its form. */
export function homeKeyText({ scale }: HomeKey, names: NoteNames): string {
  const mode = modeOf(scale.kind);
  return !scale.declared && mode === "minor" ? names.key(scale.tonic, mode) : scaleText(scale, names);
}

/**
 * The keys that a subject is practised for, by their ids: of a scale its own, of a chain or a set those of each; of a
 * chord the key that has its signature, and of a dominant seventh the minor one beside it as well.
 */
export function homeKeysOf(subject: Subject | undefined): readonly string[] {
  switch (subject?.type) {
    case "scale":
      return [homeKeyOf(subject).id];
    case "chain":
      return subject.scales.flatMap(homeKeysOf);
    case "several":
      return subject.subjects.flatMap(homeKeysOf);
    case "chord":
      return keysOfChord(subject);
    default:
      return [];
  }
}

/** From a tonic to its dominant, on the line of fifths. */
const DOMINANT = -1;
/** From a minor tonic to its signature. */
const MINOR = -3;

function keysOfChord({ root, chord, key, keyMode }: Extract<Subject, { readonly type: "chord" }>): string[] {
  if (key) return [idOf(keyMode ?? "major", key)];
  const known = chordById(chord);
  if (!known) return [];
  const leading = leadingSignature(root, known);
  if (leading) return [idOf("minor", keyTonic(leading.fifths, "minor"))];
  const signature = chordSignature(root, known);
  if (!signature) return [];
  if (known.signature === MINOR) return [idOf("minor", root)];
  const major = keyTonic(signature.fifths, "major");
  return [idOf("major", major), ...(known.signature === DOMINANT ? [idOf("minor", major)] : [])];
}

/**
 * The keys of the same kind a fifth up and a fifth down, within seven accidentals: beyond them the usual key that
 * sounds the same. None for a scale of no key.
 */
export function neighboursOf({ scale }: HomeKey, conventions: Conventions): readonly HomeKey[] {
  const kind = kindOf(scale.kind, scale.declared, conventions);
  if (!kind || scale.declared || !keySignature(scale.tonic, kind)) return [];
  return [1, -1].map((fifth) => {
    const tonic = nameAtFifths(fifthsOf(scale.tonic) + fifth);
    return homeKeyOf({ type: "scale", tonic: inUse(tonic, kind), kind: scale.kind, declared: false });
  });
}

const MOST_ACCIDENTALS = 7;

function inUse(tonic: NoteName, kind: ScaleKind): NoteName {
  return Math.abs(keySignature(tonic, kind)!.fifths) > MOST_ACCIDENTALS ? usualKey(tonic, kind) : tonic;
}
