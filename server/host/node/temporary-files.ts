import { type Dirent, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";

const NAME = /^\.daystave-(\d+)\.new$/;

/** What this process writes in a folder for a while, a file or a folder. Its name tells whose it is. */
export function temporaryIn(folder: string): string {
  return join(folder, `.daystave-${process.pid}.new`);
}

/**
 * Removes what a run that was killed left in a folder; what a running process writes stays. A folder that cannot be
 * looked into, or changed, stays as it is.
 */
export function sweep(folder: string, what: "files" | "folders" = "files"): void {
  const isWanted = (entry: Dirent) => (what === "files" ? entry.isFile() : entry.isDirectory());
  try {
    for (const entry of readdirSync(folder, { withFileTypes: true })) {
      const writer = NAME.exec(entry.name)?.[1];
      if (writer !== undefined && isWanted(entry) && !isWriting(Number(writer)))
        rmSync(join(folder, entry.name), { force: true, recursive: what === "folders" });
    }
  } catch {
    // Whatever is wrong with the folder is said where a file of it is written.
  }
}

/** This process has not begun when it sweeps: a file of its number is from an earlier one that had the same. */
function isWriting(writer: number): boolean {
  if (writer === process.pid) return false;
  try {
    process.kill(writer, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code !== "ESRCH";
  }
}
