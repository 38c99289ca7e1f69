import { expect, test } from "vitest";
import { HoverRequest } from "vscode-languageserver-protocol/node";
import type { FilesParams, FilesResult } from "../../shared/protocol.ts";
import { startWorker } from "./worker.ts";

const WRONG = "2026-03-02 Mon\n  F# major: F# G# A# B C# D# F F#\n";
const uri = "sample:/quickstart/week.practice";

test("the worker's server answers with nothing but what a browser has", async () => {
  const client = await startWorker({ options: { today: "2026-03-08", canReadFiles: false } });
  expect(client.initialized.serverInfo).toEqual({ name: "Daystave" });
  await client.open(uri, WRONG);
  expect(await client.codes(uri)).toEqual(["scale-spelling"]);
  await client.edit(uri, "E#", { start: { line: 1, character: 29 }, end: { line: 1, character: 30 } });
  expect(await client.codes(uri)).toEqual([]);
  await client.connection.sendRequest(HoverRequest.type, {
    textDocument: { uri },
    position: { line: 1, character: 4 },
  });
});

test("it reads every file through the client, whatever the scheme", async () => {
  const asked: string[] = [];
  const client = await startWorker({
    folderUris: ["file:///w"],
    options: { today: "2026-03-08", canReadFiles: true },
    prepare: (connection) =>
      connection.onRequest<FilesResult, void>("daystave/files", ({ kind, uri }: FilesParams) => {
        asked.push(`${kind} ${uri}`);
        return kind === "list" ? { uris: [] } : { text: 'pattern "pairs": 1 1\n' };
      }),
  });
  await client.open(
    "file:///w/a.practice",
    '2026-03-02 Mon\n  D major, "pairs": D D E E F# F# G G A A B B C# C# D D\n',
  );
  expect(await client.codes("file:///w/a.practice")).toEqual([]);
  expect(asked[0]).toBe("read file:///w/journal.practice");
});

test("today is the zone's that the client names", async () => {
  const client = await startWorker({ options: { timeZone: "Pacific/Kiritimati" } });
  await client.open(uri, WRONG);
  expect(await client.codes(uri)).toEqual(["scale-spelling"]);
});
