import { spawn } from "node:child_process";
import { once } from "node:events";
import { readFileSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import { createMessageConnection, StreamMessageReader, StreamMessageWriter } from "vscode-jsonrpc/node";

const URI = "file:///bench/ten-years.practice";
const PROBE = fileURLToPath(new URL("process-probe.js", import.meta.url));
const CAPABILITIES = {
  textDocument: { diagnostic: {}, completion: {} },
  workspace: { workspaceFolders: true, diagnostics: { refreshSupport: true } },
};
/**
 * A server rests when, of four looks in a row, it has used less than this between each and the next; in milliseconds.
 */
const IDLE = 30;
const LOOK = 200;
const LOOKS = 4;

/** A language server that was just started, and a client of it that measures. All times are in milliseconds. */
export class MeasuringClient {
  #version = 1;
  #resultId;
  #uri = URI;

  /**
   * @param {string} bundle
   * @param {{ folder?: string, probe?: "loop" | "heap" }} options the folder that is the workspace; what the process
   *   is to tell
   */
  static async start(bundle, { folder, probe } = {}) {
    const client = new MeasuringClient();
    const began = performance.now();
    client.process = spawn(process.execPath, [...flags(probe), bundle, "--stdio"], {
      stdio: ["pipe", "pipe", "inherit", ...(probe ? ["ipc"] : [])],
      env: { ...process.env, ...(probe === "loop" ? { DAYSTAVE_BENCH_LOOP: "1" } : {}) },
    });
    client.connection = createMessageConnection(
      new StreamMessageReader(client.process.stdout),
      new StreamMessageWriter(client.process.stdin),
    );
    client.connection.onRequest("workspace/diagnostic/refresh", () => null);
    client.connection.listen();
    await client.connection.sendRequest("initialize", {
      processId: process.pid,
      rootUri: null,
      workspaceFolders: folder ? [{ uri: pathToFileURL(folder).href, name: "bench" }] : null,
      capabilities: CAPABILITIES,
      initializationOptions: { today: "2026-11-25" },
    });
    client.startTime = performance.now() - began;
    client.connection.sendNotification("initialized", {});
    return client;
  }

  /** Opens a text; the time until its diagnostics are there, and how many they are. */
  async open(text, uri = URI) {
    this.#uri = uri;
    const began = performance.now();
    this.connection.sendNotification("textDocument/didOpen", {
      textDocument: { uri, languageId: "practice-journal", version: this.#version, text },
    });
    const count = (await this.#diagnostics()).length;
    return { time: performance.now() - began, count };
  }

  /** Types a character at a place; the time until the diagnostics are there. */
  async type(character, position) {
    return this.replace(character, position, position);
  }

  /** Puts a text in the place of another; the time until the diagnostics are there. */
  async replace(text, start, end) {
    const began = performance.now();
    this.#edit(text, start, end);
    await this.#diagnostics();
    return performance.now() - began;
  }

  /** Types a character and asks for completions behind it; the time until they are there. */
  async complete(character, position) {
    const began = performance.now();
    this.#edit(character, position, position);
    await this.completions({ line: position.line, character: position.character + character.length });
    return performance.now() - began;
  }

  async completions(position) {
    await this.connection.sendRequest("textDocument/completion", { textDocument: { uri: this.#uri }, position });
  }

  /** Hovers over a place; the time until the answer is there. */
  async hover(position) {
    const began = performance.now();
    await this.connection.sendRequest("textDocument/hover", { textDocument: { uri: this.#uri }, position });
    return performance.now() - began;
  }

  /** Asks for the diagnostics of every file of the workspace; how many files were told of. */
  async workspaceDiagnostics() {
    const { items } = await this.connection.sendRequest("workspace/diagnostic", { previousResultIds: [] });
    return items.length;
  }

  /** Until the server has done what it does unasked, such as reading the history. */
  async rested() {
    let quiet = 0;
    for (let before = this.processorTime(); quiet < LOOKS; ) {
      await new Promise((resolve) => setTimeout(resolve, LOOK));
      const now = this.processorTime();
      quiet = now - before < IDLE ? quiet + 1 : 0;
      before = now;
    }
  }

  /** What the probe in the process tells: `blocked`, `heap` or `processorTime`. */
  async tell(what) {
    const answer = once(this.process, "message");
    this.process.send(what);
    return (await answer)[0];
  }

  /** What the process has used of the processor so far, to ten milliseconds: from Linux; elsewhere always the same. */
  processorTime() {
    try {
      const fields = readFileSync(`/proc/${this.process.pid}/stat`, "utf8").split(") ")[1].split(" ");
      return (Number(fields[11]) + Number(fields[12])) * 10;
    } catch {
      return 0;
    }
  }

  /** The most memory that the process has held so far, in MiB: VmHWM of Linux; undefined elsewhere. */
  peakMemory() {
    try {
      const status = readFileSync(`/proc/${this.process.pid}/status`, "utf8");
      return Number(/VmHWM:\s+(\d+) kB/.exec(status)?.[1]) / 1024;
    } catch {
      return undefined;
    }
  }

  async stop() {
    await this.connection.sendRequest("shutdown");
    this.connection.sendNotification("exit");
    await new Promise((resolve) => this.process.once("exit", resolve));
    this.connection.dispose();
  }

  #edit(text, start, end) {
    this.connection.sendNotification("textDocument/didChange", {
      textDocument: { uri: this.#uri, version: ++this.#version },
      contentChanges: [{ range: { start, end }, text }],
    });
  }

  /** Pulls as editors do: naming the last answer, so that one that says the same need not be sent again. */
  async #diagnostics() {
    const params = { textDocument: { uri: this.#uri }, previousResultId: this.#resultId };
    const report = await this.connection.sendRequest("textDocument/diagnostic", params);
    this.#resultId = report.resultId;
    return report.items ?? [];
  }
}

function flags(probe) {
  return [...(probe === "heap" ? ["--expose-gc"] : []), ...(probe ? ["--require", PROBE] : [])];
}
