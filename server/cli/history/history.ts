import { exerciseRow } from "../../history/exercise-row.ts";
import { exercisesOf } from "../../history/strands.ts";
import { weeksOf } from "../../history/weeks.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { attemptsAsked, namedJournals, nothingFound, warnOfDaysAhead } from "../attempts-asked.ts";
import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { readJournals } from "../journals.ts";
import { jsonText } from "../printable.ts";
import { historyReport, tooManyWeeks } from "./history-json.ts";
import { historyText, type JournalRows } from "./history-text.ts";
import { attemptsIn, type JournalAttempts } from "./journal-attempts.ts";

/** `daystave history`: the attempts in the files named, by journal. */
export async function history({ positionals, flags, values }: Arguments, io: Io): Promise<Status> {
  const [json, blankWeeks] = [flags.has("json"), flags.has("blank-weeks")];
  if (blankWeeks && !json) return fail(io, "“--blank-weeks” goes with --json; the table shows them anyway.");
  const wanted = attemptsAsked(values);
  if (!wanted.ok) return fail(io, wanted.reason);
  const read = await readJournals(positionals, io);
  if (!read.ok) return fail(io, read.reason);
  const { since } = wanted.asked;
  const journals = namedJournals(read).map((named) => attemptsIn(named, wanted.asked, io.cwd));
  const tooMany = blankWeeks ? tooManyWeeks(journals, since) : undefined;
  if (tooMany !== undefined) return fail(io, tooMany);
  const days = journals.flatMap(({ records }) => records.map(({ day }) => day));
  const isEmpty = !days.some((day) => since === undefined || day >= since);
  if (isEmpty) io.stderr.write(`daystave: ${nothingFound(read, wanted.asked)}\n`);
  warnOfDaysAhead(days, io);
  if (json) io.stdout.write(jsonText(historyReport(journals, { since, blankWeeks }, read.skipped)));
  else if (!isEmpty) io.stdout.write(historyText(rowsOf(journals, since), io));
  return STATUS.done;
}

function rowsOf(journals: readonly JournalAttempts[], since: DayNumber | undefined): JournalRows[] {
  return journals.map(({ journal, records }) => ({
    journal,
    rows: exercisesOf(records, { since }).map((exercise) =>
      exerciseRow(exercise, weeksOf(exercise.strands[0]!.records, since)),
    ),
  }));
}
