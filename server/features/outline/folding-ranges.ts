import type { Journal } from "../../journal/journal.ts";
import type { Block, Document } from "../../syntax/document/document.ts";
import { type LineSort, sortOf } from "../../syntax/line/line.ts";
import { lastLineOf } from "../explain/dated-days.ts";
import { monthsAndYears } from "../explain/months.ts";
import { sectionsOf } from "../explain/sections.ts";
import type { FoldingRange } from "../types.ts";
import { latestBlocks } from "./latest-days.ts";

/**
 * What may be folded away: years and months where a file has several, days, sessions and phases, what stands above the
 * first day, and remarks on lines below each other; each to its last line that is not blank. At most one fold begins on
 * a line, the longest: the first day of a month folds with that month.
 *
 * @param most where there are more, days before the latest (`latestBlocks`) fold as a whole alone; of what is still
 *   more, the latest are given
 */
export function foldingRanges(journal: Journal, uri: string, most = Number.POSITIVE_INFINITY): readonly FoldingRange[] {
  const document = journal.files.get(uri);
  if (!document) return [];
  const longer = monthsFrom(document);
  const byBlock = document.blocks.map((block, i) => {
    const own = blockFolds(journal, block).map(({ startLine, endLine }) => ({
      startLine: document.starts[i]! + startLine,
      endLine: document.starts[i]! + endLine,
    }));
    const month = longer.get(i);
    return month ? [month, ...own.filter(({ startLine }) => startLine !== month.startLine)] : own;
  });
  const all = byBlock.flat();
  if (all.length <= most) return all;
  const latest = latestBlocks(uri, document);
  const fewer = byBlock.flatMap((folds, i) => (latest.has(i) || !document.blocks[i]!.day ? folds : folds.slice(0, 1)));
  return latest.newestFirst ? fewer.slice(0, most) : fewer.slice(Math.max(0, fewer.length - most));
}

/** By the index of the block that they begin with: the months of a file, and the years of one that has several. */
function monthsFrom(document: Document): ReadonlyMap<number, FoldingRange> {
  const { months, years } = monthsAndYears(document);
  const { blocks, starts } = document;
  const several = [months, years].filter((each) => each.length > 1).flat();
  return new Map(
    several
      .filter(({ first, last }) => last > first)
      .map(({ first, last }) => [
        first,
        { startLine: starts[first]!, endLine: starts[last]! + lastLineOf(blocks[last]!) },
      ]),
  );
}

/** Lines are those of the block. An editor asks for the folds of all days before anything is known of most. */
function blockFolds(journal: Journal, block: Block): readonly FoldingRange[] {
  const sorts = (): readonly LineSort[] =>
    block.day ? journal.dayWalk.sortsOf(block) : journal.model(block).lines.map(({ type }) => sortOf(type));
  return journal.memo.of(block, "folds", () => foldsOf(sorts()));
}

function foldsOf(lines: readonly LineSort[]): readonly FoldingRange[] {
  const sections = sectionsOf(lines).map(({ line, lastLine }) => ({ startLine: line, endLine: lastLine }));
  const above = lines[0] === "day" ? [] : headOf(lines);
  const longest = new Map<number, FoldingRange>();
  for (const fold of [...above, ...sections, ...remarksOf(lines)]) {
    const known = longest.get(fold.startLine)?.endLine ?? fold.startLine;
    if (fold.endLine > known) longest.set(fold.startLine, fold);
  }
  return [...longest.values()].sort((a, b) => a.startLine - b.startLine);
}

function headOf(lines: readonly LineSort[]): readonly FoldingRange[] {
  const startLine = lines.findIndex((sort) => sort !== "blank");
  const endLine = lines.findLastIndex((sort) => sort !== "blank");
  return startLine < 0 ? [] : [{ startLine, endLine }];
}

function remarksOf(lines: readonly LineSort[]): readonly FoldingRange[] {
  const runs: { startLine: number; endLine: number }[] = [];
  for (const [i, sort] of lines.entries()) {
    if (sort !== "remark") continue;
    const run = runs.at(-1);
    if (run?.endLine === i - 1) run.endLine = i;
    else runs.push({ startLine: i, endLine: i });
  }
  return runs;
}
