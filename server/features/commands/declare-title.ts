import { type Journal, MARKER } from "../../journal/journal.ts";
import { titleIndex } from "../../journal/titles/journal-titles.ts";
import type { Block, Document, Position } from "../../syntax/document/document.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import type { MeaningOf } from "../../syntax/words/meaning.ts";
import { isAsked } from "../explain/action-kinds.ts";
import { isName } from "../explain/declarable-name.ts";
import { headInsertion } from "../explain/head-insertion.ts";
import { entryUnderCursor } from "../explain/line-under-cursor.ts";
import { type Refusal, refusal } from "../explain/refusal.ts";
import type { CodeAction, Range, TextEdit } from "../types.ts";
import type { CommandAnswer } from "./command-answer.ts";
import { commandTexts } from "./command-texts.ts";

/**
 * Declares the title of the entry at a position, which lines alone have taught so far: in `journal.practice` where the
 * journal has it, else above the days of this file; below the other pieces there; with the short name that the player
 * writes. The cursor goes to the end of the declaration, where its key can be added.
 */
export function declareTitle(journal: Journal, uri: string, position: Position): CommandAnswer {
  const found = declarable(journal, uri, position);
  if (!found.ok) return found;
  const { target, edit, cursor } = found;
  return { ok: true, uri: target, edits: [edit], cursor };
}

/**
 * The same as an action on the line, where it is another than the fix of the diagnostic there: that declares a title as
 * it stands, in this file and without a short name.
 *
 * @param only as in `codeActionsIn`
 */
export function declareTitleIn(
  journal: Journal,
  uri: string,
  { start, end }: Range,
  only?: readonly string[],
): readonly CodeAction[] {
  if (!isAsked("quickfix", only) || start.line !== end.line) return [];
  const found = declarable(journal, uri, start);
  if (!found.ok || (found.isFix && found.target === uri)) return [];
  const { declaration, target } = found;
  return [
    {
      title: target === uri ? commandTexts.declare(declaration) : commandTexts.declareIn(declaration, MARKER),
      kind: "quickfix",
      uri: found.target,
      edits: [found.edit],
      preferred: false,
      diagnostics: [],
    },
  ];
}

interface Declarable {
  readonly ok: true;
  /** `piece "The Sleepy Frog" as Frog`. */
  readonly declaration: string;
  /** A title as it stands on the line, without a short name. */
  readonly isFix: boolean;
  /** The file in which it goes. */
  readonly target: string;
  readonly edit: TextEdit;
  /** Behind it, after the edit. */
  readonly cursor: Position;
}

function declarable(journal: Journal, uri: string, position: Position): Declarable | Refusal {
  const found = entryUnderCursor(journal, uri, position);
  if (!found.ok) return found;
  const { entry } = found;
  const typed = entry.source.subject;
  if (typed?.meaning.type !== "title") return NO_TITLE;
  const title = titleOf(journal, typed.meaning);
  if (typed.meaning.declared || journal.vocabulary.title(title) !== undefined) return DECLARED;
  if (!isName(title)) return UNNAMEABLE;
  const short = shortNameOf(journal, title);
  const declaration = `piece "${title}"${short === undefined ? "" : ` as ${short}`}`;
  const target = journal.addresses.find((each) => each.endsWith(`/${MARKER}`)) ?? uri;
  const document = journal.files.get(target)!;
  const { indent, below } = placeIn(document);
  const edit = headInsertion(indent + declaration, document, below);
  const line = edit.range.start.line + (edit.newText.endsWith(declaration) ? 1 : 0);
  return {
    ok: true,
    declaration,
    isFix: title === typed.meaning.title && short === undefined,
    target,
    edit,
    cursor: { line, character: indent.length + declaration.length },
  };
}

const NO_TITLE = refusal(commandTexts.noTitle);
const DECLARED = refusal(commandTexts.titleDeclared);
const UNNAMEABLE = refusal(commandTexts.titleUnnameable);

/** Some words of a title, or another spelling of it, are that title, as it was first written. */
function titleOf(journal: Journal, { title, of = title }: MeaningOf<"title">): string {
  return titleIndex(journal).named(of) ?? of;
}

/** The last declaration of a piece in a head, and how it is set in; undefined where there is none. */
function placeIn({ blocks }: Document): { readonly indent: string; readonly below?: number } {
  const head = blocks[0]!;
  const below = head.day ? -1 : head.lines.findLastIndex((line) => PIECE.test(line));
  return below < 0 ? { indent: "" } : { indent: PIECE.exec(head.lines[below]!)![1]!, below };
}

const PIECE = /^\uFEFF?(\s*(?:[-*•]\s+)?)(?:piece|study)\s*["“„«]/i;

/** The short name that most lines write, where it can mean nothing but this title; undefined where none does. */
function shortNameOf(journal: Journal, title: string): string | undefined {
  const counts = new Map<string, { readonly typed: string; readonly count: number }>();
  for (const uri of journal.addresses)
    for (const block of journal.files.get(uri)!.blocks)
      for (const typed of shortNamesIn(journal, block, title)) {
        const key = nameKey(typed);
        counts.set(key, { typed: counts.get(key)?.typed ?? typed, count: (counts.get(key)?.count ?? 0) + 1 });
      }
  const index = titleIndex(journal);
  const usable = [...counts.values()].filter(({ typed }) => isName(typed) && index.named(typed) === title);
  return usable.sort((a, b) => b.count - a.count)[0]?.typed;
}

/** What lines of a block call a title by some of its words. */
function shortNamesIn(journal: Journal, block: Block, title: string): readonly string[] {
  const lines = [...(journal.titlesOf(block) ?? [])].filter(([, titles]) =>
    titles.some((each) => !each.whole && each.title === title),
  );
  if (lines.length === 0) return [];
  const model = journal.readOnce(block);
  return lines.flatMap(([line]) => {
    const subject = model.entries.find(({ place }) => place.line === line)?.source.subject;
    if (subject?.meaning.type !== "title" || subject.meaning.of !== title) return [];
    return [block.lines[line]!.slice(subject.start, subject.end).trim().replace(/\s+/g, " ")];
  });
}
