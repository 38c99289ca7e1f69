import { type SpawnSyncReturns, spawnSync } from "node:child_process";
import { closeSync, openSync, rmSync } from "node:fs";
import { dirname } from "node:path";

/** Runs a bundle of the command line as a process of its own, until it ends. */
export function runBundle(
  bundle: string,
  argv: readonly string[],
  { cwd, input = "" }: { readonly cwd: string; readonly input?: string },
): SpawnSyncReturns<string> {
  return spawnSync(process.execPath, [bundle, ...argv], { cwd, input, encoding: "utf8" });
}

/** The same with standard output going to a file or a device; it is told what came on standard error. */
export function runInto(
  output: string,
  bundle: string,
  argv: readonly string[],
  cwd: string,
): Pick<SpawnSyncReturns<string>, "status" | "stderr"> {
  const file = openSync(output, "w");
  try {
    const ended = spawnSync(process.execPath, [bundle, ...argv], {
      cwd,
      stdio: ["ignore", file, "pipe"],
      encoding: "utf8",
    });
    return { status: ended.status, stderr: ended.stderr };
  } finally {
    closeSync(file);
  }
}

/** Removes what `bundleCommandLine` made. */
export function removeBundle(bundle: string): void {
  rmSync(dirname(dirname(bundle)), { recursive: true, force: true });
}
