import { ENGLISH_NAMES, type NoteNames } from "../music/notes/note-names.ts";
import { type Block, changedBlocks, type Document } from "../syntax/document/document.ts";
import type { Line } from "../syntax/line/line.ts";
import type { Vocabulary } from "../syntax/words/vocabulary.ts";
import type { Conventions } from "./conventions.ts";
import { DayWalk, type KnownTitles } from "./day-walk.ts";
import { declarationKey } from "./declarations/declaration-key.ts";
import type { Declaration, DeclarationContext, Declared } from "./declarations/declared.ts";
import { lentDeclarations, lentNames } from "./lending.ts";
import { Memo, sameItems } from "./memo.ts";
import type { BlockModel } from "./model.ts";
import { withTitles } from "./read-block.ts";
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
  readonly lent?: readonly Document[];
}

/**
 * All files of one journal as they stand now. Immutable: an edit makes another. What is asked for is read when asked.
 */
export class Journal {
  private settled: Settled | undefined;
  private sorted: readonly string[] | undefined;
  /** The `journal.practice` files above that say `shared`, the nearest first. */
  private readonly lent: readonly Document[];

  constructor(
    /** The folder's address, or the file's own for a file that stands alone. */
    readonly root: string,
    readonly files: ReadonlyMap<string, Document>,
    readonly memo: Memo = new Memo(),
    { settled, addresses, lent = NOTHING_LENT }: Carried = {},
  ) {
    this.lent = lent;
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
      lent: this.lent,
    });
  }

  /**
   * The same journal with several files set, and a memory of its own: to look at what it would be, when other names
   * would have this one forget all that it read.
   */
  apart(changes: Iterable<readonly [string, Document]>): Journal {
    const files = new Map([...this.files, ...changes]);
    return new Journal(this.root, files, new Memo(), { addresses: this.addressesOf(files), lent: this.lent });
  }

  /** The same journal below others that lend it what it does not declare, the nearest first. */
  withLent(lent: readonly Document[]): Journal {
    if (sameItems(lent, this.lent)) return this;
    return new Journal(this.root, this.files, this.memo, { addresses: this.sorted, lent });
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
    const titles = this.titlesOf(block);
    const model = this.ownModelOnce(block);
    return titles ? withTitles({ block, model }, titles, this.partContext) : model;
  }

  /** The same where all days were read for their titles by now, else as read by itself: for what cannot wait. */
  modelAtHand(block: Block): BlockModel {
    return isReadForTitles(this) ? this.model(block) : this.ownModel(block);
  }

  /** A block as read by itself: for what titles do not bear on, as no other block need be read for it. */
  ownModel(block: Block): BlockModel {
    return this.memo.model(block, this.vocabulary);
  }

  /** The same, not kept where it was not kept before. */
  ownModelOnce(block: Block): BlockModel {
    return this.memo.modelOnce(block, this.vocabulary);
  }

  /** The lines of a block as `ownModel` has them, one by one and not kept. */
  linesOnce(block: Block): Iterable<Line> {
    return this.memo.linesOnce(block, this.vocabulary);
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
    const lent = this.lent.flatMap((document) => document.blocks.filter((block) => this.mayDeclare(block)));
    const all = [...blocks.map(({ block }) => block), ...lent];
    const [names = ENGLISH_NAMES] = all.flatMap((block) => this.memo.noteNames(block) ?? []);
    const ownNames = blocks.flatMap(({ block }) => this.memo.names(block));
    const namesLent = lentNames(
      ownNames,
      lent.flatMap((block) => this.memo.names(block)),
    );
    const vocabulary = this.memo.vocabulary(names, [...ownNames, ...namesLent]);
    const declarationsIn = (block: Block) =>
      this.memo.model(block, vocabulary).declarations.map((each) => each.declaration);
    const declared: Declared[] = [];
    const bearing: Declaration[] = [];
    const declaredIn = new Map<string, string>();
    for (const { uri, block } of blocks) {
      for (const declaration of declarationsIn(block)) {
        const key = declarationKey(declaration);
        if (key !== undefined && !declaredIn.has(key)) declaredIn.set(key, uri);
        if (!declaration.declared || (declaration.declared.type === "note value" && !isMarker(uri))) continue;
        declared.push(declaration.declared);
        bearing.push(declaration);
      }
    }
    for (const declaration of lentDeclarations(bearing, lent.flatMap(declarationsIn)))
      if (declaration.declared) declared.push(declaration.declared);
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

const NOTHING_LENT: readonly Document[] = [];
