/** What theory says of a scale or a chord: a line each. */
export const theoryTexts = {
  hidden: "Notes: hidden until you have them written out",
  noSignature: "no key signature",
  quarterTones: ", to the nearest quarter tone",
  /** A row of notes and the one that it falls by. */
  risingAndFalling: (rising: string, falling: string) => `${rising}, down ${falling}`,
  /** `further` is a note on what is written, or empty. */
  notes: (further: string, row: string) => `Notes${further}: ${row}`,
  notesUp: (further: string, row: string) => `Notes going up${further}: ${row}`,
  down: (row: string) => `Going down: ${row}`,
  signature: (own: string, others: readonly string[]) =>
    `Signature: ${own}${others.length > 0 ? `; also written ${others.join(", or ")}` : ""}`,
  noKey: "none, it belongs to no key",
  /** `count` as what it is written with: `with 2 flats`. */
  asKeyIs: (count: string, key: string) => `${count}, as ${key} is`,
  withNone: "with none",
  stepsInCents: (steps: string) => `Steps in cents: ${steps}`,
  steps: (steps: string) => `Steps: ${steps}`,
  stepsUp: (steps: string) => `Steps going up: ${steps}`,
  noKeyHasIt: "No key in use has it.",
  keysHaveIt: (major: string, minor: string) => `${major} and ${minor} have it.`,
  signatureHere: (what: string) => ` Here: ${what}.`,
  relative: (key: string) => `relative: ${key}`,
  parallel: (key: string) => `parallel: ${key}`,
  /** Of a symmetrical scale or chord: which of how many, with the notes that no other has, and its other tonics. */
  collection: (
    name: "whole-tone" | "octatonic" | "diminished seventh",
    place: { readonly number: number; readonly of: number },
    marks: readonly string[],
    sameFrom: string,
  ) =>
    `collection: ${name} ${place.number} of ${place.of}, with ${marks.join(" and ")}; the same notes from ${sameFrom}`,
};
