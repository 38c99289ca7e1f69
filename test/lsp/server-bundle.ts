import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { SERVER_BUNDLES, settingsOf, WORKER_BUNDLES } from "../../build.mjs";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));

/**
 * Bundles a server as `build.mjs` does, for this test process alone, so that no test runs an old one. Returns its file.
 */
export async function bundleServer(kind: "node" | "worker"): Promise<string> {
  const folder = `${ROOT}out/lsp/${process.pid}`;
  const bundles = kind === "node" ? SERVER_BUNDLES : WORKER_BUNDLES;
  await Promise.all(bundles.map((bundle) => build(settingsOf(bundle, folder) as Parameters<typeof build>[0])));
  return `${folder}/${bundles[0]!.file}`;
}
