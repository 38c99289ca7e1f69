import type { Io } from "./io.ts";

/** Columns of a terminal that does not say how wide it is, and of running text. */
export const WIDTH = 80;
/** No narrower than this, whatever a terminal says: single words need that much. */
const NARROWEST = 30;

/** Where a text is shown. */
export type Screen = Pick<Io, "isTerminal" | "columns">;

/** The columns of a terminal; undefined for what goes elsewhere. */
export function columnsOf({ isTerminal, columns }: Screen): number | undefined {
  return isTerminal ? Math.max(NARROWEST, columns?.() || WIDTH) : undefined;
}

/** The columns of running text: those of a terminal, but no more than read well. */
export function textWidth(screen: Screen): number {
  return Math.min(WIDTH, columnsOf(screen) ?? WIDTH);
}

/** Words in lines of at most so many columns, as `widthOf` counts them; a longer word stands alone. */
export function wrapped(text: string, width: number, widthOf = (words: string) => words.length): string[] {
  const lines: string[] = [];
  let filled = width;
  for (const word of text.split(" ")) {
    const more = 1 + widthOf(word);
    const fits = lines.length > 0 && filled + more <= width;
    if (fits) lines[lines.length - 1] += ` ${word}`;
    else lines.push(word);
    filled = fits ? filled + more : more - 1;
  }
  return lines;
}
