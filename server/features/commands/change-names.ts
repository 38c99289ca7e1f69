import { type Journal, MARKER } from "../../journal/journal.ts";
import { namesIn } from "../../journal/journal-name.ts";
import { NOTE_NAMES, type NoteNames, namesById } from "../../music/notes/note-names.ts";
import { applyChanges, type Document, type Position } from "../../syntax/document/document.ts";
import { cutLine } from "../../syntax/line/cut.ts";
import { declarationWordAt } from "../../syntax/line/declaration-word.ts";
import { fold } from "../../syntax/words/fold.ts";
import { headInsertion } from "../explain/head-insertion.ts";
import { refusal } from "../explain/refusal.ts";
import type { TextEdit } from "../types.ts";
import type { CommandAnswer } from "./command-answer.ts";
import { commandTexts } from "./command-texts.ts";
import { hasMarkers } from "./conflicts.ts";
import { type LineRenamed, type Naming, renamedLine } from "./names-on-line.ts";

/** A language of names, by its id, and what F sharp minor and B major are called in it. */
export interface LanguageOfNames {
  readonly id: NoteNames["id"];
  readonly examples: readonly string[];
}

/** The languages in which a journal's notes could be named instead. */
export function otherNames({ names }: Journal): readonly LanguageOfNames[] {
  const others = NOTE_NAMES.filter(({ id }) => id !== names.id);
  return others.map(({ id, key }) => ({
    id,
    examples: [key({ letter: "F", alter: 1 }, "minor"), key({ letter: "B", alter: 0 }, "major")],
  }));
}

/**
 * Names the notes and the keys of a journal in another language, in all its files, and declares that: `names` holds for
 * the whole journal. Each line is read as before; where words on one are known in the former language alone, its notes
 * are named anew all the same, and a note says how many such lines there are and where the first is.
 * In steps, as every line is read twice.
 *
 * @param language a language's id, `german`
 */
export function* changeNames(
  journal: Journal,
  uri: string,
  position: Position,
  language: string | undefined,
): Generator<void, CommandAnswer> {
  const names = language === undefined ? undefined : namesById(language);
  if (!names) return NO_LANGUAGE;
  if (names.id === journal.names.id) return refusal(commandTexts.namedSo(names.id));
  if (journal.declaredIn.has("shared")) return SHARED;
  if ([...journal.files.values()].some(hasMarkers)) return CONFLICT;
  const declared = declarationEdit(journal, uri, names);
  if (!declared) return NO_FILE;
  const document = applyChanges(journal.files.get(declared.uri)!, [
    { range: declared.edit.range, text: declared.edit.newText },
  ]);
  const after = journal.apart([[declared.uri, document]]);
  const from = { names: journal.names, context: journal.partContext };
  const to = { names: after.names, context: after.partContext };
  const changing = new Changing(journal, from, to);
  const files: { readonly uri: string; readonly edits: readonly TextEdit[] }[] = [];
  for (const each of journal.addresses) {
    const edits = yield* changing.editsOf(each);
    files.push({ uri: each, edits: each === declared.uri ? [...edits, declared.edit] : edits });
  }
  const own = files.find((each) => each.uri === uri);
  const also = files.filter((each) => each.uri !== uri && each.edits.length > 0);
  const note = changing.told();
  const isBelow = declared.uri === uri && /[\r\n]/.test(declared.edit.newText);
  const cursor = {
    line: position.line + (isBelow && declared.edit.range.start.line <= position.line ? 1 : 0),
    character: 0,
  };
  return { ok: true, uri, edits: own?.edits ?? [], also, cursor, ...(note ? { note } : {}) };
}

const NO_LANGUAGE = refusal(commandTexts.noLanguage(NOTE_NAMES.map(({ id }) => id)));
const SHARED = refusal(commandTexts.namesShared);
const CONFLICT = refusal(commandTexts.conflictInJournal);
const NO_FILE = refusal(commandTexts.noFile);

/** Declares the language: in the place of the one there is, else in the marker or above the days of a file. */
function declarationEdit(
  journal: Journal,
  uri: string,
  { id }: NoteNames,
): { readonly uri: string; readonly edit: TextEdit } | undefined {
  const file = journal.declaredIn.get("names");
  const there = file === undefined ? undefined : placeOfLanguage(journal.files.get(file)!);
  if (file !== undefined && there) return { uri: file, edit: { range: there, newText: id } };
  const target = journal.addresses.find((each) => each.endsWith(`/${MARKER}`)) ?? uri;
  const document = journal.files.get(target);
  return document && { uri: target, edit: headInsertion(`names ${id}`, document) };
}

/** Where a head says the language; the first declaration counts. */
function placeOfLanguage({ blocks }: Document): TextEdit["range"] | undefined {
  for (const [line, text] of blocks[0]!.lines.entries()) {
    const word = declarationWordAt(text, /^[\s\uFEFF]*(?:[-*•]\s+)?/.exec(text)![0].length, text.length);
    if (word?.word !== "names") continue;
    const [, lead, language] = /^(\s*:?\s*)(.*?)\s*$/s.exec(text.slice(word.end, cutLine(text).remark))!;
    if (!namesById(fold(language!))) continue;
    const start = word.end + lead!.length;
    return { start: { line, character: start }, end: { line, character: start + language!.length } };
  }
  return undefined;
}

/** Goes over all files of a journal. Lines that say the same are looked at once. */
class Changing {
  private readonly known = new Map<string, LineRenamed>();
  private readonly left: { readonly uri: string; readonly line: number }[] = [];

  constructor(
    private readonly journal: Journal,
    private readonly from: Naming,
    private readonly to: Naming,
  ) {}

  *editsOf(uri: string): Generator<void, readonly TextEdit[]> {
    const { blocks, starts } = this.journal.files.get(uri)!;
    const edits: TextEdit[] = [];
    for (const [index, block] of blocks.entries()) {
      yield;
      const titles = this.journal.titlesOf(block);
      for (const [i, text] of block.lines.entries()) {
        const line = starts[index]! + i;
        if (text.trim() === "") continue;
        const known = titles?.get(i);
        const { changes, same } = known
          ? renamedLine({ text, head: !block.day, titles: known }, this.from, this.to)
          : this.renamed(text, !block.day);
        if (!same) this.left.push({ uri, line });
        for (const { start, end, text: newText } of changes)
          if (text.slice(start, end) !== newText)
            edits.push({ range: { start: { line, character: start }, end: { line, character: end } }, newText });
      }
    }
    return edits;
  }

  private renamed(text: string, head: boolean): LineRenamed {
    const key = `${head}${text}`;
    const known = this.known.get(key) ?? renamedLine({ text, head }, this.from, this.to);
    this.known.set(key, known);
    return known;
  }

  /** Which lines are not read as before; undefined where all are. */
  told(): string | undefined {
    const [first] = this.left;
    if (!first) return undefined;
    const line = first.line + 1;
    const file = namesIn(first.uri).at(-1)!;
    const { length } = this.left;
    return length === 1 ? commandTexts.readOtherwise(line, file) : commandTexts.manyReadOtherwise(length, line, file);
  }
}
