import { cutLine } from "../../syntax/line/cut.ts";
import { LineWords } from "../../syntax/line/line-words.ts";
import { partsOf } from "../../syntax/line/parts.ts";
import { isName } from "../explain/declarable-name.ts";
import type { CodeAction } from "../types.ts";
import { declaring } from "./kept-fixes.ts";
import { actionOf, type LineIn, readAs } from "./line-in.ts";

/** More words are a sentence. */
const MOST_WORDS = 6;

/**
 * A line that is no entry, as nothing says what was played: where words stand before a tempo or a place, they may be
 * the title of a piece. Offered only where the line is an entry of that piece then.
 */
export function titleFixes(at: LineIn): readonly CodeAction[] {
  const name = at.line.type === "prose" ? wordsBefore(at) : undefined;
  if (name === undefined || !isName(name)) return [];
  const fix = declaring("piece", name, []);
  const to = new LineWords(name, 0, name.length, [], at.journal.vocabulary).count;
  const match = { from: 0, to, title: name, declared: true, whole: true };
  const line = to > MOST_WORDS ? undefined : readAs({ ...at, titles: [match] }, at.text, fix.head);
  const subject = line?.type === "entry" ? line.subject?.meaning : undefined;
  return subject?.type === "title" && subject.title === name ? [actionOf(fix, at)] : [];
}

/** The words at the head of the line, up to a comma, a tempo or a place; undefined where neither of these follows. */
function wordsBefore({ text, journal }: LineIn): string | undefined {
  const start = /^\s*(?:[-*•]\s+)?/.exec(text)![0].length;
  const { cuts, remark } = cutLine(text, start);
  const items = partsOf(text, cuts, journal.partContext).flatMap((part) => part.items);
  const told = items.find(({ meaning }) => meaning.type === "tempo" || meaning.type === "place");
  if (!told) return undefined;
  const words = text.slice(start, Math.min(told.start, remark));
  return /^[^,;:]*/
    .exec(words)![0]
    .replace(/[\s–—-]+$/, "")
    .replace(/\s+/g, " ");
}
