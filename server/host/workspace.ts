import { Journal, MARKER } from "../journal/journal.ts";
import { isShared } from "../journal/lending.ts";
import { createDocument, type Document, textOf } from "../syntax/document/document.ts";
import type { FileReader } from "./file-reader.ts";
import { foldersAbove, isMarker, isWalked, journalRoot, workspaceFolderOf } from "./journal-root.ts";
import { canonicalFolder, folderOf, isBelowAny } from "./uri.ts";
import { loadFolders } from "./walk.ts";

/** A document that the editor holds open. Its text is the truth; the copy on disk is not looked at. */
export interface OpenDocument {
  /** As the editor spells it. */
  readonly uri: string;
  /** Canonical. */
  readonly key: string;
  readonly version: number;
  readonly document: Document;
}

export interface WorkspaceChange {
  /** The roots of the journals that changed. */
  readonly journals: ReadonlySet<string>;
  /** Whether somebody typed, or files came, went or changed. */
  readonly cause: "edit" | "files";
}

export interface WorkspaceEvents {
  changed(change: WorkspaceChange): void;
  /** A file was left out. */
  skipped(uri: string, reason: string): void;
  /** Every file of the folders is read. */
  read?(): void;
}

/**
 * All that changes: open documents, files on disk, workspace folders. Hands out immutable journals. Keys are canonical
 * URIs (`address.ts`).
 */
export class Workspace {
  #folders: readonly string[] = [];
  /** How the editor spells each of them. */
  #spellings: ReadonlyMap<string, string> = new Map();
  readonly #open = new Map<string, OpenDocument>();
  readonly #disk = new Map<string, Document>();
  readonly #journals = new Map<string, Journal>();
  readonly #versions = new Map<string, number>();
  /** Counts the changes of all journals, so that no two states of whichever journals share a version. */
  #changes = 0;
  /** The folders whose `journal.practice` was looked for already. */
  readonly #lookedIn = new Map<string, Promise<void>>();
  /** The latest reading of each file; an earlier one that ends later is dropped. */
  readonly #readings = new Map<string, symbol>();
  #marked: ReadonlySet<string> = new Set();
  #walk: { readonly done: Promise<void>; readonly stop: AbortController } | undefined;
  #isRead = false;

  constructor(
    private readonly reader: FileReader,
    private readonly events: WorkspaceEvents,
  ) {}

  /** Canonical, each once. */
  get folders(): readonly string[] {
    return this.#folders;
  }

  /** The workspace folder that a file or a journal's root lies in, or is; of nested ones the innermost. */
  folderOf(key: string): string | undefined {
    return this.#spellings.has(key) ? key : workspaceFolderOf(key, this.#folders);
  }

  /** As the editor spells it. */
  spellingOf(folder: string): string {
    return this.#spellings.get(folder) ?? folder;
  }

  /** Whether files of the folders are still to be read: then a journal may be a part of what it is. */
  get isReading(): boolean {
    return !this.#isRead && this.#folders.length > 0;
  }

  /** The journal that a file belongs to; undefined while the file is unknown. */
  journalOf(key: string): Journal | undefined {
    const journal = this.#journals.get(this.#rootOf(key));
    return journal?.files.has(key) ? journal : undefined;
  }

  /** The journal that a file would belong to if it were there: one that was deleted, or is not written yet. */
  journalAround(key: string): Journal | undefined {
    return this.#journals.get(this.#rootOf(key));
  }

  /** The journal with this root; undefined where there is none. */
  journal(root: string): Journal | undefined {
    return this.#journals.get(root);
  }

  get journals(): Iterable<Journal> {
    return this.#journals.values();
  }

  /** Grows whenever anything in any journal changes. */
  get version(): number {
    return this.#changes;
  }

  /** Grows whenever anything in the journal changes, and is no other journal's. */
  versionOf(root: string): number {
    return this.#versions.get(root) ?? 0;
  }

  openDocument(key: string): OpenDocument | undefined {
    return this.#open.get(key);
  }

  get openDocuments(): Iterable<OpenDocument> {
    return this.#open.values();
  }

  /** A document was opened or edited. */
  edited(document: OpenDocument): void {
    this.#open.set(document.key, document);
    this.#update([document.key], "edit");
  }

  /** A document was closed: from now on its file counts. Until that is read, what stood in the editor does. */
  async closed(key: string): Promise<void> {
    const document = this.#open.get(key)?.document;
    this.#open.delete(key);
    if (document && isWalked(key, this.#folders)) this.#disk.set(key, document);
    else this.#update([key], "files");
    await this.filesChanged([key]);
  }

  /** Files were made, changed or deleted, by whomever. A deleted folder takes what lay below it along. */
  async filesChanged(keys: readonly string[]): Promise<void> {
    const folders = new Set(keys);
    const gone = [...this.#disk.keys()].filter((file) => isBelowAny(folders, file));
    for (const key of gone) this.#disk.delete(key);
    const files = keys.filter((key) => isWalked(key, this.#folders));
    const read = await Promise.all(files.map((key) => this.#readFile(key)));
    this.#update([...gone, ...read.filter((key) => key !== undefined)], "files");
  }

  /** Replaces the workspace folders. Files outside the new ones are forgotten; `walk` finds those in them. */
  setFolders(uris: readonly string[]): void {
    this.#walk?.stop.abort();
    this.#walk = undefined;
    this.#spellings = new Map(uris.map((uri) => [canonicalFolder(uri), uri]));
    this.#folders = [...this.#spellings.keys()];
    this.#isRead = false;
    for (const key of this.#disk.keys()) {
      if (!isWalked(key, this.#folders)) this.#disk.delete(key);
    }
    this.#lookedIn.clear();
    this.#regroup("files");
  }

  /** Settles when the declarations that a file stands under are read: enough for a first answer about it. */
  ready(key: string): Promise<void> | undefined {
    const folders = foldersAbove(key, this.#folders).filter((folder) => !this.#marked.has(folder));
    if (folders.every((folder) => this.#lookedIn.get(folder) === DONE)) return undefined;
    return Promise.all(folders.map((folder) => this.#lookIn(folder))).then(() => {});
  }

  /** Reads every file of the workspace folders, once; the same promise for whoever asks again. */
  walk(): Promise<void> {
    if (this.#walk) return this.#walk.done;
    const stop = new AbortController();
    this.#walk = { stop, done: this.#load(stop.signal) };
    return this.#walk.done;
  }

  /** Looks at every file again, for editors that do not tell of changes. Before the first walk there is no again. */
  async lookAgain(): Promise<void> {
    if (!this.#walk) return;
    this.#walk.stop.abort();
    this.#walk = undefined;
    await this.walk();
  }

  /**
   * Something outside the files changed that bears on all of them, such as the day, for the journals with these roots.
   */
  surroundingsChanged(concern: (root: string) => boolean): void {
    const roots = new Set([...this.#journals.keys()].filter(concern));
    for (const root of roots) this.#countChange(root);
    if (roots.size > 0) this.events.changed({ journals: roots, cause: "files" });
  }

  async #load(signal: AbortSignal): Promise<void> {
    const before = new Map(this.#readings);
    const found = await loadFolders(this.#folders, this.reader, (key) => !this.#open.has(key), signal);
    if (signal.aborted) return;
    const touched = (key: string) => this.#open.has(key) || this.#readings.get(key) !== before.get(key);
    const changed = new Set<string>();
    for (const key of this.#disk.keys()) {
      if (!found.has(key) && !touched(key) && this.#disk.delete(key)) changed.add(key);
    }
    for (const [key, read] of found) {
      if (touched(key)) continue;
      if (read.ok ? this.#keep(key, read.text) : this.#disk.delete(key)) changed.add(key);
      if (!read.ok) this.events.skipped(key, read.reason);
    }
    const wasReading = !this.#isRead;
    this.#isRead = true;
    this.#update([...changed], "files");
    if (wasReading) this.events.read?.();
  }

  /** The key when what is known of the file changed. */
  async #readFile(key: string): Promise<string | undefined> {
    if (this.#open.has(key)) return undefined;
    const reading = Symbol(key);
    this.#readings.set(key, reading);
    const read = await this.reader.read(key);
    const isOutdated = this.#readings.get(key) !== reading || this.#open.has(key) || !isWalked(key, this.#folders);
    if (isOutdated) return undefined;
    if (read.ok) return this.#keep(key, read.text) ? key : undefined;
    return this.#disk.delete(key) ? key : undefined;
  }

  /** False when the file's text is known already; its document then stays the same object. */
  #keep(key: string, text: string): boolean {
    const known = this.#disk.get(key);
    if (known && textOf(known) === text) return false;
    this.#disk.set(key, createDocument(text));
    return true;
  }

  #lookIn(folder: string): Promise<void> {
    const key = `${folder}/${MARKER}`;
    const looking =
      this.#lookedIn.get(folder) ??
      this.#readFile(key).then((changed) => {
        this.#lookedIn.set(folder, DONE);
        if (changed !== undefined) this.#update([changed], "files");
      });
    if (!this.#lookedIn.has(folder)) this.#lookedIn.set(folder, looking);
    return looking;
  }

  #rootOf(key: string): string {
    return journalRoot(key, this.#folders, this.#marked);
  }

  /** Brings the journals up to date with what is now known of these files. */
  #update(keys: readonly string[], cause: WorkspaceChange["cause"]): void {
    if (keys.length === 0) return;
    if (keys.some((key) => isMarker(key) && this.#changesOthers(key))) {
      this.#regroup(cause);
      return;
    }
    const byRoot = new Map<string, Map<string, Document | undefined>>();
    for (const key of keys) {
      const root = this.#rootOf(key);
      const files = byRoot.get(root) ?? byRoot.set(root, new Map()).get(root)!;
      files.set(key, this.#documentOf(key));
    }
    for (const [root, files] of byRoot)
      this.#setJournal(
        root,
        (this.#journals.get(root) ?? new Journal(root, new Map()).withLent(this.#lentTo(root))).withAll(files),
      );
    this.events.changed({ journals: new Set(byRoot.keys()), cause });
  }

  /** Whether a marker came or went, or lends to the journals below it, or did so before. */
  #changesOthers(key: string): boolean {
    const [before, now] = [this.journalAround(key)?.files.get(key), this.#documentOf(key)];
    const isMarked = this.#marked.has(folderOf(key)!);
    return isMarked !== (now !== undefined) || [before, now].some((document) => document && isShared(document));
  }

  /** The markers above a journal that say `shared`, the nearest first. */
  #lentTo(root: string): readonly Document[] {
    if (!this.#marked.has(root)) return []; // of a file under no marker nothing is above
    const above = foldersAbove(root, this.#folders).filter((folder) => this.#marked.has(folder));
    return above.flatMap((folder) => this.#documentOf(`${folder}/${MARKER}`) ?? []).filter(isShared);
  }

  /** Sorts every file into its journal anew: a marker or a folder came or went. */
  #regroup(cause: WorkspaceChange["cause"]): void {
    const keys = new Set([...this.#disk.keys(), ...this.#open.keys()]);
    const inFolders = [...keys].filter((key) => isMarker(key) && workspaceFolderOf(key, this.#folders) !== undefined);
    this.#marked = new Set(inFolders.map((key) => folderOf(key)!));
    const groups = new Map<string, Map<string, Document>>();
    for (const key of keys) {
      const root = this.#rootOf(key);
      const files = groups.get(root) ?? groups.set(root, new Map()).get(root)!;
      files.set(key, this.#documentOf(key)!);
    }
    const roots = new Set([...this.#journals.keys(), ...groups.keys()]);
    for (const root of roots)
      this.#setJournal(
        root,
        new Journal(root, groups.get(root) ?? new Map(), this.#journals.get(root)?.memo).withLent(this.#lentTo(root)),
      );
    if (roots.size > 0) this.events.changed({ journals: roots, cause });
  }

  #documentOf(key: string): Document | undefined {
    return this.#open.get(key)?.document ?? this.#disk.get(key);
  }

  #setJournal(root: string, journal: Journal): void {
    this.#countChange(root);
    if (journal.files.size > 0) this.#journals.set(root, journal);
    else this.#journals.delete(root);
  }

  #countChange(root: string): void {
    this.#changes += 1;
    this.#versions.set(root, this.#changes);
  }
}

const DONE = Promise.resolve();
