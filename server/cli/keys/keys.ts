import { DAYS_OF_KEYS } from "../../history/thresholds.ts";
import { isoDate } from "../../journal/calendar.ts";
import { attemptsAsked } from "../attempts-asked.ts";
import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { readJournals } from "../journals.ts";
import { jsonText } from "../printable.ts";
import { ofEach, wholeJournals } from "../whole-journals.ts";
import { type Days, keysReport } from "./keys-report.ts";
import { keysText } from "./keys-text.ts";

/**
 * `daystave keys`: which keys were played in the last twelve weeks, or those chosen, and what the pieces want. Days
 * after today do not exist yet.
 */
export async function keys({ positionals, flags, values }: Arguments, io: Io): Promise<Status> {
  const wanted = attemptsAsked(values);
  if (!wanted.ok) return fail(io, wanted.reason);
  const until = Math.min(wanted.asked.until ?? io.today, io.today);
  const days: Days = { since: wanted.asked.since ?? until - DAYS_OF_KEYS + 1, until };
  if (days.since > until) return fail(io, `“--since ${isoDate(days.since)}” is after today: put an earlier day.`);
  const read = await readJournals(positionals, io);
  if (!read.ok) return fail(io, read.reason);
  const journals = wholeJournals(read, io);
  if (flags.has("json")) {
    const none = { since: isoDate(days.since), until: isoDate(days.until), ...NOTHING };
    const report = ofEach(journals, ({ journal }) => keysReport(journal, days), none);
    io.stdout.write(jsonText({ ...report, skipped: read.skipped }));
  } else {
    const text = keysText(journals, days, io);
    if (text === "") io.stderr.write(`daystave: ${read.files.length === 0 ? NO_FILE : NO_KEY}\n`);
    io.stdout.write(text);
  }
  return read.unread ? STATUS.failed : STATUS.done;
}

const NOTHING = { keys: [], patterns: [], articulations: [], directions: [], reaches: [], wanted: [] } as const;
const NO_FILE = "There is no .practice file here.";
const NO_KEY =
  "No scale or chord practised in these days, and no current piece with a key. A line such as “D minor, 8ths at 60 clean” below a day begins the list.";
