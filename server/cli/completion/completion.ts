import type { Arguments, Command } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { notOneOf } from "../nearest.ts";
import { bashScript } from "./bash.ts";
import { type Completable, completable } from "./completable.ts";
import { fishScript } from "./fish.ts";
import { SHELLS, type Shell } from "./shells.ts";
import { zshScript } from "./zsh.ts";

const SCRIPTS: Readonly<Record<Shell, (commands: readonly Completable[]) => string>> = {
  bash: bashScript,
  zsh: zshScript,
  fish: fishScript,
};

/** `daystave completion`: a script that completes all commands. */
export async function completion({ positionals }: Arguments, io: Io, commands: readonly Command[]): Promise<Status> {
  const [said] = positionals;
  if (said === undefined) return fail(io, `Say for which shell: daystave completion ${SHELLS.join("|")}`);
  const shell = SHELLS.find((each) => each === said.toLowerCase());
  if (shell === undefined) return fail(io, notOneOf(`completion ${said}`, said, SHELLS));
  io.stdout.write(SCRIPTS[shell](completable(commands)));
  return STATUS.done;
}
