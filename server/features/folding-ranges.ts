import type { Journal } from "../journal/journal.ts";
import type { BlockModel } from "../journal/model.ts";
import { framesOf } from "./frames.ts";
import type { FoldingRange } from "./types.ts";

/**
 * What may be folded away: days, sessions and phases, what stands above the first day, and remarks on lines below each
 * other; each to its last line that is not blank. At most one fold begins on a line: the longest.
 */
export function foldingRanges(journal: Journal, uri: string): readonly FoldingRange[] {
  const document = journal.files.get(uri);
  if (!document) return [];
  return document.blocks.flatMap((block, i) =>
    foldsOf(journal.model(block)).map(({ startLine, endLine }) => ({
      startLine: document.starts[i]! + startLine,
      endLine: document.starts[i]! + endLine,
    })),
  );
}

/** Lines are those of the block. */
function foldsOf(model: BlockModel): readonly FoldingRange[] {
  const frames = framesOf(model).map(({ line, lastLine }) => ({ startLine: line, endLine: lastLine }));
  const longest = new Map<number, FoldingRange>();
  for (const fold of [...headOf(model), ...frames, ...remarksOf(model)]) {
    const known = longest.get(fold.startLine)?.endLine ?? fold.startLine;
    if (fold.endLine > known) longest.set(fold.startLine, fold);
  }
  return [...longest.values()].sort((a, b) => a.startLine - b.startLine);
}

function headOf({ day, lines }: BlockModel): readonly FoldingRange[] {
  if (day) return [];
  const startLine = lines.findIndex((line) => line.type !== "blank");
  const endLine = lines.findLastIndex((line) => line.type !== "blank");
  return startLine < 0 ? [] : [{ startLine, endLine }];
}

function remarksOf({ lines }: BlockModel): readonly FoldingRange[] {
  const runs: { startLine: number; endLine: number }[] = [];
  for (const [i, line] of lines.entries()) {
    if (line.type !== "remark") continue;
    const run = runs.at(-1);
    if (run?.endLine === i - 1) run.endLine = i;
    else runs.push({ startLine: i, endLine: i });
  }
  return runs;
}
