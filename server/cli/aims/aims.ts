import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { readJournals } from "../journals.ts";
import { jsonText } from "../printable.ts";
import { ofEach, wholeJournals } from "../whole-journals.ts";
import { aimRows } from "./aims-report.ts";
import { aimsText } from "./aims-text.ts";

/** `daystave aims`: how far the aims of the journals named have come. That there are none is said, and no failure. */
export async function aims({ positionals, flags }: Arguments, io: Io): Promise<Status> {
  const read = await readJournals(positionals, io);
  if (!read.ok) return fail(io, read.reason);
  const journals = wholeJournals(read, io);
  if (flags.has("json")) {
    const report = ofEach(journals, (around) => ({ aims: aimRows(around, io.today) }), { aims: [] });
    io.stdout.write(jsonText({ ...report, skipped: read.skipped }));
  } else {
    const text = aimsText(journals, io);
    if (text === "") io.stderr.write(`daystave: ${read.files.length === 0 ? NO_FILE : NO_AIM}\n`);
    io.stdout.write(text);
  }
  return read.unread ? STATUS.failed : STATUS.done;
}

const NO_FILE = "There is no .practice file here.";
const NO_AIM =
  "No aim is written here yet. A line such as “aim D minor, slurred, 8ths at 72 by 2026-06-30” at the top of a journal is one.";
