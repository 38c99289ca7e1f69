import { posix } from "node:path";
import { diagnosticsOf } from "../../features/diagnostics/diagnostics.ts";
import type { Diagnostic } from "../../features/types.ts";
import { type Journal, MARKER } from "../../journal/journal.ts";
import { createDocument, type Document } from "../../syntax/document/document.ts";
import { revParse } from "../git/git.ts";
import { type StagedChange, stagedChanges, stagedPaths } from "../git/staged-changes.ts";
import { withStagedCopy } from "../git/staged-copy.ts";
import type { Io } from "../io.ts";
import { documentOf, type Journals, type NamedFile, type ReadJournals, readJournals } from "../journals.ts";
import { type CheckReport, reportOn, summaryOf } from "./check-report.ts";

export type StagedReport =
  | { readonly ok: true; readonly report: CheckReport }
  | { readonly ok: false; readonly reason: string };

const NOTHING: CheckReport = { files: [], skipped: [], summary: summaryOf([]) };

/**
 * What is wrong in a journal as a commit of the index would leave it: in the files that are staged, and what they bring
 * about in others. Where a declaration changes, in all files of its journal.
 */
export async function checkStaged(io: Io): Promise<StagedReport> {
  const [top, gitFolder] = [revParse(io.cwd, "--show-toplevel"), revParse(io.cwd, "--absolute-git-dir")];
  if (!top || !gitFolder)
    return { ok: false, reason: "“--staged” is for a folder under git, and git knows no working tree here." };
  const staged = stagedChanges(top);
  if (!staged.ok) return staged;
  if (staged.changes.length === 0) return { ok: true, report: NOTHING };
  const listed = stagedPaths(top);
  if (!listed.ok) return listed;
  return withStagedCopy({ top, gitFolder }, listed.paths, async (folder) => {
    const read = await readJournals([], { ...io, cwd: folder }, { top: folder });
    return read.ok ? { ok: true, report: reportOnChanges(read, staged.changes, io) } : read;
  });
}

function reportOnChanges(read: ReadJournals, changes: readonly StagedChange[], io: Io): CheckReport {
  const byPath = new Map(changes.map((change) => [change.path, change]));
  const settled = changes.filter((change) => changesDeclarations(change, read));
  const whole = read.files.filter(
    (file) => byPath.has(pathOf(file)) || settled.some((each) => bearsOn(each, file, read)),
  );
  const report = reportOn({ ...read, files: whole }, read.journals, io);
  const others = read.files.filter((file) => !whole.includes(file));
  const before = journalsBefore(read, byPath);
  const brought = others.flatMap((file) => broughtAbout(file, read.journals, before, io));
  const files = [...report.files, ...brought];
  return { files, skipped: report.skipped, summary: summaryOf(files) };
}

/** As git has it. */
function pathOf({ path }: NamedFile): string {
  return path.replaceAll("\\", "/");
}

/** A change to a marker bears on all that lies beside and below it; any other on its own journal. */
function bearsOn({ path }: StagedChange, file: NamedFile, { files }: ReadJournals): boolean {
  const folder = posix.dirname(path);
  const isMarker = posix.basename(path) === MARKER;
  if (isMarker && (folder === "." || pathOf(file).startsWith(`${folder}/`))) return true;
  // Of a file that is gone the journal is that of a file beside it, or, where there is none, any.
  const beside =
    files.find((each) => pathOf(each) === path) ?? files.find((each) => posix.dirname(pathOf(each)) === folder);
  return beside === undefined || beside.root === file.root;
}

/** What only the player is asked, or is due one day, settles nothing for other lines. */
const WITHOUT_EFFECT = ["aim", "set", "concert", "player"];

function changesDeclarations({ path, before, isDeleted }: StagedChange, { files, journals }: ReadJournals): boolean {
  const file = isDeleted ? undefined : files.find((each) => pathOf(each) === path);
  const journal = file && journals.get(file.root);
  const isMarker = posix.basename(path) === MARKER;
  if (isMarker && (before === undefined || isDeleted)) return true; // a journal begins or ends here
  const reader = journal ?? [...journals.values()][0];
  if (!reader) return false;
  const now = file ? declarationsIn(reader.files.get(file.uri)!, reader) : [];
  const then = before === undefined ? [] : declarationsIn(createDocument(before), reader);
  return now.join("\n") !== then.join("\n");
}

function declarationsIn({ blocks }: Document, journal: Journal): string[] {
  return blocks.flatMap((block) =>
    journal
      .ownModel(block)
      .declarations.flatMap(({ line: row, declaration: { line } }) =>
        WITHOUT_EFFECT.includes(line.word) ? [] : [block.lines[row]!.trim()],
      ),
  );
}

/** The journals with the changed files as they were. */
function journalsBefore({ files, journals }: ReadJournals, changes: ReadonlyMap<string, StagedChange>): Journals {
  const before = new Map(journals);
  for (const file of files) {
    const change = changes.get(pathOf(file));
    if (!change) continue;
    const document = change.before === undefined ? undefined : createDocument(change.before);
    before.set(file.root, before.get(file.root)!.with(file.uri, document));
  }
  return before;
}

/** What an unchanged file has that it had not before, as a day that another file now has as well. */
function broughtAbout(file: NamedFile, journals: Journals, before: Journals, { today }: Io): CheckReport["files"] {
  const matters = ({ severity }: Diagnostic) => severity === "error" || severity === "warning";
  const now = diagnosticsOf(journals.get(file.root)!, file.uri, today).filter(matters);
  if (now.length === 0) return [];
  const known = new Set(diagnosticsOf(before.get(file.root)!, file.uri, today).map(keyOf));
  const diagnostics = now.filter((each) => !known.has(keyOf(each)));
  return diagnostics.length > 0 ? [{ path: file.path, diagnostics, document: documentOf(file, journals) }] : [];
}

/** Where a message names a line of a changed file, that may have moved. */
function keyOf({ code, message, range }: Diagnostic): string {
  return JSON.stringify([code, message.replace(/line \d+/, "line"), range.start]);
}
