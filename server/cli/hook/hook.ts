import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { printable } from "../printable.ts";
import { HOOK_SCRIPT } from "./hook-script.ts";
import { installHook } from "./install-hook.ts";

/** `daystave hook`: prints a pre-commit hook for git, or installs it. */
export async function hook({ flags }: Arguments, io: Io): Promise<Status> {
  if (!flags.has("install")) {
    io.stdout.write(HOOK_SCRIPT);
    return STATUS.done;
  }
  const installed = installHook(io.cwd);
  if (!installed.ok) return fail(io, printable(installed.reason));
  io.stderr.write(`${printable(installed.path)} ${installed.wasThere ? "is there already" : "is installed"}\n`);
  return STATUS.done;
}
