/**
 * What is practised by the name of its technique, not in a key: rows of words as `"a | b | c"`, the first its name, by
 * whose they are. A word of several stands with the first.
 */
export interface TechniqueTable {
  readonly general: readonly string[];
  readonly wind: readonly string[];
  readonly brass: readonly string[];
  readonly strings: readonly string[];
  readonly keyboard: readonly string[];
  readonly plucked: readonly string[];
  readonly voice: readonly string[];
  readonly percussion: readonly string[];
}

/** Another language's words, by the English name: a technique is one, whatever it is called. */
export type TechniqueWords = Readonly<Record<string, string>>;
