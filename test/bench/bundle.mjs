import { rmSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { COMMAND_LINE, SERVER_BUNDLES, settingsOf } from "../../build.mjs";

const FOLDER = fileURLToPath(new URL("../../out/bench", import.meta.url));
const EMPTY = { ...SERVER_BUNDLES[0], entry: "test/bench/empty-server.ts", file: "empty.js" };

/**
 * Bundles Daystave's server and its command line as a package holds them, and the empty server likewise. Compiled
 * code that a build keeps is not in a package, and so is not made here. Returns their files.
 */
export async function bundleAll() {
  rmSync(`${FOLDER}/server`, { recursive: true, force: true });
  await Promise.all([...SERVER_BUNDLES, EMPTY].map((bundle) => build(settingsOf(bundle, FOLDER))));
  return {
    daystave: `${FOLDER}/${SERVER_BUNDLES[0].file}`,
    cli: `${FOLDER}/${COMMAND_LINE}`,
    empty: `${FOLDER}/${EMPTY.file}`,
  };
}
