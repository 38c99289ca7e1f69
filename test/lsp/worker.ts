import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { Worker } from "node:worker_threads";
import { onTestFinished } from "vitest";
import {
  AbstractMessageReader,
  AbstractMessageWriter,
  type DataCallback,
  type Disposable,
  type Message,
} from "vscode-languageserver-protocol/node";
import { type StartOptions, TestClient } from "./client.ts";
import { bundleServer } from "./server-bundle.ts";

/**
 * Runs the bundle in a thread of its own with nothing but what a web worker has too: a script that asks for `process`,
 * `require` or `Buffer` fails. Not a browser: the hosts' tests have that.
 */
const THREAD = `
  const { parentPort, workerData } = require("node:worker_threads");
  const self = new EventTarget();
  self.postMessage = (message) => parentPort.postMessage(message);
  parentPort.on("message", (data) => self.onmessage({ data }));
  const web = { setTimeout, clearTimeout, setInterval, clearInterval, queueMicrotask, performance, TextDecoder, TextEncoder, URL, AbortController, console, crypto, btoa };
  const vm = require("node:vm");
  const scope = vm.createContext({ ...web, self, postMessage: self.postMessage });
  scope.importScripts = (address) => vm.runInContext(workerData.bundles[address], scope, { filename: address });
  vm.runInContext(workerData.main, scope, { filename: "main.browser.js" });
`;

let bundle: Promise<string> | undefined;

/** The worker's server, spoken to by messages. It ends with the test. */
export async function startWorker(options: StartOptions = {}): Promise<TestClient> {
  bundle ??= bundleServer("worker");
  const main = await bundle;
  const bundles = Object.fromEntries(
    ["handlers.js", "texts.de.js"].map((file) => [`worker:/${file}`, readFileSync(join(dirname(main), file), "utf8")]),
  );
  const workerData = { main: readFileSync(main, "utf8"), bundles };
  const worker = new Worker(THREAD, { eval: true, workerData });
  onTestFinished(async () => void (await worker.terminate()));
  const client = new TestClient(new ThreadReader(worker), new ThreadWriter(worker));
  const failed = new Promise<never>((_, reject) => worker.once("error", reject));
  await Promise.race([
    client.initialize({ ...options, options: { bundles: "worker:/", ...(options.options as object) } }),
    failed,
  ]);
  return client;
}

class ThreadReader extends AbstractMessageReader {
  constructor(private readonly worker: Worker) {
    super();
  }

  listen(callback: DataCallback): Disposable {
    this.worker.on("message", callback);
    return { dispose: () => void this.worker.off("message", callback) };
  }
}

class ThreadWriter extends AbstractMessageWriter {
  constructor(private readonly worker: Worker) {
    super();
  }

  async write(message: Message): Promise<void> {
    this.worker.postMessage(message);
  }

  end(): void {}
}
