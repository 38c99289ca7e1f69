import { lstatSync, mkdirSync, statSync } from "node:fs";
import { join, resolve } from "node:path";
import { createFile } from "../../host/node/create-file.ts";
import { reasonOf } from "../../host/node/read-file.ts";
import { sweep } from "../../host/node/temporary-files.ts";
import { MARKER } from "../../journal/journal.ts";
import type { Arguments } from "../command.ts";
import { instrumentAsked } from "../instrument-asked.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { namesAsked } from "../names-asked.ts";
import { jsonText, printable } from "../printable.ts";
import { type Declares, isReadAsMeant, journalOf, journalText } from "./journal-text.ts";

/** `daystave init`: makes a folder with `journal.practice`, never in place of another. */
export async function init({ positionals, flags, values }: Arguments, io: Io): Promise<Status> {
  const [folder = "."] = positionals;
  const path = folder === "." ? MARKER : join(folder, MARKER);
  const names = namesAsked(values.get("names"));
  if (!names.ok) return fail(io, names.reason);
  const refusal = refusalFor(folder, path, io.cwd);
  if (refusal !== undefined) return fail(io, refusal);
  const given = { instrument: oneLine(values.get("instrument")), player: oneLine(values.get("player")) };
  const asked = io.ask && !given.instrument && !given.player ? await answers(io.ask, io) : given;
  if (asked === undefined) return fail(io, "Nothing was made.");
  const declares: Declares = { ...asked, ...(names.names && { names: names.names.id }) };
  const instrument = declares.instrument === undefined ? undefined : instrumentIn(declares.instrument);
  if (instrument?.ok === false) return fail(io, instrument.reason);
  const text = journalText(declares);
  if (!isReadAsMeant(text, declares, io.today))
    return fail(io, `“--player ${printable(declares.player ?? "")}”: this cannot be read as a name.`);
  const made = make(resolve(io.cwd, folder), text);
  if (made !== undefined) return fail(io, `${printable(path)} was not made. ${made}`);
  if (flags.has("json")) io.stdout.write(jsonText({ path, text }));
  if (!flags.has("quiet")) io.stderr.write(madeInWords(path, folder));
  return STATUS.done;
}

function madeInWords(path: string, folder: string): string {
  const where = folder === "." ? "" : " in that folder";
  return `${printable(path)} is made. To begin today${where}: daystave day >> diary.practice\n`;
}

/** Why nothing can be made there, with the path that it is due to; undefined where nothing speaks against it. */
function refusalFor(folder: string, path: string, cwd: string): string | undefined {
  try {
    const there = statSync(resolve(cwd, folder), { throwIfNoEntry: false });
    if (there && !there.isDirectory()) return `${printable(folder)} is a file, not a folder.`;
    const file = lstatSync(resolve(cwd, path), { throwIfNoEntry: false });
    return file && `${printable(path)} is there already, and stays as it is.`;
  } catch (error) {
    return `${printable(path)} was not made. ${reasonOf(error)}`;
  }
}

/** Why the file could not be made; undefined where it was. */
function make(folder: string, text: string): string | undefined {
  try {
    mkdirSync(folder, { recursive: true });
  } catch (error) {
    return reasonOf(error);
  }
  sweep(folder);
  const written = createFile(join(folder, MARKER), text);
  return written.ok ? undefined : written.reason;
}

/** An instrument that is not known is asked for again so often. */
const MOST_TRIES = 3;

/** What a person answers; undefined where they went away. */
async function answers(ask: NonNullable<Io["ask"]>, io: Io): Promise<Declares | undefined> {
  let instrument: string | undefined;
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const answer = await ask("Which instrument do you play, as “alto recorder”? (Enter: say it later) ");
    if (answer === undefined) return undefined;
    const said = oneLine(answer);
    const known = said ? instrumentIn(said) : undefined;
    if (known?.ok === false) {
      io.stderr.write(`${known.reason}\n`);
      continue;
    }
    instrument = said;
    break;
  }
  const player = await ask("What is your name? (Enter: say it later) ");
  return player === undefined ? undefined : { instrument, player: oneLine(player) };
}

function instrumentIn(name: string) {
  return instrumentAsked(name, journalOf("").vocabulary);
}

/** Without spaces around it and further ones within; undefined where nothing is left. */
function oneLine(text: string | undefined): string | undefined {
  return text?.trim().replace(/[^\S\r\n]+/g, " ") || undefined;
}
