import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { COMMAND_LINE_BUNDLES, SERVER_BUNDLES, settingsOf } from "../../build.mjs";

const FOLDER = fileURLToPath(new URL("../../out/bench", import.meta.url));
const EMPTY = { ...SERVER_BUNDLES[0], entry: "test/bench/empty-server.ts", file: "empty.js", plugins: [] };

/** Bundles Daystave's server and its command line as `build.mjs` does, and the empty server likewise. Returns their files. */
export async function bundleAll() {
  const bundles = [...SERVER_BUNDLES, ...COMMAND_LINE_BUNDLES, EMPTY];
  await Promise.all(bundles.map((bundle) => build(settingsOf(bundle, FOLDER))));
  const [daystave, , cli, empty] = bundles.map(({ file }) => `${FOLDER}/${file}`);
  return { daystave, cli, empty };
}
