import { join } from "node:path";
import { expect, test } from "vitest";
import {
  CancellationTokenSource,
  DefinitionRequest,
  DocumentHighlightRequest,
  ErrorCodes,
  HoverRequest,
  type Location,
  LSPErrorCodes,
  PrepareRenameRequest,
  ReferencesRequest,
  RenameRequest,
  type TextDocumentEdit,
  type WorkspaceEdit,
  WorkspaceSymbolRequest,
} from "vscode-languageserver-protocol/node";
import { temporaryFolder } from "../support/temporary-folder.ts";
import { PULLING, type TestClient, uriOf } from "./client.ts";
import { startServerHere } from "./server-here.ts";

// What the features find is tested beside them; here, that it arrives as the protocol wants it. Invented journals.

const HEAD = 'piece "Courante in F" as Courante: F major\n';
const OTHER = "2026-03-02\nCourante in F, at 60 clean\n";
const WEEK = "2026-03-09\n  Courante, slow\n  C major, at 60\n";
const ON_TITLE = { line: 1, character: 4 };

interface Opened {
  readonly client: TestClient;
  readonly head: string;
  readonly other: string;
  readonly week: string;
}

/** A folder of three files, of which one is open. */
async function opened(capabilities = PULLING): Promise<Opened> {
  const folder = temporaryFolder({ "journal.practice": HEAD, "a.practice": OTHER, "week.practice": WEEK });
  const client = await startServerHere({ folders: [folder], capabilities, options: { today: "2026-03-10" } });
  const [head, other, week] = ["journal.practice", "a.practice", "week.practice"].map((name) =>
    uriOf(join(folder, name)),
  );
  await client.open(week!, WEEK);
  return { client, head: head!, other: other!, week: week! };
}

function shown(locations: readonly Location[]): string[] {
  return locations.map(({ uri, range: { start, end } }) => {
    expect(end.line).toBe(start.line);
    return `${uri.split("/").at(-1)} ${start.line}:${start.character}-${end.character}`;
  });
}

test("a definition is in whichever file has it", async () => {
  const { client, week } = await opened();
  const found = await client.connection.sendRequest(DefinitionRequest.type, {
    textDocument: { uri: week },
    position: ON_TITLE,
  });
  expect(shown(found as Location[])).toEqual(["journal.practice 0:25-33"]);
});

test("references are of the whole journal, with declarations or without", async () => {
  const { client, week } = await opened();
  const ask = (includeDeclaration: boolean) =>
    client.connection.sendRequest(ReferencesRequest.type, {
      textDocument: { uri: week },
      position: ON_TITLE,
      context: { includeDeclaration },
    });
  const uses = ["a.practice 1:0-13", "week.practice 1:2-10"];
  expect(shown((await ask(true))!)).toEqual(["journal.practice 0:7-20", "journal.practice 0:25-33", ...uses]);
  expect(shown((await ask(false))!)).toEqual(uses);
});

test("highlights are of the file alone, a read each", async () => {
  const { client, week } = await opened();
  const found = await client.connection.sendRequest(DocumentHighlightRequest.type, {
    textDocument: { uri: week },
    position: ON_TITLE,
  });
  expect(found).toEqual([{ range: { start: { line: 1, character: 2 }, end: { line: 1, character: 10 } }, kind: 2 }]);
});

test("a rename edits files that are open, at their version, and others", async () => {
  const { client, head, other, week } = await opened();
  await client.connection.sendRequest(WorkspaceSymbolRequest.type, { query: "" }); // now all files are read
  const edit = (await client.connection.sendRequest(RenameRequest.type, {
    textDocument: { uri: other },
    position: { line: 1, character: 3 },
    newName: '"Gigue in G"',
  })) as WorkspaceEdit;
  const changes = edit.documentChanges as TextDocumentEdit[];
  expect(changes.map(({ textDocument }) => textDocument)).toEqual([
    { uri: head, version: null },
    { uri: other, version: null },
  ]);
  expect(changes.flatMap(({ edits }) => edits)).toMatchObject([{ newText: "Gigue in G" }, { newText: "Gigue in G" }]);
  const short = (await client.connection.sendRequest(RenameRequest.type, {
    textDocument: { uri: week },
    position: ON_TITLE,
    newName: "Dance",
  })) as WorkspaceEdit;
  expect((short.documentChanges as TextDocumentEdit[]).map(({ textDocument }) => textDocument)).toEqual([
    { uri: head, version: null },
    { uri: week, version: 1 },
  ]);
});

test("a client without versioned edits gets plain ones", async () => {
  const { client, head, week } = await opened({ ...PULLING, workspace: {} });
  const edit = await client.connection.sendRequest(RenameRequest.type, {
    textDocument: { uri: week },
    position: ON_TITLE,
    newName: "Dance",
  });
  expect(Object.keys(edit!.changes!)).toEqual([head, week]);
});

test("what is to be renamed is named first where the client asks, and refused with a sentence", async () => {
  const rename = { prepareSupport: true };
  const { client, week } = await opened({ ...PULLING, textDocument: { ...PULLING.textDocument, rename } });
  expect(client.initialized.capabilities.renameProvider).toEqual({ prepareProvider: true });
  const ask = (position: typeof ON_TITLE) =>
    client.connection.sendRequest(PrepareRenameRequest.type, { textDocument: { uri: week }, position });
  expect(await ask(ON_TITLE)).toEqual({
    range: { start: { line: 1, character: 2 }, end: { line: 1, character: 10 } },
    placeholder: "Courante",
  });
  await expect(ask({ line: 2, character: 4 })).rejects.toMatchObject({
    code: LSPErrorCodes.RequestFailed,
    message: expect.stringMatching(/^Put the cursor on/),
  });
  const refused = client.connection.sendRequest(RenameRequest.type, {
    textDocument: { uri: week },
    position: ON_TITLE,
    newName: "D minor",
  });
  await expect(refused).rejects.toMatchObject({ code: LSPErrorCodes.RequestFailed });
});

test("symbols are those of all journals, with the file that each is in", async () => {
  const { client, head } = await opened();
  const found = await client.connection.sendRequest(WorkspaceSymbolRequest.type, { query: "cour" });
  expect(found).toMatchObject([
    { name: "Courante in F", kind: 19, location: { uri: head }, containerName: "journal.practice" },
  ]);
  const days = await client.connection.sendRequest(WorkspaceSymbolRequest.type, { query: "2026-03" });
  expect(days!.map(({ name }) => name)).toEqual(["2026-03-09", "2026-03-02"]);
});

test("where nothing has a name the answers are empty, and an unknown file is no error", async () => {
  const { client, week } = await opened();
  const nowhere = { textDocument: { uri: week }, position: { line: 0, character: 2 } };
  const unknown = { textDocument: { uri: "untitled:none" }, position: { line: 0, character: 0 } };
  for (const at of [nowhere, unknown]) {
    expect(await client.connection.sendRequest(DefinitionRequest.type, at)).toEqual([]);
    expect(await client.connection.sendRequest(DocumentHighlightRequest.type, at)).toEqual([]);
  }
  const wrong = client.connection.sendRequest("textDocument/rename", { ...nowhere });
  await expect(wrong).rejects.toMatchObject({ code: ErrorCodes.InvalidParams });
});

test("a request that is cancelled ends, and one whose text changes says so", async () => {
  const days = Array.from({ length: 3000 }, (_, i) => {
    const date = new Date(Date.UTC(2015, 0, 1 + i)).toISOString().slice(0, 10);
    return `${date}\n  Courante, bars ${i}-${i + 3}, at 60 clean\n  D minor, thirds, slurred, at 66 clean\n`;
  });
  const { client, week } = await opened();
  await client.edit(week, days.join("\n"));
  const at = { textDocument: { uri: week }, position: ON_TITLE, newName: "Dance" };
  const source = new CancellationTokenSource();
  const asked = client.connection.sendRequest(RenameRequest.type, at, source.token);
  source.cancel();
  await expect(asked).rejects.toMatchObject({ code: LSPErrorCodes.RequestCancelled });
  const again = client.connection.sendRequest(RenameRequest.type, at);
  await client.connection.sendRequest(HoverRequest.type, at); // answered in between
  const start = { line: 0, character: 0 };
  await client.edit(week, "\n", { start, end: start });
  await expect(again).rejects.toMatchObject({ code: LSPErrorCodes.ContentModified });
});
