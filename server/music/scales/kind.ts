import type { Degree } from "../notes/degree.ts";

/** Places on the line of fifths, counted from the tonic: what to add to `fifthsOf(tonic)` to get the key signature. */
export interface SignatureRule {
  /** The signature that holds the scale's own notes; for minor scales that of the natural minor. */
  readonly own: number;
  /** The signature of the major or minor key on the same tonic, in which modes are often written. */
  readonly parallel: number;
}

/** What else a scale may be written in beside its `signature`; common practice, no source. */
export interface OtherSignatures {
  /** No signature at all: every accidental before its note. */
  readonly none?: true;
  /** That of the major key on the tonic, of the minor one, or of either. */
  readonly onTonic?: readonly ("major" | "minor")[];
  /** That of the minor or major key whose scale it is, begun on another degree, or with a note more. */
  readonly parent?: { readonly fifths: number; readonly mode: "major" | "minor" };
}

export type Family = "seven" | "pentatonic" | "blues" | "jazz" | "whole-tone" | "octatonic" | "chromatic" | "declared";

export interface ScaleKind {
  readonly id: string;
  /** All ways to say it in English, without the tonic; the first is the one to show. Hyphen and space are the same. */
  readonly names: readonly string[];
  /** Rising, from the tonic, without the octave. */
  readonly degrees: readonly Degree[];
  /** The falling form where it differs, also low to high, and as long as `degrees`. */
  readonly falling?: readonly Degree[];
  readonly family: Family;
  /** Null for scales that belong to no key. */
  readonly signature: SignatureRule | null;
  readonly otherSignatures?: OtherSignatures;
  /** What it is, in one sentence. */
  readonly sentence: string;
}
