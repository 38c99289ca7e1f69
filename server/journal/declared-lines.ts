import type { Block } from "../syntax/document/document.ts";
import type { DayNumber } from "./calendar.ts";
import type { Declared } from "./declarations/declared.ts";
import type { Journal } from "./journal.ts";

/** A declaration, and where it stands. */
export interface DeclaredLine<D extends Declared = Declared> {
  readonly declared: D;
  readonly uri: string;
  readonly block: Block;
  /** Within the block. */
  readonly line: number;
  /** As it is written, without its first word and its remark. */
  readonly text: string;
  /** The day that it stands below; undefined in a head. */
  readonly day?: DayNumber;
}

type OfType<T extends Declared["type"]> = DeclaredLine<Extract<Declared, { readonly type: T }>>;
export type DeclaredAim = OfType<"aim">;
export type DeclaredSet = OfType<"set">;
export type DeclaredPiece = OfType<"piece">;
export type DeclaredMovement = OfType<"movement">;
export type DeclaredConcert = OfType<"concert">;

/** What may be declared below a day. U+2028 is no space here: for an expression a line begins behind each. */
const MAY_DECLARE = /^[^\S\n\r\u2028\u2029]*(?:[-*•][^\S\n\r]+)?(?:aim|set|piece|study|movement|concert)[^\S\n\r]/im;

/** The declarations of a journal, in the order of its files and lines. Of days only those with such a word are read. */
export function declaredLines(journal: Journal): readonly DeclaredLine[] {
  return journal.addresses.flatMap((uri) =>
    journal.files.get(uri)!.blocks.flatMap((block) => declaredIn(journal, uri, block)),
  );
}

export function ofType<T extends Declared["type"]>(lines: readonly DeclaredLine[], type: T): readonly OfType<T>[] {
  return lines.filter(({ declared }) => declared.type === type) as readonly DeclaredLine[] as readonly OfType<T>[];
}

const NONE: readonly DeclaredLine[] = [];

/** Those of one block. */
export function declaredIn(journal: Journal, uri: string, block: Block): readonly DeclaredLine[] {
  return journal.memo.from(block, "declared lines", [uri], () =>
    !block.day || MAY_DECLARE.test(block.text) ? readLines(journal, uri, block) : NONE,
  );
}

function readLines(journal: Journal, uri: string, block: Block): readonly DeclaredLine[] {
  const { declarations, day } = journal.ownModel(block);
  return declarations.flatMap(({ line, declaration: { declared, line: source } }): DeclaredLine[] => {
    if (!declared) return [];
    const text = block.lines[line]!.slice(source.wordEnd, source.end)
      .replace(/^[\s:]+/, "")
      .trimEnd();
    return [{ declared, uri, block, line, text, ...(day?.date === undefined ? {} : { day: day.date }) }];
  });
}

/** The day at the end of an aim or of what is set. */
const BY_DAY = /(?<![\s,])[\s,]+(?:by|due|until)\s+\d{4}-\d\d-\d\d\s*$/i;

/** The text of an aim, or of what is set, without its day. */
export function withoutDay(text: string): string {
  return text.replace(BY_DAY, "");
}
