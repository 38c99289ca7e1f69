import { relative } from "node:path";
import { fileURLToPath } from "node:url";
import { type DayToAppend, dayToAppend } from "../../features/commands/day-to-append.ts";
import { dayOn, type PlacedDay } from "../../features/explain/dated-days.ts";
import { fileId } from "../../host/node/file-id.ts";
import { isoDate } from "../../journal/calendar.ts";
import { Journal } from "../../journal/journal.ts";
import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { type NamedFile, type ReadJournals, readJournals } from "../journals.ts";
import { MarkedFolders } from "../marked-folders.ts";
import { jsonText, printable } from "../printable.ts";

/** `daystave day`: today's day line, for the end of a file. That the journal has it is no failure. */
export async function day({ positionals, flags }: Arguments, io: Io): Promise<Status> {
  const [path = new MarkedFolders().nearest(io.cwd) ?? "."] = positionals;
  const read = await readJournals([path], io);
  if (!read.ok) return fail(io, read.reason);
  if (read.unread) return STATUS.failed;
  const chosen = chooseJournal(read, positionals.length > 0, io);
  if (!chosen.ok) return fail(io, chosen.reason);
  const { journal, file } = chosen;
  const there = dayOn(journal, file?.uri ?? "", io.today);
  const made = dayToAppend(journal, file?.uri, { today: io.today, phases: flags.has("phases") });
  const say = (text: string) => flags.has("quiet") || io.stderr.write(`daystave: ${text}\n`);
  if (there) say(`${isoDate(io.today)} is in the journal already: ${placeOf(there, io.cwd)}.`);
  else if (flags.has("phases") && made.phases.length === 0)
    say("No earlier day of this journal has phases, so this is the day alone.");
  if (flags.has("json")) io.stdout.write(jsonText(documentOf(there, made, io)));
  else if (!there) io.stdout.write(textOf(made, chosen.appends));
  if (!there && chosen.appends && made.newestFirst)
    say("This file has its newest day first: move the new day to the top.");
  return STATUS.done;
}

type Chosen =
  | {
      readonly ok: true;
      readonly journal: Journal;
      /** That the line is written for. */
      readonly file?: NamedFile;
      /** Standard output is that file. */
      readonly appends: boolean;
    }
  | { readonly ok: false; readonly reason: string };

/** The file that standard output goes to, a file that was named, or the only journal there is. */
function chooseJournal({ files, journals }: ReadJournals, isNamed: boolean, io: Io): Chosen {
  const output = io.outputFile?.();
  const into = output === undefined ? undefined : files.find(({ place }) => place && fileId(place) === output);
  const file = into ?? (isNamed && files.length === 1 ? files[0] : undefined);
  if (file) return { ok: true, journal: journals.get(file.root)!, file, appends: file === into };
  const [journal = new Journal("file:///", new Map()), ...others] = journals.values();
  if (others.length === 0) return { ok: true, journal, appends: false };
  return { ok: false, reason: "There are several journals here. Name the folder of one: daystave day FOLDER" };
}

function textOf({ lead, line, phases, lineEnd }: DayToAppend, appends: boolean): string {
  return (appends ? lead : "") + [line, ...phases].map((each) => each + lineEnd).join("");
}

function documentOf(there: PlacedDay | undefined, { line, phases }: DayToAppend, { today, cwd }: Io): object {
  return {
    date: isoDate(today),
    line: there ? null : line,
    phases: there ? [] : phases,
    there: there ? { path: pathOf(there, cwd), line: lineNumberOf(there) } : null,
  };
}

function placeOf(there: PlacedDay, cwd: string): string {
  return printable(`${pathOf(there, cwd)}, line ${lineNumberOf(there)}`);
}

function pathOf({ uri }: PlacedDay, cwd: string): string {
  return relative(cwd, fileURLToPath(uri));
}

function lineNumberOf({ document, index }: PlacedDay): number {
  return document.starts[index]! + 1;
}
