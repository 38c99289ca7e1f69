import type { Item, SubjectMeaning } from "../words/meaning.ts";
import type { Vocabulary } from "../words/vocabulary.ts";
import type { Part } from "./cut.ts";
import { evidenceIn } from "./entry-evidence.ts";
import { isEntry } from "./entry-rule.ts";
import { keysInRow } from "./keys-in-row.ts";
import type { EntryLine } from "./line.ts";
import type { LineWords } from "./line-words.ts";
import { isLead, parseEntry, withWordsBeside } from "./parse-entry.ts";
import type { PartContext } from "./parts.ts";
import { isJoint } from "./several.ts";

/**
 * The entry that the words of a line make; undefined where they tell of no practice.
 *
 * @param known the subject, where the words name a title that the journal knows
 */
export function entryOf(words: LineWords, context: PartContext, known?: Item<SubjectMeaning>): EntryLine | undefined {
  const { text, start, end, parts } = words;
  const entry = (subject?: Item<SubjectMeaning>) => parseEntry(text, start, end, parts, context, subject);
  if (known) return withWordsBeside(entry(known), text, parts);
  if (hasKeysInRow(words, parts, context.vocabulary)) return entry();
  const evidence = evidenceIn(words);
  if (evidence) return entry(evidence.subject);
  if (words.found(0)?.meaning.type === "quoted") return undefined; // what somebody said
  return isEntry(parts) && !isStrange(words) ? entry() : undefined;
}

/** Letters in a row are what is practised, where no sentence stands before them. */
function hasKeysInRow(words: LineWords, parts: readonly Part[], vocabulary: Vocabulary): boolean {
  const row = keysInRow(parts, vocabulary);
  const before = row ? words.words.filter(({ end }) => end <= row.subject.start).length : 0;
  return row !== undefined && words.first(0, before, "sentence-sign", "intention", "negation") < 0;
}

/** Words are not known, but for those that join others: `thirds in C`. */
function isStrange({ items }: LineWords): boolean {
  return items.some((item) => item.meaning.type === "unknown" && !isLead(item) && !isJoint(item.meaning));
}
