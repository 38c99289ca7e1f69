/** One list from lines of words. */
export function joined(...lines: readonly string[]): string {
  return lines.join(" | ");
}
