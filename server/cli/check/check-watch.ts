import { statSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { type FileChange, PracticeWatch } from "../../host/node/watch-practice.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { readJournals } from "../journals.ts";
import { MarkedFolders } from "../marked-folders.ts";
import { printable } from "../printable.ts";
import { reportOn } from "./check-report.ts";
import { rendered } from "./rendered.ts";

/** So many files are named, and the others counted. */
const MOST_NAMED = 5;

/**
 * `check --watch`: checks, and checks again at each change to a `.practice` file of the journals around the PATHs,
 * until it is interrupted. What is found then is no failure of this command: somebody was reading.
 */
export async function checkWatching(paths: readonly string[], flags: ReadonlySet<string>, io: Io): Promise<Status> {
  const watch = new PracticeWatch(foldersAround(paths, io.cwd));
  void io.interrupted().then(() => watch.close());
  try {
    const first = await checkOnce(paths, flags, io);
    if (first !== undefined) return fail(io, first);
    if (!flags.has("quiet")) io.stderr.write("Watching for changes. Ctrl+C ends it.\n");
    for (let changes = await watch.next(); changes !== undefined; changes = await watch.next()) {
      io.stdout.write(`\n--- ${changesInWords(changes, io.cwd)} ---\n`);
      const reason = await checkOnce(paths, flags, { ...io, today: io.todayNow(), progress: undefined });
      if (reason !== undefined) io.stderr.write(`daystave: ${reason}\n`);
    }
    return STATUS.done;
  } finally {
    watch.close();
  }
}

/** Why nothing could be checked; undefined where it was. */
async function checkOnce(paths: readonly string[], flags: ReadonlySet<string>, io: Io): Promise<string | undefined> {
  const read = await readJournals(paths, io);
  if (!read.ok) return read.reason;
  io.stdout.write(await rendered(reportOn(read, read.journals, io), flags, io));
  return undefined;
}

/** The folders whose files bear on what is found: those named, or the tops of the journals that they are in. */
function foldersAround(paths: readonly string[], cwd: string): readonly string[] {
  const marked = new MarkedFolders();
  const folders = (paths.length > 0 ? paths : ["."]).map((path) => {
    const place = resolve(cwd, path);
    if (statSync(place, { throwIfNoEntry: false })?.isDirectory()) return marked.nearest(place) ?? place;
    return marked.nearest(dirname(place)) ?? (place.startsWith(join(cwd, "/")) ? cwd : dirname(place));
  });
  return [...new Set(folders)];
}

const WORDS = { changed: "changed", new: "is new", gone: "is gone" } as const satisfies Record<
  FileChange["what"],
  string
>;

function changesInWords(changes: readonly FileChange[], cwd: string): string {
  const named = changes
    .slice(0, MOST_NAMED)
    .map(({ path, what }) => `${printable(relative(cwd, path))} ${WORDS[what]}`);
  const more = changes.length - named.length;
  return [...named, ...(more > 0 ? [`and ${more} more`] : [])].join(", ");
}
