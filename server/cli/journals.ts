import { realpathSync } from "node:fs";
import { basename, dirname, join, sep } from "node:path";
import { pathToFileURL } from "node:url";
import { decodeText, type FileText } from "../host/file-reader.ts";
import { readFileText } from "../host/node/read-file.ts";
import { readTree } from "../host/node/read-tree.ts";
import { canonicalUri } from "../host/uri.ts";
import { Journal, MARKER } from "../journal/journal.ts";
import { createDocument, type Document } from "../syntax/document/document.ts";
import type { Io } from "./io.ts";
import { MarkedFolders } from "./marked-folders.ts";
import { type FoundFile, findFiles, type Skipped } from "./paths.ts";
import { printable } from "./printable.ts";

/** A file to report on, as it was read. */
export interface NamedFile {
  /** As the user would write it; `-` for standard input. */
  readonly path: string;
  /** Absolute; undefined for standard input. */
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
}

const STANDARD_INPUT_URI = "stdin:/-";

/** A named file as it stands in these journals. */
export function documentOf({ root, uri }: NamedFile, journals: Journals): Document {
  return journals.get(root)!.files.get(uri)!;
}

/**
 * Reads the files that PATH arguments mean, and the journals around them: those of the nearest `journal.practice` at or
 * above each file. Files under none form one journal for each folder that was searched, or for the current folder; a
 * file outside it stands alone. Says on standard error what was left out.
 */
export async function readJournals(
  paths: readonly string[],
  io: Io,
): Promise<ReadJournals | { ok: false; reason: string }> {
  const found = findFiles(paths, io.cwd);
  if (!found.ok) return found;
  const reading = new JournalReading(io.cwd);
  for (const file of found.files) {
    if (file.place === undefined) reading.takeText(file.path, decodeText(await io.stdin()));
    else reading.takeFile({ ...file, place: file.place });
  }
  const skipped = [...found.skipped, ...reading.skipped];
  for (const { path, reason } of skipped) io.stderr.write(`daystave: ${printable(path)} was left out. ${reason}\n`);
  return { ok: true, files: reading.files, journals: reading.journals(), skipped };
}

class JournalReading {
  readonly files: NamedFile[] = [];
  readonly skipped: Skipped[] = [];
  readonly #marked = new MarkedFolders();
  /** The documents of each journal, by its root and their URIs. */
  readonly #documents = new Map<string, Map<string, Document>>();
  /** What was read around the files named, by its URI. */
  readonly #texts = new Map<string, FileText>();
  /** The URI under which each file, by its path without links, is known. */
  readonly #known = new Map<string, string>();
  readonly #taken = new Set<string>();
  /** The URIs of folders, by their paths. */
  readonly #folders = new Map<string, string>();

  constructor(private readonly cwd: string) {}

  takeFile({ path, place, searched, real = withoutLinks(place) }: FoundFile & { readonly place: string }): void {
    const root = this.#rootOf(place, searched);
    const documents = this.#documents.get(root) ?? this.#readAround(root);
    const uri = this.#uriOf(place, real);
    if (this.#taken.has(uri)) return;
    this.#taken.add(uri);
    const read = this.#texts.get(uri) ?? readFileText(place);
    if (!read.ok) {
      this.skipped.push({ path, reason: read.reason });
      return;
    }
    if (!documents.has(uri)) documents.set(uri, createDocument(read.text));
    this.files.push({ path, place, uri, root, text: read.text, bom: read.bom });
  }

  /** Standard input is read with the declarations of the current folder's journal, and beside no other day of it. */
  takeText(path: string, read: FileText): void {
    if (this.#taken.has(STANDARD_INPUT_URI)) return;
    this.#taken.add(STANDARD_INPUT_URI);
    if (!read.ok) {
      this.skipped.push({ path, reason: read.reason });
      return;
    }
    const documents = new Map([[STANDARD_INPUT_URI, createDocument(read.text)]]);
    const marker = readMarker(this.cwd, this.#marked);
    if (marker) documents.set(marker.uri, marker.document);
    this.#documents.set(STANDARD_INPUT_URI, documents);
    this.files.push({ path, uri: STANDARD_INPUT_URI, root: STANDARD_INPUT_URI, text: read.text, bom: read.bom });
  }

  journals(): Journals {
    return new Map(Array.from(this.#documents, ([root, documents]) => [root, new Journal(uriOf(root), documents)]));
  }

  #rootOf(place: string, searched: string | undefined): string {
    const marked = this.#marked.nearest(dirname(place));
    if (marked !== undefined) return marked;
    if (searched !== undefined) return searched;
    return place.startsWith(join(this.cwd, "/")) ? this.cwd : place;
  }

  /** Reads every file of a journal that is not another's, further down. */
  #readAround(root: string): Map<string, Document> {
    const documents = new Map<string, Document>();
    this.#documents.set(root, documents);
    for (const step of readTree(root)) {
      if (step.type !== "file" || !this.#belongs(step.path, root)) continue;
      const uri = this.#uriOf(step.path, step.real);
      const read = readFileText(step.path);
      this.#texts.set(uri, read);
      if (read.ok) documents.set(uri, createDocument(read.text));
    }
    return documents;
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

/** The `journal.practice` that a folder stands under; undefined where there is none that can be read. */
export function readMarker(
  folder: string,
  marked = new MarkedFolders(),
): { readonly uri: string; readonly document: Document } | undefined {
  const top = marked.nearest(folder);
  if (top === undefined) return undefined;
  const place = join(top, MARKER);
  const read = readFileText(place);
  return read.ok ? { uri: uriOf(place), document: createDocument(read.text) } : undefined;
}

function uriOf(place: string): string {
  return place === STANDARD_INPUT_URI ? place : canonicalUri(pathToFileURL(place).href);
}

/** What stands in a URI as it is. */
const PLAIN_NAME = /^[\w.-]+$/;

function withoutLinks(place: string): string {
  try {
    return realpathSync(place);
  } catch {
    return place;
  }
}
