import { formatEdits } from "../../features/layout/formatting.ts";
import { textOf } from "../../syntax/document/document.ts";
import type { Arguments } from "../command.ts";
import { applyEdits } from "../edits.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { documentOf, type Journals, type NamedFile, readJournals } from "../journals.ts";
import { jsonText, printable } from "../printable.ts";
import { writeFiles } from "../write.ts";

/** `daystave format`: in place, or with `--check` only told; found is a file that would change. */
export async function format({ positionals, flags }: Arguments, io: Io): Promise<Status> {
  const read = await readJournals(positionals, io);
  if (!read.ok) return fail(io, read.reason);
  const onlyChecks = flags.has("check");
  const { journals, changed } = formatted(read.files, read.journals);
  if (flags.has("json")) {
    const files = read.files.map((file) => ({ path: file.path, changed: changed.includes(file) }));
    io.stdout.write(jsonText({ files, skipped: read.skipped }));
  } else if (!onlyChecks) {
    for (const file of read.files) if (!file.place) io.stdout.write(standardOutput(file, journals));
  }
  if (onlyChecks) {
    if (!flags.has("json")) for (const { path } of changed) io.stdout.write(`${printable(path)} would change\n`);
    return changed.length > 0 ? STATUS.found : STATUS.done;
  }
  const written = writeFiles(
    changed.filter((file) => file.place),
    read.journals,
    journals,
    io,
  );
  for (const { path } of written.files) io.stderr.write(`${printable(path)} is in the usual layout now\n`);
  return written.refused ? STATUS.failed : STATUS.done;
}

/** What came from standard input, with its byte order mark where it had one. */
function standardOutput(file: NamedFile, journals: Journals): string {
  return (file.bom ? "\uFEFF" : "") + textOf(documentOf(file, journals));
}

function formatted(
  files: readonly NamedFile[],
  before: Journals,
): { readonly journals: Journals; readonly changed: readonly NamedFile[] } {
  const journals = new Map(before);
  const changed: NamedFile[] = [];
  for (const file of files) {
    const edits = formatEdits(before.get(file.root)!, file.uri);
    if (edits.length === 0) continue;
    const document = applyEdits(documentOf(file, before), edits);
    if (textOf(document) === file.text) continue;
    changed.push(file);
    journals.set(file.root, journals.get(file.root)!.with(file.uri, document));
  }
  return { journals, changed };
}
