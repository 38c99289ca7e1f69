import type { PreviewPlace } from "../../../shared/preview.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Block } from "../../syntax/document/document.ts";
import { sentenceCase } from "../explain/explain.ts";
import { extract, visible } from "../explain/markdown.ts";

/**
 * Text from a journal as the page shows it: one line, nothing in it unseen, not too long. The page makes a text node of
 * it.
 */
export function shownText(text: string, most = 200): string {
  return extract(visible(text), most);
}

/** What is said for a list of sentences: each begins with a capital letter and ends with a full stop. */
export function sentence(words: string): string {
  return `${sentenceCase(words)}${/[.?!…]$/.test(words) ? "" : "."}`;
}

/** Where a line of a block stands in its file now. */
export function placeOf(journal: Journal, uri: string, block: Block, line: number): PreviewPlace {
  const document = journal.files.get(uri);
  const index = document ? document.blocks.indexOf(block) : -1;
  return { uri, line: index < 0 ? 0 : document!.starts[index]! + line };
}

/** FNV-1a, 32 bits (Fowler, Noll, Vo; draft-eastlake-fnv): enough to tell a text from its next state. */
export function hashOf(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(36);
}
