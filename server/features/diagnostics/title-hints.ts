import { CODES } from "../../checks/codes.ts";
import type { LineFinding } from "../../checks/context.ts";
import { checkLine } from "../../checks/line/line.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Block } from "../../syntax/document/document.ts";
import { parseLine } from "../../syntax/line/parse-line.ts";

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
    const others = [...titles].flatMap(([line, known]) => {
      const text = block.lines[line]!;
      const context = { ...journal.partContext, head: false };
      const found = checkLine(parseLine(text, { ...context, titles: known }), { ...context, conventions, text });
      return found.filter(isHint).map((each): LineFinding => ({ ...each, line }));
    });
    const kept = findings.filter((each) => !isHint(each) || !titles.has(each.line));
    return [...kept, ...others].sort((a, b) => a.line - b.line || a.start - b.start || a.end - b.end);
  });
}

function isHint({ code }: Pick<LineFinding, "code">): boolean {
  return CODES[code] === "hint";
}
