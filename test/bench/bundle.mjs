import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const OPTIONS = {
  platform: "node",
  target: "node20",
  format: "cjs",
  bundle: true,
  minify: true,
  legalComments: "eof",
  logLevel: "warning",
};

/** Bundles Daystave's server, its command line and the empty server in the same way. Returns their files. */
export async function bundleAll() {
  const entryPoints = { daystave: "server/main.ts", empty: "test/bench/empty-server.ts", cli: "server/cli/main.ts" };
  const outdir = `${ROOT}out/bench`;
  await build({ ...OPTIONS, absWorkingDir: ROOT, entryPoints, outdir });
  return Object.fromEntries(Object.keys(entryPoints).map((name) => [name, `${outdir}/${name}.js`]));
}
