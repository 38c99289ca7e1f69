import type { Document } from "../syntax/document/document.ts";
import { cutLine } from "../syntax/line/cut.ts";
import { nameKey } from "../syntax/words/fold.ts";
import { declarationKey } from "./declarations/declaration-key.ts";
import type { Declaration } from "./declarations/declared.ts";
import type { DeclaredName } from "./declarations/declared-names.ts";

/** What a `journal.practice` with `shared` lends to the journals below it, by the word that declares it. */
const LENT_WORDS = ["names", "pitch", "note value", "pattern", "scale", "articulation", "outcome", "phase"];

/** Whether a document says `shared`, alone on a line above its days. */
export function isShared({ blocks }: Document): boolean {
  return blocks.some((block) => !block.day && block.lines.some(saysShared));
}

function saysShared(line: string): boolean {
  const said = line.slice(0, cutLine(line).remark).replace(/^[\s\uFEFF]*(?:[-*•]\s+)?/, "");
  return said.trim().toLowerCase() === "shared";
}

/** Those names of lent documents that the journal does not declare; of two, those of the nearer document. */
export function lentNames(own: readonly DeclaredName[], lent: readonly DeclaredName[]): readonly DeclaredName[] {
  const keyOf = ({ word, name }: DeclaredName) => `${word} ${nameKey(name)}`;
  return notYet(
    own,
    lent.filter(({ word }) => LENT_WORDS.includes(word)),
    keyOf,
  );
}

/** The same of declarations. */
export function lentDeclarations(own: readonly Declaration[], lent: readonly Declaration[]): readonly Declaration[] {
  const keyOf = (declaration: Declaration) => declarationKey(declaration) ?? declaration.line.word;
  return notYet(
    own,
    lent.filter(({ line }) => LENT_WORDS.includes(line.word)),
    keyOf,
  );
}

function notYet<T>(own: readonly T[], lent: readonly T[], keyOf: (each: T) => string): readonly T[] {
  const known = new Set(own.map(keyOf));
  return lent.filter((each) => {
    const isNew = !known.has(keyOf(each));
    known.add(keyOf(each));
    return isNew;
  });
}
