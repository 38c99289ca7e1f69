import { parseMidi } from "midi-file";
import { parse } from "musicxml-io";
import { expect, test } from "vitest";
import type { ExportParams, ExportResult, SheetParams, SheetResult } from "../../shared/export.ts";
import { startServer } from "./client.ts";
import { startWorker } from "./worker.ts";

// What is in the files, test/scores and test/features/sheet hold; here, that they arrive whole.

const uri = "file:///alone/week.practice";
const TEXT = `2026-03-02 Mon
  D minor, thirds, 8ths at 60 clean
  F# major
  sight-reading
`;

const START = { node: startServer, worker: startWorker };

async function opened(where: keyof typeof START) {
  const client = await START[where]({ options: { today: "2026-03-08" } });
  await client.open(uri, TEXT);
  const exported = (line: number, format: string, document = uri) => {
    const params = { textDocument: { uri: document }, position: { line, character: 0 }, format } as ExportParams;
    return client.connection.sendRequest<ExportResult>("daystave/export", params);
  };
  const sheet = (of: string, document = uri) => {
    const params = { textDocument: { uri: document }, of } as SheetParams;
    return client.connection.sendRequest<SheetResult>("daystave/sheet", params);
  };
  return { client, exported, sheet };
}

test.each(["node", "worker"] as const)("an exercise comes as bytes in Base64, from a server in a %s", async (where) => {
  const { exported } = await opened(where);
  const midi = await exported(1, "midi");
  if (!midi?.ok) throw new Error("no file");
  expect(midi.name).toBe("D natural minor, thirds");
  const { tracks } = parseMidi(Buffer.from(midi.base64, "base64"));
  expect(tracks[0]!.filter(({ type }) => type === "noteOn")).toHaveLength(24);
  const xml = await exported(2, "musicxml");
  if (!xml?.ok) throw new Error("no file");
  expect(xml.name).toBe("F sharp major");
  expect(parse(Buffer.from(xml.base64, "base64").toString("utf8")).metadata.workTitle).toBe("F# major");
});

test("where there is none a sentence says why, and of a document that nobody knows there is nothing", async () => {
  const { exported, sheet } = await opened("node");
  expect(await exported(3, "midi")).toEqual({ ok: false, reason: expect.stringMatching(/^Only a scale/) });
  expect(await exported(0, "midi")).toEqual({ ok: false, reason: expect.stringMatching(/^There is no entry/) });
  expect(await exported(1, "midi", "file:///gone.practice")).toBeNull();
  expect(await sheet("plan", "file:///gone.practice")).toBeNull();
});

test("a sheet is a page of HTML, of today or of this week", async () => {
  const { sheet } = await opened("node");
  const plan = await sheet("plan");
  expect(plan!.name).toBe("Plan for 8 March 2026");
  expect(plan!.html).toMatch(/^<!doctype html>/);
  const week = await sheet("week");
  expect(week!.name).toBe("Exercises, 2026-W10 2 to 8 March");
  expect(week!.html).toContain("<h3>F# major</h3>");
});

test("messages of another shape go no further", async () => {
  const { client } = await opened("node");
  for (const params of [{}, { textDocument: { uri }, position: { line: 1, character: 0 } }, { of: "week" }])
    for (const method of ["daystave/export", "daystave/sheet"])
      await expect(client.connection.sendRequest(method, params)).rejects.toThrow(/needs/);
});
