import { playedEntry } from "../../history/played.ts";
import type { Declared } from "../../journal/declarations/declared.ts";
import { eachSubject, entryOfSubjectAt } from "../../journal/each-subject.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Attempt, BlockModel, Entry } from "../../journal/model.ts";
import { readEntry } from "../../journal/read-entry.ts";
import { isReadForTitles, titleIndex } from "../../journal/titles/journal-titles.ts";
import { type Block, blockIndexAt, type Document, type Position } from "../../syntax/document/document.ts";
import type { EntryLine } from "../../syntax/line/line.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import { declaredMentions } from "./declarations.ts";
import { mentionsAtHand, mentionsIn } from "./mentions.ts";
import { isSameName, type Mention, type Name, type NameKind } from "./named.ts";

/** The line of a position, and what it says there. */
export interface UnderCursor {
  readonly uri: string;
  readonly document: Document;
  readonly block: Block;
  readonly index: number;
  /** The absolute line at which the block begins. */
  readonly first: number;
  /** Within the block. */
  readonly line: number;
  readonly subject: NamedThere | ExerciseThere;
}

/** A name; `mention` is the place at which it stands. */
export interface NamedThere {
  readonly type: "name";
  readonly name: Name;
  readonly mention: Mention;
}

/** What the line practises; on a tempo, in the way of that attempt. Keys are those of the records. */
export interface ExerciseThere {
  readonly type: "exercise";
  readonly exerciseKey: string;
  readonly strandKey?: string;
}

/**
 * What a position stands on: a name, or else the exercise of its line; undefined where it stands on neither.
 *
 * @param atHand for what cannot wait: titles that other days teach are known only where all days were read for them
 */
export function underCursor(
  journal: Journal,
  uri: string,
  position: Position,
  atHand = false,
): UnderCursor | undefined {
  const document = journal.files.get(uri);
  if (!document || position.line < 0 || position.line >= document.lineCount) return undefined;
  const index = blockIndexAt(document, position.line);
  const block = document.blocks[index]!;
  const first = document.starts[index]!;
  const line = position.line - first;
  const { character } = position;
  const known = !atHand || isReadForTitles(journal);
  const mentions = known ? mentionsIn(journal, block) : mentionsAtHand(journal, block);
  const model = known ? journal.model(block) : journal.ownModel(block);
  const subject = nameAt(journal, mentions, line, character, known) ?? exerciseAt(journal, uri, model, line, character);
  return subject && { uri, document, block, index, first, line, subject };
}

/** Of two names that touch the column the one that begins there. */
function nameAt(
  journal: Journal,
  mentions: readonly Mention[],
  line: number,
  character: number,
  known: boolean,
): NamedThere | undefined {
  const mention = mentions.findLast((each) => {
    const quote = each.isQuoted ? 1 : 0;
    return each.line === line && each.start - quote <= character && character <= each.end + quote;
  });
  const name = mention && nameMeant(journal, mention, known);
  return name && { type: "name", name, mention };
}

/**
 * A title is called as it was first written. Set work in quotes may be a title that lines teach; a focus, and an
 * instrument, are names where they are declared.
 */
function nameMeant(journal: Journal, mention: Mention, known: boolean): Name | undefined {
  if (mention.kind === "title" && known) {
    const learnt = titleIndex(journal).learnt.find(({ key }) => key === mention.key);
    return learnt ? { kind: "title", key: learnt.key, name: learnt.title } : mention;
  }
  if (mention.kind === "set work" && known) {
    const title = titleIndex(journal).named(mention.name);
    return title === undefined ? mention : { kind: "title", key: nameKey(title), name: title };
  }
  if (mention.isDeclaration || !NAMED_BY_DECLARATION.includes(mention.kind)) return mention;
  return declaredMentions(journal).find((each) => isSameName(each.mention, mention))?.mention;
}

const NAMED_BY_DECLARATION: readonly NameKind[] = ["focus", "instrument", "movement"];

function exerciseAt(
  journal: Journal,
  uri: string,
  model: BlockModel,
  line: number,
  character: number,
): ExerciseThere | undefined {
  const remark = model.lines[line]?.remark;
  if (remark && character >= remark.start) return undefined;
  const found = model.entries.find(({ place }) => place.line === line) ?? workOn(journal, model, line);
  if (!found) return undefined;
  const isOnTempo = ({ tempo, place }: Attempt) => tempo && place.start <= character && character <= place.end;
  const played = eachSubject(found).find(({ entry }) => entry.attempts.some(isOnTempo));
  const { entry } = played ?? entryOfSubjectAt(found, character);
  const { attempts } = playedEntry(entry, journal.conventions(uri));
  const own = attempts[entry.attempts.findIndex(isOnTempo)];
  const exerciseKey = (own ?? attempts[0])?.manner.exerciseKey;
  return exerciseKey === undefined
    ? undefined
    : { type: "exercise", exerciseKey, ...(own ? { strandKey: own.manner.strandKey } : {}) };
}

/** The entry that an aim, or set work, speaks of. */
function workOn({ vocabulary }: Journal, { declarations }: BlockModel, line: number): Entry | undefined {
  const entry = entryOfWork(declarations.find((each) => each.line === line)?.declaration.declared);
  return entry && readEntry(entry, line, vocabulary);
}

export function entryOfWork(declared: Declared | undefined): EntryLine | undefined {
  return declared?.type === "aim" || declared?.type === "set" ? declared.entry : undefined;
}
