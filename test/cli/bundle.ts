import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));

/** Bundles the command line as `build.mjs` does, for this test process alone, so that no test runs an old one. Returns its file. */
export async function bundleCommandLine(): Promise<string> {
  const outfile = `${ROOT}out/cli/cli-${process.pid}.js`;
  await build({
    absWorkingDir: ROOT,
    entryPoints: ["server/cli/main.ts"],
    outfile,
    platform: "node",
    target: "node20",
    format: "cjs",
    banner: { js: "#!/usr/bin/env node" },
    bundle: true,
    minify: true,
    logLevel: "warning",
  });
  return outfile;
}
