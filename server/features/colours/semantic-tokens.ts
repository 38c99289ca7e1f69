import type { Journal } from "../../journal/journal.ts";
import type { BlockModel } from "../../journal/model.ts";
import { type Block, blockIndexAt } from "../../syntax/document/document.ts";
import type { Range } from "../types.ts";
import { TOKEN_MODIFIERS, TOKEN_TYPES } from "./token-legend.ts";
import { lineTokens, type Token } from "./token-meanings.ts";

export { TOKEN_MODIFIERS, TOKEN_TYPES } from "./token-legend.ts";

/**
 * What the words of a file are, for colouring: five numbers a token as the protocol packs them (lines further down,
 * columns further right, length in UTF-16 units, index in `TOKEN_TYPES`, bits of `TOKEN_MODIFIERS`). Tokens are in
 * order, do not overlap and stay within their line. With a range only the days that it touches are read.
 */
export function semanticTokens(journal: Journal, uri: string, range?: Range): number[] {
  const document = journal.files.get(uri);
  if (!document) return [];
  const from = Math.max(0, range?.start.line ?? 0);
  const to = Math.min(document.lineCount - 1, lastLineOf(range) ?? document.lineCount - 1);
  const data: number[] = [];
  if (to < from) return data;
  let line = 0;
  let start = 0;
  for (let i = blockIndexAt(document, from); i < document.blocks.length && document.starts[i]! <= to; i++) {
    for (const token of blockTokens(journal, document.blocks[i]!)) {
      const at = document.starts[i]! + token.line;
      if (at < from || at > to) continue;
      data.push(at - line, at === line ? token.start - start : token.start, token.length, token.type, token.modifiers);
      line = at;
      start = token.start;
    }
  }
  return data;
}

/** A range that ends before the first column of a line does not touch that line. */
function lastLineOf(range: Range | undefined): number | undefined {
  if (!range) return undefined;
  const { start, end } = range;
  return end.character === 0 && end.line > start.line ? end.line - 1 : end.line;
}

interface PackedToken {
  /** Within the block. */
  readonly line: number;
  readonly start: number;
  readonly length: number;
  readonly type: number;
  readonly modifiers: number;
}

/** Kept on the model of the block: a day that no edit touched is not looked at again. */
function blockTokens(journal: Journal, block: Block): readonly PackedToken[] {
  const model = journal.modelAtHand(block);
  return journal.memo.of(model, "semantic tokens", () => {
    const planned = plannedLines(model);
    return model.lines.flatMap((line, i) =>
      lineTokens(block.lines[i]!, line, journal.vocabulary).map((token) => packed(token, i, planned.has(i))),
    );
  });
}

function plannedLines({ entries }: BlockModel): ReadonlySet<number> {
  return new Set(entries.filter((entry) => entry.planned).map((entry) => entry.place.line));
}

function packed({ start, end, type, declares }: Token, line: number, planned: boolean): PackedToken {
  const plan = planned && type !== "comment" ? bit("planned") : 0;
  const modifiers = (declares ? bit("declaration") : 0) | plan;
  return { line, start, length: end - start, type: TOKEN_TYPES.indexOf(type), modifiers };
}

function bit(modifier: (typeof TOKEN_MODIFIERS)[number]): number {
  return 1 << TOKEN_MODIFIERS.indexOf(modifier);
}
