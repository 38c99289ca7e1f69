import { fifthsOf, type NoteName, nameAtFifths } from "../notes/note.ts";
import type { ScaleKind } from "./kind.ts";
import { kindById } from "./kinds.ts";
import { type KeySignature, keySignature, parallelSignature } from "./signature.ts";

/** A scale by its tonic and kind. */
export interface RelatedScale {
  readonly tonic: NoteName;
  readonly kind: ScaleKind;
}

/** Pairs of a major and a minor scale with the same notes; any of the minor kinds leads to the major one. */
const PAIRS: readonly (readonly [major: string, minor: readonly string[]])[] = [
  ["major", ["natural minor", "harmonic minor", "melodic minor", "jazz minor", "aeolian"]],
  ["major pentatonic", ["minor pentatonic"]],
  ["major blues", ["blues"]],
];

/** From the tonic of a major key to that of its relative minor, on the line of fifths. */
const TO_RELATIVE_MINOR = 3;

/**
 * The scale with the same notes, or for harmonic, melodic and jazz minor the same signature, on another tonic: of a
 * major key the minor one and the other way round, of another mode the major key. Null where the scale belongs to no
 * key.
 */
export function relativeOf(tonic: NoteName, kind: ScaleKind): RelatedScale | null {
  const of = kind.id === "ionian" ? "major" : kind.id;
  for (const [major, minors] of PAIRS) {
    if (of === major) return related(fifthsOf(tonic) + TO_RELATIVE_MINOR, minors[0]!);
    if (minors.includes(of)) return related(fifthsOf(tonic) - TO_RELATIVE_MINOR, major);
  }
  const signature = keySignature(tonic, kind);
  if (!signature || signature.fifths === fifthsOf(tonic)) return null;
  return related(signature.fifths, "major");
}

/**
 * The scale on the same tonic: of major minor and the other way round, of another mode the key that it is nearest to.
 */
export function parallelOf(tonic: NoteName, kind: ScaleKind): RelatedScale | null {
  const of = kind.id === "ionian" ? "major" : kind.id;
  for (const [major, minors] of PAIRS) {
    if (of === major) return related(fifthsOf(tonic), minors[0]!);
    if (minors.includes(of)) return related(fifthsOf(tonic), major);
  }
  if (!kind.signature) return null;
  return related(fifthsOf(tonic), kind.signature.parallel === 0 ? "major" : "natural minor");
}

/** The other signature in which a mode is rightly written, that of its parallel key; null where there is but one. */
export function otherSignature(tonic: NoteName, kind: ScaleKind): KeySignature | null {
  const parallel = parallelSignature(tonic, kind);
  return parallel && parallel.fifths !== keySignature(tonic, kind)?.fifths ? parallel : null;
}

function related(fifths: number, id: string): RelatedScale {
  return { tonic: nameAtFifths(fifths), kind: kindById(id)! };
}
