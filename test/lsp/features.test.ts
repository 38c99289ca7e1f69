import { expect, test } from "vitest";
import {
  type CodeAction,
  CodeActionRequest,
  type CodeActionTriggerKind,
  type CompletionItem,
  CompletionRequest,
  CompletionResolveRequest,
  DocumentFormattingRequest,
  DocumentRangeFormattingRequest,
  type DocumentSymbol,
  DocumentSymbolRequest,
  FoldingRangeRequest,
  HoverRequest,
  type InsertReplaceEdit,
  SemanticTokensRangeRequest,
  SemanticTokensRequest,
  type SymbolInformation,
  type TextDocumentEdit,
  type TextEdit,
} from "vscode-languageserver-protocol/node";
import { TextDocument } from "vscode-languageserver-textdocument";
import { PULLING } from "./client.ts";
import { startServerHere } from "./server-here.ts";

// What the features say is tested beside them; here, that it arrives as the protocol wants it.

const uri = "file:///alone/week.practice";
const textDocument = { uri };
const TEXT = `2026-03-02 Mon, 50 min
groundwork, 15 min
  D minor melodic, thirds, slurred, 8ths at 60 clean, 66 clean, 72 slips
  F# major: F# G# A# B C# D# F F#
fluency
  G major,16ths at 80 clean

2026-03-09 Mon
  D minor melodic, thirds, slurred, 8ths at 72 clean
  
`;
const WHOLE = { start: { line: 0, character: 0 }, end: { line: 10, character: 0 } };
const WRONG_LINE = { start: { line: 3, character: 2 }, end: { line: 3, character: 2 } };

async function opened(capabilities = PULLING) {
  const client = await startServerHere({ options: { today: "2026-03-10" }, capabilities });
  await client.open(uri, TEXT);
  return client;
}

/** The text after edits, by the protocol library's own reading of them. */
function applied(edits: TextEdit[], text = TEXT): string {
  return TextDocument.applyEdits(TextDocument.create(uri, "practice-journal", 1, text), edits);
}

test("completion gives every item its own edit, and a resolved one its explanation", async () => {
  const client = await opened();
  const list = await client.connection.sendRequest(CompletionRequest.type, {
    textDocument,
    position: { line: 9, character: 2 },
  });
  const { isIncomplete, items } = list as { isIncomplete: boolean; items: CompletionItem[] };
  expect(isIncomplete).toBe(true);
  expect(items.length).toBeGreaterThan(0);
  for (const item of items) {
    expect(item.kind).toBeTypeOf("number");
    expect((item.textEdit as TextEdit | InsertReplaceEdit | undefined)?.newText).toBeTypeOf("string");
    expect(item.textEdit).toMatchObject({ range: { start: { line: 9 }, end: { line: 9, character: 2 } } });
  }
  const explained = items.find(({ data }) => data !== undefined)!;
  const resolved = await client.connection.sendRequest(CompletionResolveRequest.type, explained);
  expect(resolved).toMatchObject({ label: explained.label, documentation: { kind: "markdown" } });
});

test("an item that was not ours comes back as it went", async () => {
  const client = await opened();
  expect(await client.connection.sendRequest(CompletionResolveRequest.type, { label: "x", data: { uri: 3 } })).toEqual({
    label: "x",
    data: { uri: 3 },
  });
});

test("hover is Markdown with the range it is about, and null on a blank line", async () => {
  const client = await opened();
  const found = await client.connection.sendRequest(HoverRequest.type, {
    textDocument,
    position: { line: 2, character: 4 },
  });
  expect(found).toMatchObject({ contents: { kind: "markdown" }, range: { start: { line: 2 }, end: { line: 2 } } });
  expect(
    await client.connection.sendRequest(HoverRequest.type, { textDocument, position: { line: 6, character: 0 } }),
  ).toBeNull();
});

test("a quick fix carries the diagnostic that it mends and the version that it was made for", async () => {
  const client = await opened();
  const actions = (await client.connection.sendRequest(CodeActionRequest.type, {
    textDocument,
    range: { start: { line: 3, character: 0 }, end: { line: 3, character: 33 } },
    context: { diagnostics: [] },
  })) as CodeAction[];
  const fix = actions.find(
    ({ kind, diagnostics }) => kind === "quickfix" && diagnostics?.some(({ code }) => code === "scale-spelling"),
  )!;
  const [change] = fix.edit!.documentChanges as TextDocumentEdit[];
  expect(change!.textDocument).toEqual({ uri, version: 1 });
  expect(applied(change!.edits as TextEdit[])).toBe(TEXT.replace("D# F F#", "D# E# F#"));
});

test("asked for fix-alls alone, only those are given", async () => {
  const client = await opened();
  const actions = (await client.connection.sendRequest(CodeActionRequest.type, {
    textDocument,
    range: WHOLE,
    context: { diagnostics: [], only: ["source.fixAll"] },
  })) as CodeAction[];
  expect(actions.map(({ kind }) => kind)).toEqual(actions.map(() => "source.fixAll"));
});

// Language Server Protocol 3.17: CodeActionTriggerKind.Invoked is 1, Automatic 2.
test("what mends nothing is offered to who asks, and not to an editor that asks by itself", async () => {
  const client = await startServerHere({ options: { today: "2026-03-10" }, capabilities: PULLING });
  await client.open(uri, "2026-03-02\n  notes D E F G A Bb C#\n  D minor, swoopy\n");
  const kinds = async (triggerKind: CodeActionTriggerKind, line = 1): Promise<(string | undefined)[]> => {
    const at = { line, character: 14 };
    const context = { diagnostics: [], triggerKind };
    const actions = await client.connection.sendRequest(CodeActionRequest.type, {
      textDocument,
      range: { start: at, end: at },
      context,
    });
    return (actions as CodeAction[]).map(({ kind }) => kind);
  };
  expect(await kinds(1)).toEqual(["refactor.rewrite", "refactor.rewrite"]); // a name for the notes, and other spellings
  expect(await kinds(2)).toEqual([]);
  expect(new Set(await kinds(1, 2))).toEqual(new Set(["quickfix"]));
  expect(await kinds(2, 2)).toEqual([]);
});

test("a client without versioned edits gets plain ones, and one without code actions none", async () => {
  const plain = await opened({ ...PULLING, workspace: {} });
  const request = { textDocument, range: WRONG_LINE, context: { diagnostics: [] } };
  const ask = (client: typeof plain) =>
    client.connection.sendRequest(CodeActionRequest.type, {
      ...request,
      range: { start: { line: 3, character: 0 }, end: { line: 3, character: 33 } },
    });
  const [fix] = (await ask(plain)) as CodeAction[];
  expect(Object.keys(fix!.edit!.changes!)).toEqual([uri]);
  const old = await opened({ textDocument: { diagnostic: {} } });
  expect(await ask(old)).toEqual([]);
});

test("symbols are a tree, or a list for clients that take no tree", async () => {
  const names = (symbols: DocumentSymbol[]): string[] =>
    symbols.flatMap((each) => [each.name, ...names(each.children ?? [])]);
  const tree = (await (
    await opened()
  ).connection.sendRequest(DocumentSymbolRequest.type, { textDocument })) as DocumentSymbol[];
  expect(tree).toHaveLength(2);
  const { textDocument: capabilities } = PULLING;
  const flat = await opened({ ...PULLING, textDocument: { ...capabilities, documentSymbol: {} } });
  const list = (await flat.connection.sendRequest(DocumentSymbolRequest.type, { textDocument })) as SymbolInformation[];
  expect(list.map(({ name }) => name)).toEqual(names(tree));
  for (const { location } of list) expect(location.uri).toBe(uri);
});

test("days fold", async () => {
  const client = await opened();
  const ranges = await client.connection.sendRequest(FoldingRangeRequest.type, { textDocument });
  expect(ranges).toContainEqual(expect.objectContaining({ startLine: 0 }));
  expect(ranges).toContainEqual(expect.objectContaining({ startLine: 7 }));
});

test("no more of them than a client takes", async () => {
  const foldingRange = { rangeLimit: 1 };
  const client = await opened({ ...PULLING, textDocument: { ...PULLING.textDocument, foldingRange } });
  const ranges = await client.connection.sendRequest(FoldingRangeRequest.type, { textDocument });
  expect(ranges).toEqual([expect.objectContaining({ startLine: 7 })]);
});

/**
 * Line, column, length and type of every token: what the five numbers of a token mean, by the protocol's specification.
 */
function decoded(data: readonly number[]): number[][] {
  let [line, character] = [0, 0];
  const tokens: number[][] = [];
  for (let i = 0; i < data.length; i += 5) {
    character = data[i] === 0 ? character + data[i + 1]! : data[i + 1]!;
    line += data[i]!;
    tokens.push([line, character, data[i + 2]!, data[i + 3]!]);
  }
  return tokens;
}

test("tokens of a range are those of the whole that lie in it", async () => {
  const client = await opened();
  const { legend } = client.initialized.capabilities.semanticTokensProvider!;
  const whole = decoded((await client.connection.sendRequest(SemanticTokensRequest.type, { textDocument }))!.data);
  const range = { start: { line: 2, character: 0 }, end: { line: 4, character: 0 } };
  const part = decoded(
    (await client.connection.sendRequest(SemanticTokensRangeRequest.type, { textDocument, range }))!.data,
  );
  expect(part.length).toBeGreaterThan(0);
  expect(part).toEqual(whole.filter(([line]) => line === 2 || line === 3));
  for (const [, , , type] of whole) expect(legend.tokenTypes[type!]).toBeTypeOf("string");
});

test("formatting a range leaves the rest, and formatting twice is formatting once", async () => {
  const client = await opened();
  const options = { tabSize: 8, insertSpaces: false };
  const range = { start: { line: 5, character: 0 }, end: { line: 5, character: 30 } };
  const edits = (await client.connection.sendRequest(DocumentRangeFormattingRequest.type, {
    textDocument,
    range,
    options,
  }))!;
  expect(applied(edits)).toBe(TEXT.replace("G major,16ths", "G major, 16ths"));
  const all = applied(
    (await client.connection.sendRequest(DocumentFormattingRequest.type, { textDocument, options }))!,
  );
  await client.edit(uri, all);
  expect(await client.connection.sendRequest(DocumentFormattingRequest.type, { textDocument, options })).toEqual([]);
});

test("a bare space asks for nothing", async () => {
  const client = await opened();
  expect(client.initialized.capabilities.completionProvider!.triggerCharacters).not.toContain(" ");
});

test("a document that nobody opened has nothing to show", async () => {
  const client = await opened();
  const unknown = { textDocument: { uri: "file:///never/opened.practice" } };
  const position = { line: 0, character: 0 };
  expect(await client.connection.sendRequest(HoverRequest.type, { ...unknown, position })).toBeNull();
  expect(await client.connection.sendRequest(CompletionRequest.type, { ...unknown, position })).toBeNull();
  expect(await client.connection.sendRequest(DocumentSymbolRequest.type, unknown)).toEqual([]);
  expect(await client.connection.sendRequest(FoldingRangeRequest.type, unknown)).toEqual([]);
  expect(await client.connection.sendRequest(SemanticTokensRequest.type, unknown)).toEqual({ data: [] });
});
