import { CODES } from "../../checks/codes.ts";
import type { LineFinding } from "../../checks/context.ts";
import { checkLine } from "../../checks/line/line.ts";
import type { Conventions } from "../../journal/conventions.ts";
import type { KnownTitles } from "../../journal/day-walk.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Block } from "../../syntax/document/document.ts";
import { parseLine } from "../../syntax/line/parse-line.ts";
import type { CountedBlock, Counts } from "./block-facts.ts";

/**
 * The findings of a block, read by itself, with other hints for lines that name a title which days before have: such a
 * line is no sentence. More than hints titles do not bear on.
 */
export function withTitleHints(
  journal: Journal,
  uri: string,
  block: Block,
  findings: readonly LineFinding[],
): readonly LineFinding[] {
  const titles = journal.titlesOf(block);
  if (!titles) return findings;
  const conventions = journal.conventions(uri);
  return journal.memo.from(block, "title hints", [titles, conventions, findings], () => {
    const kept = findings.filter((each) => !isHint(each) || !titles.has(each.line));
    const others = titleHints(journal, block, titles, conventions);
    return [...kept, ...others].sort((a, b) => a.line - b.line || a.start - b.start || a.end - b.end);
  });
}

/** How many findings `withTitleHints` gives of a block whose own are only counted. */
export function countedWithTitleHints(journal: Journal, uri: string, block: Block, facts: CountedBlock): Counts {
  const titles = journal.titlesOf(block);
  if (!titles) return facts.counts;
  const kept = facts.hintLines.filter((line) => !titles.has(line));
  const others = titleHints(journal, block, titles, journal.conventions(uri));
  return { ...facts.counts, hint: kept.length + others.length };
}

/** The hints of the lines that name titles. */
function titleHints(
  { partContext }: Journal,
  block: Block,
  titles: KnownTitles,
  conventions: Conventions,
): readonly LineFinding[] {
  const context = { ...partContext, head: false };
  return [...titles].flatMap(([line, known]) => {
    const text = block.lines[line]!;
    const found = checkLine(parseLine(text, { ...context, titles: known }), { ...context, conventions, text });
    return found.filter(isHint).map((each): LineFinding => ({ ...each, line }));
  });
}

function isHint({ code }: Pick<LineFinding, "code">): boolean {
  return CODES[code] === "hint";
}
