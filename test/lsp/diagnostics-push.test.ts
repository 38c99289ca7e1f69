import { join } from "node:path";
import { expect, test } from "vitest";
import { temporaryFolder } from "../support/temporary-folder.ts";
import { codesOf, PUSHED, uriOf } from "./client.ts";
import { startServerHere } from "./server-here.ts";

const RIGHT = "2026-03-02 Mon\n  F# major: F# G# A# B C# D# E# F#\n";
const WRONG = "2026-03-02 Mon\n  F# major: F# G# A# B C# D# F F#\n";
const START = { capabilities: PUSHED, options: { today: "2026-03-08" } };
const ALONE = "file:///alone/a.practice";

test("a client that cannot pull is offered no pull, and told by itself, with versions", async () => {
  const client = await startServerHere(START);
  expect(client.initialized.capabilities.diagnosticProvider).toBeUndefined();
  await client.open(ALONE, WRONG);
  const first = await client.until(() => client.pushed[0]);
  expect(first).toMatchObject({
    uri: ALONE,
    version: 1,
    diagnostics: [{ code: "scale-spelling", source: "daystave" }],
  });
  await client.edit(ALONE, RIGHT);
  expect(await client.until(() => client.pushed[1])).toEqual({ uri: ALONE, version: 2, diagnostics: [] });
});

test("a burst of edits is answered for the last", async () => {
  const client = await startServerHere(START);
  await client.open(ALONE, RIGHT);
  await client.until(() => client.pushed[0]);
  await Promise.all([client.edit(ALONE, WRONG), client.edit(ALONE, `${WRONG}x`), client.edit(ALONE, RIGHT)]);
  const last = await client.until(() => client.pushed.find(({ version }) => version === 4));
  expect(last.diagnostics).toEqual([]);
});

test("a document that is closed leaves nothing underlined", async () => {
  const client = await startServerHere(START);
  await client.open(ALONE, WRONG);
  await client.until(() => client.pushed[0]);
  await client.close(ALONE);
  expect(await client.until(() => client.pushed[1])).toEqual({ uri: ALONE, diagnostics: [] });
});

test("an edit in one file tells about another open one that it bears on", async () => {
  const folder = temporaryFolder({});
  const [journal, day] = [uriOf(join(folder, "journal.practice")), uriOf(join(folder, "a.practice"))];
  const client = await startServerHere({ ...START, folders: [folder] });
  await client.open(journal, "player Noor\n");
  await client.open(day, '2026-03-02 Mon\n  D major, "pairs": D D E E F# F# G G A A B B C# C# D D\n');
  const before = await client.until(() => client.pushed.find(({ uri }) => uri === day));
  expect(codesOf(before.diagnostics)).toEqual(["scale-note"]);
  await client.edit(journal, 'pattern "pairs": 1 1\n');
  await client.until(() => client.pushed.find(({ uri, diagnostics }) => uri === day && diagnostics.length === 0));
});
