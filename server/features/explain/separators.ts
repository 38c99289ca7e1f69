import type { Cut } from "../../syntax/line/cut.ts";

export interface Separator {
  readonly column: number;
  /** `→` is `>` too. */
  readonly sign: Cut["after"];
}

/**
 * Where the commas, colons and `>` stand that a line was cut at: each is the first sign behind the stretch before it.
 * Where a stop, a dash or a bracket parts as a comma does, there is none: these are words to whoever lays out a line.
 */
export function separatorsOf(text: string, cuts: readonly Cut[]): readonly Separator[] {
  return cuts.slice(1).flatMap(({ after, start }, i) => {
    const { end } = cuts[i]!;
    const at = text.slice(end, start).search(/[,:>→]/);
    return at < 0 ? [] : [{ column: end + at, sign: after }];
  });
}
