import { declarationWordAt } from "../syntax/declaration-word.ts";
import type { Block } from "../syntax/document.ts";
import { tokenise } from "../syntax/token.ts";
import type { DeclaredNames } from "../syntax/vocabulary.ts";

/** One name that a block declares. */
export interface DeclaredName {
  readonly word: string;
  readonly name: string;
  readonly short?: string;
}

const NAMING = ["piece", "study", "pattern", "scale", "phase", "activity", "instrument"];
const FIRST_WORD = /^[\s\uFEFF]*(?:[-*•]\s+)?/;
/** Cheap on hot paths: a naming word and a quote behind it begin the line, perhaps after a bullet. */
const MAY_NAME = /^[\s\uFEFF]*(?:[-*•]\s+)?(?:piece|study|pattern|scale|phase|activity|instrument)\s*["“”„«»]/i;

/** The names that a block declares, read before any vocabulary: a declaration word and a quoted name behind it. */
export function declaredNamesIn(block: Block): readonly DeclaredName[] {
  let names: DeclaredName[] | undefined;
  for (const line of block.lines) {
    if (!mayOpenName(line) || !MAY_NAME.test(line)) continue;
    const name = declaredName(line);
    if (!name) continue;
    names ??= [];
    names.push(name);
  }
  return names ?? NONE;
}

const NONE: readonly DeclaredName[] = [];

/** Nearly every line says by its first letter that it names nothing. */
function mayOpenName(line: string): boolean {
  let i = 0;
  while (line.charCodeAt(i) === 32) i++;
  const code = line.charCodeAt(i);
  const isLetter = (code >= 65 && code <= 90) || (code >= 97 && code <= 122);
  return isLetter ? FIRST_LETTERS.includes(code | 32) : code > 0 && (code < 48 || code > 57);
}

/** Of the words above, lower-case. */
const FIRST_LETTERS = NAMING.map((word) => word.charCodeAt(0));

function declaredName(line: string): DeclaredName | undefined {
  const start = FIRST_WORD.exec(line)![0].length;
  const declared = declarationWordAt(line, start, line.length);
  if (!declared || !NAMING.includes(declared.word)) return undefined;
  const [quoted, as, short] = tokenise(line.slice(declared.end));
  if (!quoted?.quote || !quoted.text.trim()) return undefined;
  const name = { word: declared.word, name: quoted.text.trim().replace(/\s+/g, " ") };
  if (as?.text.toLowerCase() !== "as" || !short) return name;
  const words = short.quote
    ? short.text
    : /^[^:,]*?(?=\s*(?:[:,]|\s--|\s–|\s—|$))/.exec(line.slice(declared.end + short.start))?.[0];
  return words?.trim() ? { ...name, short: words.trim().replace(/\s+/g, " ") } : name;
}

/** All names of a journal in the form the vocabulary takes. */
export function gathered(names: readonly DeclaredName[]): DeclaredNames {
  const of = (word: string): string[] => names.filter((each) => each.word === word).map((each) => each.name);
  const titles = names
    .filter(({ word }) => word === "piece" || word === "study")
    .map(({ name, short }) => ({ title: name, short }));
  return {
    titles,
    patterns: of("pattern"),
    scales: of("scale"),
    phases: of("phase"),
    activities: of("activity"),
    instruments: of("instrument"),
  };
}
