import { pupilsOf } from "../../plan/pupils.ts";
import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { readJournals } from "../journals.ts";
import { jsonText } from "../printable.ts";
import { wholeJournals } from "../whole-journals.ts";
import { pupilRow } from "./pupils-report.ts";
import { pupilsText } from "./pupils-text.ts";

/** `daystave pupils`: what a teacher reads of each journal named. That there is none is said, and no failure. */
export async function pupils({ positionals, flags }: Arguments, io: Io): Promise<Status> {
  const read = await readJournals(positionals, io);
  if (!read.ok) return fail(io, read.reason);
  const paths = new Map(wholeJournals(read, io).map(({ journal, path }) => [journal, path]));
  const found = pupilsOf(paths.keys(), () => io.today).map((pupil) => ({ pupil, path: paths.get(pupil.journal)! }));
  if (flags.has("json")) {
    io.stdout.write(jsonText({ pupils: found.map(pupilRow), skipped: read.skipped }));
  } else {
    if (found.length === 0) io.stderr.write(`daystave: ${read.files.length === 0 ? NO_FILE : NO_PUPIL}\n`);
    io.stdout.write(pupilsText(found, io));
  }
  return read.unread ? STATUS.failed : STATUS.done;
}

const NO_FILE = "There is no .practice file here.";
const NO_PUPIL =
  "No pupil's journal is here yet. Each pupil has a folder, with a journal.practice that says “player” and a name.";
