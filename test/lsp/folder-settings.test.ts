import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import {
  type ConfigurationItem,
  ConfigurationRequest,
  DidChangeConfigurationNotification,
  DidChangeWorkspaceFoldersNotification,
  HoverRequest,
  type MarkupContent,
  type ProtocolConnection,
  RegistrationRequest,
  ShowMessageNotification,
} from "vscode-languageserver-protocol/node";
import type { PreviewFigures, PreviewParams } from "../../shared/preview.ts";
import type { Settings } from "../../shared/protocol.ts";
import { PULLING, PUSHED, type StartOptions, type TestClient } from "./client.ts";
import { startServerHere } from "./server-here.ts";

const ANNA = "file:///nowhere/anna";
const BEN = "file:///nowhere/ben";
const annas = `${ANNA}/a.practice`;
const bens = `${BEN}/b.practice`;
const outside = "file:///elsewhere/c.practice";

/** Milliseconds. */
const SOON = { timeout: 10_000 };

const CONFIGURED = {
  ...PULLING,
  workspace: { ...PULLING.workspace, configuration: true, didChangeConfiguration: { dynamicRegistration: true } },
};

/** What a client says when it is asked: a folder's settings under its URI, all others' under "". Tests change it. */
type Answers = Record<string, Settings | null>;

async function startWith(answers: Answers, options: StartOptions = {}): Promise<TestClient> {
  return startServerHere({
    capabilities: CONFIGURED,
    folderUris: [ANNA, BEN],
    options: { today: "2026-03-08" },
    ...options,
    prepare: (connection) => {
      answer(connection, ({ scopeUri = "" }) => answers[scopeUri] ?? null);
      options.prepare?.(connection);
    },
  });
}

function answer(connection: ProtocolConnection, settingsOf: (item: ConfigurationItem) => unknown): void {
  connection.onRequest(ConfigurationRequest.type, ({ items }) => items.map(settingsOf));
  connection.onRequest(RegistrationRequest.type, () => {});
}

/** The editor says that some setting changed; which one it does not say. */
function tellOfChange(client: TestClient): Promise<void> {
  return client.connection.sendNotification(DidChangeConfigurationNotification.type, { settings: null });
}

function changeFolders(client: TestClient, added: readonly string[], removed: readonly string[]): Promise<void> {
  const folders = (uris: readonly string[]) => uris.map((uri) => ({ uri, name: uri }));
  return client.connection.sendNotification(DidChangeWorkspaceFoldersNotification.type, {
    event: { added: folders(added), removed: folders(removed) },
  });
}

// G major has one sharp, F#, as in reference/keysignatures.tsv; a major scale's steps are common practice, no source.
const SIGNATURE = "; one sharp.";
const STEPS = "Steps: T T S T T T S";
const DAY = "2026-03-02\n  G major, 8ths at 60 clean\n";

/** Which of the two lines of theory the hover on the document's entry has. */
async function explains(client: TestClient, uri: string): Promise<string[]> {
  const found = await client.connection.sendRequest(HoverRequest.type, {
    textDocument: { uri },
    position: { line: 1, character: 4 },
  });
  const { value } = found!.contents as MarkupContent;
  return [SIGNATURE, STEPS].filter((line) => value.includes(line));
}

async function openAll(client: TestClient, text = DAY): Promise<void> {
  for (const uri of [annas, bens, outside]) await client.open(uri, text);
}

test("each folder's hovers follow its own setting, and what lies outside follows the one of neither", async () => {
  const client = await startWith({ [ANNA]: { explain: "signature" }, [BEN]: { explain: "steps" }, "": null });
  await openAll(client);
  await expect.poll(() => explains(client, annas), SOON).toEqual([SIGNATURE]);
  expect(await explains(client, bens)).toEqual([STEPS]);
  expect(await explains(client, outside)).toEqual([SIGNATURE, STEPS]);
});

test("a change of one folder's setting changes its hovers alone", async () => {
  const answers: Answers = { [ANNA]: { explain: "signature" }, [BEN]: { explain: "steps" } };
  const client = await startWith(answers);
  await openAll(client);
  await expect.poll(() => explains(client, annas), SOON).toEqual([SIGNATURE]);
  answers[ANNA] = { explain: "none" };
  await tellOfChange(client);
  await expect.poll(() => explains(client, annas), SOON).toEqual([]);
  expect(await explains(client, bens)).toEqual([STEPS]);
  expect(await explains(client, outside)).toEqual([SIGNATURE, STEPS]);
  answers[ANNA] = null;
  await tellOfChange(client);
  await expect.poll(() => explains(client, annas), SOON).toEqual([SIGNATURE, STEPS]);
});

test("of nested folders the inner one's setting holds; without it the outer one's", async () => {
  const client = await startWith(
    { [ANNA]: { explain: "signature" }, [`${ANNA}/duets`]: { explain: "steps" } },
    { folderUris: [ANNA, `${ANNA}/duets`] },
  );
  const inner = `${ANNA}/duets/d.practice`;
  for (const uri of [annas, inner]) await client.open(uri, DAY);
  await expect.poll(() => explains(client, inner), SOON).toEqual([STEPS]);
  expect(await explains(client, annas)).toEqual([SIGNATURE]);
  await changeFolders(client, [], [`${ANNA}/duets`]);
  await expect.poll(() => explains(client, inner), SOON).toEqual([SIGNATURE]);
});

test("a folder that is added brings its setting, and takes it along when it is removed", async () => {
  const answers: Answers = { [BEN]: { explain: "steps" }, "": { explain: "none" } };
  const client = await startWith(answers, { folderUris: [ANNA] });
  await openAll(client);
  await expect.poll(() => explains(client, bens), SOON).toEqual([]);
  await changeFolders(client, [BEN], []);
  await expect.poll(() => explains(client, bens), SOON).toEqual([STEPS]);
  await changeFolders(client, [], [BEN]);
  await expect.poll(() => explains(client, bens), SOON).toEqual([]);
});

test("a folder is asked about as the editor spells it", async () => {
  const spelled = "file:///C%3A/Anna's%20Journal/";
  const asked: (string | undefined)[] = [];
  const client = await startServerHere({
    capabilities: CONFIGURED,
    folderUris: [spelled],
    prepare: (connection) =>
      answer(connection, ({ scopeUri }) => {
        asked.push(scopeUri);
        return null;
      }),
  });
  await client.open(annas, DAY);
  await expect.poll(() => asked, SOON).toEqual([undefined, spelled]);
});

test.each<[string, (item: ConfigurationItem) => unknown]>([
  ["has nothing to say by folder", ({ scopeUri }) => (scopeUri === undefined ? { explain: "steps" } : null)],
  ["looks at no folder", () => ({ explain: "steps" })],
])("a client that %s has the same settings everywhere", async (_, settingsOf) => {
  const client = await startServerHere({
    capabilities: CONFIGURED,
    folderUris: [ANNA],
    options: { today: "2026-03-08" },
    prepare: (connection) => answer(connection, settingsOf),
  });
  await openAll(client);
  await expect.poll(() => explains(client, annas), SOON).toEqual([STEPS]);
  expect(await explains(client, outside)).toEqual([STEPS]);
});

test("a client that fails when a folder is named is asked without", async () => {
  const client = await startServerHere({
    capabilities: CONFIGURED,
    folderUris: [ANNA],
    options: { today: "2026-03-08" },
    prepare: (connection) =>
      answer(connection, ({ scopeUri }) => {
        if (scopeUri !== undefined) throw new Error("no scopes here");
        return { explain: "steps" };
      }),
  });
  await openAll(client);
  await expect.poll(() => explains(client, annas), SOON).toEqual([STEPS]);
});

test("a client that answers no questions sends settings along for all folders, and is asked nothing", async () => {
  const asked: unknown[] = [];
  const client = await startServerHere({
    capabilities: PUSHED,
    folderUris: [ANNA, BEN],
    options: { today: "2026-03-08" },
    prepare: (connection) => answer(connection, (item) => asked.push(item)),
  });
  await openAll(client);
  await client.connection.sendNotification(DidChangeConfigurationNotification.type, {
    settings: { daystave: { explain: "steps" } },
  });
  await expect.poll(() => explains(client, annas), SOON).toEqual([STEPS]);
  expect(await explains(client, bens)).toEqual([STEPS]);
  expect(asked).toEqual([]);
});

test("an answer that comes after a later question's is dropped", async () => {
  const answers: Answers = { [ANNA]: { explain: "signature" } };
  let release: ((settings: unknown[]) => void) | undefined;
  const client = await startWith(answers);
  await openAll(client);
  await expect.poll(() => explains(client, annas), SOON).toEqual([SIGNATURE]);
  client.connection.onRequest(ConfigurationRequest.type, ({ items }) => {
    if (release) return items.map(() => ({ explain: "none" }));
    return new Promise((resolve) => {
      release = resolve;
      client.noticed();
    });
  });
  await tellOfChange(client);
  await client.until(() => release);
  await tellOfChange(client);
  await expect.poll(() => explains(client, annas), SOON).toEqual([]);
  release!([{ explain: "steps" }, { explain: "steps" }, { explain: "steps" }]);
  await client.pull(annas); // the late answer has been read before this is answered
  expect(await explains(client, annas)).toEqual([]);
});

/** 25 hours apart: whatever the time, the one's today is the other's tomorrow or the day after. */
const [EAST, WEST] = ["Pacific/Kiritimati", "Pacific/Pago_Pago"];

function todayIn(zone: string): Temporal.PlainDate {
  return Temporal.Now.plainDateISO(zone);
}

/** Whether the document's day is told to lie ahead. */
async function isAhead(client: TestClient, uri: string): Promise<boolean> {
  return (await client.codes(uri)).includes("future-day");
}

test("a day that lies ahead in one folder's time zone is today in the other's", async () => {
  const client = await startWith({ [ANNA]: { timeZone: EAST }, [BEN]: { timeZone: WEST } }, { options: {} });
  await openAll(client, `${todayIn(EAST)}\n  G major, 8ths at 60 clean\n`);
  await expect.poll(() => isAhead(client, bens), SOON).toBe(true);
  expect(await isAhead(client, annas)).toBe(false);
});

test("what is outside has the client's own zone", async () => {
  const client = await startWith({ [ANNA]: { timeZone: EAST } }, { options: { timeZone: WEST } });
  await openAll(client, `${todayIn(EAST)}\n  G major, 8ths at 60 clean\n`);
  await expect.poll(() => isAhead(client, annas), SOON).toBe(false);
  expect([await isAhead(client, bens), await isAhead(client, outside)]).toEqual([true, true]);
});

test("when one folder's zone changes the client is asked to look again, and the preview's day is another", async () => {
  const answers: Answers = { [ANNA]: { timeZone: EAST }, [BEN]: { timeZone: EAST } };
  let refreshes = 0;
  const client = await startWith(answers, {
    options: {},
    prepare: (connection) =>
      connection.onRequest("workspace/diagnostic/refresh", () => {
        refreshes += 1;
        return null;
      }),
  });
  await openAll(client, `${todayIn(EAST)}\n  G major, 8ths at 60 clean\n`);
  await expect.poll(() => isAhead(client, bens), SOON).toBe(false);
  expect(await isAhead(client, annas)).toBe(false);
  const previews = () => Promise.all([annas, bens].map((uri) => preview(client, uri)));
  const before = await previews();
  const asked = refreshes;
  answers[BEN] = { timeZone: WEST };
  await tellOfChange(client);
  await expect.poll(() => refreshes, SOON).toBeGreaterThan(asked);
  expect([await isAhead(client, annas), await isAhead(client, bens)]).toEqual([false, true]);
  const after = await previews();
  expect(after[0]!.version).toBe(before[0]!.version);
  expect(after[1]!.version).not.toBe(before[1]!.version);
});

test("at midnight in one folder's zone the client is asked to look again, and only that folder's day is another", async () => {
  let now = Date.UTC(2026, 2, 2, 22, 59, 59);
  // In winter an hour apart.
  const answers: Answers = { [ANNA]: { timeZone: "Europe/Oslo" }, [BEN]: { timeZone: "UTC" } };
  let refreshes = 0;
  const client = await startServerHere(
    {
      capabilities: CONFIGURED,
      folderUris: [ANNA, BEN],
      prepare: (connection) => {
        answer(connection, ({ scopeUri = "" }) => answers[scopeUri] ?? null);
        connection.onRequest("workspace/diagnostic/refresh", () => {
          refreshes += 1;
          return null;
        });
      },
    },
    { clock: () => now },
  );
  for (const uri of [annas, bens]) await client.open(uri, "2026-03-03\n  G major, 8ths at 60 clean\n");
  const look = () => Promise.all([annas, bens].map((uri) => isAhead(client, uri)));
  await expect.poll(look, SOON).toEqual([true, true]);
  const [annasBefore, bensBefore] = await Promise.all([annas, bens].map((uri) => preview(client, uri)));
  const asked = refreshes;
  now += 1000;
  await client.connection.sendRequest(HoverRequest.type, {
    textDocument: { uri: annas },
    position: { line: 1, character: 4 },
  });
  await expect.poll(() => refreshes, SOON).toBeGreaterThan(asked);
  expect(await look()).toEqual([false, true]);
  expect((await preview(client, annas)).version).not.toBe(annasBefore!.version);
  expect((await preview(client, bens)).version).toBe(bensBefore!.version);
});

async function preview(client: TestClient, uri: string): Promise<PreviewFigures> {
  const params: PreviewParams = { uri };
  return client.connection.sendRequest("daystave/preview", params);
}

test("a zone that does not exist is told once, however many folders name it", async () => {
  const messages: string[] = [];
  const nowhere: Settings = { timeZone: "Mars/Olympus" };
  const answers: Answers = { [ANNA]: nowhere, [BEN]: nowhere, "": nowhere };
  const client = await startWith(answers, {
    prepare: (connection) =>
      connection.onNotification(ShowMessageNotification.type, ({ message }) => void messages.push(message)),
  });
  await openAll(client);
  await expect.poll(() => messages.length, SOON).toBe(1);
  answers[ANNA] = { ...nowhere, explain: "none" };
  await tellOfChange(client);
  await expect.poll(() => explains(client, annas), SOON).toEqual([]); // so the settings have been looked at again
  expect(messages).toEqual([expect.stringMatching(/^“Mars\/Olympus” is not a known time zone/)]);
});

test("a plan keeps to the settings of its folder, and follows a change of them", async () => {
  const answers: Answers = { [ANNA]: { plan: { minutes: 35 } } };
  const client = await startWith(answers);
  await openAll(client);
  const minutes = async (uri: string) => (await preview(client, uri)).today.plan?.minutes;
  await expect.poll(() => minutes(annas), SOON).toBe(35);
  expect(await minutes(bens)).toBe(20); // plan.md 3: where nothing is usual yet
  const { version } = await preview(client, annas);
  answers[ANNA] = { plan: { minutes: 50 } };
  await tellOfChange(client);
  await expect.poll(() => minutes(annas), SOON).toBe(50);
  expect((await preview(client, annas)).version).toBeGreaterThan(version);
});
