import { eachFormatEdit } from "../../features/layout/formatting.ts";
import type { TextEdit } from "../../features/types.ts";
import type { Arguments } from "../command.ts";
import { editedText } from "../edits.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { documentOf, type NamedFile, type ReadJournals, readJournals } from "../journals.ts";
import { jsonText, printable } from "../printable.ts";
import { inputPathAsked } from "../stdin-path.ts";
import { sweepBeside, writeFile } from "../write.ts";

/** `daystave format`: in place, or with `--check` only told; found is a file that would change. */
export async function format(args: Arguments, io: Io): Promise<Status> {
  const { positionals, flags } = args;
  const input = inputPathAsked(args, io.cwd);
  if (!input.ok) return fail(io, input.reason);
  const read = await readJournals(positionals, io, input);
  if (!read.ok) return fail(io, read.reason);
  const asked = { json: flags.has("json"), check: flags.has("check"), quiet: flags.has("quiet") };
  if (!asked.check) sweepBeside(read.files);
  const changed: NamedFile[] = [];
  let refused = read.unread;
  for (const [i, file] of read.files.entries()) {
    io.progress?.("Laying out", i, read.files.length);
    const edits = layoutEdits(file, read, io);
    if (asked.check) {
      // No edit leaves a text as it is, nor do several together: the first one tells.
      if (edits.next().done) continue;
      changed.push(file);
      if (!asked.json) io.stdout.write(`${printable(file.path)} would change\n`);
      continue;
    }
    const text = editedText(documentOf(file, read.journals), edits);
    if (text !== file.text) changed.push(file);
    if (!passOn(file, text, asked, io)) refused = true;
  }
  if (asked.json) {
    const files = read.files.map((file) => ({ path: file.path, changed: changed.includes(file) }));
    io.stdout.write(jsonText({ files, skipped: read.skipped }));
  }
  if (refused) return STATUS.failed;
  return asked.check && changed.length > 0 ? STATUS.found : STATUS.done;
}

/** The edits that bring a file into the usual layout, one by one. */
function layoutEdits(
  file: NamedFile,
  { journals, files }: ReadJournals,
  { progress }: Io,
): Generator<TextEdit, void, undefined> {
  const lines = documentOf(file, journals).lineCount;
  const tell = files.length > 1 ? undefined : (line: number) => progress?.("Laying out lines", line, lines);
  return eachFormatEdit(journals.get(file.root)!, file.uri, undefined, tell);
}

/** Writes a file as it is laid out. False where it could not be written. */
function passOn(
  file: NamedFile,
  text: string,
  asked: { readonly json: boolean; readonly quiet: boolean },
  io: Io,
): boolean {
  if (file.place === undefined) {
    // With its byte order mark, where it had one.
    if (!asked.json) io.stdout.write((file.bom ? "\uFEFF" : "") + text);
    return true;
  }
  if (text === file.text) return true;
  if (!writeFile(file, text, io)) return false;
  if (!asked.quiet) io.stderr.write(`${printable(file.path)} is in the usual layout now\n`);
  return true;
}
