import { headingOf, namedJournals, nothingFound, unknownSubject, warnOfDaysAhead } from "../attempts-asked.ts";
import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { readJournals } from "../journals.ts";
import { jsonText } from "../printable.ts";
import { readAttempts } from "../read-attempts.ts";
import { historyReport, tooManyWeeks } from "./history-json.ts";
import { rowsOf } from "./history-rows.ts";
import { historyText } from "./history-text.ts";
import { attemptsIn } from "./journal-attempts.ts";
import { axisOf, choiceOf, weeksAsked } from "./weeks-asked.ts";

/** `daystave history`: the attempts in the files named, by journal. */
export async function history({ positionals, flags, values }: Arguments, io: Io): Promise<Status> {
  const [json, blankWeeks, rates] = [flags.has("json"), flags.has("blank-weeks"), flags.has("rates")];
  if (blankWeeks && !json) return fail(io, "“--blank-weeks” goes with --json; the table shows them anyway.");
  if (rates && json) return fail(io, "“--rates” goes with the table; --json has nothing but rates.");
  const wanted = weeksAsked(values);
  if (!wanted.ok) return fail(io, wanted.reason);
  const { asked } = wanted;
  const read = await readJournals(positionals, io);
  if (!read.ok) return fail(io, read.reason);
  readAttempts(read.journals.values(), io);
  const journals = namedJournals(read).map((named) => attemptsIn(named, asked, io.cwd));
  const days = journals.flatMap(({ records }) => records.map(({ day }) => day));
  const unknown = days.length === 0 ? unknownSubject(read, asked) : undefined;
  if (unknown !== undefined) return fail(io, unknown);
  const axis = axisOf(days, asked, io.today);
  const choice = choiceOf(asked, axis);
  const tooMany = blankWeeks ? tooManyWeeks(journals, choice) : undefined;
  if (tooMany !== undefined) return fail(io, tooMany);
  if (!axis) io.stderr.write(`daystave: ${nothingFound(read, asked)}\n`);
  warnOfDaysAhead(
    days.filter((day) => day <= (choice.until ?? day)),
    io,
  );
  if (json)
    io.stdout.write(jsonText(historyReport(journals, { ...choice, blankWeeks, today: io.today }, read.skipped)));
  else if (axis) {
    const everyStrand = asked.subject !== undefined;
    const rowsAsked = { axis, choice, everyStrand, rates, today: io.today };
    const tables = journals.map((each) => ({
      journal: headingOf(each, journals),
      rows: rowsOf(each.records, each.source, rowsAsked),
    }));
    io.stdout.write(historyText(tables, { axis, rates }, io));
  }
  return read.unread ? STATUS.failed : STATUS.done;
}
