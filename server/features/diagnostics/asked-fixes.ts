import type { Journal } from "../../journal/journal.ts";
import { isAsked } from "../explain/action-kinds.ts";
import type { CodeAction, Range } from "../types.ts";
import { keptFixes } from "./kept-fixes.ts";
import { lineIn } from "./line-in.ts";
import { otherLanguage } from "./other-language.ts";
import { otherReadings } from "./other-readings.ts";
import { titleFixes } from "./title-fixes.ts";

/**
 * What may be done at a place where nothing is wrong: words that were kept as typed, a subject with two readings, a
 * line in another language than the journal's. For somebody who asks; nothing is worked out before.
 *
 * @param only as in `codeActionsIn`
 */
export function askedFixesIn(
  journal: Journal,
  uri: string,
  range: Range,
  only?: readonly string[],
): readonly CodeAction[] {
  if (!isAsked("quickfix", only)) return [];
  const at = lineIn(journal, uri, range);
  if (!at) return [];
  const { line } = at;
  const ofLine =
    line.type === "entry"
      ? [...keptFixes({ ...at, line }, range), ...otherReadings({ ...at, line }, range)]
      : titleFixes(at);
  return [...ofLine, ...otherLanguage(at)];
}
