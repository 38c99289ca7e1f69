import type { SameWords } from "./line.ts";

/** The sign under what stands above: `" 66 clean`. No quote, as no other follows. */
const DITTO_MARK = /^([\s\uFEFF]*(?:[-*•]\s+)?)(["“”„″〃]|'')(?=[\s,:]|$)[\s,:]*(?!.*["“”„«»″])/s;

/** A ditto mark, and where what stands behind it begins; undefined where the line begins otherwise. */
export function dittoMark(line: string): (SameWords & { readonly behind: number }) | undefined {
  const match = DITTO_MARK.exec(line);
  if (!match) return undefined;
  const start = match[1]!.length;
  return { start, end: start + match[2]!.length, terms: true, behind: match[0].length };
}
