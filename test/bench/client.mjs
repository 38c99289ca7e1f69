import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { createMessageConnection, StreamMessageReader, StreamMessageWriter } from "vscode-jsonrpc/node";

const URI = "file:///bench/ten-years.practice";
const CAPABILITIES = { textDocument: { diagnostic: {}, completion: {} }, workspace: {} };

/** A language server that was just started, and a client of it that measures. All times are in milliseconds. */
export class MeasuringClient {
  #version = 1;
  #resultId;

  static async start(bundle) {
    const client = new MeasuringClient();
    const began = performance.now();
    client.process = spawn(process.execPath, [bundle, "--stdio"], { stdio: ["pipe", "pipe", "inherit"] });
    client.connection = createMessageConnection(
      new StreamMessageReader(client.process.stdout),
      new StreamMessageWriter(client.process.stdin),
    );
    client.connection.listen();
    await client.connection.sendRequest("initialize", {
      processId: process.pid,
      rootUri: null,
      capabilities: CAPABILITIES,
      initializationOptions: { today: "2026-11-25" },
    });
    client.startTime = performance.now() - began;
    client.connection.sendNotification("initialized", {});
    return client;
  }

  /** Opens a text; the time until its diagnostics are there, and how many they are. */
  async open(text) {
    const began = performance.now();
    this.connection.sendNotification("textDocument/didOpen", {
      textDocument: { uri: URI, languageId: "practice-journal", version: this.#version, text },
    });
    const count = (await this.#diagnostics()).length;
    return { time: performance.now() - began, count };
  }

  /** Types a character at a place; the time until the diagnostics are there. */
  async type(character, position) {
    const began = performance.now();
    this.#edit(character, position);
    await this.#diagnostics();
    return performance.now() - began;
  }

  /** Types a character and asks for completions behind it; the time until they are there. */
  async complete(character, position) {
    const began = performance.now();
    this.#edit(character, position);
    const after = { line: position.line, character: position.character + character.length };
    await this.connection.sendRequest("textDocument/completion", { textDocument: { uri: URI }, position: after });
    return performance.now() - began;
  }

  /** Hovers over a place; the time until the answer is there. */
  async hover(position) {
    const began = performance.now();
    await this.connection.sendRequest("textDocument/hover", { textDocument: { uri: URI }, position });
    return performance.now() - began;
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

  #edit(text, start) {
    this.connection.sendNotification("textDocument/didChange", {
      textDocument: { uri: URI, version: ++this.#version },
      contentChanges: [{ range: { start, end: start }, text }],
    });
  }

  /** Pulls as editors do: naming the last answer, so that one that says the same need not be sent again. */
  async #diagnostics() {
    const params = { textDocument: { uri: URI }, previousResultId: this.#resultId };
    const report = await this.connection.sendRequest("textDocument/diagnostic", params);
    this.#resultId = report.resultId;
    return report.items ?? [];
  }
}
