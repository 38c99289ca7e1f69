import { describe, expect, test } from "vitest";
import { EXPLAIN_COLUMNS } from "../../../server/cli/check/explain-columns.ts";
import type { Files } from "../../support/temporary-folder.ts";
import { daystave } from "../command-line.ts";

/** What is printed of a file, line by line. */
async function check(text: string, expected: readonly string[], files: Files = {}) {
  const argv = ["check", "--explain-lines", "a.practice"];
  const { status, stdout } = await daystave(argv, { files: { "a.practice": text, ...files } });
  expect(stdout.split("\n").slice(0, -1)).toEqual(expected);
  expect(status).toBe(0);
}

test("how each line was read, one a line; blank ones are left out", () =>
  check(
    `2026-03-02 Mon, 30 min
warm-up, 10 min

  D minor, thirds, slurred, 8ths at 60 clean, 66-72 nearly
  felt good
  long tones, 5 min
`,
    [
      "a.practice:1 date |  |  |  |  |  |  |  | 30 | ",
      "a.practice:2 heading | warm-up |  |  |  |  |  |  | 10 | ",
      "a.practice:4 exercise | D natural minor | thirds | slurred |  | 8ths | 60; 66-72 | clean; nearly |  | ",
      "a.practice:5 remark |  |  |  |  |  |  |  |  | ",
      "a.practice:6 exercise | long tones |  |  |  |  |  |  | 5 | ",
    ],
  ));

test("subjects are called as the journal calls notes", () =>
  check(
    "2026-03-02\n  fis-Moll, at 60\n",
    [
      "a.practice:1 date |  |  |  |  |  |  |  |  | ",
      "a.practice:2 exercise | fis-Moll natürlich |  |  |  |  | 60 |  |  | ",
    ],
    { "journal.practice": "names german\n" },
  ));

test("with --json the same fields, by their names", async () => {
  const files = { "a.practice": '2026-03-02\n  "Gigue", bars 1-8, at 50 clean, 54\n' };
  const { status, stdout } = await daystave(["check", "--explain-lines", "--json"], { files });
  const { lines, skipped } = JSON.parse(stdout) as { lines: object[]; skipped: unknown };
  expect([status, skipped]).toEqual([0, []]);
  expect(Object.keys(lines[0]!)).toEqual(Object.keys(EXPLAIN_COLUMNS));
  expect(lines[1]).toEqual({
    path: "a.practice",
    line: 2,
    kind: "piece",
    subject: "Gigue",
    pattern: null,
    articulation: null,
    place: "bars 1-8",
    note_value: null,
    tempos: ["50", "54"],
    outcomes: ["clean", ""],
    minutes: null,
    words_left: [],
  });
});

test("nothing is looked for: what is wrong fails only a check", async () => {
  const files = { "a.practice": "2026-13-02\n" };
  expect((await daystave(["check"], { files })).status).toBe(1);
  expect((await daystave(["check", "--explain-lines"], { files })).status).toBe(0);
});

test("a terminal is not steered by what a journal says", () =>
  check("2026-03-02\n  D minor, \u202Eblorb, at 60\n", [
    "a.practice:1 date |  |  |  |  |  |  |  |  | ",
    "a.practice:2 exercise | D natural minor |  |  |  |  | 60 |  |  | \\u202Eblorb",
  ]));

describe("it does not go with", () => {
  test.each(["fix", "sarif"])("--%s", async (option) => {
    const { status, stderr } = await daystave(["check", "--explain-lines", `--${option}`], { files: {} });
    expect(status).toBe(2);
    expect(stderr).toBe(
      `daystave: Choose one: “--explain-lines” shows how lines were read, “--${option}” what is wrong.\n`,
    );
  });
});
