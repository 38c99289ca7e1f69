import { chordById } from "../music/chord.ts";
import type { ChordToPlay, ScaleToPlay } from "../music/exercise.ts";
import { type NoteName, nameAtFifths, printName } from "../music/note.ts";
import {
  chordSignature,
  describeFifths,
  isTheoretical,
  isTheoreticalChord,
  type KeySignature,
  keySignature,
  signatureAccidentals,
  usualKey,
  usualRoot,
} from "../music/signature.ts";
import { type Finding, finding, replacement } from "./finding.ts";
import { chordName, scaleName } from "./subject-name.ts";

/** A scale or chord on another tonic, in the words of a journal. */
interface Named {
  readonly tonic: NoteName;
  readonly text: string;
  readonly signature: KeySignature | null;
}

function scaleNamed(tonic: NoteName, subject: ScaleToPlay): Named {
  return { tonic, text: scaleName(subject, tonic), signature: keySignature(tonic, subject.kind) };
}

function chordNamed(root: NoteName, subject: ChordToPlay): Named {
  const kind = chordById(subject.chord)!;
  // `dominant seventh in D` names the key: a fifth below the root.
  const key = subject.key && nameAtFifths(chordSignature(root, kind)!.fifths);
  return { tonic: root, text: chordName({ ...subject, key }, root), signature: chordSignature(root, kind, key) };
}

function listed(letters: readonly string[]): string {
  return letters.length < 2 ? letters.join("") : `${letters.slice(0, -1).join(", ")} and ${letters.at(-1)}`;
}

/** `F and C double sharp`: the accidentals of a signature that are more than single. */
function doubled(fifths: number): string {
  const sign = fifths > 0 ? "sharp" : "flat";
  const phrases = [
    { length: 4, word: "triple" },
    { length: 3, word: "double" },
  ].map(({ length, word }) => {
    const letters = signatureAccidentals(fifths).filter((name) => name.length === length);
    return letters.length ? `${listed(letters.map((name) => name[0]!))} ${word} ${sign}` : "";
  });
  return phrases.filter((phrase) => phrase !== "").join(", ");
}

function wouldNeed({ tonic, text, signature }: Named): string {
  if (!signature) return `${printName(tonic)} is the tonic of no major or minor key in use.`;
  const sentence = text[0]!.toUpperCase() + text.slice(1);
  return `${sentence} would need ${describeFifths(signature.fifths)} (${doubled(signature.fifths)}).`;
}

function usualName({ text, signature }: Named): string {
  return `Its usual name is ${text}${signature ? `, ${describeFifths(signature.fifths)}` : ""}.`;
}

/**
 * Whether a key needs more than seven accidentals, and what it is usually called. Scales and chords that belong to no key
 * are judged by their tonic: one on which neither a major nor a minor key of up to seven accidentals begins (E#, Fb and B#
 * among them, not Cb). `start` and `end` are those of the subject, which the fix replaces.
 */
export function checkKey(subject: ScaleToPlay | ChordToPlay, start: number, end: number): readonly Finding[] {
  const names = subject.type === "scale" ? theoreticalScale(subject) : theoreticalChord(subject);
  if (!names) return [];
  const [here, usual] = names;
  const stretch = { start, end };
  const fix = replacement(`Change to ${usual.text}`, stretch, usual.text);
  const message = `${wouldNeed(here)} ${usualName(usual)}`;
  return [finding("theoretical-key", stretch, message, [fix])];
}

function theoreticalScale(subject: ScaleToPlay): [Named, Named] | undefined {
  const { tonic, kind } = subject;
  if (!isTheoretical(tonic, kind)) return undefined;
  return [scaleNamed(tonic, subject), scaleNamed(usualKey(tonic, kind), subject)];
}

function theoreticalChord(subject: ChordToPlay): [Named, Named] | undefined {
  const { root, chord } = subject;
  const kind = chordById(chord)!;
  if (!isTheoreticalChord(root, kind)) return undefined;
  return [chordNamed(root, subject), chordNamed(usualRoot(root, kind), subject)];
}
