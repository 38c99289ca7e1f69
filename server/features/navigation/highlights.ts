import { recordsOfBlock } from "../../history/attempts.ts";
import { dayOfBlock } from "../../journal/day-of-block.ts";
import type { Journal } from "../../journal/journal.ts";
import { isReadForTitles, titleIndex } from "../../journal/titles/journal-titles.ts";
import type { Block, Document, Position } from "../../syntax/document/document.ts";
import type { Range } from "../types.ts";
import { subjectOf } from "./exercise-places.ts";
import { mentionsAtHand } from "./mentions.ts";
import { type Mention, type Name, rangeOn } from "./named.ts";
import { hasWords, wordsNaming } from "./named-blocks.ts";
import { names } from "./places-of-name.ts";
import { type ExerciseThere, underCursor } from "./under-cursor.ts";

/** A place in the file that is asked about; `declares` where the name comes from there. */
export interface Highlight {
  readonly range: Range;
  readonly declares: boolean;
}

/** So many blocks above the cursor and below it are looked at: an editor asks whenever the cursor moves. */
export const BLOCKS_AROUND = 60;

/**
 * The other places of a file that name what stands at a position, or play its exercise. Of a long file those of the
 * days around, as of 37,000 lines nobody sees more.
 */
export function highlightsAt(journal: Journal, uri: string, position: Position): readonly Highlight[] {
  const found = underCursor(journal, uri, position, true);
  if (!found) return [];
  const { document, index, subject } = found;
  return [...blocksAround(document, index)].flatMap(([block, first]) =>
    subject.type === "name"
      ? ofName(journal, block, subject.name).map((each) => placed(first, each, declares(journal, block, each)))
      : ofExercise(journal, uri, block, subject).map((each) => placed(first, each, false)),
  );
}

function* blocksAround({ blocks, starts }: Document, index: number): Generator<readonly [Block, number]> {
  const to = Math.min(blocks.length, index + BLOCKS_AROUND + 1);
  for (let i = Math.max(0, index - BLOCKS_AROUND); i < to; i++) yield [blocks[i]!, starts[i]!];
}

interface OnLine {
  readonly line: number;
  readonly start: number;
  readonly end: number;
}

function placed(first: number, { line, start, end }: OnLine, isDeclared: boolean): Highlight {
  return { range: rangeOn(first + line, { start, end }), declares: isDeclared };
}

function ofName(journal: Journal, block: Block, name: Name): readonly Mention[] {
  if (block.day && !hasWords(block, wordsNaming(name, journal.vocabulary))) return [];
  return mentionsAtHand(journal, block).filter((mention) => names(mention, name));
}

/** A declaration, or the line that teaches a title. */
function declares(journal: Journal, block: Block, mention: Mention): boolean {
  if (mention.isDeclaration || mention.kind !== "title" || !isReadForTitles(journal)) return mention.isDeclaration;
  return titlesTaught(journal).get(mention.key) === `${dayOfBlock(block)} ${mention.line}`;
}

/** Where each title is taught that is not declared: its day and line. */
function titlesTaught(journal: Journal): ReadonlyMap<string, string> {
  const index = titleIndex(journal);
  return journal.memo.of(
    index,
    "titles taught",
    () => new Map([...index.taught].reverse().map(({ key, day, line }) => [key, `${day} ${line}`])),
  );
}

function ofExercise(
  journal: Journal,
  uri: string,
  block: Block,
  { exerciseKey, strandKey }: ExerciseThere,
): readonly OnLine[] {
  if (!isReadForTitles(journal)) return []; // a moment later it is known
  const records = recordsOfBlock(journal, uri, block).filter((record) => record.exerciseKey === exerciseKey);
  if (strandKey !== undefined) return records.filter((each) => each.strandKey === strandKey && each.rate !== null);
  if (records.length === 0) return [];
  const lines = new Map(records.map(({ line, subjectKey }) => [line, subjectKey]));
  return journal.model(block).entries.flatMap((entry) => {
    const key = lines.get(entry.place.line);
    return key === undefined ? [] : [{ line: entry.place.line, ...subjectOf(entry, key) }];
  });
}
