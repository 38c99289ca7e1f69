import { join } from "node:path";
import { expect, test } from "vitest";
import type { PupilsParams, PupilsResult, PupilsShown } from "../../shared/pupils.ts";
import { temporaryFolder } from "../support/temporary-folder.ts";
import { type TestClient, uriOf } from "./client.ts";
import { startServerHere } from "./server-here.ts";

const options = { today: "2026-03-09" };
const FILES = {
  "journal.practice": "shared\nshare body\n",
  "noor/journal.practice": "player Noor\n",
  "noor/march.practice": "2026-03-05\n  C major, slow, sore thumb\nset G major, slow\n",
  "ben/journal.practice": "player Ben\nshare body\n2026-03-06\nleft wrist sore\n",
};

function ask(client: TestClient, params: PupilsParams = {}): Promise<PupilsResult> {
  return client.connection.sendRequest("daystave/pupils", params);
}

async function shown(client: TestClient): Promise<PupilsShown> {
  const answer = await ask(client);
  if ("unchanged" in answer) throw new Error("Nothing changed, where the pupils were asked for.");
  return answer;
}

test("a row for each journal of the workspace, though none is open, and nothing while all stays as it is", async () => {
  const client = await startServerHere({ options, folders: [temporaryFolder(FILES)] });
  const { version, pupils } = await shown(client);
  const rows = pupils.map(({ name, last, set, body }) => [name, last?.text ?? "", set.length, body.length]);
  expect(rows).toEqual([
    ["Ben", "", 0, 1],
    ["Noor", "Thu 5 Mar", 1, 0],
  ]);
  expect(await ask(client, { version })).toEqual({ unchanged: true });
});

test("what is typed in one journal is in its row alone, and the client hears of it", async () => {
  const folder = temporaryFolder(FILES);
  const client = await startServerHere({ options, folders: [folder] });
  const heard: unknown[] = [];
  client.connection.onNotification("daystave/changed", (params: unknown) => {
    heard.push(params);
    client.noticed();
  });
  const uri = uriOf(join(folder, "noor/march.practice"));
  await client.open(uri, FILES["noor/march.practice"]);
  const before = await shown(client);
  await client.edit(uri, `${FILES["noor/march.practice"]}2026-03-08\n  G major, slow\n`);
  await client.until(() => heard.at(-1));
  const after = await shown(client);
  expect(after.version).toBeGreaterThan(before.version);
  expect(after.pupils[0]).toEqual(before.pupils[0]);
  expect(after.pupils[1]!.set[0]!.below).toBe("played Sun 8");
});

test("a folder that is added brings its journals; a file from elsewhere is nobody's", async () => {
  const [one, other] = [temporaryFolder(FILES), temporaryFolder({ "journal.practice": "player Ida\n" })];
  const client = await startServerHere({ options, folders: [one] });
  await client.open("file:///elsewhere/a.practice", "2026-03-02\n  C major\n");
  expect((await shown(client)).pupils.map(({ name }) => name)).toEqual(["Ben", "Noor"]);
  await client.connection.sendNotification("workspace/didChangeWorkspaceFolders", {
    event: { added: [{ uri: uriOf(other), name: "ida" }], removed: [] },
  });
  await expect.poll(async () => (await shown(client)).pupils.map(({ name }) => name)).toEqual(["Ben", "Ida", "Noor"]);
});

test("parameters that make no sense count as none", async () => {
  const client = await startServerHere({ options, folders: [temporaryFolder(FILES)] });
  for (const params of [{ version: "1" }, { version: 1.5 }, []])
    expect(await client.connection.sendRequest("daystave/pupils", params)).toMatchObject({ pupils: [{}, {}] });
});
