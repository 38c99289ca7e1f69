import { chordById } from "../../music/chords/chord.ts";
import { chordSignature, isTheoreticalChord, usualRoot } from "../../music/chords/chord-signature.ts";
import { type NoteName, nameAtFifths } from "../../music/notes/note.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import type { ChordToPlay, ScaleToPlay } from "../../music/patterns/notes-to-play.ts";
import {
  isTheoretical,
  type KeySignature,
  keySignature,
  signatureAccidentals,
  usualKey,
} from "../../music/scales/signature.ts";
import { type Finding, finding, replacement, type Stretch } from "../finding.ts";
import { fixTexts } from "../fix-texts.ts";
import { listTexts } from "../list-texts.ts";
import { keyTexts } from "./key-texts.ts";
import { chordName, scaleName } from "./subject-name.ts";

/** A scale or chord on another tonic, in the words of a journal. */
interface Named {
  readonly tonic: NoteName;
  readonly text: string;
  readonly signature: KeySignature | null;
}

/** The subject in its line's own words: as it is, and on another tonic, where these say the same as what is shown. */
export interface OwnWords {
  readonly words: () => string | undefined;
  readonly on: (tonic: string, shown: string) => string;
}

const AS_SHOWN: OwnWords = { words: () => undefined, on: (_, shown) => shown };

function scaleNamed(tonic: NoteName, subject: ScaleToPlay, names: NoteNames): Named {
  return { tonic, text: scaleName(subject, tonic, names), signature: keySignature(tonic, subject.kind) };
}

function chordNamed(root: NoteName, subject: ChordToPlay, names: NoteNames): Named {
  const kind = chordById(subject.chord)!;
  // `dominant seventh in D` names the key: a fifth below the root.
  const key = subject.key && nameAtFifths(chordSignature(root, kind)!.fifths);
  const signature = chordSignature(root, kind, key, subject.keyMode);
  return { tonic: root, text: chordName({ ...subject, key }, root, names), signature };
}

/** `F and C double sharp`, `Fisis and Cisis`: the accidentals of a signature that are more than single. */
function doubled(fifths: number, names: NoteNames): string {
  const several = signatureAccidentals(fifths).filter(({ alter }) => Math.abs(alter) > 1);
  if (names.words !== null) return listTexts.and(several.map((name) => names.name(name)));
  const sign = fifths > 0 ? "sharp" : "flat";
  const phrases = ([3, 2] as const).flatMap((times) => {
    const letters = several.flatMap(({ letter, alter }) => (Math.abs(alter) === times ? [letter] : []));
    return letters.length ? [keyTexts.signs(listTexts.and(letters), times, sign)] : [];
  });
  return phrases.join(", ");
}

function wouldNeed({ tonic, text, signature }: Named, names: NoteNames): string {
  if (!signature) return keyTexts.tonicOfNoKey(names.name(tonic));
  return keyTexts.wouldNeed(text, signature.fifths, doubled(signature.fifths, names));
}

function otherName({ text, signature }: Named, keyed: boolean): string {
  return (keyed ? keyTexts.usualName : keyTexts.soundsAs)(text, signature?.fifths);
}

/**
 * Whether musicians call it by the key: scales do but the blues, the pentatonic and the bebop ones; chords do but those
 * of four notes, which jazz names by their root, unless the line names the key. Common practice, no source.
 */
function isKeyed(subject: ScaleToPlay | ChordToPlay): boolean {
  if (subject.type === "scale") return !["blues", "pentatonic", "jazz"].includes(subject.kind.family);
  return subject.key !== undefined || chordById(subject.chord)!.degrees.length < 4;
}

/**
 * Whether a key needs more than seven accidentals, and what it is usually called. Scales and chords that belong to no
 * key are judged by their tonic: one on which neither a major nor a minor key of up to seven accidentals begins (E#, Fb
 * and B# among them, not Cb). So is the blues. The fix replaces `stretch`, which is the subject's.
 */
export function checkKey(
  subject: ScaleToPlay | ChordToPlay,
  stretch: Stretch,
  names: NoteNames,
  own: OwnWords = AS_SHOWN,
): readonly Finding[] {
  const found = subject.type === "scale" ? theoreticalScale(subject, names) : theoreticalChord(subject, names);
  if (!found) return [];
  const [here, usual] = found;
  const text = own.on(names.name(usual.tonic), usual.text);
  const fix = replacement(fixTexts.changeTo(text), stretch, text);
  const called = { ...here, text: own.words() ?? here.text };
  const message = `${wouldNeed(called, names)} ${otherName(usual, isKeyed(subject))}`;
  return [finding("theoretical-key", stretch, message, [fix])];
}

function theoreticalScale(subject: ScaleToPlay, names: NoteNames): [Named, Named] | undefined {
  const { tonic, kind } = subject;
  if (!isTheoretical(tonic, kind)) return undefined;
  return [scaleNamed(tonic, subject, names), scaleNamed(usualKey(tonic, kind), subject, names)];
}

function theoreticalChord(subject: ChordToPlay, names: NoteNames): [Named, Named] | undefined {
  const { root, chord } = subject;
  const kind = chordById(chord)!;
  if (!isTheoreticalChord(root, kind)) return undefined;
  return [chordNamed(root, subject, names), chordNamed(usualRoot(root, kind), subject, names)];
}
