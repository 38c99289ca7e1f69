import { expect, test } from "vitest";
import type { ChangedParams, PreviewFigures, PreviewResult } from "../../shared/protocol.ts";
import { startServer, type TestClient } from "./client.ts";

const uri = "file:///alone/week.practice";
const options = { today: "2026-03-10" };
const DAY = "2026-03-02 Mon\n  D minor melodic, thirds, slurred, 8ths at 60 clean, 66 clean\n";

function ask(client: TestClient, version?: number): Promise<PreviewResult> {
  return client.connection.sendRequest("daystave/preview", { uri, version });
}

/** Every `daystave/changed` so far. */
function listen(client: TestClient): ChangedParams[] {
  const changes: ChangedParams[] = [];
  client.connection.onNotification("daystave/changed", (params: ChangedParams) => {
    changes.push(params);
    client.noticed();
  });
  return changes;
}

test("the figures of a journal, and nothing while they stay as they are", async () => {
  const client = await startServer({ options });
  await client.open(uri, DAY);
  const first = (await ask(client)) as PreviewFigures;
  expect(first).toMatchObject({
    journal: uri,
    rows: [{ uri, line: 1, unit: "notes a minute", weeks: [{ week: "2026-W10", bestClean: 132 }] }],
  });
  expect(await ask(client, first.version)).toEqual({ unchanged: true });
});

test("after a little quiet the client hears once of a series of edits, and gets new figures", async () => {
  const client = await startServer({ options });
  const changes = listen(client);
  await client.open(uri, DAY);
  const before = (await ask(client)) as PreviewFigures;
  for (const tempo of [70, 71, 72])
    await client.edit(uri, `${DAY}  D minor melodic, thirds, slurred, 8ths at ${tempo} clean\n`);
  const { journal, version } = await client.until(() => changes[0]);
  expect(journal).toBe(before.journal);
  const after = (await ask(client, before.version)) as PreviewFigures;
  expect(after).toMatchObject({ version, rows: [{ key: before.rows[0]!.key, weeks: [{ bestClean: 144 }] }] });
  expect(after.rows[0]!.hash).not.toBe(before.rows[0]!.hash);
  expect(changes).toHaveLength(1);
});

test("a client that never asked for a preview hears of no change", async () => {
  const client = await startServer({ options });
  const changes = listen(client);
  await client.open(uri, DAY);
  await client.pull(uri);
  await new Promise((resolve) => setTimeout(resolve, 300)); // twice the quiet after which it would be told
  expect(changes).toEqual([]);
});

test("a document that nobody knows has no figures, and a question of another shape is refused", async () => {
  const client = await startServer({ options });
  expect(await ask(client)).toEqual({ journal: uri, version: 0, rows: [] });
  await expect(client.connection.sendRequest("daystave/preview", { uri: 7 })).rejects.toMatchObject({ code: -32602 });
});
