import type { kindTexts as english } from "./kind-texts.ts";

/** By the ids of scales, and of chords with what they are played as. */
const KINDS: Readonly<Record<string, string>> = {
  major: "Dur",
  minor: "Moll",
  "natural minor": "natürliches Moll",
  "harmonic minor": "harmonisches Moll",
  "melodic minor": "melodisches Moll",
  "jazz minor": "Jazz-Moll",
  ionian: "ionisch",
  dorian: "dorisch",
  phrygian: "phrygisch",
  lydian: "lydisch",
  mixolydian: "mixolydisch",
  aeolian: "äolisch",
  locrian: "lokrisch",
  "major pentatonic": "Dur-Pentatonik",
  "minor pentatonic": "Moll-Pentatonik",
  blues: "Blues",
  "major blues": "Dur-Blues",
  "whole-tone": "Ganztonleiter",
  "half-whole": "Halbton-Ganzton",
  "whole-half": "Ganzton-Halbton",
  octatonic: "oktatonisch",
  chromatic: "chromatisch",
  "harmonic major": "harmonisches Dur",
  "double harmonic": "doppelt harmonisch",
  "lydian dominant": "lydisch-dominant",
  "phrygian dominant": "phrygisch-dominant",
  "hungarian minor": "ungarisches Moll",
  altered: "alteriert",
  "bebop dominant": "Bebop dominant",
  "bebop major": "Bebop Dur",
  "dominant seventh": "Dominantseptakkord",
  "major seventh": "großer Durseptakkord",
  "minor seventh": "kleiner Mollseptakkord",
  "half-diminished seventh": "halbverminderter Septakkord",
  "diminished seventh": "verminderter Septakkord",
};

const TRIADS: Readonly<Record<string, string>> = {
  major: "Durdreiklang",
  minor: "Molldreiklang",
  augmented: "übermäßiger Dreiklang",
  diminished: "verminderter Dreiklang",
};

function kindOf(id: string): string | undefined {
  const broken = id.replace(/ (?:arpeggio|broken chord)$/, "");
  if (broken === id) return KINDS[id];
  return TRIADS[broken] ?? KINDS[broken];
}

export const kindTexts: typeof english = {
  kind: (id, words) => kindOf(id) ?? words,
  key: (tonic, kind, words) => {
    const named = /\b(?:major|minor)$/.test(kind) ? undefined : KINDS[kind];
    return named === undefined ? words : `${tonic} ${named}`;
  },
};
