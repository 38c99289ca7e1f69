/** Columns of a terminal that does not say how wide it is, and of running text. */
export const WIDTH = 80;

/** Words in lines of at most so many columns, as `widthOf` counts them; a longer word stands alone. */
export function wrapped(text: string, width: number, widthOf = (words: string) => words.length): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && widthOf(last) + 1 + widthOf(word) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
