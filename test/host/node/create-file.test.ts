import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { createFile } from "../../../server/host/node/create-file.ts";
import { smallDisk } from "../../support/small-disk.ts";
import { temporaryFolder } from "../../support/temporary-folder.ts";

test("a new file has the whole text, and nothing else is left beside it", () => {
  const folder = temporaryFolder();
  expect(createFile(join(folder, "a.practice"), "player Zoë\n")).toEqual({ ok: true });
  expect(readdirSync(folder)).toEqual(["a.practice"]);
  expect(readFileSync(join(folder, "a.practice"), "utf8")).toBe("player Zoë\n");
});

test("what is there stays as it is", () => {
  const folder = temporaryFolder({ "a.practice": "player Anna\n" });
  expect(createFile(join(folder, "a.practice"), "x")).toEqual({
    ok: false,
    reason: "There is such a file or folder already.",
  });
  expect(readFileSync(join(folder, "a.practice"), "utf8")).toBe("player Anna\n");
  expect(readdirSync(folder)).toEqual(["a.practice"]);
});

test("a folder that is not there is a reason", () => {
  expect(createFile(join(temporaryFolder(), "gone/a.practice"), "x")).toEqual({
    ok: false,
    reason: "There is no such file or folder.",
  });
});

test("on a full disk nothing is left (skipped where a test may not mount one)", ({ skip }) => {
  const disk = smallDisk(16);
  if (disk === undefined) return skip("mounting a disk takes rights that this process has not");
  expect(createFile(join(disk, "a.practice"), "x".repeat(100_000))).toEqual({ ok: false, reason: "The disk is full." });
  expect(readdirSync(disk)).toEqual([]);
});
