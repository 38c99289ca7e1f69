import { mkdirSync, rmSync } from "node:fs";
import { reasonOf } from "../../host/node/read-file.ts";
import { sweep, temporaryIn } from "../../host/node/temporary-files.ts";
import { git } from "./git.ts";

/**
 * Does something with a copy of the index's journal files, as a commit would have them: a folder within git's own that
 * is gone afterwards. One that a killed run left goes first.
 */
export async function withStagedCopy<Result>(
  { top, gitFolder }: { readonly top: string; readonly gitFolder: string },
  paths: readonly string[],
  use: (folder: string) => Promise<Result>,
): Promise<Result | { readonly ok: false; readonly reason: string }> {
  sweep(gitFolder, "folders");
  const folder = temporaryIn(gitFolder);
  try {
    mkdirSync(folder, { mode: 0o700 });
    const names = paths.map((path) => `${path}\0`).join("");
    const written = git(top, ["checkout-index", "--stdin", "-z", `--prefix=${folder}/`], names);
    return written.ok ? await use(folder) : written;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).syscall === undefined) throw error;
    return { ok: false, reason: `The staged journal could not be copied. ${reasonOf(error)}` };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
