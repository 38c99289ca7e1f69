import { expect, test } from "vitest";
import {
  type ApplyWorkspaceEditParams,
  ApplyWorkspaceEditRequest,
  type ClientCapabilities,
  ExecuteCommandRequest,
  type ShowDocumentParams,
  ShowDocumentRequest,
  ShowMessageNotification,
  type ShowMessageParams,
  type TextDocumentEdit,
  type TextEdit,
} from "vscode-languageserver-protocol/node";
import { TextDocument } from "vscode-languageserver-textdocument";
import { temporaryFolder } from "../support/temporary-folder.ts";
import { PULLING, uriOf } from "./client.ts";
import { startServerHere } from "./server-here.ts";

// What the commands come to is tested beside the features; here, that any editor can run them by the protocol alone.

const uri = "file:///alone/week.practice";
const TEXT = `2026-03-02 Mon
  D minor, thirds, 8ths at 60 clean
  F# major
`;

const ABLE: ClientCapabilities = {
  ...PULLING,
  workspace: { ...PULLING.workspace, applyEdit: true },
  window: { showDocument: { support: true } },
};

interface Asked {
  readonly edits: ApplyWorkspaceEditParams[];
  readonly shown: ShowDocumentParams[];
  readonly said: ShowMessageParams[];
}

/** An editor that keeps what it is asked to do. With `refuses` it makes no edit. */
async function opened(capabilities = ABLE, refuses = false, folders: string[] = [], today = "2026-03-09") {
  const asked: Asked = { edits: [], shown: [], said: [] };
  const client = await startServerHere({
    options: { today },
    capabilities,
    folders,
    prepare: (connection) => {
      connection.onRequest(ApplyWorkspaceEditRequest.type, (params) => {
        asked.edits.push(params);
        return { applied: !refuses };
      });
      connection.onRequest(ShowDocumentRequest.type, (params) => {
        asked.shown.push(params);
        return { success: true };
      });
      connection.onNotification(ShowMessageNotification.type, (params) => {
        asked.said.push(params);
      });
    },
  });
  await client.open(uri, TEXT);
  const run = (name: string, line = 1, document = uri) =>
    client.connection.sendRequest(ExecuteCommandRequest.type, {
      command: `daystave.server.${name}`,
      arguments: [{ textDocument: { uri: document }, position: { line, character: 4 } }],
    });
  return { client, asked, run };
}

/** On the day that the text has. */
const openedThatDay = () => opened(ABLE, false, [], "2026-03-02");

function textAfter({ edits }: Asked, text = TEXT): string {
  const [change] = edits[0]!.edit.documentChanges as TextDocumentEdit[];
  expect(change!.textDocument).toEqual({ uri, version: 1 });
  return TextDocument.applyEdits(TextDocument.create(uri, "practice-journal", 1, text), change!.edits as TextEdit[]);
}

test.each([
  ["newDay", `${TEXT}  `, { line: 3, character: 2 }],
  ["repeatFaster", TEXT.replace(" clean\n", " clean\n  D minor, thirds, 8ths at 63\n"), { line: 2, character: 29 }],
  ["repeatSlower", TEXT.replace(" clean\n", " clean\n  D minor, thirds, 8ths at 58\n"), { line: 2, character: 29 }],
  [
    "writeNotes",
    TEXT.replace("minor,", "minor: D F E G F A G Bb A C Bb D,"),
    { line: 1, character: 2 + "D minor: D F E G F A G Bb A C Bb D".length },
  ],
])("%s is one edit with its version, and then the place of the cursor", async (name, after, cursor) => {
  const { asked, run } = await openedThatDay();
  expect(await run(name)).toBeNull();
  expect(asked.edits).toHaveLength(1);
  expect(asked.edits[0]!.label).toMatch(/^[A-Z][a-z ]+$/);
  expect(textAfter(asked)).toBe(after);
  expect(asked.shown).toEqual([{ uri, takeFocus: true, selection: { start: cursor, end: cursor } }]);
  expect(asked.said).toEqual([]);
});

test("fingerChange is one edit too, where the instrument is a recorder", async () => {
  const { client, asked, run } = await openedThatDay();
  await client.edit(uri, `${TEXT}  F major, slow, on alto recorder\n`);
  expect(await run("fingerChange", 3)).toBeNull();
  expect(asked.edits.map(({ label }) => label)).toEqual(["Practise the hardest finger change"]);
  const [change] = asked.edits[0]!.edit.documentChanges as TextDocumentEdit[];
  expect(change!.edits).toMatchObject([{ newText: "\n  notes A4 Bb4, back and forth, slurred, on alto recorder" }]);
  expect(asked.shown).toHaveLength(1);
});

test("fingerChange takes which of the hardest finger changes is meant; what makes no sense is the hardest", async () => {
  const { client, asked } = await openedThatDay();
  await client.edit(uri, `${TEXT}  F major, slow, on alto recorder\n`);
  const at = { textDocument: { uri }, position: { line: 3, character: 0 } };
  for (const rank of [1, -1, 0.5, "1", null])
    await client.connection.sendRequest(ExecuteCommandRequest.type, {
      command: "daystave.server.fingerChange",
      arguments: [at, rank],
    });
  const put = asked.edits.flatMap(({ edit }) => (edit.documentChanges as TextDocumentEdit[])[0]!.edits as TextEdit[]);
  const notes = put.map(({ newText }) => /notes (\S+ \S+),/.exec(newText)![1]);
  expect(notes).toEqual([expect.not.stringMatching("A4 Bb4"), "A4 Bb4", "A4 Bb4", "A4 Bb4", "A4 Bb4"]);
});

test("writePlan is one edit too, for as long as is said, or without a client that asks for as long as is usual", async () => {
  const { client, asked } = await opened();
  const at = { textDocument: { uri }, position: { line: 0, character: 0 } };
  const write = async (...more: readonly unknown[]) => {
    const params = { command: "daystave.server.writePlan", arguments: [at, ...more] };
    await client.connection.sendRequest(ExecuteCommandRequest.type, params);
  };
  for (const more of [[], [10], [10, "flute"], [null, null], [-1, 7], ["10"]]) await write(...more);
  const written = asked.edits.map(({ edit }) => {
    const [change] = edit.documentChanges as TextDocumentEdit[];
    return (change!.edits as TextEdit[]).map(({ newText }) => newText.trim().split("\n"));
  });
  expect(written.map((edits) => edits.length)).toEqual([1, 1, 1, 1, 1, 1]);
  const minutes = written.map(([lines]) => /^2026-03-09 Mon, (\d+) min, plan$/.exec(lines![0]!)?.[1]);
  expect(minutes).toEqual(["20", "10", "10", "20", "20", "20"]);
  expect(written[2]![0]!.filter((line) => line.startsWith(" "))).toEqual(
    written[2]![0]!.filter((line) => line.includes(", on flute")),
  );
  expect(asked.shown).toHaveLength(6);
});

test("planMinutes says how long a plan would be for; null where one waits", async () => {
  const { client } = await opened();
  const ask = () => client.connection.sendRequest("daystave/planMinutes", { textDocument: { uri } });
  expect(await ask()).toBe(20);
  await client.edit(uri, `${TEXT}\n2026-03-09, plan\nD minor, slow\n`);
  expect(await ask()).toBeNull();
});

test("phases come from another file, and last time is found there: files that were never opened", async () => {
  const folder = temporaryFolder({
    "february.practice": "2026-02-02\ngroundwork, 15 min\n  D minor, thirds, 8ths at 54 clean\n",
    "march.practice": TEXT,
  });
  const march = uriOf(`${folder}/march.practice`);
  const { asked, run } = await opened(ABLE, false, [folder]);
  await run("newDayWithPhases", 0, march);
  const [change] = asked.edits[0]!.edit.documentChanges as TextDocumentEdit[];
  expect(change!.textDocument).toEqual({ uri: march, version: null });
  expect((change!.edits[0] as TextEdit).newText).toBe("\n\n2026-03-09 Mon\ngroundwork, 15 min\n  ");
  await run("goToLastTime", 1, march);
  expect(asked.edits).toHaveLength(1);
  expect(asked.shown[1]).toMatchObject({
    uri: uriOf(`${folder}/february.practice`),
    selection: { start: { line: 2, character: 2 } },
  });
});

test("where nothing can be done a sentence says so, as information", async () => {
  const { asked, run } = await opened();
  expect(await run("goToLastTime")).toBeNull();
  expect(await run("repeatFaster", 0)).toBeNull();
  expect(await run("fingerChange")).toBeNull();
  expect(await run("newDay", 0, "file:///elsewhere/other.practice")).toBeNull();
  expect(asked.said.map(({ type }) => type)).toEqual([3, 3, 3, 3]); // MessageType.Info
  expect(asked.said.map(({ message }) => message)).toEqual([
    expect.stringMatching(/^This exercise has not been played before/),
    expect.stringMatching(/^There is no entry on this line/),
    expect.stringMatching(/^Which finger change is hardest is known for recorders only/),
    expect.stringMatching(/^Open this file as a practice journal/),
  ]);
  expect([asked.edits, asked.shown]).toEqual([[], []]);
});

test("an edit that the editor did not make moves no cursor", async () => {
  const { asked, run } = await opened(ABLE, true);
  await run("newDay");
  expect(asked.shown).toEqual([]);
  expect(asked.said[0]!.message).toMatch(/^The text has changed in the meantime/);
});

test("an editor that shows no documents is told the line", async () => {
  const { client, asked, run } = await opened({ ...ABLE, window: {} });
  await client.edit(uri, `${TEXT}\n2026-03-09\nD minor, thirds, slow\n`);
  await run("goToLastTime", 5);
  expect(asked.said).toEqual([{ type: 3, message: `Line 2 of ${uri}` }]);
  await run("repeatFaster");
  expect(asked.said).toHaveLength(1);
  expect(asked.edits).toHaveLength(1);
});

test("they are offered to editors that make edits, and to no others", async () => {
  const { client } = await opened();
  const { commands } = client.initialized.capabilities.executeCommandProvider!;
  expect(commands).toHaveLength(14);
  for (const command of commands)
    await expect(client.connection.sendRequest(ExecuteCommandRequest.type, { command })).rejects.toMatchObject({
      code: -32602, // InvalidParams of JSON-RPC 2.0
    });
  const { client: other } = await opened(PULLING);
  expect(other.initialized.capabilities.executeCommandProvider).toBeUndefined();
});

test.each([["toString"], ["daystave.server.none"]])("%s is no command", async (command) => {
  const { client } = await opened();
  const argument = { textDocument: { uri }, position: { line: 0, character: 0 } };
  const asked = client.connection.sendRequest(ExecuteCommandRequest.type, { command, arguments: [argument] });
  await expect(asked).rejects.toMatchObject({ code: -32602 });
});
