import { expect, test } from "vitest";
import { DiagnosticRefreshRequest } from "vscode-languageserver-protocol/node";
import { codesOf, PUSHED } from "./client.ts";
import { startServerHere } from "./server-here.ts";

// What only the history tells is not waited for: the first answer comes without it, and once the days are read the
// client hears of it.

const LEAP = "2026-03-02 Mon\n  D minor, at 60 clean\n2026-03-03 Tue\n  D minor, at 100 clean\n";
const URI = "untitled:leap.practice";
const options = { today: "2026-03-08" };

test("a client that pulls is asked to look again, and then finds the leap", async () => {
  let refreshes = 0;
  const client = await startServerHere({
    options,
    prepare: (connection) => connection.onRequest(DiagnosticRefreshRequest.type, () => void refreshes++),
  });
  client.connection.onRequest(DiagnosticRefreshRequest.type, () => {
    refreshes++;
    client.noticed();
  });
  await client.open(URI, LEAP);
  expect(await client.codes(URI)).toEqual([]);
  await client.until(() => refreshes || undefined);
  expect(await client.codes(URI)).toEqual(["tempo-leap"]);
});

test("a client that cannot pull is told", async () => {
  const client = await startServerHere({ options, capabilities: PUSHED });
  await client.open(URI, LEAP);
  const told = await client.until(() => client.pushed.find(({ diagnostics }) => diagnostics.length > 0));
  expect(codesOf(told.diagnostics)).toEqual(["tempo-leap"]);
});

test("while one types in the day, what was told of a line stays on it", async () => {
  const client = await startServerHere({ options });
  await client.open(URI, LEAP);
  await client.connection.sendRequest("textDocument/hover", {
    textDocument: { uri: URI },
    position: { line: 1, character: 3 },
  });
  expect(await client.codes(URI)).toEqual(["tempo-leap"]);
  await client.edit(URI, "  -- well rested\n", { start: { line: 3, character: 0 }, end: { line: 3, character: 0 } });
  const report = await client.pull(URI);
  expect(report).toMatchObject({ kind: "full", items: [{ code: "tempo-leap", range: { start: { line: 4 } } }] });
  await client.edit(URI, "90", { start: { line: 4, character: 14 }, end: { line: 4, character: 17 } });
  expect(await client.codes(URI)).toEqual([]);
});
