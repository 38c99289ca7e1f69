import type { Block } from "../syntax/document/document.ts";
import type { Line } from "../syntax/line/line.ts";
import { type BodySaid, bodyOf, bodySaidIn } from "./body-said.ts";
import type { Journal } from "./journal.ts";

/**
 * The lines of a day without what they say of the body, for others to read: words are cut out of a line with the comma
 * before them, remarks from their dashes on, and lines that say nothing else are left out.
 *
 * @param gone lines, from the block's first, that are left out as well
 */
export function linesWithoutBody(
  journal: Journal,
  block: Block,
  gone: ReadonlySet<number> = new Set(),
): readonly string[] {
  const { lines } = journal.model(block);
  const said = bodySaidIn(journal, block);
  return block.lines.flatMap((text, at) => {
    if (gone.has(at)) return [];
    const own = said.filter((each) => each.line === at);
    const line = lines[at]!;
    const remark = line.remark && (isCare(line, journal) || own.some((each) => isIn(each, line))) ? line.remark : null;
    const words = own.filter((each) => !isIn(each, line));
    if (!remark && words.length === 0) return [text];
    if (line.type === "body" && line.total) return [text.slice(0, line.total.end)]; // the day's total stays
    if (line.type === "body" || line.type === "prose") return [];
    const kept = words.reduce(cut, remark ? text.slice(0, remark.start) : text).trimEnd();
    return kept === "" ? [] : [kept];
  });
}

/** Whether something is said in a line's remark. */
function isIn({ remark }: BodySaid, { type }: Line): boolean {
  return remark && type !== "prose";
}

/** What a plan says for somebody's care, or of what hurt. */
function isCare({ remark }: Line, { vocabulary }: Journal): boolean {
  const [, word, words] = OF_THE_PLAN.exec(remark?.text ?? "") ?? [];
  return word !== undefined && (/care/i.test(word) || bodyOf(words!, vocabulary) !== undefined);
}

const OF_THE_PLAN = /^\s*(plan|care):(.*)/is;

/** The last of such words, as a title may have them, too; a line does not begin with a comma. */
function cut(text: string, { words }: BodySaid): string {
  const at = text.lastIndexOf(words);
  if (at < 0) return "";
  const [before, behind] = [text.slice(0, at).replace(/[\s,;]+$/, ""), text.slice(at + words.length)];
  return before.trim() === "" ? before + behind.replace(/^[\s,;]+/, "") : before + behind;
}
