import { statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { eachFormatEdit, formatEdits } from "../../../server/features/layout/formatting.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { temporaryFolder } from "../../support/temporary-folder.ts";
import { daystave } from "../command-line.ts";

const UNTIDY = "2026-03-02 Mon\ngroundwork\nD minor,thirds,8ths at 60 clean\n";
const TIDY = "2026-03-02 Mon\ngroundwork\n  D minor, thirds, 8ths at 60 clean\n";

test("in place, and said", async () => {
  const { status, stdout, stderr, file } = await daystave(["format"], {
    files: { "a.practice": UNTIDY, "b.practice": TIDY },
  });
  expect({ status, stdout, stderr }).toEqual({
    status: 0,
    stdout: "",
    stderr: "a.practice is in the usual layout now\n",
  });
  expect(file("a.practice")).toBe(TIDY);
});

test("what it writes has no edits left", async () => {
  const { file } = await daystave(["format"], { files: { "a.practice": UNTIDY } });
  const uri = "file:///j/a.practice";
  expect(formatEdits(new Journal("file:///j", new Map([[uri, createDocument(file("a.practice"))]])), uri)).toEqual([]);
});

test("line ends and a byte order mark stay", async () => {
  const untidy = `\uFEFF${UNTIDY.replaceAll("\n", "\r\n")}`;
  const { file } = await daystave(["format"], { files: { "a.practice": untidy } });
  expect(file("a.practice")).toBe(`\uFEFF${TIDY.replaceAll("\n", "\r\n")}`);
});

test("a file that is laid out already is not written", async () => {
  const cwd = temporaryFolder({ "a.practice": TIDY });
  const before = statSync(join(cwd, "a.practice"));
  expect((await daystave(["format"], { cwd })).stderr).toBe("");
  expect(statSync(join(cwd, "a.practice")).ino).toBe(before.ino);
});

describe("--check", () => {
  test("names what would change, changes nothing, and exits with 1", async () => {
    const files = { "a.practice": UNTIDY, "b.practice": TIDY };
    const { status, stdout, file } = await daystave(["format", "--check"], { files });
    expect([status, stdout]).toEqual([1, "a.practice would change\n"]);
    expect(file("a.practice")).toBe(UNTIDY);
  });

  test("nothing to change", async () => {
    expect((await daystave(["format", "--check"], { files: { "b.practice": TIDY } })).status).toBe(0);
  });

  test("as JSON", async () => {
    const { stdout } = await daystave(["format", "--check", "--json"], { files: { "a.practice": UNTIDY } });
    expect(JSON.parse(stdout)).toEqual({ files: [{ path: "a.practice", changed: true }], skipped: [] });
  });
});

describe("standard input", () => {
  test("goes to standard output", async () => {
    const { status, stdout, stderr } = await daystave(["format", "-"], { stdin: `\uFEFF${UNTIDY}` });
    expect({ status, stdout, stderr }).toEqual({ status: 0, stdout: `\uFEFF${TIDY}`, stderr: "" });
  });

  test("also when nothing changes", async () => {
    expect((await daystave(["format", "-"], { stdin: TIDY })).stdout).toBe(TIDY);
  });
});

test("a file that is no text is left alone and named", async () => {
  const cwd = temporaryFolder();
  writeFileSync(join(cwd, "a.practice"), new Uint8Array([0, 1, 2]));
  const { status, stderr } = await daystave(["format"], { cwd });
  expect(status).toBe(0);
  expect(stderr).toBe("daystave: a.practice was left out. It is a binary file: it contains a NUL character.\n");
});

describe("text that cannot be read", () => {
  const LATIN_1 = new Uint8Array([0x44, 0xe9, 0x0a]);

  test("passes nothing on from standard input, and says so", async () => {
    const { status, stdout, stderr } = await daystave(["format", "-"], { stdin: LATIN_1 });
    expect({ status, stdout, stderr }).toEqual({
      status: 2,
      stdout: "",
      stderr: "daystave: - was left out. It is not UTF-8 text. Save it again with the encoding UTF-8.\n",
    });
  });

  test.each([
    ["check"],
    ["check --json"],
    ["check --explain-lines"],
    ["format"],
    ["format --check"],
    ["history"],
    ["export --csv"],
  ])(
    "%s: the status is 2 where its path was named, and that of the rest where it was met in a folder",
    async (line) => {
      const cwd = temporaryFolder({ "a.practice": LATIN_1, "b.practice": TIDY });
      const argv = line.split(" ");
      expect((await daystave([...argv, "a.practice"], { cwd })).status).toBe(2);
      expect((await daystave([...argv, ".", "a.practice"], { cwd })).status).toBe(2);
      const walked = await daystave(argv, { cwd });
      expect([walked.status, walked.stderr]).toEqual([
        0,
        expect.stringContaining("a.practice was left out. It is not UTF-8"),
      ]);
    },
  );
});

test("a check looks no further than the first line that would change", () => {
  const uri = "file:///j/a.practice";
  const days = Array.from({ length: 50 }, (_, i) => `20${10 + i}-03-02\nD minor,thirds\nD minor,thirds\n`);
  const journal = new Journal("file:///j", new Map([[uri, createDocument(days.join(""))]]));
  const looked: number[] = [];
  expect(eachFormatEdit(journal, uri, undefined, (line) => looked.push(line)).next().done).toBe(false);
  expect(looked).toEqual([0, 1]);
});
