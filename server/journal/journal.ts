import { ENGLISH_NAMES, type NoteNames } from "../music/notes/note-names.ts";
import { type Block, changedBlocks, type Document } from "../syntax/document/document.ts";
import { LineReader } from "../syntax/line/line-reader.ts";
import type { Phrase } from "../syntax/words/terms.ts";
import { NO_NAMES, Vocabulary } from "../syntax/words/vocabulary.ts";
import { type Conventions, conventionsOf } from "./conventions.ts";
import { DayWalk, LONG_DAY } from "./day-walk.ts";
import { declarationKey } from "./declarations/declaration-key.ts";
import type { DeclarationContext, Declared } from "./declarations/declared.ts";
import { type DeclaredName, declaredNamesIn, gathered, namesDeclaredIn } from "./declarations/declared-names.ts";
import { languagePhrases } from "./language.ts";
import type { BlockModel } from "./model.ts";
import { readBlock } from "./read-block.ts";

/** The name of the file that marks the top of a journal. */
export const MARKER = "journal.practice";

/** What the declarations of all files come to. The same object while none of them changes. */
interface Settled {
  readonly vocabulary: Vocabulary;
  readonly names: NoteNames;
  readonly declared: readonly Declared[];
  readonly conventions: Map<string, Conventions>;
  readonly keys: Map<string, readonly string[]>;
}

/**
 * All files of one journal as they stand now. Immutable: an edit makes another. What is asked for is read when asked.
 */
export class Journal {
  constructor(
    /** The folder's address, or the file's own for a file that stands alone. */
    readonly root: string,
    readonly files: ReadonlyMap<string, Document>,
    readonly memo: Memo = new Memo(),
    private settled?: Settled,
  ) {}

  /** The same journal with one file set, or taken away. What no declaration bears on is kept. */
  with(uri: string, document: Document | undefined): Journal {
    const files = new Map(this.files);
    const before = files.get(uri);
    if (document) files.set(uri, document);
    else files.delete(uri);
    const kept = before && document && !this.touchesDeclarations(before, document) ? this.settled : undefined;
    return new Journal(this.root, files, this.memo, kept);
  }

  /** The words known in this journal. The same object while no declared name changes. */
  get vocabulary(): Vocabulary {
    return this.settle().vocabulary;
  }

  /** How notes are called in this journal. */
  get names(): NoteNames {
    return this.settle().names;
  }

  /** What the declarations settle for one file. The same object while no declaration changes its meaning. */
  conventions(uri: string): Conventions {
    const settled = this.settle();
    const known = settled.conventions.get(uri);
    if (known) return known;
    const conventions = this.memo.conventions([...settled.declared, ...this.ownNoteValue(uri)], settled);
    settled.conventions.set(uri, conventions);
    return conventions;
  }

  /** A block as read with this journal's names. */
  model(block: Block): BlockModel {
    return this.memo.model(block, this.vocabulary);
  }

  /** The same, not kept where it was not kept before: for going through a whole journal once. */
  readOnce(block: Block): BlockModel {
    return this.memo.modelOnce(block, this.vocabulary);
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

  /** For going over days with this journal's words. */
  get dayWalk(): DayWalk {
    const { vocabulary, partContext } = this;
    return this.memo.of(vocabulary, "day walk", () => new DayWalk(partContext));
  }

  /** What is declared once in the files that count before this one (see `declarationKey`). */
  keysBefore(uri: string): readonly string[] {
    const settled = this.settle();
    const known = settled.keys.get(uri);
    if (known) return known;
    const earlier = this.addresses.slice(0, this.addresses.indexOf(uri));
    const blocks = earlier.flatMap((address) => this.declaringBlocksOf(address));
    const keys = blocks.flatMap((block) =>
      this.model(block).declarations.flatMap(({ declaration }) => declarationKey(declaration) ?? []),
    );
    settled.keys.set(uri, keys);
    return keys;
  }

  private settle(): Settled {
    if (this.settled) return this.settled;
    const blocks = this.addresses.flatMap((uri) => this.declaringBlocksOf(uri));
    const [names = ENGLISH_NAMES] = blocks.flatMap((block) => this.memo.noteNames(block) ?? []);
    const vocabulary = this.memo.vocabulary(
      names,
      blocks.flatMap((block) => this.memo.names(block)),
    );
    const declared = blocks.flatMap((block) => this.memo.declared(block, vocabulary));
    this.settled = { vocabulary, names, declared, conventions: new Map(), keys: new Map() };
    return this.settled;
  }

  private declaringBlocksOf(uri: string): readonly Block[] {
    return this.files.get(uri)!.blocks.filter((block) => this.mayDeclare(block));
  }

  /** Whether a block may hold declarations: every head, and the days in which something is declared by name. */
  private mayDeclare(block: Block): boolean {
    return !block.day || this.memo.names(block).length > 0;
  }

  private touchesDeclarations(before: Document, after: Document): boolean {
    const changed = changedBlocks(before, after);
    const blocks = [
      ...before.blocks.slice(changed.from, changed.before),
      ...after.blocks.slice(changed.from, changed.after),
    ];
    return blocks.some((block) => this.mayDeclare(block));
  }

  /** `note value` holds from where it stands on: in the marker for all files, in another head for that file. */
  private ownNoteValue(uri: string): readonly Declared[] {
    const head = this.files.get(uri)?.blocks[0];
    if (!head || head.day) return [];
    return this.memo.declared(head, this.vocabulary).filter((each) => each.type === "note value");
  }
}

/** Declarations that settle nothing for other entries. */
const WITHOUT_CONVENTION: readonly Declared["type"][] = ["aim", "set", "concert", "names", "phase", "activity"];
/** Half-typed declarations each settle something else; this many are remembered. */
const MOST_CONVENTIONS = 32;

/**
 * What was found out about parts and blocks, kept by their text or identity. Owned by whoever owns the journal, and
 * shared by its successive states: a block that no edit touched is not read again.
 */
export class Memo {
  private readonly phrases = new Map<NoteNames, readonly Phrase[]>();
  private readonly blockNoteNames = new WeakMap<Block, NoteNames | undefined>();
  private readonly blockNames = new WeakMap<Block, readonly DeclaredName[]>();
  private models = new WeakMap<Block, BlockModel>();
  private reader: LineReader | undefined;
  /** The day of very many lines that was read last: an edit in it has only the lines read that it changed. */
  private longDay: { readonly block: Block; readonly model: BlockModel } | undefined;
  private known: { readonly key: string; readonly vocabulary: Vocabulary } | undefined;
  private readonly settledConventions = new Map<string, Conventions>();
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
    const phrases = this.phrases.get(noteNames) ?? languagePhrases(noteNames);
    this.phrases.set(noteNames, phrases);
    const vocabulary = new Vocabulary(phrases, noteNames, names.length ? gathered(names) : NO_NAMES);
    this.known = { key, vocabulary };
    this.models = new WeakMap();
    this.reader = new LineReader(vocabulary);
    this.longDay = undefined;
    this.settledConventions.clear();
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
      const model = readBlock(block, context, this.longDay);
      if (block.lineCount > LONG_DAY) this.longDay = { block, model };
      return model;
    });
  }

  modelOnce(block: Block, vocabulary: Vocabulary): BlockModel {
    const kept = vocabulary === this.known?.vocabulary ? this.models.get(block) : undefined;
    return kept ?? readBlock(block, this.partContext(vocabulary));
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
    { vocabulary, names }: Pick<Settled, "vocabulary" | "names">,
  ): Conventions {
    const bearing = declared.filter(({ type }) => !WITHOUT_CONVENTION.includes(type));
    if (vocabulary !== this.known?.vocabulary) return conventionsOf(bearing, names);
    const key = JSON.stringify(bearing);
    const known = this.settledConventions.get(key);
    if (known) return known;
    if (this.settledConventions.size >= MOST_CONVENTIONS) this.settledConventions.clear();
    const conventions = conventionsOf(bearing, names);
    this.settledConventions.set(key, conventions);
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
