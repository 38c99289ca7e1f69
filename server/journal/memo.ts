import type { NoteNames } from "../music/notes/note-names.ts";
import type { Block } from "../syntax/document/document.ts";
import type { Line } from "../syntax/line/line.ts";
import { LineReader } from "../syntax/line/line-reader.ts";
import { BoundedMemo } from "../syntax/words/bounded-memo.ts";
import { NO_NAMES, Vocabulary } from "../syntax/words/vocabulary.ts";
import { type Conventions, conventionsOf } from "./conventions.ts";
import type { DeclarationContext, Declared } from "./declarations/declared.ts";
import { type DeclaredName, declaredNamesIn, gathered, namesDeclaredIn } from "./declarations/declared-names.ts";
import { languageWords } from "./language.ts";
import type { BlockModel } from "./model.ts";
import { readBlock, readLines } from "./read-block.ts";

/** Declarations that settle nothing for other entries. */
const WITHOUT_CONVENTION: readonly Declared["type"][] = [
  "aim",
  "set",
  "concert",
  "names",
  "phase",
  "activity",
  "outcome",
  "articulation",
  "shared",
  "share body",
];

/** Half-typed declarations each settle something else, and much may hang on that: the latest handful is remembered. */
function conventionsMemo(): BoundedMemo<Conventions> {
  return new BoundedMemo(CONVENTIONS_BYTES * 8, () => CONVENTIONS_BYTES);
}

const CONVENTIONS_BYTES = 2_000_000;

/**
 * What was found out about parts and blocks, kept by their text or identity. Owned by whoever owns the journal, and
 * shared by its successive states: a block that no edit touched is not read again.
 */
export class Memo {
  private readonly blockNoteNames = new WeakMap<Block, NoteNames | undefined>();
  private readonly blockNames = new WeakMap<Block, readonly DeclaredName[]>();
  private models = new WeakMap<Block, BlockModel>();
  private reader: LineReader | undefined;
  /** The day that was read last: an edit in it has only the lines read that it changed. */
  private lastRead: { readonly block: Block; readonly model: BlockModel } | undefined;
  private known: { readonly key: string; readonly vocabulary: Vocabulary } | undefined;
  private settledConventions = conventionsMemo();
  private readonly derived = new Map<string, WeakMap<object, object>>();

  private readonly latestByFile = new Map<string, Map<string, unknown>>();

  names(block: Block): readonly DeclaredName[] {
    return remembered(this.blockNames, block, () => declaredNamesIn(block));
  }

  noteNames(block: Block): NoteNames | undefined {
    if (!this.blockNoteNames.has(block)) this.blockNoteNames.set(block, namesDeclaredIn(block));
    return this.blockNoteNames.get(block);
  }

  vocabulary(noteNames: NoteNames, names: readonly DeclaredName[]): Vocabulary {
    const key = JSON.stringify([noteNames.id, names]);
    if (this.known?.key === key) return this.known.vocabulary;
    const declared = names.length ? gathered(names) : NO_NAMES;
    const vocabulary = new Vocabulary(languageWords(noteNames), noteNames, declared);
    this.known = { key, vocabulary };
    this.models = new WeakMap();
    this.reader = new LineReader(vocabulary);
    this.lastRead = undefined;
    this.settledConventions = conventionsMemo();
    this.derived.clear();
    this.latestByFile.clear();
    return vocabulary;
  }

  partContext(vocabulary: Vocabulary): DeclarationContext {
    const known = vocabulary === this.known?.vocabulary ? this.reader : undefined;
    return { vocabulary, memo: known ?? new LineReader(vocabulary) };
  }

  /** Only for the vocabulary given out last: an older state of the journal reads its blocks anew. */
  model(block: Block, vocabulary: Vocabulary): BlockModel {
    const context = this.partContext(vocabulary);
    if (vocabulary !== this.known?.vocabulary) return readBlock(block, context);
    return remembered(this.models, block, () => {
      const model = readBlock(block, context, this.earlierState(block));
      if (block.day) this.lastRead = { block, model };
      return model;
    });
  }

  /** What was read last, where it is the same day by the line that opens it. */
  private earlierState({ lines }: Block): { readonly block: Block; readonly model: BlockModel } | undefined {
    return this.lastRead?.block.lines[0] === lines[0] ? this.lastRead : undefined;
  }

  modelOnce(block: Block, vocabulary: Vocabulary): BlockModel {
    const kept = vocabulary === this.known?.vocabulary ? this.models.get(block) : undefined;
    return kept ?? readBlock(block, this.partContext(vocabulary));
  }

  linesOnce(block: Block, vocabulary: Vocabulary): Iterable<Line> {
    const kept = vocabulary === this.known?.vocabulary ? this.models.get(block) : undefined;
    return kept?.lines ?? readLines(block, this.partContext(vocabulary));
  }

  declared(block: Block, vocabulary: Vocabulary): readonly Declared[] {
    return this.model(block, vocabulary).declarations.flatMap(({ declaration }) =>
      declaration.declared ? [declaration.declared] : [],
    );
  }

  /**
   * The same object for the same declarations, in whatever file. One object goes with one vocabulary, so that what is
   * derived from it may rest on both.
   */
  conventions(
    declared: readonly Declared[],
    { vocabulary, names }: { readonly vocabulary: Vocabulary; readonly names: NoteNames },
  ): Conventions {
    const bearing = declared.filter(({ type }) => !WITHOUT_CONVENTION.includes(type));
    if (vocabulary !== this.known?.vocabulary) return conventionsOf(bearing, names);
    return this.settledConventions.of(JSON.stringify(bearing), () => conventionsOf(bearing, names));
  }

  /** Something derived from an immutable object, under a name, for as long as the object and the vocabulary last. */
  of<T extends object>(object: object, name: string, make: () => T): T {
    let map = this.derived.get(name);
    if (!map) {
      map = new WeakMap();
      this.derived.set(name, map);
    }
    return remembered(map, object, make) as T;
  }

  /**
   * Something derived from an immutable object and from what else bears on it: made anew where one of the inputs is
   * another than the last time.
   */
  from<T>(object: object, name: string, inputs: readonly unknown[], make: () => T): T {
    const cell = this.of(object, name, (): Cell<T> => ({}));
    if (cell.last && sameItems(cell.last.inputs, inputs)) return cell.last.value;
    const value = make();
    cell.last = { inputs, value };
    return value;
  }

  /** What was last derived under a name for a file, for the next state of the file to build on. */
  latest<T>(name: string, uri: string): T | undefined {
    return this.latestByFile.get(name)?.get(uri) as T | undefined;
  }

  /** For a file that is gone. */
  forget(uri: string): void {
    for (const byFile of this.latestByFile.values()) byFile.delete(uri);
  }

  setLatest<T>(name: string, uri: string, value: T): void {
    let byFile = this.latestByFile.get(name);
    if (!byFile) {
      byFile = new Map();
      this.latestByFile.set(name, byFile);
    }
    byFile.set(uri, value);
  }
}

interface Cell<T> {
  last?: { readonly inputs: readonly unknown[]; readonly value: T };
}

/** Whether two lists hold the same objects. */
export function sameItems(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((each, i) => each === b[i]);
}

function remembered<K extends object, V>(map: WeakMap<K, V>, key: K, make: () => V): V {
  const known = map.get(key);
  if (known !== undefined) return known;
  const value = make();
  map.set(key, value);
  return value;
}
