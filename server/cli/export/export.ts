import { attemptsAsked, nothingFound, warnOfDaysAhead } from "../attempts-asked.ts";
import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { readJournals } from "../journals.ts";
import { namesAsked } from "../names-asked.ts";
import { jsonText } from "../printable.ts";
import { csvTable } from "./csv.ts";
import { EXPORT_COLUMN_NAMES } from "./export-columns.ts";
import { rowOf, writtenAttempts } from "./export-rows.ts";

/** `daystave export`: the attempts in the files named, as a table. */
export async function exportAttempts({ positionals, flags, values }: Arguments, io: Io): Promise<Status> {
  const later = ["midi", "musicxml", "tempo"].find((option) => values.has(option));
  if (later !== undefined)
    return fail(
      io,
      `“--${later}”: exercises as MIDI or MusicXML are not there yet. What can be written so far: ${CAN}.`,
    );
  if (flags.has("csv") && flags.has("json")) return fail(io, "“--csv” and “--json” cannot both be printed.");
  if (!flags.has("csv") && !flags.has("json"))
    return fail(io, `It takes an option that says what to write: ${CAN}.\nMore is told by: daystave export --help`);
  const wanted = attemptsAsked(values);
  if (!wanted.ok) return fail(io, wanted.reason);
  const named = namesAsked(values.get("names"));
  if (!named.ok) return fail(io, named.reason);
  const read = await readJournals(positionals, io);
  if (!read.ok) return fail(io, read.reason);
  const attempts = writtenAttempts(read, wanted.asked);
  if (attempts.length === 0) io.stderr.write(`daystave: ${nothingFound(read, wanted.asked)}\n`);
  warnOfDaysAhead(
    attempts.map(({ record }) => record.day),
    io,
  );
  const rows = attempts.map((attempt) => rowOf(attempt, named.names));
  if (flags.has("json")) io.stdout.write(jsonText({ attempts: rows, skipped: read.skipped }));
  else io.stdout.write(csvTable(EXPORT_COLUMN_NAMES, rows));
  return STATUS.done;
}

const CAN = "the attempts as a table (daystave export --csv) or as JSON (daystave export --json)";
