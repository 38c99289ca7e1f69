import { pathToFileURL } from "node:url";
import { expect, test } from "vitest";
import type {
  ChangedParams,
  PreviewExercise,
  PreviewFigures,
  PreviewParams,
  PreviewResult,
} from "../../shared/preview.ts";
import { temporaryFolder } from "../support/temporary-folder.ts";
import type { TestClient } from "./client.ts";
import { startServerHere } from "./server-here.ts";

const uri = "file:///alone/week.practice";
const options = { today: "2026-03-10" };
const DAY = "2026-03-02 Mon\n  D minor melodic, thirds, slurred, 8ths at 60 clean, 66 clean\n";

function ask(client: TestClient, params: Partial<PreviewParams> = {}): Promise<PreviewResult> {
  return client.connection.sendRequest("daystave/preview", { uri, ...params });
}

async function askForFigures(client: TestClient, params: Partial<PreviewParams> = {}): Promise<PreviewFigures> {
  const answer = await ask(client, params);
  if ("unchanged" in answer) throw new Error("Nothing changed, where figures were asked for.");
  return answer;
}

function exercises({ exercises }: PreviewFigures): readonly PreviewExercise[] {
  return exercises ? [...exercises.recent, ...exercises.earlier] : [];
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

/** No entry is there: only what one types may be heard. */
const NOT_BESIDE_A_LINE = { place: null, lines: [], silent: "" };

test("the figures of a journal, and nothing while they stay as they are", async () => {
  const client = await startServerHere({ options });
  await client.open(uri, DAY);
  const first = await askForFigures(client);
  expect(first).toMatchObject({ journal: uri, underCursor: null, choice: { span: 26, instrument: null } });
  expect(exercises(first)).toMatchObject([{ place: { uri, line: 1 }, shows: { latest: "66" } }]);
  expect(await ask(client, { version: first.version })).toEqual({
    unchanged: true,
    underCursor: null,
    shownBy: null,
    fingers: null,
    hear: NOT_BESIDE_A_LINE,
  });
});

test("a plan for as many minutes as the page asks for; what makes no sense counts as not asked", async () => {
  const client = await startServerHere({ options });
  await client.open(uri, `${DAY}2026-03-09\n  F major, at 60 clean, sore thumb\n`);
  const plan = async (asked?: unknown) => (await askForFigures(client, { plan: asked as never })).today.plan!;
  expect(await plan()).toMatchObject({ day: "2026-03-10", stretches: [] });
  const shown = await plan({ minutes: 10, shownOn: "2026-03-10" });
  expect(shown.minutes).toBe(10);
  expect(shown.stretches.length).toBeGreaterThan(0);
  for (const odd of [
    7,
    { minutes: 4, shownOn: "2026-03-10" },
    { minutes: "10", shownOn: "2026-03-10" },
    { minutes: 10 },
  ])
    expect((await plan(odd)).stretches).toEqual([]);
});

test("the exercise under the cursor, whether the figures changed or not", async () => {
  const client = await startServerHere({ options });
  await client.open(uri, DAY);
  const figures = await askForFigures(client, { cursor: 1 });
  const { version, underCursor } = figures;
  expect(underCursor).toBe(exercises(figures)[0]!.key);
  expect(await ask(client, { version, cursor: 1 })).toEqual({
    unchanged: true,
    underCursor,
    shownBy: { uri, line: 1 },
    fingers: null,
    hear: expect.objectContaining({ place: { uri, line: 1 } }),
  });
  expect(await ask(client, { version, cursor: 0 })).toEqual({
    unchanged: true,
    underCursor: null,
    shownBy: { uri, line: 0 },
    fingers: null,
    hear: NOT_BESIDE_A_LINE,
  });
});

test("on a recorder the hardest finger changes of the line under the cursor, whether the figures changed or not", async () => {
  const client = await startServerHere({ options });
  await client.open(uri, `instrument alto recorder\n${DAY}`);
  const { version, fingers } = await askForFigures(client, { cursor: 2 });
  expect(fingers).toMatchObject({ place: { uri, line: 2 }, canIsolate: true });
  expect(fingers!.steps).toHaveLength(3);
  expect(await ask(client, { version, cursor: 2 })).toMatchObject({ unchanged: true, fingers });
  expect(await ask(client, { version, cursor: 1 })).toMatchObject({ unchanged: true, fingers: null });
});

test("a span and an instrument that were chosen; what makes no sense counts as not chosen", async () => {
  const client = await startServerHere({ options });
  await client.open(uri, `instrument alto recorder\n${DAY}2025-03-02\n  C major, on tenor recorder, at 60 clean\n`);
  const all = await askForFigures(client, { choice: { span: "all", instrument: "tenor recorder" } });
  expect(all).toMatchObject({
    choice: { span: "all", instrument: "tenor recorder" },
    instruments: ["alto recorder", "tenor recorder"],
  });
  expect(exercises(all).map(({ shows }) => shows?.name)).toEqual(["C major, on tenor recorder"]);
  const odd = await askForFigures(client, { choice: { span: 5 as 4, instrument: null } });
  expect(odd.choice).toEqual({ span: 26, instrument: null });
});

test("after a little quiet the client hears once of a series of edits, and gets what changed", async () => {
  const client = await startServerHere({ options });
  const changes = listen(client);
  const other = "  G major, 8ths at 60 clean\n";
  await client.open(uri, DAY + other);
  const before = await askForFigures(client);
  for (const tempo of [70, 71, 72])
    await client.edit(uri, `${DAY}${other}  D minor melodic, thirds, slurred, 8ths at ${tempo} clean\n`);
  const { journal, version } = await client.until(() => changes[0]);
  expect(journal).toBe(before.journal);
  const known = exercises(before).map(({ hash }) => hash);
  const after = await askForFigures(client, { version: before.version, known });
  expect(after.version).toBe(version);
  expect(exercises(after).map(({ key }) => key)).toEqual(exercises(before).map(({ key }) => key));
  expect(exercises(after).flatMap(({ shows }) => shows?.latest ?? [])).toEqual(["72"]);
  expect(changes).toHaveLength(1);
});

test("an exercise that is unfolded comes with its chart and its weeks", async () => {
  const client = await startServerHere({ options });
  await client.open(uri, DAY);
  const [row] = exercises(await askForFigures(client));
  const { opened } = (await askForFigures(client, { open: row!.key })).exercises!;
  expect(opened).toMatchObject({ key: row!.key, chart: { table: { rows: [{ place: { uri, line: 1 } }] } } });
});

test("while files are still being read it says so, and the client hears when they are read", async () => {
  const folder = temporaryFolder({
    "february.practice": DAY,
    "march.practice": "2026-03-09\n  G major, 8ths at 60 clean\n",
  });
  const client = await startServerHere({ options, folders: [folder] });
  const changes = listen(client);
  const open = pathToFileURL(`${folder}/march.practice`).href;
  await client.open(open, "2026-03-09\n  G major, 8ths at 60 clean\n");
  const first = await askForFigures(client, { uri: open });
  const last = first.reading ? await client.until(() => changes.at(-1)) : undefined;
  const after = await askForFigures(client, { uri: open });
  expect([after.reading, exercises(after).length]).toEqual([false, 2]);
  if (first.reading) expect(last!.journal).toBe(first.journal);
});

test("a client that never asked for a preview hears of no change", async () => {
  const client = await startServerHere({ options });
  const changes = listen(client);
  await client.open(uri, DAY);
  await client.pull(uri);
  await new Promise((resolve) => setTimeout(resolve, 300)); // twice the quiet after which it would be told
  expect(changes).toEqual([]);
});

test("of a file that is gone, what is left of its journal is shown", async () => {
  const folder = temporaryFolder({ "february.practice": DAY });
  const client = await startServerHere({ options, folders: [folder] });
  const gone = pathToFileURL(`${folder}/march.practice`).href;
  const figures = await askForFigures(client, { uri: gone, cursor: 7 });
  expect(figures).toMatchObject({ journal: pathToFileURL(folder).href, underCursor: null });
  expect(exercises(figures).map(({ place }) => place.uri)).toEqual([pathToFileURL(`${folder}/february.practice`).href]);
});

test("a journal that is no file yet goes by the name that the editor gives it", async () => {
  const client = await startServerHere({ options });
  await client.open("untitled:Untitled-1", DAY);
  expect(await askForFigures(client, { uri: "untitled:Untitled-1" })).toMatchObject({ name: "Untitled-1" });
});

test("a document that nobody knows has no figures, and a question of another shape is refused", async () => {
  const client = await startServerHere({ options });
  expect(await ask(client)).toMatchObject({ journal: uri, version: 0, exercises: null, reading: false });
  await expect(client.connection.sendRequest("daystave/preview", { uri: 7 })).rejects.toMatchObject({ code: -32602 });
});
