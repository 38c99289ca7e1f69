import type { Journal } from "../../journal/journal.ts";
import { isShared } from "../../journal/lending.ts";
import { readForTitles } from "../../journal/titles/journal-titles.ts";
import type { Position } from "../../syntax/document/document.ts";
import { type Refusal, refusal } from "../explain/refusal.ts";
import type { Range } from "../types.ts";
import { declarationsOf } from "./declarations.ts";
import { type Name, type NameKind, rangeOn } from "./named.ts";
import type { Renaming } from "./new-spelling.ts";
import { renameTexts } from "./rename-texts.ts";
import { type NamedThere, type UnderCursor, underCursor } from "./under-cursor.ts";

/** A name that may be changed, and where the cursor is on it. */
export interface Renameable {
  readonly ok: true;
  readonly range: Range;
  /** What is to be called otherwise: the name, or a title's short name where the cursor is on that. */
  readonly called: string;
  readonly name: Name;
  readonly form: Renaming["form"];
}

/** What a rename at a position would be about, or why there can be none. In steps, as days may have to be read. */
export function* renameableAt(
  journal: Journal,
  uri: string,
  position: Position,
): Generator<void, Renameable | Refusal> {
  yield* readForTitles(journal);
  const found = underCursor(journal, uri, position);
  if (found?.subject.type !== "name") return NO_NAME;
  const { name, mention } = found.subject;
  const fault = faultOfRenaming(journal, name);
  if (fault) return fault;
  const form = mention.form === "short name" ? "short name" : "whole";
  return {
    ok: true,
    range: rangeOn(found.first + mention.line, mention),
    called: form === "short name" ? shortNameOf(journal, found, found.subject) : name.name,
    name,
    form,
  };
}

const NO_NAME = refusal(renameTexts.noName);
const BY_NUMBER = refusal(renameTexts.movementByNumber);
const KNOWN_INSTRUMENT = refusal(renameTexts.knownInstrument);
const SHARED = refusal(renameTexts.shared);

/** What a file that says `shared` may declare for other journals. */
const LENT: readonly NameKind[] = ["pattern", "scale", "articulation", "outcome", "phase"];

function faultOfRenaming(journal: Journal, name: Name): Refusal | undefined {
  if (name.kind === "movement") return BY_NUMBER;
  if (name.kind === "instrument" && !journal.vocabulary.declared.instruments.includes(name.name))
    return KNOWN_INSTRUMENT;
  if (!LENT.includes(name.kind)) return undefined;
  const declared = declarationsOf(journal, name);
  const isLent = declared.length === 0 || declared.some(({ uri }) => isShared(journal.files.get(uri)!));
  return isLent ? SHARED : undefined;
}

function shortNameOf(journal: Journal, { first, line, document }: UnderCursor, { name, mention }: NamedThere): string {
  const short = journal.vocabulary.declared.titles.find(({ title }) => title === name.name)?.short;
  const block = document.blocks[document.starts.indexOf(first)]!;
  return short ?? block.lines[line]!.slice(mention.start, mention.end);
}
