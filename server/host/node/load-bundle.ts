import { closeSync, existsSync, openSync, readFileSync, readSync } from "node:fs";
import Module, { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { Script } from "node:vm";

/**
 * Loads a CommonJS bundle that stands beside this one, as `require` does, and spares V8 compiling it where the build
 * has kept what it compiled (`keepCode` in build.mjs) and the same V8 runs here. Any other V8 refuses what was kept,
 * and compiles.
 */
export function loadBundle<T>(file: string): T {
  const path = join(__dirname, file);
  const cachedData = keptCode(path);
  const load = createRequire(path);
  if (!cachedData) return load(path);
  const script = new Script(Module.wrap(readFileSync(path, "utf8")), { filename: path, cachedData });
  const module = { exports: {} };
  script.runInThisContext()(module.exports, load, module, path, dirname(path));
  return module.exports as T;
}

/** The same of a bundle that some packages are without. */
export function loadBundleIfThere<T>(file: string): T | undefined {
  return existsSync(join(__dirname, file)) ? loadBundle(file) : undefined;
}

/** The bundle's first line names the code that belongs to it, so that no other is ever taken for it. */
function keptCode(path: string): Buffer | undefined {
  const id = /^\/\/ ([0-9a-f]{16})\n/.exec(beginningOf(path))?.[1];
  try {
    return id === undefined ? undefined : readFileSync(path.replace(/js$/, `${id}.code`));
  } catch {
    return undefined;
  }
}

/** As much of a file as that line takes. To read all of it only for that would be a twentieth of the start. */
function beginningOf(path: string): string {
  const file = openSync(path, "r");
  const start = Buffer.alloc("// 0123456789abcdef\n".length);
  readSync(file, start);
  closeSync(file);
  return start.toString("latin1");
}
