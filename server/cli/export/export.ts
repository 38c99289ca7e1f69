import { type DayNumber, parseIsoDate } from "../../journal/calendar.ts";
import { attemptsAsked, nothingFound, unknownSubject, warnOfDaysAhead } from "../attempts-asked.ts";
import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { type ReadJournals, readJournals } from "../journals.ts";
import { namesAsked } from "../names-asked.ts";
import type { Skipped } from "../paths.ts";
import { jsonText, printable } from "../printable.ts";
import { readAttempts } from "../read-attempts.ts";
import { type AllAsked, allRows } from "./all-rows.ts";
import { type Cell, csvLines } from "./csv.ts";
import { ALL_COLUMN_NAMES, type AllColumn, EXPORT_COLUMN_NAMES } from "./export-columns.ts";
import { exportExercise } from "./export-exercise.ts";
import { rowOf, writtenAttempts } from "./export-rows.ts";
import { exportTuning } from "./export-tuning.ts";

/** `daystave export`: a table, or with an option that names a file an exercise or a tuning. */
export async function exportAsked(args: Arguments, io: Io): Promise<Status> {
  const { flags, values } = args;
  const forms = [...TABLES.filter((form) => flags.has(form)), ...FILES.filter((form) => values.has(form))];
  if (forms.length > 1) return fail(io, `Choose one of ${forms.map((form) => `“--${form}”`).join(" and ")}.`);
  const [form] = forms;
  if (form === undefined) return fail(io, `Say what to write: ${CAN}.\nFor more: daystave export --help`);
  const [elsewhere] = Object.keys(GO_WITH).filter(
    (option) => (flags.has(option) || values.has(option)) && !GO_WITH[option]!.includes(form),
  );
  if (elsewhere !== undefined)
    return fail(io, `“--${elsewhere}” goes with ${listed(GO_WITH[elsewhere]!)}, not with “--${form}”.`);
  if (form === "midi" || form === "musicxml") return exportExercise(args, form, io);
  return form === "mts" ? exportTuning(args, io) : exportAttempts(args, io);
}

const TABLES = ["csv", "json"] as const;
const FILES = ["midi", "musicxml", "mts"] as const;
type Form = (typeof TABLES | typeof FILES)[number];

/** Options that some forms alone know. */
const GO_WITH: Readonly<Record<string, readonly Form[]>> = {
  all: TABLES,
  subject: TABLES,
  since: TABLES,
  until: TABLES,
  tempo: ["midi", "musicxml"],
  instrument: FILES,
  pitch: ["mts"],
  octave: ["mts"],
  force: FILES,
};

function listed(forms: readonly Form[]): string {
  return forms.map((form) => `“--${form}”`).join(" or ");
}

/** The attempts in the files named, as a table. */
async function exportAttempts({ positionals, flags, values }: Arguments, io: Io): Promise<Status> {
  const wanted = attemptsAsked(values);
  if (!wanted.ok) return fail(io, wanted.reason);
  const named = namesAsked(values.get("names"));
  if (!named.ok) return fail(io, named.reason);
  const read = await readJournals(positionals, io);
  if (!read.ok) return fail(io, read.reason);
  readAttempts(read.journals.values(), io);
  const asked: AllAsked = { ...wanted.asked, cwd: io.cwd, names: named.names };
  const days = new Set<DayNumber>();
  const { rows, columns, name } = flags.has("all") ? wholeDiary(read, asked, days) : attemptsAlone(read, asked, days);
  const first = rows.next();
  const unknown = first.done ? unknownSubject(read, asked) : undefined;
  if (unknown !== undefined) return fail(io, unknown);
  if (first.done) io.stderr.write(`daystave: ${nothingFound(read, asked)}\n`);
  const all = first.done ? [] : told(withFirst(first.value, rows), io);
  writeInPieces(flags.has("json") ? jsonPieces(name, all, read.skipped) : csvLines(columns, all), io);
  warnOfDaysAhead(days, io);
  return read.unread ? STATUS.failed : STATUS.done;
}

type Row = Readonly<Partial<Record<AllColumn, Cell>>>;

/** What is written, and what it is called in JSON. */
interface Table {
  readonly name: "attempts" | "rows";
  readonly columns: readonly AllColumn[];
  /** Made as they are asked for. */
  readonly rows: Generator<Row, void>;
}

/** @param days takes down the days with an attempt, as its rows are made */
function attemptsAlone(read: ReadJournals, asked: AllAsked, days: Set<DayNumber>): Table {
  function* rows(): Generator<Row, void> {
    for (const attempt of writtenAttempts(read, asked, asked.cwd)) {
      days.add(attempt.record.day);
      yield rowOf(attempt, asked.names);
    }
  }
  return { name: "attempts", columns: EXPORT_COLUMN_NAMES, rows: rows() };
}

/** @param days as in `attemptsAlone` */
function wholeDiary(read: ReadJournals, asked: AllAsked, days: Set<DayNumber>): Table {
  function* rows(): Generator<Row, void> {
    for (const row of allRows(read, asked)) {
      const day = row.type === "attempt" ? parseIsoDate(String(row.date)) : undefined;
      if (day !== undefined) days.add(day);
      yield row;
    }
  }
  return { name: "rows", columns: ALL_COLUMN_NAMES, rows: rows() };
}

function* withFirst(first: Row, rest: Iterable<Row>): Generator<Row, void> {
  yield first;
  yield* rest;
}

/** The same rows, while somebody who watches is told how many there are by now. */
function* told(rows: Iterable<Row>, { progress }: Pick<Io, "progress">): Generator<Row, void> {
  let count = 0;
  for (const row of rows) {
    progress?.("Writing rows", ++count);
    yield row;
  }
}

/** As `jsonText` has the whole. */
function* jsonPieces(name: string, rows: Iterable<Row>, skipped: readonly Skipped[]): Generator<string, void> {
  yield `{"${name}":[`;
  let comma = "";
  for (const row of rows) {
    yield comma + printable(JSON.stringify(row));
    comma = ",";
  }
  yield `],"skipped":${jsonText(skipped).trimEnd()}}\n`;
}

/** So many UTF-16 units are written at once. */
const PIECE = 100_000;

/** The rows of a long diary are more than one text can hold. */
function writeInPieces(texts: Iterable<string>, { stdout }: Pick<Io, "stdout">): void {
  let pieces: string[] = [];
  let length = 0;
  for (const text of texts) {
    pieces.push(text);
    length += text.length;
    if (length < PIECE) continue;
    stdout.write(pieces.join(""));
    pieces = [];
    length = 0;
  }
  stdout.write(pieces.join(""));
}

const CAN =
  "the attempts as a table (--csv) or as JSON (--json), an exercise (--midi FILE or --musicxml FILE), a tuning (--mts FILE)";
