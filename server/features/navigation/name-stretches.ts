import { tokenise } from "../../syntax/words/token.ts";
import { isCalled } from "./named.ts";

/** A name on a line, without its quotes. */
export interface NameStretch {
  readonly start: number;
  readonly end: number;
  readonly isQuoted: boolean;
}

/** A name has at most so many words, where it is looked for without quotes. */
const MOST_WORDS = 16;

/** Where a name stands between two columns of a line: in quotes, or as words that are it. */
export function stretchesOf(text: string, from: number, to: number, name: string): readonly NameStretch[] {
  const tokens = tokenise(text.slice(from, to), from);
  const found: NameStretch[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i]!;
    if (token.quote) {
      if (isCalled(token.text, name)) found.push(withinQuotes(text, token));
      continue;
    }
    for (let k = Math.min(tokens.length, i + MOST_WORDS) - 1; k >= i; k--) {
      if (tokens.slice(i, k + 1).some(({ quote }) => quote)) continue;
      const stretch = withoutSigns(text, token.start, tokens[k]!.end);
      if (!isCalled(text.slice(stretch.start, stretch.end), name)) continue;
      found.push({ ...stretch, isQuoted: false });
      i = k;
      break;
    }
  }
  return found;
}

/** What a stretch holds where it is in quotes, or else all of it. */
export function withinQuotes(
  text: string,
  { start, end }: { readonly start: number; readonly end: number },
): NameStretch {
  const [token, more] = tokenise(text.slice(start, end), start);
  if (!token?.quote || more) return { start, end, isQuoted: false };
  const from = token.start + 1;
  const inner = text.slice(from, from + token.text.length);
  const lead = inner.length - inner.trimStart().length;
  return { start: from + lead, end: from + Math.max(lead, inner.trimEnd().length), isQuoted: true };
}

/** Without the signs that part it from what comes next. */
function withoutSigns(text: string, start: number, end: number): { readonly start: number; readonly end: number } {
  return { start, end: start + text.slice(start, end).replace(/[\s,:;]+$/, "").length };
}
