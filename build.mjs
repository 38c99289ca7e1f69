// Bundles everything that runs outside the tests into dist/: both clients, both servers, the preview's page, the command line.
//   node build.mjs [--watch]     --watch also writes source maps and builds again on every change
import { createHash } from "node:crypto";
import { chmodSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import Module, { createRequire } from "node:module";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { Script } from "node:vm";
import { build, context } from "esbuild";
import { inLanguage, inLanguageInUse, LANGUAGES, textsOf } from "./client/packaging/languages.mjs";
import { bundledPackages, noticesOf } from "./client/packaging/notices.mjs";

const ROOT = dirname(fileURLToPath(import.meta.url));

export const COMMAND_LINE = "server/cli.js";
/** The core, of the command line and the server. */
const CORE = "server/core.js";
/** The core without the command line: that of the extension's package, for Node and for web workers. */
const HANDLERS = "server/handlers.js";
const NOTICES = "THIRD-PARTY-NOTICES.txt";
// A dynamic import of a bundle of ours goes by require, which does not look through its text for exports first.
const node = { platform: "node", target: "node20", format: "cjs", supported: { "dynamic-import": false } };
const browser = { platform: "browser", target: "es2022" };

/** The command line needs the server for one of its commands, and then loads the bundle that stands beside its own. */
const serverApart = {
  name: "server-apart",
  setup({ onResolve }) {
    onResolve({ filter: /\/main\.ts$/ }, ({ kind }) =>
      kind === "dynamic-import" ? { path: "./main.js", external: true } : undefined,
    );
  },
};

/** The signs that staves are drawn with; the font has fifteen times as many. */
const SIGNS =
  /^(?:[gcf]Clef|timeSig\d|accidental(?:Double)?(?:Sharp|Flat)|accidentalNatural|notehead(?:Black|Half|Whole)|flag(?:8th|16th|32nd)(?:Up|Down)|augmentationDot|artic(?:Staccatissimo|Tenuto|Accent)(?:Above|Below))$/;

const VEXFLOW = /node_modules[/\\]vexflow[/\\]build[/\\]esm[/\\](?:entry|src)\b/;

/** The package's way in does the same, and needs every module of it for that. */
const MUSIC_FONT = `
import { Font } from "../src/font.js";
import { Glyph } from "../src/glyph.js";
import { Tables } from "../src/tables.js";
import { loadBravura } from "../src/fonts/load_bravura.js";
import { loadCustom } from "../src/fonts/load_custom.js";
loadBravura();
loadCustom();
Tables.MUSIC_FONT_STACK = ["Bravura", "Custom"].map((name) => Font.load(name));
Glyph.MUSIC_FONT_STACK = Tables.MUSIC_FONT_STACK.slice();
Glyph.CURRENT_CACHE_KEY = "Bravura,Custom";
export * from "../src/index.js";
`;

/** Of the music font the signs that are drawn, and nothing of the fonts for texts, which are the page's. */
const signsAlone = {
  name: "signs-alone",
  setup({ onLoad, onResolve }) {
    // A module that nothing asks for is left out, which the package does not say of itself.
    onResolve({ filter: /^\.\.?\// }, ({ path, resolveDir }) =>
      VEXFLOW.test(resolveDir) ? { path: join(resolveDir, path), sideEffects: false } : undefined,
    );
    onLoad({ filter: /vexflow\/build\/esm\/entry\/vexflow-bravura\.js$/ }, () => ({ contents: MUSIC_FONT }));
    onLoad({ filter: /vexflow\/build\/esm\/src\/fonts\/\w+_glyphs\.js$/ }, async ({ path }) => {
      const [name, font] = Object.entries(await import(path))[0];
      const glyphs = Object.fromEntries(Object.entries(font.glyphs).filter(([sign]) => SIGNS.test(sign)));
      return { contents: `export const ${name} = ${JSON.stringify({ ...font, glyphs })}` };
    });
  },
};

/** A plugin that writes what esbuild made only once it is changed. */
function rewritten(name, rewrite) {
  return {
    name,
    setup({ initialOptions, onEnd }) {
      initialOptions.write = false;
      onEnd(({ outputFiles }) => {
        for (const { path, text } of outputFiles ?? []) {
          mkdirSync(dirname(path), { recursive: true });
          writeFileSync(path, rewrite(text, { path, minify: initialOptions.minify }));
        }
      });
    },
  };
}

/**
 * The minifier puts every package of CommonJS into an arrow function, and V8 takes longer to compile what is in those than in
 * plain functions: the web client's code ran in 170 ms with arrows and in 57 without (Chromium 156, a busy machine, medians of
 * seven), in Node 20 in 24 and 17.
 */
const plainWrappers = rewritten("plain-wrappers", (text, { path, minify }) => {
  const plain = text.replace(ARROW_WRAPPER, "=$1(function($2$3){$4");
  if (minify && plain === text) throw new Error(`Packages are wrapped otherwise now in ${path}.`);
  return plain;
});
/** As `x=wrap(exports=>{"use strict";` or `x=wrap((exports,module)=>{"use strict";`: no callback of a package's own says that. */
const ARROW_WRAPPER = /=([\w$]+)\((?:([\w$]+)|\(([\w$,]*)\))=>\{("use strict";)/g;

/**
 * esbuild leaves the signs of music in regular expressions as they are, and one such sign makes V8 hold the whole file in
 * two bytes a character. A raw template would say something else then: none of ours holds more than ASCII.
 */
const asciiAlone = rewritten("ascii-alone", (text, { path }) => {
  if (RAW_BEYOND_ASCII.test(text)) throw new Error(`A raw template holds more than ASCII in ${path}.`);
  return text.replace(BEYOND_ASCII, (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, "0")}`);
});
const BEYOND_ASCII = /[\u0080-\uffff]/g;
const RAW_BEYOND_ASCII = /String\.raw`[^`]*[\u0080-\uffff]/;

/** What the core says in each language beside English; it finds the texts when it is loaded behind them. */
const TEXTS = LANGUAGES.map((language) => {
  const { plugins, ...texts } = textsOf(language);
  const file = `server/texts.${language}.js`;
  return { ...browser, ...texts, format: "iife", file, plugins: [...plugins, asciiAlone] };
});

/** One file for Node, which asks for its exports, and for a web worker, which looks for its name. */
function anywhere(name) {
  const footer = { js: `if (typeof module === "object") module.exports = ${name};` };
  return { ...browser, format: "iife", globalName: name, footer };
}

const HANDLERS_BUNDLE = {
  ...anywhere("daystaveHandlers"),
  entry: "server/lsp/handlers.ts",
  file: HANDLERS,
  plugins: [inLanguageInUse, asciiAlone],
};

/**
 * The bundles that Node runs, by their files below `dist`; tests and benchmark make the same. The server takes the core
 * without the command line where it is there: the less there is in a bundle, the sooner it is loaded.
 */
export const SERVER_BUNDLES = [
  { ...node, entry: "server/main.ts", file: "server/main.js" },
  HANDLERS_BUNDLE,
  { ...node, entry: "server/cli/main.ts", file: COMMAND_LINE, banner: { js: "#!/usr/bin/env node" } },
  { ...node, entry: "server/core.ts", file: CORE, plugins: [serverApart, inLanguageInUse, asciiAlone] },
  ...TEXTS,
];

export const NOTATION_BUNDLE = {
  ...anywhere("daystaveNotation"),
  entry: "server/notation/drawing/draw-staff.ts",
  file: "server/notation.js",
  plugins: [signsAlone],
};
export const WORKER_BUNDLES = [
  { ...browser, entry: "server/main.browser.ts", file: "server/main.browser.js", format: "iife" },
  HANDLERS_BUNDLE,
  ...TEXTS,
];
/** A page's script, in each language. */
function pageIn(entry, file) {
  const page = { ...browser, entry, format: "iife" };
  return [
    { ...page, file: `${file}.js` },
    ...LANGUAGES.map((language) => ({ ...page, file: `${file}.${language}.js`, plugins: [inLanguage(language)] })),
  ];
}

/** The two clients: for Node and for browsers. */
export const CLIENT_BUNDLES = [
  {
    ...node,
    entry: "client/extension.ts",
    file: "client/extension.js",
    external: ["vscode"],
    plugins: [plainWrappers],
  },
  {
    ...browser,
    entry: "client/extension.web.ts",
    file: "client/extension.web.js",
    format: "cjs",
    external: ["vscode"],
    plugins: [plainWrappers],
  },
];

const BUNDLES = [
  ...new Set([...SERVER_BUNDLES, ...WORKER_BUNDLES]),
  NOTATION_BUNDLE,
  ...CLIENT_BUNDLES,
  ...pageIn("client/preview/page/main.ts", "client/preview"),
  { ...browser, entry: "client/preview/page/page.css", file: "client/preview.css" },
  ...pageIn("client/pupils/page/main.ts", "client/pupils"),
  { ...browser, entry: "client/pupils/page/pupils.css", file: "client/pupils.css" },
];

const BUILT = [...BUNDLES.map(({ file }) => file), NOTICES];

/**
 * What the extension's package carries of a build, below `dist`. The command line has a package of its own, and the code
 * that a build kept fits one Node only.
 */
export const PACKAGED = BUILT.filter((file) => ![COMMAND_LINE, CORE].includes(file));

/**
 * What esbuild takes to make one of the bundles below a folder.
 *
 * @param {{ entry?: string, file: string, [option: string]: unknown }} bundle without an entry it says itself what to build
 */
export function settingsOf({ entry, file, ...options }, folder = "dist", watch = false) {
  return {
    ...options,
    absWorkingDir: ROOT,
    ...(entry ? { entryPoints: [entry] } : {}),
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
  process.chdir(ROOT);
  const { watch } = parseArgs({ options: { watch: { type: "boolean", default: false } } }).values;
  const started = performance.now();
  try {
    await (watch ? watchAll() : buildInto("dist"));
    if (!watch) removeStale(await keepCode("dist"));
    console.log(`${watch ? "Watching" : "Built"} dist/ in ${Math.round(performance.now() - started)} ms`);
  } catch (error) {
    process.exitCode = 1;
    if (!error.errors) console.error(error); // of its own errors esbuild has said where and why
  }
}

async function watchAll() {
  const builds = await Promise.all(BUNDLES.map((bundle) => context(settingsOf(bundle, "dist", true))));
  await Promise.all(builds.map((build) => build.watch()));
}

/** Makes everything that the packages carry of a build. Returns the packages that are bundled. */
export async function buildInto(folder) {
  const built = await Promise.all(BUNDLES.map((bundle) => build({ ...settingsOf(bundle, folder), metafile: true })));
  chmodSync(resolve(ROOT, folder, COMMAND_LINE), 0o755);
  const packages = bundledPackages(
    built.map(({ metafile }) => metafile),
    ROOT,
  );
  writeFileSync(resolve(ROOT, folder, NOTICES), noticesOf(packages));
  return packages;
}

/**
 * Keeps what V8 made of the core in a folder, of the whole one once that has worked on the samples, so that a start from
 * there need not compile it again. Another version of V8 does without. Returns the files' places below the folder.
 */
export async function keepCode(folder) {
  return [await keepCodeOf(CORE, folder, workOnSamples), await keepCodeOf(HANDLERS, folder)];
}

async function keepCodeOf(file, folder, work = () => {}) {
  const path = resolve(folder, file);
  const text = readFileSync(path, "utf8");
  const id = createHash("sha256").update(text).digest("hex").slice(0, 16);
  writeFileSync(path, `// ${id}\n${text}`);
  const script = new Script(Module.wrap(readFileSync(path, "utf8")), { filename: path });
  const module = { exports: {} };
  script.runInThisContext()(module.exports, createRequire(path), module, path, dirname(path));
  await work(module.exports);
  const kept = file.replace(/js$/, `${id}.code`);
  writeFileSync(join(folder, kept), script.createCachedData());
  return kept;
}

async function workOnSamples({ run }) {
  const io = {
    stdout: { write() {} },
    stderr: { write() {} },
    stdin: async () => ({ ok: true, bytes: new Uint8Array() }),
    cwd: join(ROOT, "samples"),
    today: 20_000,
    isTerminal: false,
    env: {},
  };
  for (const line of [
    ["check"],
    ["history", "quickstart"],
    ["notes", "D melodic minor, thirds"],
    ["format", "--check"],
  ])
    await run(line, io);
}

/** Nothing that an earlier build left is served or packaged. Only now, so that what runs from dist/ never finds it empty. */
function removeStale(kept) {
  const built = new Set([...BUILT, ...kept].map((file) => join("dist", file)));
  for (const entry of readdirSync("dist", { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name);
    if (entry.isFile() && !built.has(path)) rmSync(path);
  }
}
