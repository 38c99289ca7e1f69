import { fstatSync, statSync } from "node:fs";

/**
 * What tells a file from all others on this computer, by whatever path or descriptor it is reached; undefined for what
 * is not a file.
 */
export function fileId(at: string | number): string | undefined {
  try {
    const found = typeof at === "number" ? fstatSync(at, { bigint: true }) : statSync(at, { bigint: true });
    return found.isFile() ? `${found.dev}:${found.ino}` : undefined;
  } catch {
    return undefined;
  }
}
