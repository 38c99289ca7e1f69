import { fold, phraseKey } from "../words/fold.ts";

/** The words that open a declaration, as they are written. */
export const DECLARATION_WORDS = [
  "player",
  "instrument",
  "pitch",
  "names",
  "hide notes",
  "shared",
  "share body",
  "note value",
  "usual articulation",
  "piece",
  "study",
  "movement",
  "concert",
  "aim",
  "set",
  "pattern",
  "scale",
  "focus",
  "phase",
  "activity",
  "outcome",
  "articulation",
] as const;

/** Hyphens and spaces in them are the same, or may be left out. */
const OF_TWO_WORDS = ["note value", "usual articulation", "hide notes", "share body"];

const FIRST_LETTERS = DECLARATION_WORDS.map((word) => word.charCodeAt(0));

export interface DeclarationWord {
  readonly word: string;
  readonly end: number;
}

/** The declaration word that a line begins with. */
export function declarationWordAt(text: string, start: number, end: number): DeclarationWord | undefined {
  const first = text.charCodeAt(start) | 32;
  if (first >= 97 && first <= 122 && !FIRST_LETTERS.includes(first)) return undefined; // as nearly every entry begins
  const match = /^([^\s:"“„«=,]+)(?:[\s-]+([^\s:"“„«=,]+))?/u.exec(text.slice(start, end));
  if (!match) return undefined;
  const one = fold(match[1]!);
  const joined = OF_TWO_WORDS.find((word) => phraseKey(word) === phraseKey(one));
  if (joined) return { word: joined, end: start + match[1]!.length };
  const two = match[2] === undefined ? "" : `${one} ${fold(match[2])}`;
  if (OF_TWO_WORDS.includes(two)) return { word: two, end: start + match[0].length };
  const found = (DECLARATION_WORDS as readonly string[]).includes(one);
  return found ? { word: one, end: start + match[1]!.length } : undefined;
}
