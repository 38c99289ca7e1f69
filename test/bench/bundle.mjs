import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { COMMAND_LINE, keepCode, SERVER_BUNDLES, settingsOf } from "../../build.mjs";

const FOLDER = fileURLToPath(new URL("../../out/bench", import.meta.url));
const EMPTY = { ...SERVER_BUNDLES[0], entry: "test/bench/empty-server.ts", file: "empty.js" };

/** Bundles Daystave's server and its command line as `build.mjs` does, and the empty server likewise. Returns their files. */
export async function bundleAll() {
  await Promise.all([...SERVER_BUNDLES, EMPTY].map((bundle) => build(settingsOf(bundle, FOLDER))));
  await keepCode(FOLDER);
  return {
    daystave: `${FOLDER}/${SERVER_BUNDLES[0].file}`,
    cli: `${FOLDER}/${COMMAND_LINE}`,
    empty: `${FOLDER}/${EMPTY.file}`,
  };
}
