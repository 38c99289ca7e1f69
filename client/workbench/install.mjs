// Installs the dependencies where that is not done yet, with Node's built-ins alone: `npm start` and `npm test` work on
// a fresh clone.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** The top of the checkout, with a slash at its end. */
export const ROOT = fileURLToPath(new URL("../../", import.meta.url));
/** Holds the hash of the lock file that was installed: a checkout touches file times, so those tell nothing. */
const STAMP = `${ROOT}node_modules/.installed-lock`;

/** Runs `npm ci` unless this very lock file is installed. Ends the process when npm fails. */
export function installIfNeeded() {
  const lock = createHash("sha256")
    .update(readFileSync(`${ROOT}package-lock.json`))
    .digest("hex");
  if (existsSync(STAMP) && readFileSync(STAMP, "utf8") === lock) return;
  console.log("Installing dependencies (once, and again when package-lock.json changes) …");
  must("npm", ["ci", "--no-audit", "--no-fund"]);
  writeFileSync(STAMP, lock);
}

/** Runs a command in the checkout and shows what it prints; ends the process with its status when it fails. */
export function must(command, args) {
  const { status, error } = spawnSync(command, args, {
    cwd: ROOT,
    stdio: "inherit",
    shell: process.platform === "win32" && command === "npm",
  });
  if (status === 0) return;
  console.error(`"${command} ${args.join(" ")}" failed${error ? `: ${error.message}` : ""}.`);
  process.exit(status ?? 1);
}
