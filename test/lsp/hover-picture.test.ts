import { expect, test } from "vitest";
import { HoverRequest, type MarkupContent } from "vscode-languageserver-protocol/node";
import { startServer, type TestClient } from "./client.ts";

const URI = "untitled:hover.practice";
const TEXT = "2026-03-02 Mon\n  D minor, at 60 clean\n2026-03-09 Mon\n  D minor, at 63 clean\n";
const palette = { foreground: "#333333", background: "#ffffff", amount: "#006688" };

async function hovered(client: TestClient): Promise<string> {
  const position = { line: 3, character: 3 };
  const hover = await client.connection.sendRequest(HoverRequest.type, { textDocument: { uri: URI }, position });
  return (hover!.contents as MarkupContent).value;
}

test("a client that says its colours gets a picture in them, also after another theme was chosen", async () => {
  const client = await startServer({ options: { today: "2026-03-10", palette } });
  await client.open(URI, TEXT);
  expect(await hovered(client)).toContain("(data:image/svg+xml,");
  expect(await hovered(client)).toContain(encodeURIComponent("#333333"));
  await client.connection.sendNotification("daystave/palette", { ...palette, foreground: "#eeeeee" });
  expect(await hovered(client)).toContain(encodeURIComponent("#eeeeee"));
});

test.each([
  ["none", undefined],
  ["colours that name an address", { ...palette, amount: "url(https://example.org/x)" }],
  ["colours that end the attribute", { ...palette, foreground: '#fff" onload="x' }],
])("%s: the table alone", async (_, sent) => {
  const client = await startServer({ options: { today: "2026-03-10", palette: sent } });
  await client.open(URI, TEXT);
  const markdown = await hovered(client);
  expect(markdown).toContain("| 9 Mar | 63 | 63 | 1 of 1 |");
  expect(markdown).not.toContain("data:");
});
