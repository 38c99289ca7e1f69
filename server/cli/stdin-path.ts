import { statSync } from "node:fs";
import { resolve } from "node:path";
import type { Arguments } from "./command.ts";
import { STANDARD_INPUT } from "./paths.ts";
import { printable } from "./printable.ts";

export type InputPathAsked =
  | { readonly ok: true; readonly inputPath?: string }
  | { readonly ok: false; readonly reason: string };

/** Reads `--stdin-path`: the file, which need not be there yet, that standard input is read as. */
export function inputPathAsked(
  { positionals, values }: Pick<Arguments, "positionals" | "values">,
  cwd: string,
): InputPathAsked {
  const inputPath = values.get("stdin-path");
  if (inputPath === undefined) return { ok: true };
  if (!positionals.includes(STANDARD_INPUT))
    return { ok: false, reason: "“--stdin-path” says which file standard input is, so it goes with - as PATH." };
  if (statSync(resolve(cwd, inputPath), { throwIfNoEntry: false })?.isDirectory())
    return { ok: false, reason: `“--stdin-path ${printable(inputPath)}”: It is a folder; name a file.` };
  return { ok: true, inputPath };
}
