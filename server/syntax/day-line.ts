const DATE_WORD =
  /^[\s\uFEFF]*(?:[-*•]\s+)?(?=(?:\d{4}[-./]|\d+[-./]\d+[-./]\d{4}(?!\d)))(\d+([-./])\d+\2\d+)(?=$|[\s,:;]|\.(?:\s|$))/;

/**
 * Whether a line begins a day: its first word is date-like, three groups of digits joined by one of `-`, `.`, `/`,
 * the first or the last of four digits. It need not be a date that exists, nor be written as ISO 8601.
 */
export function isDayLine(line: string): boolean {
  return mayBeDay(line) && DATE_WORD.test(line);
}

/** Where the date-like word of a day line stands; undefined on any other line. */
export function dateWord(
  line: string,
): { readonly text: string; readonly start: number; readonly end: number } | undefined {
  const match = mayBeDay(line) ? DATE_WORD.exec(line) : null;
  if (!match) return undefined;
  const end = match[0].length;
  return { text: match[1]!, start: end - match[1]!.length, end };
}

/** Cheap on hot paths: nearly every line that is no day line is told by its first characters. */
function mayBeDay(line: string): boolean {
  for (let i = 0; i < line.length; i++) {
    const code = line.charCodeAt(i);
    if (code >= 48 && code <= 57) return true;
    const skipped =
      code === 32 || code === 9 || code === 0xfeff || code === 45 || code === 42 || code === 0x2022 || code > 127;
    if (!skipped) return false;
  }
  return false;
}
