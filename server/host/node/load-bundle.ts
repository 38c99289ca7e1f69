import { existsSync, readFileSync } from "node:fs";
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
  const source = readFileSync(path, "utf8");
  const cachedData = keptCode(path, source);
  const load = createRequire(path);
  if (!cachedData) return load(path);
  const script = new Script(Module.wrap(source), { filename: path, cachedData });
  const module = { exports: {} };
  script.runInThisContext()(module.exports, load, module, path, dirname(path));
  return module.exports as T;
}

/** The same of a bundle that some packages are without. */
export function loadBundleIfThere<T>(file: string): T | undefined {
  return existsSync(join(__dirname, file)) ? loadBundle(file) : undefined;
}

/** The bundle's first line names the code that belongs to it, so that no other is ever taken for it. */
function keptCode(path: string, source: string): Buffer | undefined {
  const id = /^\/\/ ([0-9a-f]{16})\n/.exec(source)?.[1];
  try {
    return id === undefined ? undefined : readFileSync(path.replace(/js$/, `${id}.code`));
  } catch {
    return undefined;
  }
}
