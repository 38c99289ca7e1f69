import { fork } from "node:child_process";
import { expect, onTestFinished, test } from "vitest";
import { HoverRequest, IPCMessageReader, IPCMessageWriter, ShutdownRequest } from "vscode-languageserver-protocol/node";
import { PULLING, startServer, TestClient } from "./client.ts";
import { bundleServer } from "./server-bundle.ts";
import { startServerHere } from "./server-here.ts";

const uri = "file:///alone/a.practice";
const WRONG = "2026-03-02 Mon\n  F# major: F# G# A# B C# D# F F#\n";
const options = { today: "2026-03-08" };

test("the server says who it is, counts in UTF-16, and ends when told to", async () => {
  const client = await startServer();
  expect(client.initialized.serverInfo).toEqual({ name: "Daystave" });
  expect(client.initialized.capabilities).toMatchObject({
    positionEncoding: "utf-16",
    textDocumentSync: { openClose: true, change: 2 },
  });
  expect(await client.stop()).toBe(0);
});

test("over the channel of a forked process it answers as well", async () => {
  const server = fork(await bundleServer("node"), ["--node-ipc"]);
  onTestFinished(() => void server.kill());
  const client = new TestClient(new IPCMessageReader(server), new IPCMessageWriter(server), server);
  await client.initialize({ options });
  await client.open(uri, WRONG);
  expect(await client.codes(uri)).toEqual(["scale-spelling"]);
});

test("columns count UTF-16 units before the place, so two for a clef", async () => {
  const client = await startServer({ options });
  await client.open(uri, "2026-03-02 Mon\n  F# major, focus 𝄞 𝄞: F# G# A# B C# D# F F#\n");
  const column = "  F# major, focus 𝄞 𝄞: F# G# A# B C# D# ".length;
  expect(await client.pull(uri)).toMatchObject({ items: [{ range: { start: { line: 1, character: column } } }] });
});

test("what goes wrong inside is logged with the request's name, and no stack goes to the client's user", async () => {
  const hover = () => {
    throw new TypeError("a bug");
  };
  const client = await startServerHere({ options }, { handlers: { hover } });
  await client.open(uri, WRONG);
  const params = { textDocument: { uri }, position: { line: 0, character: 0 } };
  const failure = await client.connection.sendRequest(HoverRequest.type, params).catch((error: Error) => error);
  expect((failure as Error).message).toBe("Daystave could not answer textDocument/hover. Its log says why.");
  const line = await client.until(() => client.log.find((each) => each.startsWith("textDocument/hover failed:")));
  expect(line).toContain("at ");
  expect(await client.codes(uri)).toEqual(["scale-spelling"]);
});

test("an edit that makes no sense does not end the server", async () => {
  const client = await startServer({ options });
  await client.open(uri, WRONG);
  await client.connection.sendNotification("textDocument/didChange", {
    textDocument: { uri, version: 2 },
    contentChanges: [{ range: {}, text: "x" }],
  });
  await client.connection.sendNotification("textDocument/didChange", {
    textDocument: { uri: "file:///never/opened.practice", version: 2 },
    contentChanges: [{ text: "x" }],
  });
  await client.connection.sendNotification("textDocument/didClose", {
    textDocument: { uri: "file:///never/opened.practice" },
  });
  await client.edit(uri, WRONG);
  expect(await client.codes(uri)).toEqual(["scale-spelling"]);
});

test("a method that nobody knows is refused", async () => {
  const client = await startServer();
  await expect(client.connection.sendRequest("daystave/unheardOf", {})).rejects.toMatchObject({ code: -32601 });
});

test("two spellings of one address are one document", async () => {
  const client = await startServer({ options });
  await client.open("file:///alone/%C3%A9tude%20one.practice", WRONG);
  expect(await client.codes("file:///alone/étude one.practice")).toEqual(["scale-spelling"]);
});

test("an editor that offers nothing is served all the same", async () => {
  const client = await startServer({ capabilities: {} });
  await client.open(uri, WRONG);
  expect(await client.until(() => client.pushed[0])).toMatchObject({ uri });
  await client.connection.sendRequest(ShutdownRequest.type);
});

test("many requests at once are all answered", async () => {
  const client = await startServer({ options, capabilities: PULLING });
  await client.open(uri, WRONG);
  const position = { line: 1, character: 4 };
  const answers = await Promise.all(
    Array.from({ length: 200 }, () =>
      client.connection.sendRequest(HoverRequest.type, { textDocument: { uri }, position }),
    ),
  );
  expect(answers).toHaveLength(200);
});
