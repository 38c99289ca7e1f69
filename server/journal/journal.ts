import { ENGLISH_NAMES, type NoteNames } from "../music/notes/note-names.ts";
import { type Block, changedBlocks, type Document } from "../syntax/document/document.ts";
import { LineReader } from "../syntax/line/line-reader.ts";
import { BoundedMemo } from "../syntax/words/bounded-memo.ts";
import { NO_NAMES, Vocabulary } from "../syntax/words/vocabulary.ts";
import { type Conventions, conventionsOf } from "./conventions.ts";
import { DayWalk, type KnownTitles, LONG_DAY } from "./day-walk.ts";
import { declarationKey } from "./declarations/declaration-key.ts";
import type { DeclarationContext, Declared } from "./declarations/declared.ts";
import { type DeclaredName, declaredNamesIn, gathered, namesDeclaredIn } from "./declarations/declared-names.ts";
import { languageWords } from "./language.ts";
import type { BlockModel } from "./model.ts";
import { readBlock, withTitles } from "./read-block.ts";
import { isReadForTitles, knownTitles } from "./titles/journal-titles.ts";

/** The name of the file that marks the top of a journal. */
export const MARKER = "journal.practice";

function isMarker(uri: string): boolean {
  return uri.endsWith(`/${MARKER}`);
}

/** The marker first, then by name: the order in which declarations count. */
export function inOrderOfAddress(a: string, b: string): number {
  return Number(isMarker(b)) - Number(isMarker(a)) || (a < b ? -1 : a > b ? 1 : 0);
}

/** What the declarations of all files come to. The same object while none of them changes. */
interface Settled {
  readonly vocabulary: Vocabulary;
  readonly names: NoteNames;
  /** A note value stands here only where it holds for all files. */
  readonly declared: readonly Declared[];
  /** By the file. */
  readonly conventions: Map<string, Conventions>;
  /** By what the file settles for itself alone: nearly always nothing. */
  readonly conventionsByOwn: Map<string, Conventions>;
  readonly declaredIn: ReadonlyMap<string, string>;
}

/** What a state of a journal takes over from the one before. */
interface Carried {
  readonly settled?: Settled;
  readonly addresses?: readonly string[];
}

/**
 * All files of one journal as they stand now. Immutable: an edit makes another. What is asked for is read when asked.
 */
export class Journal {
  private settled: Settled | undefined;
  private sorted: readonly string[] | undefined;

  constructor(
    /** The folder's address, or the file's own for a file that stands alone. */
    readonly root: string,
    readonly files: ReadonlyMap<string, Document>,
    readonly memo: Memo = new Memo(),
    { settled, addresses }: Carried = {},
  ) {
    this.settled = settled;
    this.sorted = addresses;
  }

  /** The same journal with one file set, or taken away. What no declaration bears on is kept. */
  with(uri: string, document: Document | undefined): Journal {
    return this.withAll([[uri, document]]);
  }

  /** The same journal with several files set or taken away at once. */
  withAll(changes: Iterable<readonly [string, Document | undefined]>): Journal {
    const files = new Map(this.files);
    let settled = this.settled;
    let sameFiles = true;
    for (const [uri, document] of changes) {
      sameFiles &&= this.files.has(uri) === (document !== undefined);
      if (settled && this.touchesDeclarations(files.get(uri), document)) settled = undefined;
      if (document) files.set(uri, document);
      else if (files.delete(uri)) this.memo.forget(uri);
    }
    return new Journal(this.root, files, this.memo, {
      settled,
      addresses: sameFiles ? this.sorted : this.addressesOf(files),
    });
  }

  /** Undefined where none were asked for yet. */
  private addressesOf(files: ReadonlyMap<string, Document>): readonly string[] | undefined {
    if (!this.sorted) return undefined;
    const kept = this.sorted.filter((uri) => files.has(uri));
    const come = kept.length < files.size ? [...files.keys()].filter((uri) => !this.files.has(uri)) : [];
    return come.length > 0 ? [...kept, ...come].sort(inOrderOfAddress) : kept;
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
    const own = this.ownNoteValue(uri);
    const key = JSON.stringify(own);
    const conventions =
      settled.conventionsByOwn.get(key) ?? this.memo.conventions([...settled.declared, ...own], settled);
    settled.conventionsByOwn.set(key, conventions);
    settled.conventions.set(uri, conventions);
    return conventions;
  }

  /** A block as read with this journal's names, and with the titles that were written before. */
  model(block: Block): BlockModel {
    return this.withTitles(block, this.ownModel(block));
  }

  /** The same, not kept where it was not kept before: for going through a whole journal once. */
  readOnce(block: Block): BlockModel {
    return this.withTitles(block, this.memo.modelOnce(block, this.vocabulary));
  }

  /** The same where all days were read for their titles by now, else as read by itself: for what cannot wait. */
  modelAtHand(block: Block): BlockModel {
    return isReadForTitles(this) ? this.model(block) : this.ownModel(block);
  }

  /** A block as read by itself: for what titles do not bear on, as no other block need be read for it. */
  ownModel(block: Block): BlockModel {
    return this.memo.model(block, this.vocabulary);
  }

  /** Of each line of a block the titles it names that were written before; undefined where none does. */
  titlesOf(block: Block): KnownTitles | undefined {
    return knownTitles(this, block);
  }

  private withTitles(block: Block, model: BlockModel): BlockModel {
    const titles = this.titlesOf(block);
    if (!titles) return model;
    const make = () => withTitles({ block, model }, titles, this.partContext);
    return this.memo.from(block, "model with titles", [titles, this.vocabulary], make);
  }

  /** The addresses of the files, the marker first, then by name: the order in which declarations count. */
  get addresses(): readonly string[] {
    this.sorted ??= [...this.files.keys()].sort(inOrderOfAddress);
    return this.sorted;
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

  /** Of what is declared once, by its key (see `declarationKey`), the first file that declares it. */
  get declaredIn(): ReadonlyMap<string, string> {
    return this.settle().declaredIn;
  }

  private settle(): Settled {
    if (this.settled) return this.settled;
    const blocks = this.addresses.flatMap((uri) => this.declaringBlocksOf(uri).map((block) => ({ uri, block })));
    const [names = ENGLISH_NAMES] = blocks.flatMap(({ block }) => this.memo.noteNames(block) ?? []);
    const vocabulary = this.memo.vocabulary(
      names,
      blocks.flatMap(({ block }) => this.memo.names(block)),
    );
    const declared: Declared[] = [];
    const declaredIn = new Map<string, string>();
    for (const { uri, block } of blocks) {
      for (const { declaration } of this.memo.model(block, vocabulary).declarations) {
        const key = declarationKey(declaration);
        if (key !== undefined && !declaredIn.has(key)) declaredIn.set(key, uri);
        if (declaration.declared && (declaration.declared.type !== "note value" || isMarker(uri)))
          declared.push(declaration.declared);
      }
    }
    this.settled = {
      vocabulary,
      names,
      declared,
      conventions: new Map(),
      conventionsByOwn: new Map(),
      declaredIn,
    };
    return this.settled;
  }

  private declaringBlocksOf(uri: string): readonly Block[] {
    return this.files.get(uri)!.blocks.filter((block) => this.mayDeclare(block));
  }

  /** Whether a block may hold declarations: every head, and the days in which something is declared by name. */
  private mayDeclare(block: Block): boolean {
    return !block.day || this.memo.names(block).length > 0;
  }

  private touchesDeclarations(before: Document | undefined, after: Document | undefined): boolean {
    if (!before || !after) return (before ?? after)?.blocks.some((block) => this.mayDeclare(block)) ?? false;
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

/** The language of most journals. */
const ENGLISH_WORDS = languageWords(ENGLISH_NAMES);

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
  private readonly languages = new Map([[ENGLISH_NAMES, ENGLISH_WORDS]]);
  private readonly blockNoteNames = new WeakMap<Block, NoteNames | undefined>();
  private readonly blockNames = new WeakMap<Block, readonly DeclaredName[]>();
  private models = new WeakMap<Block, BlockModel>();
  private reader: LineReader | undefined;
  /** The day of very many lines that was read last: an edit in it has only the lines read that it changed. */
  private longDay: { readonly block: Block; readonly model: BlockModel } | undefined;
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
    const language = this.languages.get(noteNames) ?? languageWords(noteNames);
    this.languages.set(noteNames, language);
    const declared = names.length ? gathered(names) : NO_NAMES;
    const vocabulary = new Vocabulary(language, noteNames, declared);
    this.known = { key, vocabulary };
    this.models = new WeakMap();
    this.reader = new LineReader(vocabulary);
    this.longDay = undefined;
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
