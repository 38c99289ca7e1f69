import { relative } from "node:path";
import { attemptsOfJournal } from "../history/attempts.ts";
import { type HistoryOfExercise, historyOf } from "../history/history.ts";
import { parseIsoDate } from "../journal/calendar.ts";
import type { DayNumber } from "../journal/model.ts";
import { type Arguments, nearest, notADay, offer } from "./arguments.ts";
import { historyText } from "./history-text.ts";
import { fail, type Io, STATUS, type Status } from "./io.ts";
import { type ReadJournals, readJournals } from "./journals.ts";
import { jsonText, printable } from "./printable.ts";
import { subjectAsked } from "./subject-asked.ts";

/** The exercises of one journal; nothing of one journal is ever compared with another's. */
export interface JournalHistory {
  /** The journal's folder, as seen from the current one; a lone file's own name. */
  readonly journal: string;
  readonly exercises: readonly HistoryOfExercise[];
}

/** Which exercises to tell of. */
interface Asked {
  readonly since?: DayNumber;
  readonly subject?: string;
}

/** `daystave history`: the attempts in the files named, by journal. */
export async function history({ positionals, flags, values }: Arguments, io: Io): Promise<Status> {
  const date = values.get("since");
  const since = date === undefined ? undefined : parseIsoDate(date);
  if (date !== undefined && since === undefined) return fail(io, notADay("--since", date));
  const asked = { since, subject: values.get("subject") };
  const read = await readJournals(positionals, io);
  if (!read.ok) return fail(io, read.reason);
  const histories = historiesOf(read, asked, io.cwd);
  const isEmpty = histories.every(({ exercises }) => exercises.length === 0);
  if (isEmpty) io.stderr.write(`daystave: ${nothingFound(read, asked, io.cwd)}\n`);
  if (flags.has("json")) io.stdout.write(jsonText({ exercises: exercisesIn(histories), skipped: read.skipped }));
  else if (!isEmpty) io.stdout.write(historyText(histories, io));
  return STATUS.done;
}

function historiesOf({ files, journals }: ReadJournals, { since, subject }: Asked, cwd: string): JournalHistory[] {
  return [...new Set(files.map(({ root }) => root))].map((root) => {
    const journal = journals.get(root)!;
    const named = new Set(files.map(({ uri }) => uri));
    const records = attemptsOfJournal(journal).filter(({ uri }) => named.has(uri));
    const asked = subject === undefined ? undefined : subjectAsked(subject, journal);
    const { exercises } = historyOf(records, { since, subjectKey: asked?.key });
    const wanted = exercises.filter(({ pattern }) => asked?.pattern === undefined || asked.pattern === pattern);
    return { journal: nameOf(root, cwd), exercises: wanted };
  });
}

/** The exercises of all journals; where there are several, each says whose it is. */
function exercisesIn(histories: readonly JournalHistory[]): readonly HistoryOfExercise[] {
  if (histories.length === 1) return histories[0]!.exercises;
  return histories.flatMap(({ journal, exercises }) => exercises.map((exercise) => ({ ...exercise, journal })));
}

function nothingFound(read: ReadJournals, { since, subject }: Asked, cwd: string): string {
  if (read.files.length === 0) return "There is no .practice file here.";
  const subjects = historiesOf(read, {}, cwd).flatMap(({ exercises }) => exercises.map((exercise) => exercise.subject));
  if (subjects.length === 0)
    return "No exercise was practised yet: a line such as “D minor, 8ths at 60 clean” begins its history.";
  if (subject === undefined) return "No exercise was practised since that day.";
  const span = since === undefined ? "" : " since that day";
  const others = subjects.filter((each) => since === undefined || each !== subject);
  return `“${printable(subject)}” was not practised${span}.${offer(nearest(subject, [...new Set(others)]))}`;
}

function nameOf(root: string, cwd: string): string {
  const name = relative(cwd, root);
  if (name === "") return ".";
  return name.startsWith("..") ? root : name;
}
