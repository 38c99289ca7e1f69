import { type Cell, patternById, type Variant } from "./pattern.ts";

/** `growing`: 1 2, 1 2 3, and so on; returning, 1 2 1, then 2 1, 2 3 2 1, and so on. */
function growingLengths(returning: boolean, total: number): number[] {
  const lengths: number[] = returning ? [3] : [];
  let sum = returning ? 3 : 0;
  for (let next = 2; sum < total; next += returning ? 2 : 1) {
    lengths.push(next);
    sum += next;
  }
  return lengths;
}

/**
 * How many notes the figures of a pattern have, in order, the last one standing for all that follow.
 *
 * @param total how many notes there are to divide
 */
export function figureLengths(pattern: string | Cell, variant: Variant | undefined, total: number): number[] {
  if (typeof pattern !== "string") return [pattern.degrees.length];
  const form = patternById(pattern)?.form;
  if (form?.type === "growing") return growingLengths(variant === "returning", total);
  if (form?.type !== "cell") return [2];
  return [variant === "broken" ? 4 : form.cell.degrees.length];
}
