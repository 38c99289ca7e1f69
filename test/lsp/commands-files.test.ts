import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import {
  type ApplyWorkspaceEditParams,
  ApplyWorkspaceEditRequest,
  type ClientCapabilities,
  CodeActionRequest,
  type CreateFile,
  ExecuteCommandRequest,
  type ShowDocumentParams,
  ShowDocumentRequest,
  ShowMessageNotification,
  type TextDocumentEdit,
  type TextEdit,
} from "vscode-languageserver-protocol/node";
import { TextDocument } from "vscode-languageserver-textdocument";
import { temporaryFolder } from "../support/temporary-folder.ts";
import { PULLING, uriOf } from "./client.ts";
import { startServerHere } from "./server-here.ts";

// Commands and actions that edit more than the file that is asked about, by the protocol alone (3.17, WorkspaceEdit).

const ABLE: ClientCapabilities = {
  ...PULLING,
  workspace: {
    ...PULLING.workspace,
    applyEdit: true,
    workspaceEdit: { documentChanges: true, resourceOperations: ["create"] },
  },
  window: { showDocument: { support: true } },
};

const DIARY = "2025-03-02\nThe Sleepy Frog, bars 1-8, at 60\n\n2026-03-02\nBb major, slow\n";

/** An editor on a folder with a diary and a marker, which keeps what it is asked to do. */
async function opened(capabilities = ABLE) {
  const folder = temporaryFolder({ "diary.practice": DIARY, "journal.practice": "player Noor\n" });
  const asked = { edits: [] as ApplyWorkspaceEditParams[], shown: [] as ShowDocumentParams[], said: [] as string[] };
  const client = await startServerHere({
    options: { today: "2026-03-09" },
    capabilities,
    folders: [folder],
    prepare: (connection) => {
      connection.onRequest(ApplyWorkspaceEditRequest.type, (params) => {
        asked.edits.push(params);
        return { applied: true };
      });
      connection.onRequest(ShowDocumentRequest.type, (params) => {
        asked.shown.push(params);
        return { success: true };
      });
      connection.onNotification(ShowMessageNotification.type, ({ message }) => {
        asked.said.push(message);
      });
    },
  });
  const uri = uriOf(`${folder}/diary.practice`);
  await client.open(uri, DIARY);
  const run = (name: string, ...more: unknown[]) =>
    client.connection.sendRequest(ExecuteCommandRequest.type, {
      command: `daystave.server.${name}`,
      arguments: [{ textDocument: { uri }, position: { line: 1, character: 0 } }, ...more],
    });
  const textAfter = ({ textDocument, edits }: TextDocumentEdit): string => {
    const before = textDocument.uri.endsWith("2025.practice") ? "" : readFileSync(new URL(textDocument.uri), "utf8");
    const document = TextDocument.create(textDocument.uri, "practice-journal", 1, before);
    return TextDocument.applyEdits(document, edits as TextEdit[]);
  };
  const choices = (of: string) => client.connection.sendRequest("daystave/choices", { textDocument: { uri }, of });
  return { client, asked, run, uri, textAfter, choices, of: (name: string) => uriOf(`${folder}/${name}`) };
}

test("moveYear makes a file, fills it, and takes the days out of the other, in one edit", async () => {
  const { asked, run, uri, of, textAfter, choices } = await opened();
  expect(await choices("years")).toEqual([{ value: "2025", label: "2025", description: "1 day" }]);
  expect(await run("moveYear", "2025")).toBeNull();
  expect(asked.edits).toHaveLength(1);
  const [create, ...changes] = asked.edits[0]!.edit.documentChanges!;
  expect(create).toEqual({
    kind: "create",
    uri: of("2025.practice"),
    options: { overwrite: false, ignoreIfExists: false },
  } satisfies CreateFile);
  expect((changes as TextDocumentEdit[]).map((each) => [each.textDocument, textAfter(each)])).toEqual([
    [{ uri: of("2025.practice"), version: null }, "2025-03-02\nThe Sleepy Frog, bars 1-8, at 60\n"],
    [{ uri, version: 1 }, "2026-03-02\nBb major, slow\n"],
  ]);
  expect(asked.shown).toMatchObject([{ uri: of("2025.practice") }]);
});

test("an editor that cannot make files is told so, and nothing is moved", async () => {
  const workspace = { ...ABLE.workspace, workspaceEdit: { documentChanges: true } };
  const { asked, run } = await opened({ ...ABLE, workspace });
  await run("moveYear", "2025");
  await run("moveYear", 2025);
  expect(asked.edits).toEqual([]);
  expect(asked.said).toEqual([
    "This editor cannot make a new file for Daystave, so nothing was moved.",
    "Say which year is to move.",
  ]);
});

test("changeNames edits every file of the journal, open or not, in one edit", async () => {
  const { asked, run, uri, of, textAfter, choices } = await opened();
  expect(await choices("names")).toContainEqual({ value: "german", label: "German", description: "fis-Moll, H-Dur" });
  await run("changeNames", "german");
  expect(asked.edits).toHaveLength(1);
  const changes = asked.edits[0]!.edit.documentChanges as TextDocumentEdit[];
  expect(changes.map((each) => [each.textDocument, textAfter(each)])).toEqual([
    [{ uri, version: 1 }, DIARY.replace("Bb major", "B-Dur")],
    [{ uri: of("journal.practice"), version: null }, "player Noor\nnames german\n"],
  ]);
  await run("changeNames", 7);
  expect(asked.said).toEqual([expect.stringMatching(/^Say in which language/)]);
});

test("choices of anything else there are none", async () => {
  const { choices } = await opened();
  expect(await choices("tempos")).toEqual([]);
});

test("a title is declared in the marker, by the command and by the action on its line", async () => {
  const { client, asked, run, uri, of } = await opened();
  await run("declareTitle");
  const actions = await client.connection.sendRequest(CodeActionRequest.type, {
    textDocument: { uri },
    range: { start: { line: 1, character: 0 }, end: { line: 1, character: 0 } },
    context: { diagnostics: [], triggerKind: 1 },
  });
  const titles = actions!.map(({ title }) => title);
  const action = actions!.find(({ title }) => title.endsWith("in journal.practice"));
  expect(titles).toContain('Declare piece "The Sleepy Frog" in journal.practice');
  expect(action).toMatchObject({ edit: asked.edits[0]!.edit });
  const [change] = asked.edits[0]!.edit.documentChanges as TextDocumentEdit[];
  expect(change!.textDocument).toEqual({ uri: of("journal.practice"), version: null });
  expect(change!.edits).toMatchObject([{ newText: '\npiece "The Sleepy Frog"' }]);
  expect(asked.shown).toMatchObject([
    { uri: of("journal.practice"), selection: { start: { line: 1, character: 23 } } },
  ]);
});

test("a conflict is settled on its marker, also unasked, as it is underlined", async () => {
  const { client, uri } = await opened();
  await client.edit(uri, "2026-03-02\n<<<<<<< a\nC major\n=======\nD major\n>>>>>>> b\n");
  const actions = await client.connection.sendRequest(CodeActionRequest.type, {
    textDocument: { uri },
    range: { start: { line: 1, character: 0 }, end: { line: 1, character: 0 } },
    context: { diagnostics: [], triggerKind: 2 },
  });
  expect(actions!.map(({ title }) => title)).toEqual(["Keep both sides", "Keep the upper side", "Keep the lower side"]);
});
