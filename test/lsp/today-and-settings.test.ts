import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import {
  ConfigurationRequest,
  DidChangeConfigurationNotification,
  HoverRequest,
  type MarkupContent,
  type ProtocolConnection,
  RegistrationRequest,
  ShowMessageNotification,
} from "vscode-languageserver-protocol/node";
import { PULLING, startServer } from "./client.ts";
import { startServerHere } from "./server-here.ts";

const uri = "file:///alone/a.practice";
const CONFIGURED = {
  ...PULLING,
  workspace: { ...PULLING.workspace, configuration: true, didChangeConfiguration: { dynamicRegistration: true } },
};

/** A journal with an entry on each of three days: only those after today are told to lie ahead. */
function around(date: Temporal.PlainDate): string {
  const day = (offset: number) => `${date.add({ days: offset })}\n  G major, 8ths at 60 clean\n`;
  return day(-1) + day(0) + day(1);
}

/** The lines on which a day lies ahead. */
async function daysAhead(client: Awaited<ReturnType<typeof startServer>>): Promise<number[]> {
  const report = await client.pull(uri);
  const items = report.kind === "full" ? report.items : [];
  return items.filter(({ code }) => code === "future-day").map(({ range }) => range.start.line);
}

function todayIn(zone: string): Temporal.PlainDate {
  return Temporal.Now.plainDateISO(zone);
}

test.each(["UTC", "Pacific/Kiritimati", "Pacific/Pago_Pago", "Asia/Kathmandu"])(
  "the machine's zone is %s: today is its calendar day",
  async (zone) => {
    const client = await startServer({ environment: { TZ: zone } });
    await client.open(uri, around(todayIn(zone)));
    expect(await daysAhead(client)).toEqual([4]);
  },
);

test("the client's zone wins over the machine's", async () => {
  const client = await startServer({
    environment: { TZ: "Pacific/Pago_Pago" },
    options: { timeZone: "Pacific/Kiritimati" },
  });
  await client.open(uri, around(todayIn("Pacific/Kiritimati")));
  expect(await daysAhead(client)).toEqual([4]);
});

test("a day that the client names wins over every clock", async () => {
  const client = await startServerHere({ options: { today: "2001-05-06", timeZone: "UTC" } });
  await client.open(uri, around(Temporal.PlainDate.from("2001-05-06")));
  expect(await daysAhead(client)).toEqual([4]);
});

/** Answers the server's question for settings with whatever `settings` holds at the time. */
function answering(settings: { value: unknown }) {
  return (connection: ProtocolConnection) => {
    connection.onRequest(ConfigurationRequest.type, ({ items }) =>
      items.map(({ section }) => (section === "daystave" ? settings.value : "?")),
    );
    connection.onRequest(RegistrationRequest.type, () => {});
  };
}

/** What a hover on the first entry says. */
async function hover(client: Awaited<ReturnType<typeof startServer>>): Promise<string> {
  const found = await client.connection.sendRequest(HoverRequest.type, {
    textDocument: { uri },
    position: { line: 1, character: 4 },
  });
  return (found!.contents as MarkupContent).value;
}

test("settings that are null mean the defaults", async () => {
  const settings = { value: null as unknown };
  const unset = await startServerHere({ options: { today: "2026-03-08" } });
  const nulled = await startServerHere({
    options: { today: "2026-03-08" },
    capabilities: CONFIGURED,
    prepare: answering(settings),
  });
  for (const client of [unset, nulled]) await client.open(uri, "2026-03-02\n  G major, 8ths at 60 clean\n");
  expect(await hover(nulled)).toBe(await hover(unset));
});

test("a setting that changes is fetched, and holds from then on", async () => {
  const settings: { value: unknown } = { value: null };
  const client = await startServerHere({
    options: { today: "2026-03-08" },
    capabilities: CONFIGURED,
    prepare: answering(settings),
  });
  await client.open(uri, "2026-03-02\n  G major, 8ths at 60 clean\n");
  const both = await hover(client);
  settings.value = { explain: "none" };
  await client.connection.sendNotification(DidChangeConfigurationNotification.type, { settings: null });
  await expect.poll(() => hover(client)).not.toBe(both);
  settings.value = { explain: "both", timeZone: null };
  await client.connection.sendNotification(DidChangeConfigurationNotification.type, { settings: null });
  await expect.poll(() => hover(client)).toBe(both);
});

test("a client that answers no questions sends its settings along", async () => {
  const client = await startServerHere({ options: { today: "2026-03-08" } });
  await client.open(uri, "2026-03-02\n  G major, 8ths at 60 clean\n");
  const both = await hover(client);
  await client.connection.sendNotification(DidChangeConfigurationNotification.type, {
    settings: { daystave: { explain: "none" } },
  });
  await expect.poll(() => hover(client)).not.toBe(both);
});

test("the zone in the settings wins over the client's, and one that does not exist is told", async () => {
  const settings: { value: unknown } = { value: { timeZone: "Pacific/Kiritimati" } };
  const messages: string[] = [];
  const client = await startServer({
    environment: { TZ: "UTC" },
    options: { timeZone: "Pacific/Pago_Pago" },
    capabilities: CONFIGURED,
    prepare: (connection) => {
      answering(settings)(connection);
      connection.onNotification(ShowMessageNotification.type, ({ message }) => void messages.push(message));
    },
  });
  await client.open(uri, around(todayIn("Pacific/Kiritimati")));
  await expect.poll(() => daysAhead(client)).toEqual([4]);
  settings.value = { timeZone: "Mars/Olympus" };
  await client.connection.sendNotification(DidChangeConfigurationNotification.type, { settings: null });
  await expect
    .poll(() => messages)
    .toEqual([
      "“Mars/Olympus” is not a known time zone; a zone is written like Europe/Oslo. Until then, today is this computer's own day.",
    ]);
  await client.edit(uri, around(todayIn("UTC")));
  await expect.poll(() => daysAhead(client)).toEqual([4]);
});
