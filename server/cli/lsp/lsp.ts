import type { Arguments } from "../command.ts";
import { fail, type Io, type Status } from "../io.ts";

/** Starts the language server, which ends the process when the client says so. */
export async function lsp({ flags }: Arguments, io: Io): Promise<Status> {
  if (!flags.has("stdio")) return fail(io, "Say how the language server is to speak: daystave lsp --stdio");
  await import("../../main.ts");
  return new Promise(() => {});
}
