import type { Block, Document } from "../syntax/document.ts";
import type { PartMemo } from "../syntax/parts.ts";
import { NO_NAMES, Vocabulary } from "../syntax/vocabulary.ts";
import { type Conventions, conventionsOf } from "./conventions.ts";
import type { DeclarationContext, Declared } from "./declaration.ts";
import { type DeclaredName, declaredNamesIn, gathered } from "./declared-names.ts";
import { languagePhrases } from "./language.ts";
import type { BlockModel } from "./model.ts";
import { readBlock } from "./read-block.ts";

/** The name of the file that marks the top of a journal. */
export const MARKER = "journal.practice";

/** All files of one journal as they stand now. Immutable: an edit makes another. What is asked for is read when asked. */
export class Journal {
  private settled: { readonly vocabulary: Vocabulary; readonly declared: readonly Declared[] } | undefined;
  private readonly conventionsByFile = new Map<string, Conventions>();

  constructor(
    /** The folder's address, or the file's own for a file that stands alone. */
    readonly root: string,
    readonly files: ReadonlyMap<string, Document>,
    readonly memo: Memo = new Memo(),
  ) {}

  /** The same journal with one file set, or taken away. */
  with(uri: string, document: Document | undefined): Journal {
    const files = new Map(this.files);
    if (document) files.set(uri, document);
    else files.delete(uri);
    return new Journal(this.root, files, this.memo);
  }

  /** The words known in this journal. The same object while no declared name changes. */
  get vocabulary(): Vocabulary {
    return this.settle().vocabulary;
  }

  /** What the declarations settle for one file. The same object while no declaration changes its meaning. */
  conventions(uri: string): Conventions {
    const known = this.conventionsByFile.get(uri);
    if (known) return known;
    const conventions = this.memo.conventions(uri, [...this.settle().declared, ...this.ownNoteValue(uri)]);
    this.conventionsByFile.set(uri, conventions);
    return conventions;
  }

  /** A block as read with this journal's names. */
  model(block: Block): BlockModel {
    return this.memo.model(block, this.vocabulary);
  }

  /** The addresses of the files, the marker first, then by name: the order in which declarations count. */
  get addresses(): readonly string[] {
    const isMarker = (uri: string): boolean => uri.endsWith(`/${MARKER}`);
    return [...this.files.keys()].sort((a, b) => Number(isMarker(b)) - Number(isMarker(a)) || (a < b ? -1 : 1));
  }

  /** For reading single lines with this journal's words. */
  get partContext(): DeclarationContext {
    return this.memo.partContext(this.vocabulary);
  }

  /** Whether a block may hold declarations: every head, and the days in which something is declared by name. */
  mayDeclare(block: Block): boolean {
    return !block.day || this.memo.names(block).length > 0;
  }

  private settle(): { readonly vocabulary: Vocabulary; readonly declared: readonly Declared[] } {
    if (this.settled) return this.settled;
    const blocks = this.declaringBlocks();
    const vocabulary = this.memo.vocabulary(blocks.flatMap((block) => this.memo.names(block)));
    const declared = blocks.flatMap((block) => this.memo.declared(block, vocabulary));
    this.settled = { vocabulary, declared };
    return this.settled;
  }

  private declaringBlocks(): Block[] {
    return this.addresses.flatMap((uri) => this.files.get(uri)!.blocks.filter((block) => this.mayDeclare(block)));
  }

  /** `note value` holds from where it stands on: in the marker for all files, in another head for that file. */
  private ownNoteValue(uri: string): readonly Declared[] {
    const head = this.files.get(uri)?.blocks[0];
    if (!head || head.day) return [];
    return this.memo.declared(head, this.vocabulary).filter((each) => each.type === "note value");
  }
}

/**
 * What was found out about parts and blocks, kept by their text or identity. Owned by whoever owns the journal, and shared
 * by its successive states: a block that no edit touched is not read again.
 */
export class Memo {
  private readonly phrases = languagePhrases();
  private readonly blockNames = new WeakMap<Block, readonly DeclaredName[]>();
  private models = new WeakMap<Block, BlockModel>();
  private parts: PartMemo = new Map();
  private known: { readonly key: string; readonly vocabulary: Vocabulary } | undefined;
  private readonly settledConventions = new Map<string, { readonly key: string; readonly conventions: Conventions }>();
  private readonly derived = new Map<string, WeakMap<object, object>>();

  names(block: Block): readonly DeclaredName[] {
    return remembered(this.blockNames, block, () => declaredNamesIn(block));
  }

  vocabulary(names: readonly DeclaredName[]): Vocabulary {
    const key = JSON.stringify(names);
    if (this.known?.key === key) return this.known.vocabulary;
    const vocabulary = new Vocabulary(this.phrases, names.length ? gathered(names) : NO_NAMES);
    this.known = { key, vocabulary };
    this.models = new WeakMap();
    this.parts = new Map();
    this.derived.clear();
    return vocabulary;
  }

  partContext(vocabulary: Vocabulary): DeclarationContext {
    return { vocabulary, memo: vocabulary === this.known?.vocabulary ? this.parts : new Map() };
  }

  /** Only for the vocabulary given out last: an older state of the journal reads its blocks anew. */
  model(block: Block, vocabulary: Vocabulary): BlockModel {
    const context = this.partContext(vocabulary);
    if (vocabulary !== this.known?.vocabulary) return readBlock(block, context);
    return remembered(this.models, block, () => readBlock(block, context));
  }

  declared(block: Block, vocabulary: Vocabulary): readonly Declared[] {
    return this.model(block, vocabulary).declarations.flatMap(({ declaration }) =>
      declaration.declared ? [declaration.declared] : [],
    );
  }

  conventions(uri: string, declared: readonly Declared[]): Conventions {
    const key = JSON.stringify(declared);
    const known = this.settledConventions.get(uri);
    if (known?.key === key) return known.conventions;
    const conventions = conventionsOf(declared);
    this.settledConventions.set(uri, { key, conventions });
    return conventions;
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
}

function remembered<K extends object, V>(map: WeakMap<K, V>, key: K, make: () => V): V {
  const known = map.get(key);
  if (known !== undefined) return known;
  const value = make();
  map.set(key, value);
  return value;
}
