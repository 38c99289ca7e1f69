import type { Arguments, Command } from "../command.ts";
import { type Io, STATUS, type Status } from "../io.ts";
import { manPage } from "./man-page.ts";

/** `daystave man`: the manual page. */
export async function man(_: Arguments, io: Io, commands: readonly Command[]): Promise<Status> {
  io.stdout.write(manPage(commands));
  return STATUS.done;
}
