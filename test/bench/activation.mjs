import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { CLIENT_BUNDLES, settingsOf } from "../../build.mjs";
import { serveWorkbench } from "../../client/workbench/serve.mjs";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const PROBE = "test/bench/activation-probe.js";
const SAMPLE = "out/bench/week";
/** Milliseconds. */
const LIMIT = 90_000;

/**
 * One activation of the extension, in a window of its own: what it took and its parts, in milliseconds.
 *
 * Counted is all the time from the moment that the editor has our code: reading and running it, `activate` up to the
 * question `initialize`, and what the client does with the server's answer to that until `activate` has ended. With
 * it go the calls that start the worker or the process, and whatever else the editor's extension host or the machine
 * happened to do in between.
 *
 * Not counted are: the way of the code over HTTP in a browser (`fetching`); the wait from the question, which is put
 * together and sent in it, to the answer (`waiting`), in which the worker or the process starts; and the pause
 * between the loading and `activate`, in which the editor loads other extensions.
 */
export async function activation(browser, host) {
  const page = await browser.newPage();
  try {
    return timesOf(await marksOf(page, host));
  } finally {
    await page.close();
  }
}

function timesOf(marks) {
  const from = (start, end) => marks[end] - marks[start];
  const fetching = "willFetchExtensionCode" in marks ? from("willFetchExtensionCode", "didFetchExtensionCode") : 0;
  const reading = fetching ? from("didFetchExtensionCode", "willLoadExtensionCode") : 0;
  const loading = from("willLoadExtensionCode", "didLoadExtensionCode");
  const before = from("willActivateExtension", "willWaitForServer");
  const after = from("didWaitForServer", "didActivateExtension");
  return {
    total: reading + loading + before + after,
    fetching,
    reading,
    loading,
    before,
    after,
    waiting: from("willWaitForServer", "didWaitForServer"),
  };
}

/** Loads a window with the probe in it; what that printed. */
async function marksOf(page, { url, init }) {
  const said = [];
  let end;
  const ended = new Promise((resolve) => {
    end = resolve;
  });
  await page.exposeFunction("codeAutomationLog", (_type, args) => said.push(args.join(" ")));
  await page.exposeFunction("codeAutomationExit", (code) => end(code));
  if (init) await page.addInitScript(init);
  await page.goto(url);
  const limit = setTimeout(() => end("its limit"), LIMIT);
  const code = await ended;
  clearTimeout(limit);
  const line = said.map((each) => /\[bench\] (\{.*\})/.exec(each)?.[1]).find(Boolean);
  if (!line) throw new Error(`The probe ended with ${code}:\n${said.slice(-10).join("\n")}`);
  return JSON.parse(line);
}

/** A week's journal, and a text of another language to open in its stead. */
function writeSample() {
  mkdirSync(join(ROOT, SAMPLE), { recursive: true });
  cpSync(join(ROOT, "samples/quickstart"), join(ROOT, SAMPLE), { recursive: true });
  writeFileSync(join(ROOT, SAMPLE, "other.txt"), "Nothing to do with practice.\n");
}

/** Below the top of the checkout. */
const ALONE = "out/bench/alone";

/**
 * Makes an extension that has the language client alone, beside the same server and with the same manifest. Returns its
 * folder, from the top of the checkout.
 */
export async function extensionAlone() {
  const folder = join(ROOT, ALONE);
  rmSync(folder, { recursive: true, force: true });
  cpSync(join(ROOT, "dist"), join(folder, "dist"), { recursive: true });
  for (const path of ["package.json", "package.nls.json", "syntaxes", "client/icon.png", "client/icon.svg", PROBE])
    cpSync(join(ROOT, path), join(folder, path), { recursive: true });
  const { main, browser } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8"));
  const [node, web] = CLIENT_BUNDLES;
  for (const [bundle, entry, file] of [
    [node, "test/bench/client-alone.node.ts", main],
    [web, "test/bench/client-alone.web.ts", browser],
  ])
    await build(settingsOf({ ...bundle, entry, file }, ALONE));
  return ALONE;
}

/** A browser workbench that starts with the probe and one file open; with another extension than ours in its place. */
export async function browserHost(open, extension) {
  writeSample();
  return serveWorkbench({ port: 0, sample: SAMPLE, open, tests: probeIn(extension), extension });
}

/** An editor starts with tests of the extension alone that it runs. */
function probeIn(extension) {
  return extension === undefined ? PROBE : `${extension}/${PROBE}`;
}

/** The same in an editor that runs extensions in Node; undefined where none is installed. */
export async function nodeHost(open, extension) {
  writeSample();
  const { isInstalled, startNodeHost, allowDevelopmentPayload } = await import(await hostBundle());
  if (!isInstalled("code-server")) return undefined;
  const host = await startNodeHost({ sample: SAMPLE, open, tests: probeIn(extension), extension });
  return { ...host, init: allowDevelopmentPayload };
}

/** The tests' own way to start that editor; what it needs of the build stays where it is, at the same distance. */
async function hostBundle() {
  const outfile = join(ROOT, "out/bench/node-host.mjs");
  await build({
    entryPoints: [join(ROOT, "test/hosts/node-host.ts")],
    outfile,
    bundle: true,
    platform: "node",
    format: "esm",
    external: ["../../build.mjs", "../../client/packaging/vsix.mjs"],
    logLevel: "warning",
  });
  return outfile;
}
