import { type FSWatcher, statSync, watch } from "node:fs";
import { dirname, join } from "node:path";
import { readTree } from "./read-tree.ts";

/** What became of a `.practice` file. */
export interface FileChange {
  /** Absolute. */
  readonly path: string;
  readonly what: "changed" | "new" | "gone";
}

/** A change often comes in several events, as when an editor writes a file anew; in milliseconds. */
const SETTLE = 100;
/** How often it is looked where the system does not say when something changes, in milliseconds. */
const POLL = 2000;

/** What tells one state of each file from another. */
type Stamps = ReadonlyMap<string, string>;

/**
 * Waits for changes to the `.practice` files below some folders, new ones and new folders among them. The system says
 * when something happens; where it will not (too many folders, a disk that does not say), the folders are looked
 * through every two seconds.
 */
export class PracticeWatch {
  readonly #watchers = new Map<string, FSWatcher>();
  #stamps: Stamps;
  #settling: NodeJS.Timeout | undefined;
  #polling: NodeJS.Timeout | undefined;
  #isClosed = false;
  /** Something may have changed since it was last looked. */
  #isDue = false;
  #wake: (() => void) | undefined;

  /** @param look how often it is looked where the system does not say, in milliseconds */
  constructor(
    private readonly folders: readonly string[],
    private readonly watchFolder: typeof watch = watch,
    private readonly look = POLL,
  ) {
    this.#stamps = this.#scan();
  }

  /** The next changes, as soon as there are any since the last ones; undefined once it is closed. */
  async next(): Promise<readonly FileChange[] | undefined> {
    while (!this.#isClosed) {
      if (!this.#isDue)
        await new Promise<void>((resolve) => {
          this.#wake = resolve;
        });
      if (this.#isClosed) break;
      this.#isDue = false;
      const before = this.#stamps;
      this.#stamps = this.#scan();
      const changes = changesBetween(before, this.#stamps);
      if (changes.length > 0) return changes;
    }
    return undefined;
  }

  close(): void {
    this.#isClosed = true;
    clearTimeout(this.#settling);
    clearInterval(this.#polling);
    for (const watcher of this.#watchers.values()) watcher.close();
    this.#watchers.clear();
    this.#wake?.();
  }

  /** Looks through the folders, and watches those that are there now. */
  #scan(): Stamps {
    const stamps = new Map<string, string>();
    const there = new Set<string>();
    for (const folder of this.folders)
      for (const step of readTree(folder)) {
        if (step.type === "folder") there.add(step.path);
        if (step.type !== "file") continue;
        there.add(dirname(step.real)); // what a link leads to changes elsewhere
        const stamp = stampOf(step.path);
        if (stamp !== undefined) stamps.set(step.path, stamp);
      }
    this.#follow(there);
    return stamps;
  }

  #follow(there: ReadonlySet<string>): void {
    for (const [folder, watcher] of this.#watchers) {
      if (there.has(folder)) continue;
      watcher.close();
      this.#watchers.delete(folder);
    }
    for (const folder of there) if (!this.#watchers.has(folder)) this.#watch(folder);
    if (this.#watchers.size === 0) this.#poll(); // they are gone, and may come back
  }

  #watch(folder: string): void {
    try {
      const watcher = this.watchFolder(folder, (_, name) => {
        if (name === null || mayMatter(join(folder, name))) this.#happened();
      });
      watcher.on("error", () => {
        watcher.close();
        this.#watchers.delete(folder);
        this.#happened();
      });
      this.#watchers.set(folder, watcher);
    } catch {
      this.#poll();
    }
  }

  #poll(): void {
    this.#polling ??= setInterval(() => this.#due(), this.look);
  }

  #happened(): void {
    this.#settling ??= setTimeout(() => {
      this.#settling = undefined;
      this.#due();
    }, SETTLE);
  }

  #due(): void {
    this.#isDue = true;
    this.#wake?.();
  }
}

/** Another program's file that is written to again and again, as a log, is none of ours. */
function mayMatter(path: string): boolean {
  return path.endsWith(".practice") || !statSync(path, { throwIfNoEntry: false })?.isFile();
}

function stampOf(path: string): string | undefined {
  const found = statSync(path, { throwIfNoEntry: false });
  return found && `${found.ino} ${found.size} ${found.mtimeMs}`;
}

function changesBetween(before: Stamps, after: Stamps): readonly FileChange[] {
  const gone = [...before.keys()].filter((path) => !after.has(path));
  const other = [...after].filter(([path, stamp]) => before.get(path) !== stamp);
  return [
    ...other.map(([path]): FileChange => ({ path, what: before.has(path) ? "changed" : "new" })),
    ...gone.map((path): FileChange => ({ path, what: "gone" })),
  ].sort((a, b) => (a.path < b.path ? -1 : 1));
}
