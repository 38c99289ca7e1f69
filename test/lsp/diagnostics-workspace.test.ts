import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import {
  CancellationTokenSource,
  DidChangeWatchedFilesNotification,
  DidChangeWorkspaceFoldersNotification,
  FileChangeType,
  type PreviousResultId,
  type WorkspaceDiagnosticReportPartialResult,
  WorkspaceDiagnosticRequest,
  type WorkspaceDocumentDiagnosticReport,
} from "vscode-languageserver-protocol/node";
import { temporaryFolder } from "../support/temporary-folder.ts";
import { codesOf, type TestClient, uriOf } from "./client.ts";
import { startServerHere } from "./server-here.ts";

const RIGHT = "2026-03-02 Mon\n  F# major: F# G# A# B C# D# E# F#\n";
const WRONG = "2026-03-03 Tue\n  F# major: F# G# A# B C# D# F F#\n";
const options = { today: "2026-03-08" };

/** What a report says: the file's name, and its codes. */
function shown(reports: readonly WorkspaceDocumentDiagnosticReport[]): string[] {
  return reports.map((report) => {
    const name = report.uri.slice(report.uri.lastIndexOf("/") + 1);
    return `${name}: ${report.kind === "full" ? codesOf(report.items).join(" ") : "unchanged"}`;
  });
}

function request(client: TestClient, previousResultIds: PreviousResultId[] = []) {
  return client.connection.sendRequest(WorkspaceDiagnosticRequest.type, { previousResultIds });
}

/** Asks with a channel for partial results, as vscode-languageclient does; everything that came through it so far. */
function stream(client: TestClient) {
  const received: WorkspaceDocumentDiagnosticReport[] = [];
  const cancel = new CancellationTokenSource();
  client.connection.onProgress(
    WorkspaceDiagnosticRequest.partialResult,
    "stream",
    ({ items }: WorkspaceDiagnosticReportPartialResult) => {
      received.push(...items);
      client.noticed();
    },
  );
  const ended = client.connection.sendRequest(
    WorkspaceDiagnosticRequest.type,
    { previousResultIds: [], partialResultToken: "stream" },
    cancel.token,
  );
  return { received, ended, cancel };
}

function tell(client: TestClient, path: string, type: FileChangeType) {
  return client.connection.sendNotification(DidChangeWatchedFilesNotification.type, {
    changes: [{ uri: uriOf(path), type }],
  });
}

test("every file is told about, opened or not", async () => {
  const folder = temporaryFolder({
    "a.practice": WRONG,
    "b/c.practice": RIGHT,
    ".git/d.practice": WRONG,
    "node_modules/e.practice": WRONG,
  });
  const client = await startServerHere({ folders: [folder], options });
  const { items } = await request(client);
  expect(shown(items).sort()).toEqual(["a.practice: scale-spelling", "c.practice: "]);
});

test("a client that knows everything waits until something changes, and then hears of that alone", async () => {
  const folder = temporaryFolder({ "a.practice": WRONG, "b.practice": RIGHT });
  const client = await startServerHere({ folders: [folder], options });
  const { items } = await request(client);
  const known = items.map(({ uri, resultId }) => ({ uri, value: resultId! }));
  let answered = false;
  const held = request(client, known).finally(() => {
    answered = true;
  });
  await client.pull(uriOf(join(folder, "a.practice")));
  expect(answered).toBe(false);
  writeFileSync(join(folder, "a.practice"), RIGHT.replace("02 Mon", "04 Wed"));
  await tell(client, join(folder, "a.practice"), FileChangeType.Changed);
  expect(shown((await held).items)).toEqual(["a.practice: "]);
});

test("with a channel the request stays open: changes, new files and deleted ones go through it", async () => {
  const folder = temporaryFolder({ "a.practice": WRONG });
  const client = await startServerHere({ folders: [folder], options });
  const { received, ended, cancel } = stream(client);
  await client.until(() => received[0]);
  writeFileSync(join(folder, "b.practice"), WRONG.replace("03 Tue", "04 Wed"));
  await tell(client, join(folder, "b.practice"), FileChangeType.Created);
  await client.until(() => received[1]);
  rmSync(join(folder, "a.practice"));
  await tell(client, join(folder, "a.practice"), FileChangeType.Deleted);
  await client.until(() => received[2]);
  expect(shown(received)).toEqual(["a.practice: scale-spelling", "b.practice: scale-spelling", "a.practice: "]);
  cancel.cancel();
  await expect(ended).rejects.toMatchObject({ code: -32800 });
});

test("an open document counts as it stands in the editor, and as its file again when it is closed", async () => {
  const folder = temporaryFolder({ "a.practice": WRONG });
  const uri = uriOf(join(folder, "a.practice"));
  const client = await startServerHere({ folders: [folder], options });
  await client.open(uri, RIGHT);
  const { received } = stream(client);
  await client.until(() => received[0]);
  expect(received[0]).toMatchObject({ version: 1, items: [] });
  await client.close(uri);
  await client.until(() => received[1]);
  expect(shown(received)).toEqual(["a.practice: ", "a.practice: scale-spelling"]);
});

test("nothing leaks from one journal to another", async () => {
  const day = '2026-03-02 Mon\n  D major, "pairs": D D E E F# F# G G A A B B C# C# D D\n';
  const folder = temporaryFolder({
    "anna/journal.practice": 'pattern "pairs": 1 1\n',
    "anna/a.practice": day,
    "ben/journal.practice": "player Ben\n",
    "ben/b.practice": day,
  });
  const client = await startServerHere({ folders: [folder], options });
  const { items } = await request(client);
  expect(
    shown(items)
      .filter((line) => !line.startsWith("journal"))
      .sort(),
  ).toEqual(["a.practice: ", "b.practice: scale-note"]);
});

test("files that are no text are left out, and the log says why", async () => {
  const folder = temporaryFolder({
    "a.practice": RIGHT,
    "latin.practice": new Uint8Array([0x44, 0xe9, 0x0a]),
    "binary.practice": "\0",
  });
  const client = await startServerHere({ folders: [folder], options });
  expect(shown((await request(client)).items)).toEqual(["a.practice: "]);
  expect(client.log.filter((line) => line.includes("latin.practice: It is not UTF-8 text."))).toHaveLength(1);
  expect(client.log.filter((line) => line.includes("binary.practice: It is a binary file"))).toHaveLength(1);
});

test("a byte order mark and line ends of any kind are read", async () => {
  const folder = temporaryFolder({
    "a.practice": `\uFEFF${WRONG.replaceAll("\n", "\r\n")}`,
    "b.practice": WRONG.replaceAll("\n", "\r").replace("03 Tue", "04 Wed"),
  });
  const client = await startServerHere({ folders: [folder], options });
  const { items } = await request(client);
  expect(shown(items).sort()).toEqual(["a.practice: scale-spelling", "b.practice: scale-spelling"]);
  for (const item of items) expect(item).toMatchObject({ items: [{ range: { start: { line: 1, character: 29 } } }] });
});

test("a folder that is added or removed brings and takes its files", async () => {
  const [one, two] = [temporaryFolder({ "a.practice": WRONG }), temporaryFolder({ "b.practice": WRONG })];
  const client = await startServerHere({ folders: [one], options });
  const { received } = stream(client);
  await client.until(() => received[0]);
  const change = (added: string[], removed: string[]) =>
    client.connection.sendNotification(DidChangeWorkspaceFoldersNotification.type, {
      event: {
        added: added.map((path) => ({ uri: uriOf(path), name: "" })),
        removed: removed.map((path) => ({ uri: uriOf(path), name: "" })),
      },
    });
  await change([two], []);
  await client.until(() => received[1]);
  await change([], [one]);
  await client.until(() => received[2]);
  expect(shown(received)).toEqual(["a.practice: scale-spelling", "b.practice: scale-spelling", "a.practice: "]);
});

test("links that lead round in a circle end", async () => {
  const folder = temporaryFolder({ "a/b.practice": WRONG, "a/up": { linkTo: ".." } });
  mkdirSync(join(folder, "empty"));
  const client = await startServerHere({ folders: [folder], options });
  expect(shown((await request(client)).items)).toEqual(["b.practice: scale-spelling"]);
});
