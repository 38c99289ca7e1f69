import { lstatSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { createFile, putFile } from "../../host/node/create-file.ts";
import { reasonOf } from "../../host/node/read-file.ts";
import { sweep } from "../../host/node/temporary-files.ts";
import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { printable } from "../printable.ts";

/** How a file is written. */
interface Writing {
  readonly flags: Arguments["flags"];
  /** A terminal can show it. */
  readonly isText: boolean;
}

/** Writes a file that was asked for by name, `-` being standard output. Never over another without `--force`. */
export function written(path: string, content: Uint8Array, { flags, isText }: Writing, io: Io): Status {
  if (path === "-") return toOutput(content, isText, io);
  const place = resolve(io.cwd, path);
  try {
    const isThere = lstatSync(place, { throwIfNoEntry: false }) !== undefined;
    if (isThere && !flags.has("force"))
      return fail(io, `${printable(path)} is there already, and stays as it is. To write over it, add --force.`);
    sweep(dirname(place));
    const made = isThere ? putFile(place, content) : createFile(place, content);
    if (!made.ok) return fail(io, `${printable(path)} was not written. ${made.reason}`);
  } catch (error) {
    return fail(io, `${printable(path)} was not written. ${reasonOf(error)}`);
  }
  if (!flags.has("quiet")) io.stderr.write(`${printable(path)} is written.\n`);
  return STATUS.done;
}

function toOutput(content: Uint8Array, isText: boolean, io: Io): Status {
  if (io.isTerminal && !isText) return fail(io, "A terminal cannot show this. Name a file, or send the output to one.");
  io.stdout.write(content);
  return STATUS.done;
}
