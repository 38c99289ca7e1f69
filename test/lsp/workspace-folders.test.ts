import { join } from "node:path";
import { expect, test } from "vitest";
import {
  CancellationTokenSource,
  DidChangeWorkspaceFoldersNotification,
  type WorkspaceDiagnosticReportPartialResult,
  WorkspaceDiagnosticRequest,
  type WorkspaceDocumentDiagnosticReport,
} from "vscode-languageserver-protocol/node";
import type { ChangedParams, PreviewFigures, PreviewParams, PreviewResult } from "../../shared/preview.ts";
import type { FilesParams, FilesResult } from "../../shared/protocol.ts";
import { temporaryFolder } from "../support/temporary-folder.ts";
import { codesOf, PUSHED, type TestClient, uriOf } from "./client.ts";
import { startServerHere } from "./server-here.ts";

const DECLARED = 'pattern "pairs": 1 1\n';
/** Fine below the declaration; without it the title is unknown. */
const JIG = '2026-03-02 Mon\n  D major, "pairs": D D E E F# F# G G A A B B C# C# D D\n';
/** Milliseconds: a folder is walked before it is told of. */
const SOON = { timeout: 10_000 };
const options = { today: "2026-03-08" };

function changeFolders(client: TestClient, added: readonly string[], removed: readonly string[] = []): Promise<void> {
  const folders = (paths: readonly string[]) => paths.map((path) => ({ uri: uriOf(path), name: path }));
  return client.connection.sendNotification(DidChangeWorkspaceFoldersNotification.type, {
    event: { added: folders(added), removed: folders(removed) },
  });
}

/**
 * What is known of every file by now: its codes by its path below `top`. An empty report without a result id takes a
 * file away.
 */
function watch(client: TestClient, top: string): Map<string, string> {
  const told = new Map<string, string>();
  const take = ({ items }: WorkspaceDiagnosticReportPartialResult) => {
    for (const report of items as WorkspaceDocumentDiagnosticReport[]) {
      const path = report.uri.slice(uriOf(top).length + 1);
      const codes = report.kind === "full" ? codesOf(report.items).join(" ") : "unchanged";
      if (report.resultId === undefined && codes === "") told.delete(path);
      else told.set(path, codes);
    }
  };
  client.connection.onProgress(WorkspaceDiagnosticRequest.partialResult, "watch", take);
  const params = { previousResultIds: [], partialResultToken: "watch" };
  void client.connection
    .sendRequest(WorkspaceDiagnosticRequest.type, params, new CancellationTokenSource().token)
    .catch(() => undefined); // it stays open until the server ends
  return told;
}

function known(told: Map<string, string>): Record<string, string> {
  return Object.fromEntries(told);
}

test("what one folder declares is unknown in the other", async () => {
  const top = temporaryFolder({
    "anna/journal.practice": DECLARED,
    "anna/a.practice": JIG,
    "ben/b.practice": JIG,
  });
  const client = await startServerHere({ folders: [join(top, "anna"), join(top, "ben")], options });
  const told = watch(client, top);
  await expect
    .poll(() => known(told), SOON)
    .toEqual({ "anna/journal.practice": "", "anna/a.practice": "", "ben/b.practice": "scale-note" });
});

test("folders that come and go bring and take their journals, and leave the others as they are", async () => {
  const top = temporaryFolder({
    "anna/journal.practice": DECLARED,
    "anna/a.practice": JIG,
    "ben/b.practice": JIG,
    "cleo/journal.practice": DECLARED,
    "cleo/c.practice": JIG,
  });
  const [anna, ben, cleo] = ["anna", "ben", "cleo"].map((name) => join(top, name));
  const client = await startServerHere({ folders: [anna!], options });
  const told = watch(client, top);
  await changeFolders(client, [ben!, cleo!]);
  const annas = { "anna/journal.practice": "", "anna/a.practice": "" };
  const bens = { "ben/b.practice": "scale-note" };
  const cleos = { "cleo/journal.practice": "", "cleo/c.practice": "" };
  await expect.poll(() => known(told), SOON).toEqual({ ...annas, ...bens, ...cleos });
  await changeFolders(client, [], [anna!, ben!]);
  await expect.poll(() => known(told), SOON).toEqual(cleos);
  await changeFolders(client, [ben!], [cleo!]);
  await expect.poll(() => known(told), SOON).toEqual(bens);
});

test("a change that comes while the server still starts is not missed", async () => {
  const files = ["anna", "ben"].map((name) => `sample:/${name}/a.practice`);
  let startCore = () => {};
  const coreAfter = new Promise<void>((resolve) => {
    startCore = resolve;
  });
  const client = await startServerHere(
    {
      folderUris: ["sample:/anna"],
      options: { ...options, canReadFiles: true },
      prepare: (connection) =>
        connection.onRequest<FilesResult, void>("daystave/files", ({ kind, uri }: FilesParams) =>
          kind === "list" ? { uris: files.filter((each) => each.startsWith(`${uri}/`)) } : { text: JIG },
        ),
    },
    { coreAfter },
  );
  await client.connection.sendNotification(DidChangeWorkspaceFoldersNotification.type, {
    event: { added: [{ uri: "sample:/ben", name: "" }], removed: [{ uri: "sample:/anna", name: "" }] },
  });
  setTimeout(startCore, 50); // by then the change has been read
  const { items } = await client.connection.sendRequest(WorkspaceDiagnosticRequest.type, { previousResultIds: [] });
  expect(items.map(({ uri }) => uri)).toEqual(["sample:/ben/a.practice"]);
});

test("a window without any folder takes one that is added", async () => {
  const top = temporaryFolder({ "anna/a.practice": JIG });
  const client = await startServerHere({ options });
  await changeFolders(client, [join(top, "anna")]);
  const told = watch(client, top);
  await expect.poll(() => known(told), SOON).toEqual({ "anna/a.practice": "scale-note" });
});

test("a folder that is told twice, or removed though nobody told of it, does no harm", async () => {
  const top = temporaryFolder({ "anna/a.practice": JIG, "ben/b.practice": JIG });
  const [anna, ben] = ["anna", "ben"].map((name) => join(top, name));
  const client = await startServerHere({ folders: [anna!], options });
  await changeFolders(client, [`${anna}/`, ben!]);
  await changeFolders(client, [ben!], [join(top, "cleo")]);
  const told = watch(client, top);
  const both = { "anna/a.practice": "scale-note", "ben/b.practice": "scale-note" };
  await expect.poll(() => known(told), SOON).toEqual(both);
  await changeFolders(client, [], [ben!]);
  await expect.poll(() => known(told), SOON).toEqual({ "anna/a.practice": "scale-note" });
});

test("an inner folder is a journal of its own while it is a workspace folder, and else part of the outer one", async () => {
  const top = temporaryFolder({ "all/journal.practice": DECLARED, "all/duets/d.practice": JIG });
  const [outer, inner] = [join(top, "all"), join(top, "all/duets")];
  const client = await startServerHere({ folders: [outer, inner], options });
  const told = watch(client, top);
  const apart = { "all/journal.practice": "", "all/duets/d.practice": "scale-note" };
  const together = { "all/journal.practice": "", "all/duets/d.practice": "" };
  await expect.poll(() => known(told), SOON).toEqual(apart);
  await changeFolders(client, [], [inner]);
  await expect.poll(() => known(told), SOON).toEqual(together);
  await changeFolders(client, [inner]);
  await expect.poll(() => known(told), SOON).toEqual(apart);
  await changeFolders(client, [], [outer]);
  await expect.poll(() => known(told), SOON).toEqual({ "all/duets/d.practice": "scale-note" });
});

test("a hidden folder is read while it is a workspace folder itself, and not as part of another", async () => {
  const top = temporaryFolder({ "all/a.practice": JIG, "all/.drafts/d.practice": JIG });
  const [outer, hidden] = [join(top, "all"), join(top, "all/.drafts")];
  const client = await startServerHere({ folders: [outer, hidden], options });
  const told = watch(client, top);
  await expect
    .poll(() => known(told), SOON)
    .toEqual({ "all/a.practice": "scale-note", "all/.drafts/d.practice": "scale-note" });
  await changeFolders(client, [], [hidden]);
  await expect.poll(() => known(told), SOON).toEqual({ "all/a.practice": "scale-note" });
});

test("an open document stands alone when its folder goes, and among its journal's when it comes again", async () => {
  const top = temporaryFolder({ "anna/journal.practice": DECLARED, "anna/a.practice": JIG });
  const [folder, uri] = [join(top, "anna"), uriOf(join(top, "anna/a.practice"))];
  const client = await startServerHere({ folders: [folder], options });
  await client.open(uri, JIG);
  expect(await client.codes(uri)).toEqual([]);
  await changeFolders(client, [], [folder]);
  await expect.poll(() => client.codes(uri), SOON).toEqual(["scale-note"]);
  await changeFolders(client, [folder]);
  await expect.poll(() => client.codes(uri), SOON).toEqual([]);
});

test("a client that cannot pull is told by itself when a folder comes", async () => {
  const top = temporaryFolder({ "anna/journal.practice": DECLARED, "anna/a.practice": JIG });
  const uri = uriOf(join(top, "anna/a.practice"));
  const client = await startServerHere({ capabilities: { ...PUSHED, workspace: { workspaceFolders: true } }, options });
  const latest = () => client.pushed.findLast((each) => each.uri === uri)?.diagnostics;
  await client.open(uri, JIG);
  await expect.poll(() => codesOf(latest() ?? []), SOON).toEqual(["scale-note"]);
  await changeFolders(client, [join(top, "anna")]);
  await expect.poll(latest, SOON).toEqual([]);
});

test("the preview follows: its journal is the folder's, then the file alone, then the folder's again", async () => {
  const top = temporaryFolder({ "anna/a.practice": JIG, "anna/b.practice": JIG.replace("02 Mon", "03 Tue") });
  const [folder, uri] = [join(top, "anna"), uriOf(join(top, "anna/a.practice"))];
  const client = await startServerHere({ folders: [folder], options });
  const changed: string[] = [];
  client.connection.onNotification("daystave/changed", ({ journal }: ChangedParams) => void changed.push(journal));
  await client.open(uri, JIG);
  const ask = (version?: number): Promise<PreviewResult> => {
    const params: PreviewParams = { uri, ...(version === undefined ? {} : { version }) };
    return client.connection.sendRequest("daystave/preview", params);
  };
  // A panel asks with the version that it shows: the new journal's must not happen to be the same.
  let shown: PreviewFigures | undefined;
  const follow = async (journal: string) => {
    await expect
      .poll(async () => {
        const answer = await ask(shown?.version);
        if (!("unchanged" in answer)) shown = answer;
        return shown?.journal;
      }, SOON)
      .toBe(journal);
  };
  await follow(uriOf(folder));
  await changeFolders(client, [], [folder]);
  await follow(uri);
  await expect.poll(() => changed, SOON).toContain(uri);
  await changeFolders(client, [folder]);
  await follow(uriOf(folder));
  await expect.poll(() => changed, SOON).toContain(uriOf(folder));
});
