import { chordById } from "../../music/chords/chord.ts";
import type { ChordKind } from "../../music/chords/chord-kinds.ts";
import { chordSignature, leadingSignature } from "../../music/chords/chord-signature.ts";
import { fifthsOf, type NoteName, nameAtFifths } from "../../music/notes/note.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import type { ChordToPlay, ScaleToPlay } from "../../music/patterns/notes-to-play.ts";
import {
  describeFifths,
  keySignature,
  keyTonic,
  otherSignatures,
  parallelSignature,
  signatureAccidentals,
} from "../../music/scales/signature.ts";
import { type Finding, finding, replacement } from "../finding.ts";
import { fixTexts } from "../fix-texts.ts";
import { claimTexts } from "./claim-texts.ts";
import { scaleName } from "./subject-name.ts";

type Subject = ScaleToPlay | ChordToPlay;

export interface SignatureClaim {
  readonly start: number;
  readonly end: number;
  /** Sharps, or flats where negative. */
  readonly fifths: number;
  /** As typed, where it is known: `2♭`. Without it the length tells `2b` from `2 flats`. */
  readonly text?: string;
}

/** A signature in which the subject may be written. */
export interface Accepted {
  readonly fifths: number;
  /** What it is, as a phrase. */
  readonly what: string;
  /** The key whose it is, where that is not the subject's own. */
  readonly key?: string;
}

/** Chords that minor keys have with their leading note, which the signature leaves to an accidental. */
const ON_LEADING_NOTE = ["dominant seventh", "diminished"];

const MAJOR_TO_MINOR = 3;

function keyName(fifths: number, mode: "major" | "minor", names: NoteNames): string {
  return names.key(keyTonic(fifths, mode), mode);
}

function scaleSignatures(subject: ScaleToPlay, names: NoteNames): Accepted[] {
  const name = scaleName(subject, subject.tonic, names);
  return distinct([...usualSignatures(subject, name, names), ...lessUsual(subject, name, names)]);
}

/** Each signature for the first reason that it is right for. */
function distinct(all: readonly Accepted[]): Accepted[] {
  return all.filter(({ fifths }, i) => all.findIndex((each) => each.fifths === fifths) === i);
}

function usualSignatures({ tonic, kind }: ScaleToPlay, name: string, names: NoteNames): Accepted[] {
  const own = keySignature(tonic, kind);
  const parallel = parallelSignature(tonic, kind);
  if (!own || !parallel) return [];
  if (own.fifths === parallel.fifths) return [{ fifths: own.fifths, what: claimTexts.signatureOf(name) }];
  const key = keyName(parallel.fifths, kind.signature!.parallel === -MAJOR_TO_MINOR ? "minor" : "major", names);
  return [
    { fifths: own.fifths, what: claimTexts.ownSignature(name) },
    { fifths: parallel.fifths, what: claimTexts.onTonic(key, name), key },
  ];
}

function lessUsual({ tonic, kind }: ScaleToPlay, name: string, names: NoteNames): Accepted[] {
  return otherSignatures(tonic, kind).map(({ fifths, key, because }) => {
    if (!key) return { fifths, what: claimTexts.withoutSignature(name) };
    const called = names.key(key.tonic, key.mode);
    const what = because === "parent" ? claimTexts.ofParent : claimTexts.onTonic;
    return { fifths, what: what(called, name), key: called };
  });
}

function chordSignatures(subject: ChordToPlay, names: NoteNames): Accepted[] {
  const { root, chord, key, keyMode } = subject;
  const kind = chordById(chord)!;
  const own = chordSignature(root, kind, key, keyMode);
  if (!own) return evenChordSignatures(root, kind, names);
  const isMinor = key ? keyMode === "minor" : kind.signature === -MAJOR_TO_MINOR;
  const accepted = {
    fifths: own.fifths,
    what: claimTexts.ofKey(keyName(own.fifths, isMinor ? "minor" : "major", names)),
  };
  if (key || !ON_LEADING_NOTE.includes(chord)) return [accepted];
  const minor = own.fifths - MAJOR_TO_MINOR;
  const minorKey = keyName(minor, "minor", names);
  return [accepted, { fifths: minor, what: claimTexts.onDominant(minorKey), key: minorKey }];
}

/** None, and for the diminished seventh that of the key to which it leads. */
function evenChordSignatures(root: NoteName, kind: ChordKind, names: NoteNames): Accepted[] {
  const leading = leadingSignature(root, kind);
  if (!leading) return [];
  const key = keyName(leading.fifths, "minor", names);
  return [
    { fifths: 0, what: claimTexts.ofNoKey },
    { fifths: leading.fifths, what: claimTexts.onLeadingNote(key), key },
  ];
}

/**
 * The signatures in which a scale or chord is rightly written, the usual one first; none for what belongs to no key.
 */
export function acceptedSignatures(subject: Subject, names: NoteNames): Accepted[] {
  return subject.type === "scale" ? scaleSignatures(subject, names) : chordSignatures(subject, names);
}

/** Which of the right signatures this is, as a phrase; undefined where it is none of them. */
export function describeAcceptedSignature(fifths: number, subject: Subject, names: NoteNames): string | undefined {
  const accepted = acceptedSignatures(subject, names);
  if (accepted.length === 0 && fifths === 0) return claimTexts.ofNoKey;
  return accepted.find((each) => each.fifths === fifths)?.what;
}

/** `6 sharps (F# C# G# D# A# E#)`. */
function inFull(fifths: number, names: NoteNames): string {
  const accidentals = signatureAccidentals(fifths).map((name) => names.name(name));
  return claimTexts.inFull(fifths, accidentals.join(" "));
}

function isOnMinorSide(subject: Subject): boolean {
  const offset =
    subject.type === "scale" ? subject.kind.signature?.parallel : (chordById(subject.chord)!.signature ?? undefined);
  return offset === -MAJOR_TO_MINOR;
}

/** What the claimed signature is right for, as a sentence. */
function belongsTo(fifths: number, subject: Subject, names: NoteNames): string {
  if (Math.abs(fifths) > 7) return claimTexts.overSeven;
  const modes = isOnMinorSide(subject) ? (["minor", "major"] as const) : (["major", "minor"] as const);
  const [first, second] = modes.map((mode) => keyName(fifths, mode, names));
  return claimTexts.belongsTo(fifths, first!, second!);
}

/** Raised notes are not in the signature: what to say of harmonic, melodic and jazz minor. */
function raisedNotes({ tonic, kind }: ScaleToPlay, fifths: number, names: NoteNames): string {
  const raisesBoth = kind.id === "melodic minor" || kind.id === "jazz minor";
  if (kind.id !== "harmonic minor" && !raisesBoth) return "";
  const leading: NoteName = nameAtFifths(fifthsOf(tonic) + 5);
  const raised = [names.name(leading)];
  if (raisesBoth) raised.unshift(names.name(nameAtFifths(fifthsOf(tonic) + 3)));
  return claimTexts.raised(keyName(fifths, "minor", names), raised);
}

/** The signature in the style of the one that was typed: `2b`, `2♭`, `2 flats`. */
function inStyle(fifths: number, { start, end, text }: SignatureClaim): string {
  const compact = text === undefined ? end - start <= 3 : /^\s*\d+\s*[#♯b♭]\s*$/u.test(text);
  if (!compact || fifths === 0) return describeFifths(fifths);
  const signs = text !== undefined && /[♯♭]/u.test(text) ? "♯♭" : "#b";
  return `${Math.abs(fifths)}${signs[fifths > 0 ? 0 : 1]}`;
}

function mismatch(claim: SignatureClaim, message: string, right: number): Finding {
  const text = inStyle(right, claim);
  return finding("key-signature", claim, message, [replacement(fixTexts.changeTo(text), claim, text)]);
}

/**
 * Whether a claimed key signature is one in which the scale or chord is rightly written: a mode's own or its parallel
 * major's or minor's, a chord's key's. What belongs to no key has no accidentals.
 */
export function checkSignature(
  claim: SignatureClaim,
  subject: Subject,
  subjectText: string,
  names: NoteNames,
): readonly Finding[] {
  const { fifths } = claim;
  if (describeAcceptedSignature(fifths, subject, names) !== undefined) return [];
  const [own, ...others] = acceptedSignatures(subject, names);
  if (!own) return [mismatch(claim, claimTexts.belongsToNoKey(subjectText, fifths), 0)];
  const alternatives = others.map((other) => claimTexts.orAlso(other.fifths, other.key));
  const raised = subject.type === "scale" ? raisedNotes(subject, own.fifths, names) : "";
  const right = inFull(own.fifths, names) + alternatives.join("");
  const message = `${claimTexts.hasSignature(subjectText, right, fifths)}${raised} ${belongsTo(fifths, subject, names)}`;
  return [mismatch(claim, message, own.fifths)];
}
