import type { Journal } from "../../journal/journal.ts";
import type { BlockModel } from "../../journal/model.ts";
import { isReadForTitles } from "../../journal/titles/journal-titles.ts";
import type { Block } from "../../syntax/document/document.ts";
import type { Line } from "../../syntax/line/line.ts";
import type { Vocabulary } from "../../syntax/words/vocabulary.ts";
import { addDeclaration } from "./declared-mentions.ts";
import { addEntry, addItems } from "./entry-mentions.ts";
import { MentionList } from "./mention-list.ts";
import type { Mention } from "./named.ts";

/** Everything that the lines of a block name, in their order. Kept with the block. */
export function mentionsIn(journal: Journal, block: Block): readonly Mention[] {
  return journal.memo.from(block, "mentions", [journal.titlesOf(block)], () =>
    mentionsOf(journal.readOnce(block), block, journal.vocabulary),
  );
}

/** The same for what cannot wait: where days were not read for their titles yet, without those that others teach. */
export function mentionsAtHand(journal: Journal, block: Block): readonly Mention[] {
  if (isReadForTitles(journal)) return mentionsIn(journal, block);
  return journal.memo.of(block, "mentions by itself", () =>
    mentionsOf(journal.ownModelOnce(block), block, journal.vocabulary),
  );
}

function mentionsOf(model: BlockModel, block: Block, vocabulary: Vocabulary): readonly Mention[] {
  const declarations = new Map(model.declarations.map(({ line, declaration }) => [line, declaration.declared]));
  return model.lines.flatMap((line, at) => {
    const list = new MentionList(block.lines[at]!, at, vocabulary);
    const declared = declarations.get(at);
    if (declared && line.type === "declaration") addDeclaration(list, declared, { start: line.wordEnd, end: line.end });
    else addLine(list, line);
    return list.inOrder;
  });
}

function addLine(list: MentionList, line: Line): void {
  if (line.type === "entry") addEntry(list, line);
  else if ("items" in line) addItems(list, line.items);
}
