import { rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import {
  CancellationTokenSource,
  DiagnosticRefreshRequest,
  DidChangeWatchedFilesNotification,
  DocumentDiagnosticRequest,
  FileChangeType,
  LSPErrorCodes,
} from "vscode-languageserver-protocol/node";
import { temporaryFolder } from "../support/temporary-folder.ts";
import { PULLING, uriOf } from "./client.ts";
import { startServerHere } from "./server-here.ts";

const RIGHT = "2026-03-02 Mon\n  F# major: F# G# A# B C# D# E# F#\n";
const WRONG = "2026-03-02 Mon\n  F# major: F# G# A# B C# D# F F#\n";
const TODAY = { today: "2026-03-08" };
const ALONE = "file:///alone/a.practice";

test("a client that pulls gets a report, and is pushed nothing", async () => {
  const client = await startServerHere({ options: TODAY });
  expect(client.initialized.capabilities.diagnosticProvider).toEqual({
    identifier: "daystave",
    interFileDependencies: true,
    workspaceDiagnostics: true,
  });
  await client.open(ALONE, WRONG);
  const report = await client.pull(ALONE);
  expect(report).toMatchObject({
    kind: "full",
    items: [
      {
        code: "scale-spelling",
        severity: 2,
        source: "daystave",
        range: { start: { line: 1, character: 29 }, end: { line: 1, character: 30 } },
      },
    ],
  });
  await client.edit(ALONE, RIGHT);
  expect(await client.codes(ALONE)).toEqual([]);
  expect(client.pushed).toEqual([]);
});

test("a result that still holds is not sent again", async () => {
  const client = await startServerHere({ options: TODAY });
  await client.open(ALONE, WRONG);
  const { resultId } = (await client.pull(ALONE)) as { resultId: string };
  expect(await client.pull(ALONE, resultId)).toEqual({ kind: "unchanged", resultId });
  await client.edit(ALONE, RIGHT);
  expect(await client.pull(ALONE, resultId)).toMatchObject({ kind: "full", items: [] });
});

test("an edit by ranges arrives as the text it makes", async () => {
  const client = await startServerHere({ options: TODAY });
  await client.open(ALONE, WRONG);
  await client.edit(ALONE, "E#", { start: { line: 1, character: 29 }, end: { line: 1, character: 30 } });
  expect(await client.codes(ALONE)).toEqual([]);
});

test("an edit that is sent before the answer to an earlier one is in the answer", async () => {
  const client = await startServerHere({ options: TODAY });
  const opened = client.open(ALONE, WRONG);
  const first = client.codes(ALONE);
  const edited = client.edit(ALONE, RIGHT);
  const second = client.codes(ALONE);
  await Promise.all([opened, edited]);
  expect(await second).toEqual([]);
  expect([[], ["scale-spelling"]]).toContainEqual(await first);
});

test("a document that nobody knows has nothing said about it", async () => {
  const client = await startServerHere();
  expect(await client.pull("file:///never/opened.practice")).toEqual({ kind: "full", items: [] });
});

test("the declarations beside a file are read before the first answer", async () => {
  const folder = temporaryFolder({ "journal.practice": 'pattern "pairs": 1 1\n', "a.practice": "" });
  const uri = uriOf(join(folder, "a.practice"));
  const client = await startServerHere({ folders: [folder], options: TODAY });
  await client.open(uri, '2026-03-02 Mon\n  D major, "pairs": D D E E F# F# G G A A B B C# C# D D\n');
  expect(await client.codes(uri)).toEqual([]);
});

test("when another file changes what was said, the client is asked to pull again", async () => {
  const folder = temporaryFolder({ "journal.practice": "player Noor\n", "a.practice": "" });
  const [journal, uri] = [join(folder, "journal.practice"), uriOf(join(folder, "a.practice"))];
  let refreshes = 0;
  const client = await startServerHere({
    folders: [folder],
    options: TODAY,
    prepare: (connection) => connection.onRequest(DiagnosticRefreshRequest.type, () => void refreshes++),
  });
  client.connection.onRequest(DiagnosticRefreshRequest.type, () => {
    refreshes++;
    client.noticed();
  });
  await client.open(uri, '2026-03-02 Mon\n  D major, "pairs": D D E E F# F# G G A A B B C# C# D D\n');
  expect(await client.codes(uri)).toEqual(["scale-note"]);
  writeFileSync(journal, 'pattern "pairs": 1 1\n');
  await client.connection.sendNotification(DidChangeWatchedFilesNotification.type, {
    changes: [{ uri: uriOf(journal), type: FileChangeType.Changed }],
  });
  await client.until(() => refreshes || undefined);
  expect(await client.codes(uri)).toEqual([]);
  rmSync(journal);
  await client.connection.sendNotification(DidChangeWatchedFilesNotification.type, {
    changes: [{ uri: uriOf(journal), type: FileChangeType.Deleted }],
  });
  await client.until(() => (refreshes > 1 ? true : undefined));
  expect(await client.codes(uri)).toEqual(["scale-note"]);
});

test("without anybody telling of changes, files are looked at again when a document is opened", async () => {
  const folder = temporaryFolder({ "journal.practice": "player Noor\n" });
  const uri = uriOf(join(folder, "a.practice"));
  const { didChangeWatchedFiles: _, ...workspace } = PULLING.workspace!;
  let refreshes = 0;
  const client = await startServerHere({ folders: [folder], options: TODAY, capabilities: { ...PULLING, workspace } });
  client.connection.onRequest(DiagnosticRefreshRequest.type, () => {
    refreshes++;
    client.noticed();
  });
  await client.open(uri, '2026-03-02 Mon\n  D major, "pairs": D D E E F# F# G G A A B B C# C# D D\n');
  expect(await client.codes(uri)).toEqual(["scale-note"]);
  writeFileSync(join(folder, "journal.practice"), 'pattern "pairs": 1 1\n');
  await client.open(ALONE, RIGHT);
  await client.until(() => refreshes || undefined);
  expect(await client.codes(uri)).toEqual([]);
});

test("a request that is cancelled in time is answered as cancelled", async () => {
  const client = await startServerHere({ options: TODAY });
  await client.open(ALONE, WRONG);
  const cancel = new CancellationTokenSource();
  const first = client.pull(ALONE);
  const second = client.connection.sendRequest(
    DocumentDiagnosticRequest.type,
    { textDocument: { uri: ALONE } },
    cancel.token,
  );
  cancel.cancel();
  await expect(second).rejects.toMatchObject({ code: LSPErrorCodes.RequestCancelled });
  expect((await first).kind).toBe("full");
});

test("a document that is closed and opened again is what it is opened as", async () => {
  const client = await startServerHere({ options: TODAY });
  await client.open(ALONE, WRONG);
  expect(await client.codes(ALONE)).toEqual(["scale-spelling"]);
  await client.close(ALONE);
  expect(await client.codes(ALONE)).toEqual([]);
  await client.open(ALONE, RIGHT);
  expect(await client.codes(ALONE)).toEqual([]);
  await client.edit(ALONE, WRONG);
  expect(await client.codes(ALONE)).toEqual(["scale-spelling"]);
});
