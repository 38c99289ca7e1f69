// Bundles everything that runs outside the tests into dist/: both clients, both servers, the preview's page, the command line.
//   node build.mjs [--watch]     --watch also writes source maps and builds again on every change
import { chmodSync, readdirSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { context } from "esbuild";

const COMMAND_LINE = "server/cli.js";
// A dynamic import of a bundle of ours goes by require, which does not look through its text for exports first.
const node = { platform: "node", target: "node20", format: "cjs", supported: { "dynamic-import": false } };
const browser = { platform: "browser", target: "es2022" };

/** A module that is imported when it is needed, as the bundle of its own that stands beside: so that less is parsed first. */
function apart(name, module, bundle) {
  return {
    name,
    setup({ onResolve }) {
      onResolve({ filter: module }, ({ kind }) =>
        kind === "dynamic-import" ? { path: bundle, external: true } : undefined,
      );
    },
  };
}
/** The server answers `initialize` before it loads its core. */
const coreApart = apart("core-apart", /\/handlers\.ts$/, "./core.js");
/** The command line needs the server for one of its commands. */
const serverApart = apart("server-apart", /\/main\.ts$/, "./main.js");

/** The bundles of the Node server and of the command line, by their files below `dist`; tests and benchmark make the same. */
export const SERVER_BUNDLES = [
  { ...node, entry: "server/main.ts", file: "server/main.js", plugins: [coreApart] },
  { ...node, entry: "server/lsp/handlers.ts", file: "server/core.js" },
];
export const WORKER_BUNDLES = [
  { ...browser, entry: "server/main.browser.ts", file: "server/main.browser.js", format: "iife" },
];
export const COMMAND_LINE_BUNDLES = [
  {
    ...node,
    entry: "server/cli/main.ts",
    file: COMMAND_LINE,
    plugins: [serverApart],
    banner: { js: "#!/usr/bin/env node" },
  },
];
const BUNDLES = [
  ...SERVER_BUNDLES,
  ...WORKER_BUNDLES,
  ...COMMAND_LINE_BUNDLES,
  { ...node, entry: "client/extension.ts", file: "client/extension.js", external: ["vscode"] },
  {
    ...browser,
    entry: "client/extension.web.ts",
    file: "client/extension.web.js",
    format: "cjs",
    external: ["vscode"],
  },
  { ...browser, entry: "client/preview/page/main.ts", file: "client/preview.js", format: "iife" },
  { ...browser, entry: "client/preview/page/page.css", file: "client/preview.css" },
];

/** What esbuild takes to make one of the bundles below a folder. */
export function settingsOf({ entry, file, ...options }, folder = "dist", watch = false) {
  return {
    ...options,
    absWorkingDir: dirname(fileURLToPath(import.meta.url)),
    entryPoints: [entry],
    outfile: `${folder}/${file}`,
    bundle: true,
    minify: !watch,
    sourcemap: watch,
    legalComments: "eof",
    logLevel: "warning",
  };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await buildAll();

async function buildAll() {
  process.chdir(dirname(fileURLToPath(import.meta.url)));
  const { watch } = parseArgs({ options: { watch: { type: "boolean", default: false } } }).values;
  const started = performance.now();
  const builds = await Promise.all(BUNDLES.map((bundle) => context(settingsOf(bundle, "dist", watch))));
  try {
    await Promise.all(builds.map((build) => (watch ? build.watch() : build.rebuild())));
    if (!watch) {
      chmodSync(`dist/${COMMAND_LINE}`, 0o755);
      removeStale();
    }
    console.log(`${watch ? "Watching" : "Built"} dist/ in ${Math.round(performance.now() - started)} ms`);
  } catch {
    process.exitCode = 1; // esbuild has said where and why
  } finally {
    if (!watch) await Promise.all(builds.map((build) => build.dispose()));
  }
}

/** Nothing that an earlier build left is served or packaged. Only now, so that what runs from dist/ never finds it empty. */
function removeStale() {
  const built = new Set(BUNDLES.map(({ file }) => join("dist", file)));
  for (const entry of readdirSync("dist", { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name);
    if (entry.isFile() && !built.has(path)) rmSync(path);
  }
}
