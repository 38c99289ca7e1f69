/** A word, a lone `=` or `|`, or a quoted text of one part of a line. */
export interface Token {
  readonly start: number;
  readonly end: number;
  /** As typed; for a quoted text what stands between the quotes. */
  readonly text: string;
  readonly quote?: { readonly closed: boolean };
}

const QUOTES = '"“”„«»‟';

export function isQuote(character: string): boolean {
  return character !== "" && QUOTES.includes(character);
}

const TOKEN = /["“”„«»‟]|[=|]|[^\s=|"“”„«»‟]+/gu;

/** The tokens of a text; columns count from `offset`. A byte order mark is white space here. */
export function tokenise(text: string, offset = 0): Token[] {
  const tokens: Token[] = [];
  const pattern = new RegExp(TOKEN);
  for (let match = pattern.exec(text); match; match = pattern.exec(text)) {
    const start = match.index;
    if (!isQuote(match[0])) {
      const word = match[0].replace(/^\uFEFF+/, "");
      if (word)
        tokens.push({
          start: offset + start + match[0].length - word.length,
          end: offset + start + match[0].length,
          text: word,
        });
      continue;
    }
    const close = closingQuote(text, start);
    const end = close < 0 ? text.trimEnd().length : close;
    const quote = { closed: close >= 0 };
    tokens.push({
      start: offset + start,
      end: offset + (close < 0 ? end : close + 1),
      text: text.slice(start + 1, end),
      quote,
    });
    pattern.lastIndex = close < 0 ? text.length : close + 1;
  }
  return tokens;
}

/** Where the quote that opens at `open` closes, before `to`; -1 where it does not. */
export function closingQuote(text: string, open: number, to = text.length): number {
  for (let i = open + 1; i < to; i++) if (isQuote(text[i]!)) return i;
  return -1;
}
