import { expect, test } from "vitest";
import {
  CodeLensRefreshRequest,
  CodeLensRequest,
  CompletionItemKind,
  type CompletionList,
  CompletionRequest,
  ConfigurationRequest,
  DidChangeConfigurationNotification,
  DocumentLinkRequest,
  DocumentOnTypeFormattingRequest,
  InlayHintRefreshRequest,
  InlayHintRequest,
  InsertTextFormat,
  RegistrationRequest,
  type SelectionRange,
  SelectionRangeRequest,
  type TextEdit,
} from "vscode-languageserver-protocol/node";
import { TextDocument } from "vscode-languageserver-textdocument";
import type { Settings } from "../../shared/protocol.ts";
import { PULLING, type StartOptions, type TestClient } from "./client.ts";
import { startServerHere } from "./server-here.ts";

// What is shown or done beside the words of a line, as the protocol wants it; what it says is tested in test/features.

const uri = "file:///alone/week%20one.practice";
const textDocument = { uri };
const TEXT = `2026-03-02 Mon
  D minor, thirds, slurred, 8ths at 60 clean -- see my%20score.pdf, https://example.org
2026-03-09 Mon
  D minor ,thirds,slurred
`;
const WHOLE = { start: { line: 0, character: 0 }, end: { line: 4, character: 0 } };
const ALL: Settings = { lens: { trend: true }, hints: { notesPerMinute: true, lastTempo: true } };
const CONFIGURED = {
  ...PULLING,
  workspace: {
    ...PULLING.workspace,
    configuration: true,
    didChangeConfiguration: { dynamicRegistration: true },
    applyEdit: true,
  },
};
const REFRESHING = {
  ...CONFIGURED,
  workspace: { ...CONFIGURED.workspace, codeLens: { refreshSupport: true }, inlayHint: { refreshSupport: true } },
};

async function opened(settings: { now: Settings }, options: StartOptions = {}): Promise<TestClient> {
  const client = await startServerHere({
    capabilities: CONFIGURED,
    options: { today: "2026-03-09" },
    ...options,
    prepare: (connection) => {
      connection.onRequest(ConfigurationRequest.type, ({ items }) => items.map(() => settings.now));
      connection.onRequest(RegistrationRequest.type, () => {});
      options.prepare?.(connection);
    },
  });
  await client.open(uri, TEXT);
  return client;
}

const lenses = async ({ connection }: TestClient) =>
  (await connection.sendRequest(CodeLensRequest.type, { textDocument }))!;

const hints = async ({ connection }: TestClient) => {
  const found = (await connection.sendRequest(InlayHintRequest.type, { textDocument, range: WHOLE }))!;
  return found.map(({ position: { line, character }, label }) => [line, character, label]);
};

const HINTS = [
  [1, 38, "= 120 notes a minute"],
  [3, 9, "last 8ths at 60"],
];

test("all of it is announced", async () => {
  const { capabilities } = (await opened({ now: {} })).initialized;
  expect(capabilities).toMatchObject({
    selectionRangeProvider: true,
    documentLinkProvider: {},
    codeLensProvider: {},
    inlayHintProvider: true,
    documentOnTypeFormattingProvider: { firstTriggerCharacter: "\n" },
  });
});

test("lenses and hints are empty until they are switched on; then a client is asked to ask again", async () => {
  const settings = { now: {} as Settings };
  const asked: string[] = [];
  const client = await opened(settings, {
    capabilities: REFRESHING,
    prepare: (connection) => {
      connection.onRequest(CodeLensRefreshRequest.type, () => void asked.push("lenses"));
      connection.onRequest(InlayHintRefreshRequest.type, () => void asked.push("hints"));
    },
  });
  expect([await lenses(client), await hints(client)]).toEqual([[], []]);
  settings.now = ALL;
  await client.connection.sendNotification(DidChangeConfigurationNotification.type, { settings: null });
  await expect.poll(() => [...new Set(asked)].sort()).toEqual(["hints", "lenses"]);
  await expect.poll(() => hints(client)).toEqual(HINTS);
  await expect.poll(async () => (await lenses(client)).length).toBe(1);
});

test("a client that is asked nothing gets all at once", async () => {
  const client = await opened({ now: ALL });
  await expect.poll(() => hints(client)).toEqual(HINTS);
  expect(await lenses(client)).toHaveLength(1);
});

test("a lens leads to the preview where the client has one, else to the entry before", async () => {
  const commandIn = async (options: StartOptions) => {
    const client = await opened({ now: ALL }, options);
    await expect.poll(async () => (await lenses(client)).length).toBe(1);
    const [{ range, command }] = (await lenses(client)) as [Awaited<ReturnType<typeof lenses>>[number]];
    expect(range.start.line).toBe(3);
    expect(command!.title).toBe("Trend: too early to say");
    return [command!.command, ...(command!.arguments ?? [])];
  };
  const today = "2026-03-09";
  expect(await commandIn({ options: { today, canShowPreview: true } })).toEqual(["daystave.showPreview", uri, 3]);
  const at = { textDocument, position: { line: 3, character: 0 } };
  expect(await commandIn({})).toEqual(["daystave.server.goToLastTime", at]);
  const { applyEdit, ...plain } = CONFIGURED.workspace;
  expect(await commandIn({ capabilities: { ...CONFIGURED, workspace: plain } })).toEqual([""]);
});

test("links lead to addresses and to files beside the document, in the client's spelling", async () => {
  const client = await opened({ now: {} });
  const found = await client.connection.sendRequest(DocumentLinkRequest.type, { textDocument });
  expect(found!.map(({ target }) => target)).toEqual(["file:///alone/my%2520score.pdf", "https://example.org"]);
});

test("completions have tab stops for a client that takes them", async () => {
  const textDocumentOf = (snippetSupport: boolean) => ({
    ...CONFIGURED.textDocument,
    completion: { completionItem: { snippetSupport } },
  });
  const text = "2026-03-02\ngroundwork\n  D minor, slow\n\n";
  const offered = async (snippetSupport: boolean) => {
    const client = await startServerHere({
      capabilities: { ...PULLING, textDocument: textDocumentOf(snippetSupport) },
      options: { today: "2026-03-09" },
    });
    await client.open(uri, text);
    const params = { textDocument, position: { line: 4, character: 0 } };
    const list = (await client.connection.sendRequest(CompletionRequest.type, params)) as CompletionList;
    const found = list.items.find(({ kind }) => kind === CompletionItemKind.Snippet)!;
    return [found.insertTextFormat, (found.textEdit as TextEdit).newText];
  };
  expect(await offered(true)).toEqual([InsertTextFormat.Snippet, "2026-03-09 Mon\ngroundwork\n  $0"]);
  expect(await offered(false)).toEqual([undefined, "2026-03-09 Mon\ngroundwork"]);
});

test("selections nest", async () => {
  const client = await opened({ now: {} });
  const positions = [
    { line: 1, character: 3 },
    { line: 0, character: 0 },
  ];
  const found = (await client.connection.sendRequest(SelectionRangeRequest.type, { textDocument, positions }))!;
  const depth = ({ parent }: SelectionRange): number => (parent ? 1 + depth(parent) : 1);
  expect(found.map(depth)).toEqual([7, 4]);
  for (let each: SelectionRange | undefined = found[0]; each; each = each.parent)
    if (!each.parent) expect(each.range).toEqual(WHOLE);
});

test("the line that is left is laid out, at a line end alone", async () => {
  const client = await opened({ now: {} });
  const typed = async (ch: string, line: number) => {
    const options = { tabSize: 8, insertSpaces: false };
    const params = { textDocument, position: { line, character: 0 }, ch, options };
    const edits = await client.connection.sendRequest(DocumentOnTypeFormattingRequest.type, params);
    return TextDocument.applyEdits(TextDocument.create(uri, "practice-journal", 1, TEXT), edits!);
  };
  expect(await typed("\n", 4)).toBe(TEXT.replace(" ,thirds,slurred", ", thirds, slurred"));
  expect(await typed(";", 4)).toBe(TEXT);
  expect(await typed("\n", 3)).toBe(TEXT);
  expect(await typed("\n", 0)).toBe(TEXT);
});

test("a document that nobody opened has none of it", async () => {
  const { connection } = await opened({ now: ALL });
  const unknown = { textDocument: { uri: "file:///never/opened.practice" } };
  expect(await connection.sendRequest(CodeLensRequest.type, unknown)).toEqual([]);
  expect(await connection.sendRequest(InlayHintRequest.type, { ...unknown, range: WHOLE })).toEqual([]);
  expect(await connection.sendRequest(DocumentLinkRequest.type, unknown)).toEqual([]);
  expect(await connection.sendRequest(SelectionRangeRequest.type, { ...unknown, positions: [] })).toBeNull();
});
