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

/** Bundles Daystave's server, its command line and the empty server in the same way. Returns their files; no command line yet, no file. */
export async function bundleAll() {
  const entries = { daystave: "server/main.ts", empty: "test/bench/empty-server.ts", cli: "server/cli/main.ts" };
  const outdir = `${ROOT}out/bench`;
  const bundles = Object.entries(entries).map(async ([name, entry]) => {
    await build({ ...OPTIONS, absWorkingDir: ROOT, entryPoints: { [name]: entry }, outdir });
    return [name, `${outdir}/${name}.js`];
  });
  const built = await Promise.allSettled(bundles);
  return Object.fromEntries(built.filter(({ status }) => status === "fulfilled").map(({ value }) => value));
}
