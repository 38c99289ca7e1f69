import type { Document } from "../syntax/document.ts";
import type { DayNumber } from "./model.ts";

/** All files of one journal as they stand now. Immutable: an edit makes another. */
export class Journal {
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
}

/** What was found out about parts, lines and blocks, kept by their identity. Owned by whoever owns the journal. */
export class Memo {}

export interface Today {
  readonly today: DayNumber;
}
