// Whether dist/ is newer than all that it is made of, so that a second start need not build again.
import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "./install.mjs";

/** What the bundles are made of, and the lock file that says with which packages. */
const SOURCES = ["server", "client", "shared", "build.mjs", "package.json", "package-lock.json", "tsconfig.json"];
const BUILT = join(ROOT, "dist");

export function isBuilt() {
  const built = existsSync(BUILT)
    ? filesIn(BUILT)
        .filter((file) => file.endsWith(".js"))
        .map(timeOf)
    : [];
  if (built.length === 0) return false;
  const sources = SOURCES.map((name) => join(ROOT, name)).flatMap(filesIn);
  return Math.max(...sources.map(timeOf)) < Math.min(...built);
}

/** A file, or all files of a folder. */
function filesIn(path) {
  if (!statSync(path).isDirectory()) return [path];
  const entries = readdirSync(path, { recursive: true, withFileTypes: true });
  return entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
}

function timeOf(file) {
  return statSync(file).mtimeMs;
}
