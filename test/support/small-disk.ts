import { spawnSync } from "node:child_process";
import { onTestFinished } from "vitest";
import { temporaryFolder } from "./temporary-folder.ts";

/** A disk of its own with so many kilobytes, for as long as the test; undefined where this process may mount none. */
export function smallDisk(kilobytes: number): string | undefined {
  const folder = temporaryFolder();
  const mounted = spawnSync("mount", ["-t", "tmpfs", "-o", `size=${kilobytes}k`, "tmpfs", folder]);
  if (mounted.status !== 0) return undefined;
  onTestFinished(() => void spawnSync("umount", ["--lazy", folder]));
  return folder;
}
