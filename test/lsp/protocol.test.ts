import { spawn } from "node:child_process";
import { describe, expect, onTestFinished, test } from "vitest";
import {
  createProtocolConnection,
  type ProtocolConnection,
  RegistrationRequest,
  StreamMessageReader,
  StreamMessageWriter,
} from "vscode-languageserver-protocol/node";
import { PULLING, startServer } from "./client.ts";
import { bundleServer } from "./server-bundle.ts";

// Codes and when they are due: Language Server Protocol 3.17, “Server lifecycle” and `ErrorCodes`.
const INVALID_REQUEST = -32600;
const METHOD_NOT_FOUND = -32601;
const INVALID_PARAMS = -32602;
const NOT_INITIALIZED = -32002;

const uri = "file:///alone/a.practice";
const WRONG = "2026-03-02 Mon\n  F# major: F# G# A# B C# D# F F#\n";
const INITIALIZE = { processId: null, rootUri: null, capabilities: {} };
const options = { today: "2026-03-08" };

/** A server that nobody has spoken to. */
async function silentServer(): Promise<ProtocolConnection> {
  const server = spawn(process.execPath, [await bundleServer("node"), "--stdio"]);
  onTestFinished(() => void server.kill());
  const connection = createProtocolConnection(
    new StreamMessageReader(server.stdout),
    new StreamMessageWriter(server.stdin),
  );
  connection.listen();
  return connection;
}

function refusal(connection: ProtocolConnection, method: string, params?: unknown): Promise<unknown> {
  const answer = params === undefined ? connection.sendRequest(method) : connection.sendRequest(method, params);
  return answer.then(
    (result) => ({ result }),
    ({ code, message }) => ({ code, message }),
  );
}

describe("the life of a server", () => {
  test("before initialize every request is refused, and notifications are dropped", async () => {
    const connection = await silentServer();
    const position = { line: 0, character: 0 };
    const said = { code: NOT_INITIALIZED, message: "The first message must be initialize." };
    expect(await refusal(connection, "textDocument/hover", { textDocument: { uri }, position })).toEqual(said);
    expect(await refusal(connection, "daystave/unheardOf", {})).toEqual(said);
    expect(await refusal(connection, "shutdown")).toEqual(said);
    await connection.sendNotification("textDocument/didOpen", { textDocument: { uri } });
    expect(await refusal(connection, "initialize", INITIALIZE)).toMatchObject({ result: { serverInfo: {} } });
  });

  test("a second initialize is refused, and changes nothing", async () => {
    const client = await startServer({ options });
    const said = { code: INVALID_REQUEST, message: "initialize can be sent only once." };
    expect(await refusal(client.connection, "initialize", INITIALIZE)).toEqual(said);
    expect(await refusal(client.connection, "initialize", { capabilities: null })).toEqual(said);
    await client.open(uri, WRONG);
    expect(await client.codes(uri)).toEqual(["scale-spelling"]);
  });

  test("one that could not be read may be sent again", async () => {
    const connection = await silentServer();
    expect(await refusal(connection, "initialize", { capabilities: 7 })).toEqual({
      code: INVALID_PARAMS,
      message: "initialize needs capabilities: an object.",
    });
    expect(await refusal(connection, "initialize", INITIALIZE)).toMatchObject({ result: { serverInfo: {} } });
  });

  test("after shutdown every request is refused, and exit still ends it well", async () => {
    const client = await startServer({ options });
    await client.open(uri, WRONG);
    expect(await refusal(client.connection, "shutdown")).toEqual({ result: null });
    const said = { code: INVALID_REQUEST, message: "After shutdown only exit can follow." };
    for (const method of ["textDocument/hover", "daystave/unheardOf", "shutdown", "initialize"])
      expect(await refusal(client.connection, method, INITIALIZE)).toEqual(said);
    const ended = new Promise((resolve) => client.server!.once("exit", resolve));
    await client.connection.sendNotification("exit");
    expect(await ended).toBe(0);
  });

  test("exit without shutdown is status 1", async () => {
    const client = await startServer({ options });
    const ended = new Promise((resolve) => client.server!.once("exit", resolve));
    await client.connection.sendNotification("exit");
    expect(await ended).toBe(1);
  });
});

describe("wrong parameters are named, and there is no stack of the program's", () => {
  const position = { line: 0, character: 0 };
  test.each([
    ["textDocument/hover", {}, "textDocument/hover needs textDocument: an object."],
    ["textDocument/hover", [], "textDocument/hover needs parameters: an object."],
    ["textDocument/hover", null, "textDocument/hover needs parameters: an object."],
    [
      "textDocument/hover",
      { textDocument: { uri: 7 }, position },
      "textDocument/hover needs textDocument.uri: a string.",
    ],
    [
      "textDocument/completion",
      { textDocument: { uri }, position: { line: -1, character: 0 } },
      "textDocument/completion needs position.line: a whole number from 0.",
    ],
    [
      "textDocument/codeAction",
      { textDocument: { uri }, range: { start: position, end: { line: 1.5, character: 0 } }, context: {} },
      "textDocument/codeAction needs range.end.line: a whole number from 0.",
    ],
    ["textDocument/diagnostic", { textDocument: null }, "textDocument/diagnostic needs textDocument: an object."],
    [
      "workspace/diagnostic",
      { previousResultIds: [{ uri, value: 1 }] },
      "workspace/diagnostic needs previousResultIds[0].value: a string.",
    ],
    ["workspace/executeCommand", { command: null }, "workspace/executeCommand needs command: a string."],
    ["completionItem/resolve", "x", "completionItem/resolve needs parameters: an object."],
  ])("%s of %j", async (method, params, message) => {
    const client = await startServer({ options });
    await client.open(uri, WRONG);
    expect(await refusal(client.connection, method, params)).toEqual({ code: INVALID_PARAMS, message });
    expect(await client.codes(uri)).toEqual(["scale-spelling"]);
    expect(client.log).toEqual([]);
  });

  test("of a notification, in one line of the log", async () => {
    const client = await startServer({ options });
    await client.open(uri, WRONG);
    await client.connection.sendNotification("textDocument/didChange", {
      textDocument: { uri, version: 2 },
      contentChanges: [{ range: {}, text: "x" }],
    });
    await client.connection.sendNotification("workspace/didChangeWatchedFiles", { changes: 7 });
    expect(await client.codes(uri)).toEqual(["scale-spelling"]);
    expect(client.log).toEqual([
      "textDocument/didChange needs contentChanges[0].range.start: an object.",
      "workspace/didChangeWatchedFiles needs changes: a list.",
    ]);
  });

  test("the method under which messages are refused is no client's", async () => {
    const client = await startServer({ options });
    expect(await refusal(client.connection, "daystave/refused", { code: 1, message: "x" })).toMatchObject({
      code: METHOD_NOT_FOUND,
    });
  });
});

test.each([
  ["refuses", () => Promise.reject(new Error("no"))],
  ["registers", () => Promise.resolve()],
])(
  "a client that %s what it offered to register dynamically has its answers, and nothing in the log",
  async (_, answer) => {
    const capabilities = structuredClone(PULLING);
    capabilities.workspace!.didChangeConfiguration = { dynamicRegistration: true };
    const asked: string[] = [];
    const client = await startServer({
      options,
      capabilities,
      prepare: (connection) =>
        connection.onRequest(RegistrationRequest.type, ({ registrations }) => {
          asked.push(...registrations.map(({ method }) => method));
          return answer();
        }),
    });
    await client.open(uri, WRONG);
    expect(await client.codes(uri)).toEqual(["scale-spelling"]);
    await expect
      .poll(() => asked.sort())
      .toEqual(["workspace/didChangeConfiguration", "workspace/didChangeWatchedFiles"]);
    expect(await client.codes(uri)).toEqual(["scale-spelling"]);
    expect(client.log).toEqual([]);
  },
);

test("a folder whose address cannot be decoded is one sentence, and a document there is served", async () => {
  const folder = "file:///%E0%A4%A";
  const client = await startServer({ options, folderUris: [folder] });
  await client.open(`${folder}/a.practice`, WRONG);
  expect(await client.codes(`${folder}/a.practice`)).toEqual(["scale-spelling"]);
  expect(client.log).toEqual([`Left out ${folder}: its percent signs cannot be decoded.`]);
});
