const SIGNS: Readonly<Record<string, string>> = {
  "♯": "#",
  "♭": "b",
  "𝄪": "x",
  "𝄫": "bb",
  "’": "'",
  "‘": "'",
  "′": "'",
  "‐": "-",
  "‑": "-",
  "\u00AD": "",
  "\uFEFF": "",
};

/** The form in which words are compared: Unicode NFC, lower case, plain signs. */
export function fold(text: string): string {
  if (/^[\x20-\x7E]*$/.test(text)) return text.toLowerCase();
  return text
    .normalize("NFC")
    .replace(/[♯♭𝄪𝄫’‘′‐‑\u00AD\uFEFF]/gu, (sign) => SIGNS[sign] ?? sign)
    .toLowerCase();
}

/** The same, and without accents: `ré` and `re` are one. */
export function withoutAccents(text: string): string {
  const folded = fold(text);
  return /^[\x20-\x7E]*$/.test(folded) ? folded : folded.normalize("NFD").replace(/\p{M}/gu, "");
}

/** The key of a phrase: folded, and without the spaces and hyphens that may stand or not stand in it. */
export function phraseKey(text: string): string {
  return fold(text).replace(/[\s-]+/g, "");
}

/** The key of a quoted name or title: folded, its spaces made single. */
export function nameKey(text: string): string {
  return fold(text).trim().replace(/\s+/g, " ");
}

const NUMBER_WORDS = "zero one two three four five six seven eight nine ten eleven twelve".split(" ");

/** A number in figures (at most six before the point) or in words up to twelve; undefined for anything else. */
export function numberOf(word: string): number | undefined {
  if (/^\d{1,9}(?:\.\d{1,3})?$/.test(word)) return Number(word);
  const index = NUMBER_WORDS.indexOf(fold(word));
  return index < 0 ? undefined : index;
}

/** A whole number in figures or words. */
export function wholeNumberOf(word: string): number | undefined {
  const number = numberOf(word);
  return number !== undefined && Number.isInteger(number) ? number : undefined;
}
