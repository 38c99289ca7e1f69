import { statSync } from "node:fs";
import { dirname, join } from "node:path";
import { MARKER } from "../journal/journal.ts";

/** Finds the top folder of the journal that a place belongs to; looks into each folder once. */
export class MarkedFolders {
  readonly #nearest = new Map<string, string | undefined>();

  /** @param top the last folder that is looked into */
  constructor(private readonly top?: string) {}

  /** The nearest folder with a `journal.practice`: this one, or one above it. */
  nearest(folder: string): string | undefined {
    if (this.#nearest.has(folder)) return this.#nearest.get(folder);
    const above = dirname(folder);
    const marked = isMarked(folder)
      ? folder
      : above === folder || folder === this.top
        ? undefined
        : this.nearest(above);
    this.#nearest.set(folder, marked);
    return marked;
  }
}

function isMarked(folder: string): boolean {
  try {
    return statSync(join(folder, MARKER)).isFile();
  } catch {
    return false; // a folder that may not be looked into marks nothing
  }
}
