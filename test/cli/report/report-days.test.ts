import { expect, test } from "vitest";
import { daystave } from "../command-line.ts";

// Today is Tuesday 2026-03-10, in 2026-W11.

const FILES = {
  "journal.practice": "player Ottilie\n",
  "a.practice": [
    ...["2026-02-28", "2026-03-08", "2026-03-09", "2026-03-10", "2026-03-11"].map((date) => `${date}\n  D minor, slow`),
    "",
  ].join("\n"),
};

/** The title of a report, and the days in it. */
async function check(argv: readonly string[], title: string, days: readonly string[]): Promise<void> {
  const { status, stdout, stderr } = await daystave(["report", ...argv], { files: FILES });
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  expect(stdout.split("\n")[0]).toBe(`# ${title}`);
  expect(stdout.match(/^\d{4}-\d\d-\d\d/gm) ?? []).toEqual(days);
}

/** Why a command line is no good. */
async function refused(argv: readonly string[], reason: string): Promise<void> {
  const { status, stdout, stderr } = await daystave(["report", ...argv], { files: FILES });
  expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
  expect(stderr.split("\n")[0]).toBe(`daystave: ${reason}`);
}

test("the week of today, without the days ahead", () =>
  check([], "Ottilie, 2026-W11 (9 to 15 March)", ["2026-03-09", "2026-03-10"]));

test("another week", async () => {
  await check(["--week", "2026-W10"], "Ottilie, 2026-W10 (2 to 8 March)", ["2026-03-08"]);
  await check(["--week", "2026-w09"], "Ottilie, 2026-W09 (23 February to 1 March)", ["2026-02-28"]);
  await check(["--week", "2026-W01"], "Ottilie, 2026-W01 (29 December 2025 to 4 January)", []);
});

test("from one day to another, or to today", async () => {
  await check(["--since", "2026-03-08", "--until", "2026-03-09"], "Ottilie, 8 to 9 March 2026", [
    "2026-03-08",
    "2026-03-09",
  ]);
  await check(["--since", "2026-03-09"], "Ottilie, 9 to 10 March 2026", ["2026-03-09", "2026-03-10"]);
  await check(["--since", "2026-02-28", "--until", "2026-04-01"], "Ottilie, 28 February to 1 April 2026", [
    "2026-02-28",
    "2026-03-08",
    "2026-03-09",
    "2026-03-10",
  ]);
  await check(["--since", "2026-03-09", "--until", "2026-03-09"], "Ottilie, 9 March 2026", ["2026-03-09"]);
});

test("days in which nothing is written", async () => {
  const { status, stdout } = await daystave(["report", "--week", "2025-W10"], { files: FILES });
  expect({ status, stdout }).toEqual({
    status: 0,
    stdout: "# Ottilie, 2025-W10 (3 to 9 March)\n\nNothing is written in these days.\n",
  });
});

test("no journal", async () => {
  const around = { files: {} };
  const said = { status: 0, stdout: "", stderr: "daystave: There is no .practice file here.\n" };
  expect(await daystave(["report"], around)).toMatchObject(said);
  expect(await daystave(["report", "--html"], around)).toMatchObject(said);
  expect(JSON.parse((await daystave(["report", "--json"], around)).stdout)).toMatchObject({ name: "", time: [] });
});

test("days that are none are refused", async () => {
  const week = (given: string) => `“--week” takes an ISO week, such as 2026-W11, not “${given}”.`;
  for (const given of ["2026-W54", "2026-W00", "W11", "11", "2025-W53"]) await refused(["--week", given], week(given));
  await refused(["--week", "2026-W12"], "“--week 2026-W12” is after today: put an earlier week.");
  await refused(["--since", "2026-03-11"], "“--since 2026-03-11” is after today: put an earlier day.");
  await refused(
    ["--since", "2026-03-09", "--until", "2026-03-08"],
    "“--until 2026-03-08” is before “--since 2026-03-09”: put the earlier day after --since.",
  );
  await refused(["--until", "2026-03-09"], "“--until” needs “--since”: say from which day, or name a “--week”.");
  await refused(
    ["--week", "2026-W10", "--since", "2026-03-09"],
    "Choose one of “--week” and “--since”: both say which days.",
  );
  await refused(
    ["--since", "2026-02-30"],
    "“--since” takes a date, year-month-day, such as 2026-03-02, not “2026-02-30”.",
  );
});

test("one form at a time, and options that are known", async () => {
  await refused(["--md", "--html"], "Choose one of “--md” and “--html”: each is a form of the whole report.");
  await refused(["--html", "--json"], "Choose one of “--html” and “--json”: each is a form of the whole report.");
  const { status, stderr } = await daystave(["report", "--weeks", "2026-W10"], { files: FILES });
  expect(status).toBe(2);
  expect(stderr).toContain("“report” has no option “--weeks”. Did you mean");
});
