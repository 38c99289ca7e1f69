import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const SETTINGS = {
  node: { entry: "server/main.ts", platform: "node", target: "node20", format: "cjs" },
  worker: { entry: "server/main.browser.ts", platform: "browser", target: "es2022", format: "iife" },
} as const;

/** Bundles a server as `build.mjs` does, for this test process alone, so that no test runs an old one. Returns its file. */
export async function bundleServer(kind: keyof typeof SETTINGS): Promise<string> {
  const { entry, ...options } = SETTINGS[kind];
  const outfile = `${ROOT}out/lsp/${kind}-${process.pid}.js`;
  await build({
    ...options,
    absWorkingDir: ROOT,
    entryPoints: [entry],
    outfile,
    bundle: true,
    minify: true,
    logLevel: "warning",
  });
  return outfile;
}
