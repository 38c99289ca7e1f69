import { fifthsOf, modulo, type NoteName, nameAtFifths } from "../notes/note.ts";
import type { ScaleKind } from "./kind.ts";

export interface KeySignature {
  /** Sharps, or flats where negative, as in MIDI files (FF 59) and MusicXML. Beyond seven the key is theoretical. */
  readonly fifths: number;
  /** In the order in which they are written: F# C# G# …, Bb Eb Ab …; a double one takes its letter's place. */
  readonly accidentals: readonly NoteName[];
}

/** The accidentals of a signature, in the order in which they are written: 2 is F# C#, -8 is Bbb Eb Ab Db Gb Cb Fb. */
export function signatureAccidentals(fifths: number): NoteName[] {
  const accidentals: NoteName[] = [];
  for (let place = 0; place < Math.min(7, Math.abs(fifths)); place++) {
    const times = Math.ceil((Math.abs(fifths) - place) / 7);
    const { letter } = nameAtFifths(fifths > 0 ? place - 1 : 5 - place);
    accidentals.push({ letter, alter: fifths > 0 ? times : -times });
  }
  return accidentals;
}

/** The signature at a place on the line of fifths: 2 is D major's, -3 C minor's. */
export function signatureAt(fifths: number): KeySignature {
  return { fifths, accidentals: signatureAccidentals(fifths) };
}

/** The signature that holds the scale's notes (for minor scales, natural minor's); null for scales of no key. */
export function keySignature(tonic: NoteName, kind: ScaleKind): KeySignature | null {
  return kind.signature && signatureAt(fifthsOf(tonic) + kind.signature.own);
}

/** The signature of the major or minor key on the same tonic: the other one in which a mode is rightly written. */
export function parallelSignature(tonic: NoteName, kind: ScaleKind): KeySignature | null {
  return kind.signature && signatureAt(fifthsOf(tonic) + kind.signature.parallel);
}

/** A signature in which a scale is rightly written, beside its own and that of the key on its tonic. */
export interface OtherSignature {
  readonly fifths: number;
  /** Whose it is; null where nothing is written. */
  readonly key: { readonly tonic: NoteName; readonly mode: "major" | "minor" } | null;
  readonly because: "none" | "on tonic" | "parent";
}

/** The place that sounds the same within seven accidentals: for Db minor's eight flats C# minor's four sharps. */
export function inUse(fifths: number): number {
  return Math.abs(fifths) > 7 ? nearestToNone(fifths) : fifths;
}

/** What else a scale may be written in; see `OtherSignatures`. */
export function otherSignatures(tonic: NoteName, { otherSignatures: others = {} }: ScaleKind): OtherSignature[] {
  const { none, onTonic = [], parent } = others;
  const keyed = (mode: "major" | "minor", fifths: number, because: OtherSignature["because"]): OtherSignature => {
    return { fifths, key: { tonic: keyTonic(fifths, mode), mode }, because };
  };
  return [
    ...onTonic.map((mode) => keyed(mode, fifthsOf(tonic) + (mode === "minor" ? -TO_MINOR : 0), "on tonic")),
    ...(parent ? [keyed(parent.mode, inUse(fifthsOf(tonic) + parent.fifths), "parent")] : []),
    ...(none ? [{ fifths: 0, key: null, because: "none" } as const] : []),
  ];
}

/** From the signature of a major key to the tonic of the minor one that shares it, on the line of fifths. */
const TO_MINOR = 3;

/** The tonic of the major or minor key with a signature. */
export function keyTonic(fifths: number, mode: "major" | "minor"): NoteName {
  return nameAtFifths(mode === "minor" ? fifths + TO_MINOR : fifths);
}

/** Whether a major or a minor key of at most seven accidentals has its tonic at this place among fifths. */
export function isKeyTonic(fifths: number): boolean {
  return Math.min(Math.abs(fifths), Math.abs(fifths - 3)) <= 7;
}

/**
 * Whether no signature of up to seven accidentals serves. Scales of no key are judged by their tonic as a key's, and so
 * is the blues, which is at home on any of those.
 */
export function isTheoretical(tonic: NoteName, kind: ScaleKind): boolean {
  const fifths = fifthsOf(tonic);
  if (kind.signature && kind.family !== "blues") return Math.abs(fifths + kind.signature.own) > 7;
  return !isKeyTonic(fifths);
}

/**
 * The place among fifths, twelve apart from the given one, that is nearest to 0; of 6 and -6 the one on its own side.
 */
export function nearestToNone(fifths: number): number {
  const sharps = modulo(fifths, 12);
  if (sharps === 6) return fifths >= 0 ? 6 : -6;
  return sharps > 6 ? sharps - 12 : sharps;
}

/**
 * The tonic that sounds the same and needs the fewest accidentals: A flat for G# major, C sharp for Db natural minor.
 * Scales of no key go by the place of the tonic itself.
 */
export function usualKey(tonic: NoteName, kind: ScaleKind): NoteName {
  const own = kind.signature?.own ?? 0;
  return nameAtFifths(nearestToNone(fifthsOf(tonic) + own) - own);
}

/** `6 sharps`, `1 flat`, `no accidentals`. */
export function describeFifths(fifths: number): string {
  if (fifths === 0) return "no accidentals";
  const number = Math.abs(fifths);
  return `${number} ${fifths > 0 ? "sharp" : "flat"}${number === 1 ? "" : "s"}`;
}
