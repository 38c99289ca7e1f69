import { expect, test } from "vitest";
import { isoDate, parseIsoDate } from "../../../server/journal/calendar.ts";
import { temporaryFolder } from "../../support/temporary-folder.ts";
import { type Around, daystave } from "../command-line.ts";

// Today is 2026-03-10, in 2026-W11.

/** One day a week up to Monday 2026-03-09, each with a tempo that was reached. */
function weekly(...tempos: readonly number[]): string {
  const last = parseIsoDate("2026-03-09")!;
  const days = tempos.map((bpm, i) => {
    const date = isoDate(last - 7 * (tempos.length - 1 - i));
    return `${date}\n  D minor, thirds, slurred, 8ths at ${bpm} clean\n`;
  });
  return days.join("\n");
}

const TEN = weekly(60, 60, 63, 63, 66, 66, 69, 69, 72, 72);
const AIM = "aim D minor, thirds, slurred, 8ths at 84";

/** What is printed for a journal of one file. */
async function check(text: string, expected: string, around: Around = {}): Promise<void> {
  const { status, stdout, stderr } = await daystave(["aims"], { files: { "a.practice": text }, ...around });
  expect({ status, stdout, stderr }).toEqual({ status: 0, stdout: expected, stderr: "" });
}

async function json(files: Around["files"], ...argv: readonly string[]) {
  const { status, stdout } = await daystave(["aims", "--json", ...argv], { files });
  expect(status).toBe(0);
  return JSON.parse(stdout);
}

test("each aim with its day, where it is, and its forecast", async () => {
  await check(
    `${AIM} by 2026-07-01\naim D minor, by heart\naim D minor, thirds, slurred, 8ths at 66 by 2026-03-01\n\n${TEN}`,
    [
      "D minor, thirds, slurred, 8ths at 84",
      "  For 1 July, in 113 days. Best yet: 8ths at 72, in the week of 2 March. If it goes on as in the last 10 tested weeks, in 7 to 12 weeks; it need not.",
      "D minor, by heart",
      "  No date set. Not done yet.",
      "D minor, thirds, slurred, 8ths at 66",
      "  Was for 1 March. Reached on 2 February.",
      "",
    ].join("\n"),
  );
});

test("on a terminal within its width", async () => {
  const around = { isTerminal: true, columns: 50, env: { NO_COLOR: "1" } };
  const { stdout } = await daystave(["aims"], { files: { "a.practice": `${AIM}\n\n${TEN}` }, ...around });
  const lines = stdout.trimEnd().split("\n");
  expect(lines.length).toBeGreaterThan(3);
  expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(50);
});

test("one whose date passed over four weeks ago is only counted", async () => {
  await check(
    "aim C major by 2026-02-10\naim E major by 2026-02-09\naim F major by 2025-01-01\n",
    [
      "C major",
      "  Was for 10 February. Not done yet.",
      "2 aims whose dates passed over four weeks ago are left out; --json has them.",
      "",
    ].join("\n"),
  );
  expect((await json({ "a.practice": "aim E major by 2025-02-09\n" })).aims).toMatchObject([
    { by: "2025-02-09", state: "past" },
  ]);
});

test("nothing to show is said on standard error, and no failure", async () => {
  const none = await daystave(["aims"], { files: {} });
  expect(none).toMatchObject({ status: 0, stdout: "", stderr: "daystave: There is no .practice file here.\n" });
  const { status, stdout, stderr } = await daystave(["aims"], { files: { "a.practice": TEN } });
  expect({ status, stdout }).toEqual({ status: 0, stdout: "" });
  expect(stderr).toMatch(/^daystave: No aim is written here yet\. A line such as “aim D minor/);
});

test("what cannot be read fails, and says which", async () => {
  const { status, stderr } = await daystave(["aims", "nowhere.practice"], { files: {} });
  expect(status).toBe(2);
  expect(stderr).toBe("daystave: nowhere.practice: There is no such file or folder.\n");
});

test("--json has every field", async () => {
  expect(await json({ "a.practice": `${AIM} by 2026-07-01\n\n${TEN}` })).toEqual({
    aims: [
      {
        text: "D minor, thirds, slurred, 8ths at 84 by 2026-07-01",
        subject: null,
        path: "a.practice",
        line: 0,
        by: "2026-07-01",
        state: "open",
        reachedOn: null,
        best: 144,
        wanted: 168,
        forecast: { earliest: 7, latest: 12, fromWeek: "2026-W18", toWeek: "2026-W23", testedWeeks: 10 },
        why: "If it goes on as in the last 10 tested weeks, in 7 to 12 weeks; it need not.",
      },
    ],
    skipped: [],
  });
});

test("--json says why there is no forecast", async () => {
  const { aims } = await json({
    "a.practice": `piece "Ground in G" as Ground\naim C major, F major, at 72\naim Ground, at 84\n\n2026-03-02\n  F major, at 72 clean\n  Ground, at 60 clean\n`,
  });
  const row = { path: "a.practice", by: null, forecast: null };
  expect(aims).toMatchObject([
    { ...row, subject: "C major", line: 1, state: "open", best: null, wanted: 72, why: "Not played yet." },
    {
      ...row,
      subject: "F major",
      line: 1,
      state: "reached",
      reachedOn: "2026-03-02",
      best: 72,
      why: "Reached on 2 March.",
    },
    { ...row, subject: null, line: 2, best: 60, wanted: 84, why: "Too early for a forecast: 1 of 6 tested weeks." },
  ]);
});

test("a range without an end has none in --json either", async () => {
  const { aims } = await json({ "a.practice": `${AIM}\n\n${weekly(60, 66, 60, 66, 69, 66, 69, 72, 69, 72, 76, 72)}` });
  expect(aims[0].forecast).toMatchObject({ latest: expect.anything(), toWeek: expect.stringMatching(/^2026-W\d\d$/) });
  const flat = await json({ "a.practice": `${AIM}\n\n${weekly(66, 69, 66, 72, 72, 76, 76, 76, 72, 76, 72, 76)}` });
  expect(flat.aims[0].forecast).toMatchObject({ latest: null, toWeek: null, testedWeeks: 12 });
});

test("several journals come one after another, each with whose it is; nothing of one counts for the other", async () => {
  const files = {
    "ann/journal.practice": `player Ann\n${AIM}\n\n${TEN}`,
    "bo/journal.practice": `player Bo\n${AIM}\n`,
  };
  const { stdout } = await daystave(["aims"], { files });
  expect(stdout.split("\n").map((line) => line.slice(0, 40))).toEqual([
    "Ann",
    "D minor, thirds, slurred, 8ths at 84",
    "  No date set. Best yet: 8ths at 72, in ",
    "",
    "Bo",
    "D minor, thirds, slurred, 8ths at 84",
    "  No date set. Not played yet.",
    "",
  ]);
  expect(await json(files)).toMatchObject({
    journals: [
      { path: "ann", name: "Ann", aims: [{ path: "ann/journal.practice", line: 1, best: 144 }] },
      { path: "bo", name: "Bo", aims: [{ path: "bo/journal.practice", best: null }] },
    ],
    skipped: [],
  });
});

test("a file named stands for the journal around it; text from another program is one by itself", async () => {
  const cwd = temporaryFolder({ "journal.practice": `${AIM}\n`, "march.practice": TEN });
  const named = JSON.parse((await daystave(["aims", "--json", "march.practice"], { cwd })).stdout);
  expect(named.aims).toMatchObject([{ path: "journal.practice", best: 144 }]);
  const typed = await daystave(["aims", "-", "--json"], { stdin: `${AIM}\n` });
  expect(JSON.parse(typed.stdout).aims).toMatchObject([{ path: "-", line: 0, why: "Not played yet." }]);
});

test("what could steer a terminal is shown as letters", async () => {
  const { stdout } = await daystave(["aims"], { files: { "a.practice": 'aim "G\u202Eround", at 72\n' } });
  expect(stdout).not.toContain("\u202E");
  expect(stdout).toContain("\\u202E");
});
