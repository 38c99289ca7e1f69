import { expect, test } from "vitest";
import {
  DidChangeWatchedFilesNotification,
  FileChangeType,
  type ProtocolConnection,
  WorkspaceDiagnosticRequest,
} from "vscode-languageserver-protocol/node";
import type { FilesParams, FilesResult } from "../../shared/protocol.ts";
import { codesOf } from "./client.ts";
import { startServerHere } from "./server-here.ts";

const DAY = '2026-03-02 Mon\n  D major, "pairs": D D E E F# F# G G A A B B C# C# D D\n';
const DECLARED = 'pattern "pairs": 1 1\n';
const ROOT = "sample:/quickstart";
const week = `${ROOT}/week.practice`;

/** A client with a file system of its own, as an editor in a browser has. Keeps what it was asked. */
function holding(files: Map<string, string>, asked: string[] = []) {
  return (connection: ProtocolConnection) =>
    connection.onRequest<FilesResult, void>("daystave/files", ({ kind, uri }: FilesParams) => {
      asked.push(`${kind} ${uri}`);
      return kind === "list" ? { uris: [...files.keys()].sort() } : { text: files.get(uri) ?? null };
    });
}

async function started(prepare: (connection: ProtocolConnection) => unknown, canReadFiles = true) {
  return startServerHere({
    folderUris: [ROOT],
    options: { today: "2026-03-08", canReadFiles },
    prepare: (connection) => void prepare(connection),
  });
}

test("files that only the client can reach are asked of it", async () => {
  const asked: string[] = [];
  const client = await started(
    holding(
      new Map([
        [`${ROOT}/journal.practice`, DECLARED],
        [week, "never read, as it is open"],
      ]),
      asked,
    ),
  );
  await client.open(week, DAY);
  expect(await client.codes(week)).toEqual([]);
  await client.connection.sendRequest(WorkspaceDiagnosticRequest.type, { previousResultIds: [] });
  expect(asked).toContain(`list ${ROOT}`);
  expect(asked).not.toContain(`read ${week}`);
});

test("the client tells when they change", async () => {
  const files = new Map([[week, DAY]]);
  const client = await started(holding(files));
  const first = await client.connection.sendRequest(WorkspaceDiagnosticRequest.type, { previousResultIds: [] });
  const known = first.items.map(({ uri, resultId }) => ({ uri, value: resultId! }));
  files.set(`${ROOT}/journal.practice`, DECLARED);
  await client.connection.sendNotification(DidChangeWatchedFilesNotification.type, {
    changes: [{ uri: `${ROOT}/journal.practice`, type: FileChangeType.Created }],
  });
  const { items } = await client.connection.sendRequest(WorkspaceDiagnosticRequest.type, { previousResultIds: known });
  expect(items.find(({ uri }) => uri === week)).toMatchObject({ kind: "full", items: [] });
});

test.each([
  ["nothing", () => null],
  ["things of another shape", () => ({ uris: "all", text: 7 })],
  ["an error", () => Promise.reject(new Error("no"))],
])("a client that answers with %s is served from what it opens", async (_, answer) => {
  const client = await started((connection) => connection.onRequest("daystave/files", answer));
  await client.open(week, DAY);
  expect(await client.codes(week)).toEqual(["scale-note"]);
});

test("a client that does not answer such questions is asked none", async () => {
  const asked: string[] = [];
  const client = await started(holding(new Map(), asked), false);
  await client.open(week, DAY);
  const report = await client.pull(week);
  expect(report.kind === "full" && codesOf(report.items)).toEqual(["scale-note"]);
  expect(asked).toEqual([]);
});
