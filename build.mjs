// Bundles everything that runs outside the tests into dist/: both clients, both servers, the preview's page, the command line.
//   node build.mjs [--watch]     --watch also writes source maps and builds again on every change
import { chmodSync, rmSync } from "node:fs";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { context } from "esbuild";

process.chdir(dirname(fileURLToPath(import.meta.url)));
const { watch } = parseArgs({ options: { watch: { type: "boolean", default: false } } }).values;
const COMMAND_LINE = "dist/server/cli.js";

const node = { platform: "node", target: "node20", format: "cjs" };
const browser = { platform: "browser", target: "es2022" };
const bundles = [
  { ...node, entry: "client/extension.ts", outfile: "dist/client/extension.js", external: ["vscode"] },
  {
    ...browser,
    entry: "client/extension.web.ts",
    outfile: "dist/client/extension.web.js",
    format: "cjs",
    external: ["vscode"],
  },
  { ...browser, entry: "client/preview/page/main.ts", outfile: "dist/client/preview.js", format: "iife" },
  { ...browser, entry: "client/preview/page/page.css", outfile: "dist/client/preview.css" },
  { ...node, entry: "server/main.ts", outfile: "dist/server/main.js" },
  { ...browser, entry: "server/main.browser.ts", outfile: "dist/server/main.browser.js", format: "iife" },
  { ...node, entry: "server/cli/main.ts", outfile: COMMAND_LINE, banner: { js: "#!/usr/bin/env node" } },
];

rmSync("dist", { recursive: true, force: true }); // nothing stale is ever served or packaged
const started = performance.now();
const builds = await Promise.all(bundles.map(prepare));
try {
  await Promise.all(builds.map((build) => (watch ? build.watch() : build.rebuild())));
  if (!watch) chmodSync(COMMAND_LINE, 0o755);
  console.log(`${watch ? "Watching" : "Built"} dist/ in ${Math.round(performance.now() - started)} ms`);
} catch {
  process.exitCode = 1; // esbuild has said where and why
} finally {
  if (!watch) await Promise.all(builds.map((build) => build.dispose()));
}

function prepare({ entry, ...options }) {
  return context({
    ...options,
    entryPoints: [entry],
    bundle: true,
    minify: !watch,
    sourcemap: watch,
    legalComments: "eof",
    logLevel: "warning",
  });
}
