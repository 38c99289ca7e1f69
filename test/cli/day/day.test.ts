import { describe, expect, test } from "vitest";
import { temporaryFolder } from "../../support/temporary-folder.ts";
import { type Around, daystave } from "../command-line.ts";

// Today is Tuesday, 2026-03-10.

/** What `daystave day` prints, on standard output. */
async function printed(argv: readonly string[], around: Around): Promise<string> {
  const { status, stdout } = await daystave(["day", ...argv], around);
  expect(status).toBe(0);
  return stdout;
}

describe("the day line is written as the journal writes them", () => {
  test.each([
    ["", "2026-03-10 Tue\n"],
    ["2026-03-02\nD minor\n", "2026-03-10\n"],
    ["2026-03-02 Monday\nD minor\n", "2026-03-10 Tuesday\n"],
    ["2026-03-02, mon.\nD minor\n", "2026-03-10, tue.\n"],
    ["2026-03-02 Mon\r\nD minor\r\n", "2026-03-10 Tue\r\n"],
  ])("after %j", async (text, line) => {
    expect(await printed([], { files: { "a.practice": text } })).toBe(line);
  });

  test("the latest day of any file counts; a file that is named counts by itself", async () => {
    const files = {
      "a.practice": "2026-02-02 monday\n",
      "b.practice": "2026-03-02\n",
      "journal.practice": "player Noor\n",
    };
    expect(await printed([], { files })).toBe("2026-03-10\n");
    expect(await printed(["a.practice"], { files })).toBe("2026-03-10 tuesday\n");
  });

  test("without any file, and on another day", async () => {
    expect(await printed(["--today", "2026-03-14"], {})).toBe("2026-03-14 Sat\n");
  });

  test("in a folder within a journal it is the journal's", async () => {
    const cwd = temporaryFolder({ "journal.practice": "", "a.practice": "2026-03-02, Mon\n", "sub/notes.txt": "" });
    expect(await printed([], { cwd: `${cwd}/sub` })).toBe("2026-03-10, Tue\n");
  });
});

describe("--phases", () => {
  const files = {
    "a.practice":
      "2026-03-02 Mon\nwarm-up, 5 min, cold hands\n  F major, slow\ngroundwork, 15 min\n  D minor, slow\n\n2026-03-03 Tue\nG major, slow\n",
  };

  test("those of the last session that had some, with their minutes", async () => {
    expect(await printed(["--phases"], { files })).toBe("2026-03-10 Tue\nwarm-up, 5 min\ngroundwork, 15 min\n");
  });

  test("where there are none, the day alone, and why", async () => {
    const { stdout, stderr } = await daystave(["day", "--phases"], {
      files: { "a.practice": "2026-03-02\nD minor\n" },
    });
    expect([stdout, stderr]).toEqual([
      "2026-03-10\n",
      "daystave: No earlier day of this journal has phases, so this is the day alone.\n",
    ]);
  });
});

describe("into a file of the journal", () => {
  test.each([
    ["2026-03-02\nA minor\n\n2026-03-03\nD minor\n", "\n2026-03-10\n", "an empty line parts its days"],
    ["2026-03-02\nA minor\n\n2026-03-03\nD minor", "\n\n2026-03-10\n", "its last line is not ended"],
    ["2026-03-02\nA minor\n\n2026-03-03\nD minor\n\n", "2026-03-10\n", "the empty line is there already"],
    ["2026-03-02\nA minor\n2026-03-03\nD minor\n", "2026-03-10\n", "nothing parts its days"],
    ["2026-03-02\r\nA minor\r\n", "\r\n2026-03-10\r\n", "its lines end in CR LF"],
    ["", "2026-03-10 Tue\n", "it is empty"],
  ])("%j is followed by %j: %s", async (text, more) => {
    const around = { files: { "a.practice": text }, into: "a.practice" };
    expect(await printed([], around)).toBe(more);
    const after = await daystave(["check", "--json"], { files: { "a.practice": text + more } });
    expect(JSON.parse(after.stdout).files[0].diagnostics).toEqual([]);
  });

  test("its own way of writing days counts", async () => {
    const files = { "a.practice": "2026-02-02 monday\n", "b.practice": "2026-03-02\n" };
    expect(await printed([], { files, into: "a.practice" })).toBe("\n2026-03-10 tuesday\n");
  });

  test("a file with its newest day first is not for its end", async () => {
    const files = { "a.practice": "2026-03-03\nD minor\n\n2026-03-02\nA minor\n" };
    const { stdout, stderr } = await daystave(["day"], { files, into: "a.practice" });
    expect([stdout, stderr]).toEqual([
      "\n2026-03-10\n",
      "daystave: This file has its newest day first: move the new day to the top.\n",
    ]);
  });
});

describe("today is there already", () => {
  const files = { "sub/a.practice": "2026-03-09 Mon\n\n2026-03-10 Tue\nD minor\n" };

  test("nothing is printed but where; it is no failure", async () => {
    expect(await daystave(["day", "--phases"], { files })).toMatchObject({
      status: 0,
      stdout: "",
      stderr: "daystave: 2026-03-10 is in the journal already: sub/a.practice, line 3.\n",
    });
    expect(await daystave(["day", "-q"], { files })).toMatchObject({ status: 0, stdout: "", stderr: "" });
  });

  test("JSON says so", async () => {
    expect(JSON.parse(await printed(["--json", "-q"], { files }))).toEqual({
      date: "2026-03-10",
      line: null,
      phases: [],
      there: { path: "sub/a.practice", line: 3 },
    });
    expect(JSON.parse(await printed(["--json", "--today", "2026-03-11"], { files }))).toEqual({
      date: "2026-03-11",
      line: "2026-03-11 Wed",
      phases: [],
      there: null,
    });
  });
});

describe("what cannot be", () => {
  test("several journals, none of them named", async () => {
    const files = { "a/journal.practice": "", "a/x.practice": "2026-03-02\n", "b/journal.practice": "" };
    const cwd = temporaryFolder(files);
    expect(await daystave(["day"], { cwd })).toMatchObject({
      status: 2,
      stdout: "",
      stderr: "daystave: There are several journals here. Name the folder of one: daystave day FOLDER\n",
    });
    expect(await printed(["a"], { cwd })).toBe("2026-03-10\n");
  });

  test("a path that is not there", async () => {
    expect(await daystave(["day", "gone"])).toMatchObject({ status: 2, stdout: "" });
  });
});
