import type { Cut } from "../../syntax/line/cut.ts";

export interface Separator {
  readonly column: number;
  /** `→` is `>` too. */
  readonly sign: Cut["after"];
}

/**
 * Where the commas, colons and `>` stand that a line was cut at: each is the first sign behind the stretch before it.
 */
export function separatorsOf(text: string, cuts: readonly Cut[]): readonly Separator[] {
  return cuts.slice(1).map(({ after }, i) => {
    const { end } = cuts[i]!;
    return { column: end + text.slice(end).search(/[,:>→]/), sign: after };
  });
}
