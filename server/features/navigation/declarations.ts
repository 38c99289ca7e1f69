import type { Journal } from "../../journal/journal.ts";
import type { Block } from "../../syntax/document/document.ts";
import { mentionsIn } from "./mentions.ts";
import { isSameName, type Location, type Mention, type Name, rangeOn } from "./named.ts";
import { blocksOf } from "./named-blocks.ts";

/** A line that names something, and the file that it is in. */
export interface PlacedMention {
  readonly uri: string;
  /** The absolute line at which its block begins. */
  readonly first: number;
  readonly block: Block;
  readonly mention: Mention;
}

/** What may be declared by name below a day. U+2028 is no space here: for an expression a line begins behind each. */
const DECLARES = /^[^\S\n\r\u2028\u2029]*(?:[-*•][^\S\n\r]+)?(?:set|movement|concert|focus)[^\S\n\r]/im;

/** Everything that a journal declares by name, in the order in which declarations count. */
export function declaredMentions(journal: Journal): readonly PlacedMention[] {
  const found: PlacedMention[] = [];
  for (const { uri, block, first } of blocksOf(journal))
    for (const mention of declaredIn(journal, block)) found.push({ uri, block, first, mention });
  return found;
}

function declaredIn(journal: Journal, block: Block): readonly Mention[] {
  if (block.day && !block.mayName && !DECLARES.test(block.text)) return NOTHING;
  return mentionsIn(journal, block).filter(({ isDeclaration }) => isDeclaration);
}

const NOTHING: readonly Mention[] = [];

/** Those of one name. */
export function declarationsOf(journal: Journal, name: Name): readonly PlacedMention[] {
  return declaredMentions(journal).filter(({ mention }) => isSameName(mention, name));
}

export function locationOf({ uri, first, mention }: PlacedMention): Location {
  return { uri, range: rangeOn(first + mention.line, mention) };
}
