import { describe, expect, test } from "vitest";
import { HoverRequest, type MarkupContent } from "vscode-languageserver-protocol/node";
import { type StartOptions, startServer, type TestClient } from "./client.ts";
import { startWorker } from "./worker.ts";

// Which language the server speaks is the editor's to say (`locale` of `initialize`, Language Server Protocol 3.17).

const URI = "untitled:hover.practice";
const TEXT = "2026-05-02 Sat\n  D minor, at 60 clean\n2026-05-09 Sat\n  D minor, at 63 clean\n";

async function hovered(client: TestClient): Promise<string> {
  await client.open(URI, TEXT);
  const position = { line: 3, character: 3 };
  const hover = await client.connection.sendRequest(HoverRequest.type, { textDocument: { uri: URI }, position });
  return (hover!.contents as MarkupContent).value;
}

describe.each([
  ["in Node", startServer],
  ["in a web worker", startWorker],
] satisfies readonly (readonly [string, (options: StartOptions) => Promise<TestClient>])[])("%s", (_, start) => {
  test.each([
    ["de", "4. Mai"],
    ["de-CH", "4. Mai"],
    ["en", "4 May"],
    ["fr", "4 May"],
    [undefined, "4 May"],
  ])("an editor in %s reads %s", async (locale, date) => {
    const client = await start({ options: { today: "2026-05-10" }, ...(locale === undefined ? {} : { locale }) });
    expect(await hovered(client)).toContain(`| ${date} |`);
  });
});

test.each([
  ["de", "F# major hat E#, nicht F: Die siebte Stufe hat den Stammton E."],
  ["en", "F# major has E#, not F: its seventh degree takes the letter E."],
])("an editor in %s reads of a wrong note", async (locale, message) => {
  const client = await startServer({ options: { today: "2026-05-10" }, locale });
  await client.open(URI, "2026-05-02 Sat\n  F# major: F# G# A# B C# D# F F#\n");
  expect(await client.pull(URI)).toMatchObject({ items: [{ message }] });
});
