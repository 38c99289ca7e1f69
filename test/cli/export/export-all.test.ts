import { parse } from "csv-parse/sync";
import { describe, expect, test } from "vitest";
import { ALL_COLUMN_NAMES } from "../../../server/cli/export/export-columns.ts";
import type { Files } from "../../support/temporary-folder.ts";
import { daystave } from "../command-line.ts";

type Row = Record<string, string>;

/** The rows of `export --csv --all`, as csv-parse reads them. */
async function exported(files: Files, ...argv: string[]): Promise<Row[]> {
  const { status, stdout, stderr } = await daystave(["export", "--csv", "--all", ...argv], { files });
  expect([status, stderr]).toEqual([0, ""]);
  return parse(stdout, { record_delimiter: "\r\n", columns: true });
}

/** What stands in some columns of the rows for a text, without those of its day. */
async function check(text: string, columns: string, ...expected: string[][]) {
  const rows = await exported({ "journal.practice": JOURNAL, "a.practice": `2026-03-02 Mon\n${text}` });
  const told = rows.filter(({ type, line }) => type !== "day" && line !== "1");
  expect(told.map((row) => columns.split(" ").map((column) => row[column]))).toEqual(expected);
}

const JOURNAL = `player Noor
instrument alto recorder
piece "Lanterns on the canal" as Lanterns: D minor, goal half=60
`;

const WEEK = `2026-03-02 Mon, 30 min -- a cold room
groundwork, 20 min
  D minor, thirds, 8ths at 60 clean, 66 slips -- the first time
    -- easier with less air
  Lanterns, bars 1-8, slow
lesson, 10 min
  said: say the notes aloud
  ask: which fingering for the top F?
  set G major, 8ths at 66, 5 days by 2026-03-09
2026-03-04 Wed, rest, sore left thumb
2026-03-05
  sight-reading, 15 min
  Felt good today.
`;

test("a row for each thing, the oldest first, in the order of the lines", async () => {
  const rows = await exported({
    "journal.practice": `${JOURNAL}aim D minor, thirds, 8ths at 80\n`,
    "a.practice": WEEK,
  });
  expect(rows.map(({ date, line, type, subject, text }) => [date, line, type, subject, text])).toEqual([
    ["", "4", "aim", "D natural minor", "D minor, thirds, 8ths at 80"],
    ["2026-03-02", "1", "day", "", ""],
    ["2026-03-02", "1", "remark", "", "a cold room"],
    ["2026-03-02", "3", "attempt", "D natural minor", ""],
    ["2026-03-02", "3", "attempt", "D natural minor", ""],
    ["2026-03-02", "3", "remark", "D natural minor", "the first time"],
    ["2026-03-02", "4", "remark", "D natural minor", "easier with less air"],
    ["2026-03-02", "5", "attempt", "Lanterns on the canal", ""],
    ["2026-03-02", "7", "said", "", "say the notes aloud"],
    ["2026-03-02", "8", "question", "", "which fingering for the top F?"],
    ["2026-03-02", "9", "set", "G major", "G major, 8ths at 66, 5 days by 2026-03-09"],
    ["2026-03-04", "10", "rest", "", "sore left thumb"],
    ["2026-03-05", "11", "day", "", ""],
    ["2026-03-05", "12", "activity", "sight-reading", ""],
    ["2026-03-05", "13", "remark", "", "Felt good today."],
  ]);
  expect(new Set(rows.map(({ journal, player }) => `${journal} ${player}`))).toEqual(new Set([". Noor"]));
});

test("the attempts are those of every export", async () => {
  const files = { "journal.practice": JOURNAL, "a.practice": WEEK };
  const { stdout } = await daystave(["export", "--csv"], { files });
  const attempts: Row[] = parse(stdout, { columns: true });
  const rows = (await exported(files)).filter(({ type }) => type === "attempt");
  expect(rows).toEqual(
    attempts.map((row) => expect.objectContaining({ ...row, type: "attempt", text: "", due: "", days: "" })),
  );
  expect(rows).toHaveLength(3);
});

describe("days", () => {
  const days = async (text: string) => {
    const rows = await exported({ "a.practice": text });
    return rows
      .filter(({ type }) => type === "day" || type === "rest")
      .map(({ date, type, minutes }) => [date, type, minutes]);
  };
  test("with all their minutes, those of no exercise as well", async () =>
    expect(await days("2026-03-02, 30 min\n  D minor, 10 min\n")).toEqual([["2026-03-02", "day", "30"]]));
  test("without any", async () => expect(await days("2026-03-02\n  D minor\n")).toEqual([["2026-03-02", "day", ""]]));
  test("of two sittings", async () =>
    expect(await days("2026-03-02, 20 min\n  D minor\nsession, 15 min\n  D minor\n")).toEqual([
      ["2026-03-02", "day", "20"],
    ]));
  test("of rest, on which something was done away from the instrument", async () =>
    expect(await days("2026-03-02 rest\naway, 10 min\n  D minor, mental\n")).toEqual([["2026-03-02", "rest", "10"]]));
  test("that were only planned are none", async () =>
    expect(await days("2026-03-02 plan, 30 min\n  D minor\n2026-03-03\n")).toEqual([["2026-03-03", "day", ""]]));
});

describe("rows of one kind", () => {
  test("activities: with the time that was left for them", () =>
    check(
      "together, 60 min\n  rehearsal\n  tuning, 15 min\n",
      "type phase instrument subject minutes about",
      ["activity", "together", "alto recorder", "rehearsal", "45", "yes"],
      ["activity", "together", "alto recorder", "tuning", "15", "no"],
    ));
  test("planned ones are none", () =>
    check("scales\n  C major, at 60\nplan\n  rehearsal\n  D minor, at 60\n", "type subject", ["attempt", "C major"]));
  test("set work below its opening", () =>
    check(
      "for next week:\n  G major, thirds, 60\n  the Gavotte to the double bar\n",
      "type text",
      ["set", "G major, thirds, 60"],
      ["set", "the Gavotte to the double bar"],
    ));
  test("set work in words, and with its days", () =>
    check(
      'set "listen to the tape" by 2026-03-09\nset D minor, at 60, 4 days\n',
      "type subject tempo text due days",
      ["set", "", "", '"listen to the tape" by 2026-03-09', "2026-03-09", ""],
      ["set", "D natural minor", "60", "D minor, at 60, 4 days", "", "4"],
    ));
  test("aims: what is to be played, how and how fast", () =>
    check(
      "aim D minor, thirds, slurred, 8ths at 80 clean 5 in a row by 2026-06-01\naim Lanterns, by heart\n",
      "type subject pattern tonguing note_value tempo rate unit manner due",
      ["aim", "D natural minor", "thirds", "slurred", "8ths", "80", "160", "notes", "", "2026-06-01"],
      ["aim", "Lanterns on the canal", "", "single", "", "", "", "beats", "by heart", ""],
    ));
  test("an aim at several subjects: a row for each", () =>
    check("aim C major, G major, at 80\n", "type subject tempo", ["aim", "C major", "80"], ["aim", "G major", "80"]));
  test("pain, beside what was played and on a line of its own", () =>
    check(
      "left thumb hurts\nD minor, at 60 clean, sore right wrist\n",
      "type subject text",
      ["pain", "", "left thumb hurts"],
      ["attempt", "D natural minor", ""],
      ["pain", "D natural minor", "right wrist"],
    ));
});

describe("which rows", () => {
  const files = { "journal.practice": `${JOURNAL}aim Lanterns, by heart\n`, "a.practice": WEEK };
  const types = async (...argv: string[]) => (await exported(files, ...argv)).map(({ type }) => type).join(" ");
  test("--since and --until: those with a date in them", async () => {
    expect(await types("--since", "2026-03-03")).toBe("rest day activity remark");
    expect(await types("--until", "2026-03-04", "--since", "2026-03-04")).toBe("rest");
  });
  test("--subject: those about it", async () => {
    expect(await types("--subject", "D minor")).toBe("attempt attempt remark remark");
    expect(await types("--subject", "Lanterns")).toBe("aim attempt");
    expect(await types("--subject", "sight-reading")).toBe("activity");
  });
  test("--subject with a pattern", async () => {
    expect(await types("--subject", "D minor, thirds")).toBe("attempt attempt remark remark");
    const { status, stderr } = await daystave(["export", "--csv", "--all", "--subject", "D minor, fours"], { files });
    expect([status, stderr]).toEqual([
      2,
      "daystave: “D minor, fours” was not practised. Did you mean “D natural minor”?\n",
    ]);
  });
  test("--names", async () => {
    const rows = await exported(files, "--names", "german", "--subject", "D minor");
    expect(new Set(rows.map(({ subject }) => subject))).toEqual(new Set(["d-Moll natürlich"]));
  });
});

test("what a spreadsheet would run, and what could steer a terminal", () =>
  check('-- =1+1\n-- a, "b"; c\n-- \u001B[31mred\n', "text", ["'=1+1"], ['a, "b"; c'], ["\\u001B[31mred"]));

test("--json: the same rows, figures as figures", async () => {
  const { stdout } = await daystave(["export", "--json", "--all"], { files: { "a.practice": WEEK } });
  const { rows, skipped } = JSON.parse(stdout);
  expect(skipped).toEqual([]);
  expect(Object.keys(rows[0])).toEqual(ALL_COLUMN_NAMES);
  expect(rows.find(({ type }: { type: string }) => type === "set")).toMatchObject({
    days: 5,
    due: "2026-03-09",
    tempo: 66,
  });
});
