import type { DayNumber } from "../journal/calendar.ts";
import { type DatedBlock, datedBlocks } from "../journal/dated-blocks.ts";
import { readDeclaration } from "../journal/declarations/declaration.ts";
import type { DeclaredSet } from "../journal/declared-lines.ts";
import type { Journal } from "../journal/journal.ts";
import { parseLine } from "../syntax/line/parse-line.ts";

/**
 * Work of some days that is set without the word `set`: `homework: G major, thirds`, and the lines below `for next
 * week`. Read as if it had the word; what then says nothing that can be played is words. The oldest day first.
 */
export function setInWords(journal: Journal, from: DayNumber, to: DayNumber): readonly DeclaredSet[] {
  const days = [...datedBlocks(journal, from, to)].sort((a, b) => a.day - b.day);
  return days.flatMap((day) => setOn(journal, day));
}

function setOn(journal: Journal, { uri, block, day }: DatedBlock): readonly DeclaredSet[] {
  return journal.model(block).lines.flatMap((read, line): DeclaredSet[] => {
    if (read.type !== "set" || read.opens) return [];
    const text = block.lines[line]!.slice(read.from, read.end).trim();
    return text === "" ? [] : [{ declared: asDeclared(journal, text), uri, block, line, text, day }];
  });
}

function asDeclared(journal: Journal, text: string): DeclaredSet["declared"] {
  const line = `set ${text}`;
  const read = parseLine(line, { ...journal.partContext, head: true });
  const declared = read.type === "declaration" ? readDeclaration(line, read, journal.partContext).declared : undefined;
  return declared?.type === "set" ? declared : { type: "set", words: text };
}
