import { realpathSync } from "node:fs";
import { basename, dirname, join, resolve, sep } from "node:path";
import { pathToFileURL } from "node:url";
import { decodeText, type FileText } from "../host/file-reader.ts";
import { readFileText } from "../host/node/read-file.ts";
import { readTree } from "../host/node/read-tree.ts";
import { canonicalUri } from "../host/uri.ts";
import { Journal, MARKER } from "../journal/journal.ts";
import { isShared } from "../journal/lending.ts";
import { createDocument, type Document } from "../syntax/document/document.ts";
import type { Io } from "./io.ts";
import { MarkedFolders } from "./marked-folders.ts";
import { type FoundFile, findFiles, type Skipped } from "./paths.ts";
import { printable } from "./printable.ts";

/** A file to report on, as it was read. */
export interface NamedFile {
  /** As the user would write it; `-` for standard input that is no file's. */
  readonly path: string;
  /** Absolute; undefined for standard input, which has no place to be written to. */
  readonly place?: string;
  readonly uri: string;
  /** Of the journal that it belongs to. */
  readonly root: string;
  readonly text: string;
  readonly bom: boolean;
}

/** Every file of each journal, named or not. By root. */
export type Journals = ReadonlyMap<string, Journal>;

export interface ReadJournals {
  readonly ok: true;
  readonly files: readonly NamedFile[];
  readonly journals: Journals;
  readonly skipped: readonly Skipped[];
  /** Something that a PATH argument names, not one of many below it, could not be read. */
  readonly unread: boolean;
}

const STANDARD_INPUT_URI = "stdin:/-";

/** Ten years of a diary such as `samples/year` are 700,000 UTF-16 units. */
const MUCH_TEXT = 5_000_000;

/** A named file as it stands in these journals. */
export function documentOf({ root, uri }: NamedFile, journals: Journals): Document {
  return journals.get(root)!.files.get(uri)!;
}

/**
 * Reads the files that PATH arguments mean, and the journals around them: those of the nearest `journal.practice` at or
 * above each file. Files under none form one journal for each folder that was searched, or for the current folder; a
 * file outside it stands alone. Says on standard error what was left out.
 *
 * @param top above this folder no `journal.practice` is looked for
 * @param inputPath the file that standard input is read as
 */
export async function readJournals(
  paths: readonly string[],
  io: Io,
  { top, inputPath }: { readonly top?: string; readonly inputPath?: string } = {},
): Promise<ReadJournals | { ok: false; reason: string }> {
  const found = findFiles(paths, io.cwd);
  if (!found.ok) return found;
  const reading = new JournalReading(io, top);
  for (const file of found.files) {
    if (file.place === undefined && inputPath !== undefined) reading.takeTextOf(inputPath, await readInput(io));
    else if (file.place === undefined) reading.takeText(file.path, await readInput(io));
    else reading.takeFile({ ...file, place: file.place });
  }
  const skipped = [...found.skipped, ...reading.skipped];
  for (const { path, reason } of skipped) io.stderr.write(`daystave: ${printable(path)} was left out. ${reason}\n`);
  const unread = found.unread || reading.unread;
  return { ok: true, files: reading.files, journals: reading.journals(), skipped, unread };
}

async function readInput({ stdin }: Io): Promise<FileText> {
  const input = await stdin();
  return input.ok ? decodeText(input.bytes) : input;
}

class JournalReading {
  readonly files: NamedFile[] = [];
  readonly skipped: Skipped[] = [];
  /** One of those left out was named itself. */
  unread = false;
  readonly #marked: MarkedFolders;
  /** The documents of each journal, by its root and their URIs. */
  readonly #documents = new Map<string, Map<string, Document>>();
  /** What was read around the files named, by its URI. */
  readonly #texts = new Map<string, FileText>();
  /** The URI under which each file, by its path without links, is known. */
  readonly #known = new Map<string, string>();
  readonly #taken = new Set<string>();
  /** The URIs of folders, by their paths. */
  readonly #folders = new Map<string, string>();

  /** How many files were read by now, and how long they are together. */
  #count = 0;
  #length = 0;

  constructor(
    private readonly io: Pick<Io, "cwd" | "progress" | "muchText">,
    top: string | undefined,
  ) {
    this.#marked = new MarkedFolders(top);
  }

  takeFile({ path, place, searched, real = withoutLinks(place) }: FoundFile & { readonly place: string }): void {
    const root = this.#rootOf(place, searched);
    const documents = this.#documents.get(root) ?? this.#readAround(root);
    const uri = this.#uriOf(place, real);
    const read = this.#texts.get(uri) ?? this.#read(place);
    if (!read.ok && searched === undefined) this.unread = true;
    if (this.#taken.has(uri)) return;
    this.#taken.add(uri);
    if (!read.ok) {
      this.skipped.push({ path, reason: read.reason });
      return;
    }
    if (!documents.has(uri)) documents.set(uri, createDocument(read.text));
    this.files.push({ path, place, uri, root, text: read.text, bom: read.bom });
  }

  /** Standard input is read with the declarations of the current folder's journal, and beside no other day of it. */
  takeText(path: string, read: FileText): void {
    this.#measured(read);
    if (this.#taken.has(STANDARD_INPUT_URI)) return;
    this.#taken.add(STANDARD_INPUT_URI);
    if (!read.ok) {
      this.unread = true;
      this.skipped.push({ path, reason: read.reason });
      return;
    }
    const documents = new Map([[STANDARD_INPUT_URI, createDocument(read.text)]]);
    const marker = readMarker(this.io.cwd, this.#marked);
    if (marker) documents.set(marker.uri, marker.document);
    this.#documents.set(STANDARD_INPUT_URI, documents);
    this.files.push({ path, uri: STANDARD_INPUT_URI, root: STANDARD_INPUT_URI, text: read.text, bom: read.bom });
  }

  /** Standard input is read as the file at a path, in place of what is on the disk there. */
  takeTextOf(path: string, read: FileText): void {
    this.#measured(read);
    const place = resolve(this.io.cwd, path);
    const uri = this.#uriOf(place, withoutLinks(place));
    const root = this.#rootOf(place, undefined);
    const documents = this.#documents.get(root) ?? this.#readAround(root);
    const named = this.files.findIndex((file) => file.uri === uri);
    if (named >= 0) this.files.splice(named, 1);
    this.#taken.add(uri);
    if (!read.ok) {
      this.unread = true;
      this.skipped.push({ path, reason: read.reason });
      return;
    }
    documents.set(uri, createDocument(read.text));
    this.files.push({ path, uri, root, text: read.text, bom: read.bom });
  }

  journals(): Journals {
    return new Map(
      Array.from(this.#documents, ([root, documents]) => {
        const folder = root === STANDARD_INPUT_URI ? this.#marked.nearest(this.io.cwd) : root;
        const lent = folder === undefined ? [] : lentTo(folder, this.#marked);
        return [root, new Journal(uriOf(root), documents).withLent(lent)];
      }),
    );
  }

  #rootOf(place: string, searched: string | undefined): string {
    const marked = this.#marked.nearest(dirname(place));
    if (marked !== undefined) return marked;
    if (searched !== undefined) return searched;
    return place.startsWith(join(this.io.cwd, "/")) ? this.io.cwd : place;
  }

  /** Reads every file of a journal that is not another's, further down. */
  #readAround(root: string): Map<string, Document> {
    const documents = new Map<string, Document>();
    this.#documents.set(root, documents);
    for (const step of readTree(root)) {
      if (step.type !== "file" || !this.#belongs(step.path, root)) continue;
      const uri = this.#uriOf(step.path, step.real);
      const read = this.#read(step.path);
      this.#texts.set(uri, read);
      if (read.ok) documents.set(uri, createDocument(read.text));
    }
    return documents;
  }

  #read(place: string): FileText {
    this.#count += 1;
    this.io.progress?.("Reading", this.#count);
    return this.#measured(readFileText(place));
  }

  #measured(read: FileText): FileText {
    const before = this.#length;
    if (read.ok) this.#length += read.text.length;
    if (before < MUCH_TEXT && this.#length >= MUCH_TEXT) this.io.muchText?.();
    return read;
  }

  #belongs(place: string, root: string): boolean {
    const marked = this.#marked.nearest(dirname(place));
    return marked === undefined || marked === root;
  }

  /** One URI for a file, by whatever links it is reached. */
  #uriOf(place: string, real: string): string {
    const known = this.#known.get(real);
    if (known !== undefined) return known;
    const uri = this.#spelled(place);
    this.#known.set(real, uri);
    return uri;
  }

  /** As `uriOf` has it: of files side by side the folder is spelled once. */
  #spelled(place: string): string {
    const folder = dirname(place);
    const name = basename(place);
    if (!PLAIN_NAME.test(name) || join(folder, name) !== `${folder}${sep}${name}`) return uriOf(place);
    const spelled = this.#folders.get(folder) ?? uriOf(folder);
    this.#folders.set(folder, spelled);
    return `${spelled}/${name}`;
  }
}

/** The `journal.practice` files above a journal's folder that say `shared`, the nearest first. */
function lentTo(folder: string, marked: MarkedFolders): Document[] {
  const top = marked.nearest(dirname(folder));
  if (top === undefined || top === folder) return [];
  const read = readFileText(join(top, MARKER));
  const document = read.ok ? createDocument(read.text) : undefined;
  return [...(document && isShared(document) ? [document] : []), ...lentTo(top, marked)];
}

/** A `journal.practice`, and what those above it lend to its journal. */
export interface Marker {
  readonly uri: string;
  readonly document: Document;
  readonly lent: readonly Document[];
}

/** The `journal.practice` that a folder stands under; undefined where there is none that can be read. */
export function readMarker(folder: string, marked = new MarkedFolders()): Marker | undefined {
  const top = marked.nearest(folder);
  if (top === undefined) return undefined;
  const place = join(top, MARKER);
  const read = readFileText(place);
  if (!read.ok) return undefined;
  return { uri: uriOf(place), document: createDocument(read.text), lent: lentTo(top, marked) };
}

function uriOf(place: string): string {
  return place === STANDARD_INPUT_URI ? place : canonicalUri(pathToFileURL(place).href);
}

/** What stands in a URI as it is. */
const PLAIN_NAME = /^[\w.-]+$/;

/** Its path without links; as it is where that cannot be found out. */
export function withoutLinks(place: string): string {
  try {
    return realpathSync(place);
  } catch {
    return place;
  }
}
