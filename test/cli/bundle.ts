import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { COMMAND_LINE, SERVER_BUNDLES, settingsOf } from "../../build.mjs";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));

/**
 * Bundles the command line as `build.mjs` does, for this test process alone, so that no test runs an old one. Returns
 * its file.
 */
export async function bundleCommandLine(): Promise<string> {
  const folder = `${ROOT}out/cli/${process.pid}`;
  await Promise.all(SERVER_BUNDLES.map((bundle) => build(settingsOf(bundle, folder) as Parameters<typeof build>[0])));
  return `${folder}/${COMMAND_LINE}`;
}
