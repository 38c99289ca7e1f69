// Finds a Chromium for the host tests; installs Debian's only where that is a plain matter (root, with apt).
import { spawnSync } from "node:child_process";
import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";

/** The shell first: it draws the same pages without a browser's own window around them, for two thirds of the work. */
const NAMES = [
  "chromium-headless-shell",
  "chromium",
  "chromium-browser",
  "google-chrome-stable",
  "google-chrome",
  "microsoft-edge",
];
const PLACES = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  ...["PROGRAMFILES", "PROGRAMFILES(X86)"]
    .filter((name) => process.env[name])
    .map((name) => join(process.env[name], "Google/Chrome/Application/chrome.exe")),
];
export const isRoot = process.getuid?.() === 0;
export const launchArguments = isRoot ? ["--no-sandbox"] : []; // Chromium refuses its sandbox to root

/** Two test files may want it at once: one installs, the other waits, and looks again where it was locked out. */
const WAITING = ["-o", "DPkg::Lock::Timeout=300"];
const ROUNDS = 4;
const SECONDS_BETWEEN = 10;

/** A path, or undefined after saying on stderr what to install. */
export function findChromium() {
  const named = process.env.CHROMIUM_PATH;
  if (named) return runs(named) ? named : complain(`CHROMIUM_PATH is "${named}", which cannot be run.`);
  const found = look();
  if (found) return found;
  if (isRoot && onPath("apt-get")) {
    console.error("No Chromium found; installing Debian's (about 300 MB on disk) …");
    for (let round = 0; round < ROUNDS; round++) {
      spawnSync("apt-get", ["update", "-qq"], { stdio: "inherit" });
      for (const name of ["chromium-headless-shell", "chromium"]) {
        spawnSync("apt-get", [...WAITING, "install", "-y", "-qq", "--no-install-recommends", name], {
          stdio: ["ignore", "ignore", "inherit"],
          env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
        });
        const installed = look();
        if (installed) return installed;
      }
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, SECONDS_BETWEEN * 1000);
    }
  }
  return complain("No Chromium found.");
}
function look() {
  return NAMES.map(onPath).find(Boolean) ?? PLACES.find(runs);
}
function onPath(name) {
  return (process.env.PATH ?? "")
    .split(delimiter)
    .map((folder) => join(folder, name))
    .find(runs);
}
function runs(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
function complain(what) {
  console.error(`${what} The tests in real editors need one: install Chromium or Google Chrome
(Debian, Ubuntu: sudo apt-get install chromium; Fedora: sudo dnf install chromium; macOS: brew install --cask chromium),
or name one: CHROMIUM_PATH=/path/to/chrome npm test`);
  return undefined;
}
