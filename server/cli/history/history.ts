import { relative } from "node:path";
import { type HistoryOfExercise, historyOf } from "../../history/history.ts";
import {
  type AttemptsAsked,
  attemptsAsked,
  type NamedJournal,
  namedAttempts,
  namedJournals,
  nothingFound,
  warnOfDaysAhead,
} from "../attempts-asked.ts";
import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { readJournals } from "../journals.ts";
import { isAttemptAt, subjectAsked } from "../subject-asked.ts";
import { type HistoryReport, historyJson } from "./history-json.ts";
import { historyText, type JournalHistory } from "./history-text.ts";

/** `daystave history`: the attempts in the files named, by journal. */
export async function history({ positionals, flags, values }: Arguments, io: Io): Promise<Status> {
  const wanted = attemptsAsked(values);
  if (!wanted.ok) return fail(io, wanted.reason);
  const read = await readJournals(positionals, io);
  if (!read.ok) return fail(io, read.reason);
  const histories = namedJournals(read).map((named) => historyIn(named, wanted.asked, io.cwd));
  const isEmpty = histories.every(({ exercises }) => exercises.length === 0);
  if (isEmpty) io.stderr.write(`daystave: ${nothingFound(read, wanted.asked)}\n`);
  warnOfDaysAhead(
    histories.flatMap(({ days }) => days),
    io,
  );
  if (flags.has("json")) await writeJson({ exercises: exercisesIn(histories), skipped: read.skipped }, io);
  else if (!isEmpty) io.stdout.write(historyText(histories, io));
  return STATUS.done;
}

async function writeJson(report: HistoryReport, { stdout }: Io): Promise<void> {
  for (const piece of historyJson(report)) await stdout.write(piece);
}

function historyIn(named: NamedJournal, { since, subject }: AttemptsAsked, cwd: string): JournalHistory {
  const asked = subject === undefined ? undefined : subjectAsked(subject, named.journal);
  const records = namedAttempts(named).filter((record) => isAttemptAt(asked, record));
  const { exercises } = historyOf(records, { since });
  return { journal: nameOf(named.root, cwd), exercises, days: records.map(({ day }) => day) };
}

/** The exercises of all journals; where there are several, each says whose it is. */
function exercisesIn(histories: readonly JournalHistory[]): readonly HistoryOfExercise[] {
  if (histories.length === 1) return histories[0]!.exercises;
  return histories.flatMap(({ journal, exercises }) => exercises.map((exercise) => ({ ...exercise, journal })));
}

function nameOf(root: string, cwd: string): string {
  const name = relative(cwd, root);
  if (name === "") return ".";
  return name.startsWith("..") ? root : name;
}
