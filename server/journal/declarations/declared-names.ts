import { type NoteNames, namesById } from "../../music/notes/note-names.ts";
import type { Block } from "../../syntax/document/document.ts";
import { cutLine } from "../../syntax/line/cut.ts";
import { declarationWordAt } from "../../syntax/line/declaration-word.ts";
import { NAMING_WORDS } from "../../syntax/line/naming-line.ts";
import { fold } from "../../syntax/words/fold.ts";
import type { Verdict } from "../../syntax/words/meaning.ts";
import { tokenise } from "../../syntax/words/token.ts";
import type { DeclaredNames } from "../../syntax/words/vocabulary.ts";
import { TONGUINGS, tonguingOf } from "./tonguing.ts";
import { verdictOf } from "./verdict.ts";

/** One name that a block declares. */
export interface DeclaredName {
  readonly word: string;
  readonly name: string;
  readonly short?: string;
  /** Of an outcome: what it says of its tempo. */
  readonly says?: Verdict;
  /** What stands behind the colon of an articulation. */
  readonly tonguing?: string;
}

const FIRST_WORD = /^[\s\uFEFF]*(?:[-*•]\s+)?/;

/** In what language a head says that notes are named; the first declaration counts. */
export function namesDeclaredIn(block: Block): NoteNames | undefined {
  if (block.day) return undefined;
  for (const line of block.lines) {
    const start = FIRST_WORD.exec(line)![0].length;
    const declared = declarationWordAt(line, start, line.length);
    if (declared?.word !== "names") continue;
    const said = line.slice(declared.end, cutLine(line).remark).replace(/^\s*:?/, "");
    const names = namesById(fold(said.trim()));
    if (names) return names;
  }
  return undefined;
}

/** The names that a block declares, read before any vocabulary: a declaration word and a quoted name behind it. */
export function declaredNamesIn(block: Block): readonly DeclaredName[] {
  return block.mayName ? block.lines.flatMap((line) => declaredName(line) ?? []) : NONE;
}

const NONE: readonly DeclaredName[] = [];

function declaredName(line: string): DeclaredName | undefined {
  const start = FIRST_WORD.exec(line)![0].length;
  const declared = declarationWordAt(line, start, line.length);
  if (!declared || !NAMING_WORDS.includes(declared.word)) return undefined;
  const [quoted, as, short] = tokenise(line.slice(declared.end));
  if (!quoted?.quote || !quoted.text.trim()) return undefined;
  const name = { word: declared.word, name: quoted.text.trim().replace(/\s+/g, " ") };
  if (declared.word === "outcome") {
    const says = verdictOf(line.slice(declared.end + quoted.end, cutLine(line).remark).replace(/^\s*:/, ""));
    return says ? { ...name, says } : undefined;
  }
  if (declared.word === "articulation") return { ...name, tonguing: behindColon(line, declared.end + quoted.end) };
  if (as?.text.toLowerCase() !== "as" || !short) return name;
  const words = short.quote
    ? short.text
    : /^[^:,]*?(?=\s*(?:[:,]|\s--|\s–|\s—|$))/.exec(line.slice(declared.end + short.start))?.[0];
  return words?.trim() ? { ...name, short: words.trim().replace(/\s+/g, " ") } : name;
}

function behindColon(line: string, from: number): string {
  return /^\s*:?\s*(\p{L}*)/u.exec(line.slice(from))![1]!;
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
    articulations: names
      .filter(({ word }) => word === "articulation")
      .map(({ name, tonguing = "" }) => ({ name, tonguing: tonguingOf(tonguing) ?? TONGUINGS[0] })),
    instruments: of("instrument"),
    outcomes: names.flatMap(({ name, says }) => (says ? [{ words: name, says }] : [])),
  };
}
