/**
 * Words for one way of joining or parting notes, as `"a | b | c"`, the first its name; how the notes are begun, which
 * tells strands apart: `slurred`, each by itself (`single`), some and some (`mixed`), or by strokes in turn
 * (`multiple`); and one sentence for hovers and completion.
 */
export type ArticulationRow = readonly [
  words: string,
  tonguing: "slurred" | "single" | "mixed" | "multiple",
  sentence: string,
];

/** The English articulations, by whose they are. A word of several stands with the first. */
export interface ArticulationTable {
  readonly wind: readonly ArticulationRow[];
  readonly strings: readonly ArticulationRow[];
  readonly keyboard: readonly ArticulationRow[];
  readonly plucked: readonly ArticulationRow[];
  readonly voice: readonly ArticulationRow[];
}

/** Another language's words, by the English name; `slur 2` and `slur 2+1+1` are groups of slurred and tongued notes. */
export type ArticulationWords = Readonly<Record<string, string>>;
