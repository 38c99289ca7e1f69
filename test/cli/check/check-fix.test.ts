import { cpSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { fixFiles } from "../../../server/cli/check/check-fix.ts";
import { documentOf, readJournals } from "../../../server/cli/journals.ts";
import { type Files, temporaryFolder } from "../../support/temporary-folder.ts";
import { daystave, recordingIo } from "../command-line.ts";

const SAMPLES = fileURLToPath(new URL("../../../samples/", import.meta.url));

/** What `check --fix` makes of one file, and what it says of that. */
async function check(before: string, after: string, says: string) {
  const { file, stderr } = await daystave(["check", "--fix"], { files: { "a.practice": before } });
  expect(file("a.practice")).toBe(after);
  expect(stderr).toBe(says);
}

describe("what is safe is mended, and told", () => {
  test("a date in another order of signs", () =>
    check(
      "2026/03/02, 30 min\n  F major, slow\n",
      "2026-03-02, 30 min\n  F major, slow\n",
      "a.practice:1:1 fixed: “2026/03/02” is now “2026-03-02”\n",
    ));

  test("several places of a file", () =>
    check(
      "2026-03-02\n  F# major: F# G# A# B C# D# F F#\n  D minor, clean at 60\n",
      "2026-03-02\n  F# major: F# G# A# B C# D# E# F#\n  D minor, at 60 clean\n",
      "a.practice:2:30 fixed: “F” is now “E#”\na.practice:3:12 fixed: “clean at 60” is now “at 60 clean”\n",
    ));

  test("line ends and a byte order mark stay", () =>
    check(
      "\uFEFF2026/03/02\r\n  F major, slow\r2026/03/03\n  F major",
      "\uFEFF2026-03-02\r\n  F major, slow\r2026-03-03\n  F major",
      "a.practice:1:1 fixed: “2026/03/02” is now “2026-03-02”\na.practice:3:1 fixed: “2026/03/03” is now “2026-03-03”\n",
    ));
});

test("a weekday is never changed: nothing says whether it or the date is the slip", async () => {
  const text = "2026-03-02 Tue\n  F major, slow\n";
  await check(text, text, "");
});

test("a wrong pitch is never changed", async () => {
  const text = "2026-03-02\n  G harmonic minor: G A Bb C D Eb F G\n";
  await check(text, text, "");
});

describe("the report that follows is of what remains", () => {
  const files = { "a.practice": "2026/03/02 Tue\n  F# major: F# G# A# B C# D# F F#\n" };

  test("as text", async () => {
    const { status, stdout } = await daystave(["check", "--fix"], { files });
    expect(status).toBe(1);
    expect(stdout).toMatch(/^a\.practice:1:12 warning wrong-weekday .*\n1 file: 1 warning\.\n$/);
  });

  test("as JSON, with nothing else on standard output", async () => {
    const { stdout } = await daystave(["check", "--fix", "--json"], { files });
    expect(JSON.parse(stdout).files[0].diagnostics.map(({ code }: { code: string }) => code)).toEqual([
      "wrong-weekday",
    ]);
  });

  test("nothing left", async () => {
    const { status } = await daystave(["check", "--fix"], { files: { "a.practice": "2026/03/02 Mon\n" } });
    expect(status).toBe(0);
  });
});

test("only the files named are mended", async () => {
  const files = { "journal.practice": "", "a.practice": "2026/03/02\n", "b.practice": "2026/03/03\n" };
  const { file } = await daystave(["check", "--fix", "b.practice"], { files });
  expect([file("a.practice"), file("b.practice")]).toEqual(["2026/03/02\n", "2026-03-03\n"]);
});

test("a file that changed meanwhile is left alone and named, and what it held is reported", async () => {
  const cwd = temporaryFolder({ "a.practice": "2026/03/02\n", "b.practice": "2026/03/03\n" });
  const io = recordingIo({ cwd });
  const read = await readJournals([], io);
  if (!read.ok) throw new Error(read.reason);
  writeFileSync(join(cwd, "a.practice"), "2026/03/02, 5 min\n");
  const { refused, journals } = fixFiles(read, io);
  expect(refused).toBe(true);
  expect(readFileSync(join(cwd, "a.practice"), "utf8")).toBe("2026/03/02, 5 min\n");
  expect(readFileSync(join(cwd, "b.practice"), "utf8")).toBe("2026-03-03\n");
  expect(io.written.stderr).toBe(
    "daystave: a.practice was not written. It changed in the meantime, so it was left alone.\nb.practice:1:1 fixed: “2026/03/03” is now “2026-03-03”\n",
  );
  const lines = read.files.map((file) => documentOf(file, journals).blocks.map((block) => block.lines[0]));
  expect(lines).toEqual([["2026/03/02"], ["2026-03-03"]]);
});

test("standard input cannot be mended in place", async () => {
  const { status, stderr } = await daystave(["check", "--fix", "-"]);
  expect([status, stderr]).toEqual([2, "daystave: “--fix” writes into files, and cannot fix standard input.\n"]);
});

test("in every sample one run mends all that is safe: a second finds nothing to mend", async () => {
  const cwd = temporaryFolder();
  cpSync(SAMPLES, cwd, { recursive: true });
  const first = await daystave(["check", "--fix"], { cwd });
  const second = await daystave(["check", "--fix"], { cwd });
  expect(first.stderr).toContain("fixed");
  expect(second.stderr).toBe("");
  expect(second.stdout).toBe(first.stdout);
});

test("control characters of a journal are not said raw", async () => {
  const files: Files = { "a.practice": '2026-03-02\n  "x\u001B[31m", clean at 60\n' };
  const { stdout, stderr } = await daystave(["check", "--fix"], { files });
  expect(stdout + stderr).not.toContain("\u001B");
});
