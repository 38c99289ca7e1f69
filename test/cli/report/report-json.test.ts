import { cpSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { isoDate, parseIsoDate } from "../../../server/journal/calendar.ts";
import { ROOT } from "../../architecture/source.ts";
import { temporaryFolder } from "../../support/temporary-folder.ts";
import { type Around, daystave } from "../command-line.ts";
import { faultsIn } from "../schemas.ts";

// Today is Tuesday 2026-03-10.

async function json(around: Around, ...argv: readonly string[]) {
  const { status, stdout, stderr } = await daystave(["report", "--json", ...argv], around);
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  const document = JSON.parse(stdout);
  expect(faultsIn(document, "report")).toEqual([]);
  return document;
}

/** One day a week up to Monday 2026-03-09, each with a tempo that was reached. */
function weekly(...tempos: readonly number[]): string {
  const last = parseIsoDate("2026-03-09")!;
  const dates = tempos.map((_, i) => isoDate(last - 7 * (tempos.length - 1 - i)));
  return tempos.map((bpm, i) => `${dates[i]}\n  D minor, thirds, slurred, 8ths at ${bpm} clean\n`).join("\n");
}

test("every field", async () => {
  const text = [
    'piece "Ground in G" as Ground: 96 bars, goal quarter=84\nset "clap line 4", 3 days by 2026-03-12\n',
    weekly(60, 60, 63, 63, 66, 66, 69, 69, 72, 72),
    "2026-03-10, 40 min\nwarm-up\n  breathing\n  C major, at 50\npieces, 10 min",
    '  Ground, bars 1-8, at 60 clean\ndone "clap line 4"\n  ask: louder?\nsaid: softer\nsore thumb\n',
  ].join("\n");
  const found = await json({ files: { "journal.practice": "player Noor\n", "a.practice": text } }, "--body");
  const { moved, early, aims, ...others } = found;
  // The trend of the design page's example (2.6): SciPy's slope, low and high, doubled as 8ths at a quarter.
  const trend = { slope: 3, low: 2.4, high: 3, level: 0.95, verdict: "rising", weeks: 10 };
  expect(moved).toEqual([
    {
      subject: "D natural minor, thirds",
      strand: "octave, slurred, even",
      best: 144,
      trend: { ...trend, low: expect.closeTo(2.4, 1), from: "2026-W02", to: "2026-W11" },
      facts: [],
    },
  ]);
  expect(early).toMatchObject([{ subject: "C major", best: null, trend: { verdict: "too early", from: null } }]);
  expect(aims).toEqual([]);
  expect(others).toEqual({
    name: "Noor",
    since: "2026-03-09",
    until: "2026-03-10",
    time: [
      { phase: "warm-up", minutes: 30, about: false },
      { phase: "pieces", minutes: 10, about: false },
    ],
    days: [
      { date: "2026-03-09", minutes: null },
      { date: "2026-03-10", minutes: 40 },
    ],
    settled: [],
    unchanged: [],
    pieces: [{ piece: "Ground", place: "bars 1-8", days: ["2026-03-10"], latest: 60, goal: 84 }],
    set: [{ text: "clap line 4", done: ["2026-03-10"], wanted: 3, by: "2026-03-12" }],
    questions: [{ date: "2026-03-10", text: "louder?" }],
    words: [{ date: "2026-03-10", text: "softer" }],
    body: [{ date: "2026-03-10", text: "sore thumb" }],
    skipped: [],
  });
});

test("without --body there is no such field", async () => {
  expect(await json({ files: { "a.practice": "2026-03-10\nsore thumb\n" } })).not.toHaveProperty("body");
});

test("several journals, each by itself", async () => {
  const files = {
    "noor/journal.practice": "player Noor\n",
    "noor/a.practice": "2026-03-09, 20 min\n  D minor, at 60 clean\n",
    "b/journal.practice": "",
    "b/a.practice": "2026-03-10\n  F major\n",
  };
  expect(await json({ files })).toMatchObject({
    journals: [
      { path: "b", name: "b", time: [], early: [], days: [{ date: "2026-03-10", minutes: null }] },
      { path: "noor", name: "Noor", time: [{ phase: null, minutes: 20 }], early: [{ subject: "D natural minor" }] },
    ],
    skipped: [],
  });
});

test("text from standard input has a title", async () => {
  const around = { stdin: "2026-03-10\n  D minor\n" };
  expect((await json(around, "-")).name).toBe("Practice");
  expect((await daystave(["report", "-"], around)).stdout).toMatch(/^# Practice, 2026-W11 \(9 to 15 March\)\n/);
});

test("what cannot be read fails, and says which", async () => {
  const { status, stderr } = await daystave(["report", "nowhere.practice"], { files: {} });
  expect({ status, stderr }).toEqual({
    status: 2,
    stderr: "daystave: nowhere.practice: There is no such file or folder.\n",
  });
});

test("a whole year is as its schema has it, and its minutes by phase are those of its days", async () => {
  const cwd = temporaryFolder();
  cpSync(join(ROOT, "samples/year"), cwd, { recursive: true });
  const found = await json({ cwd }, "--since", "2025-11-01", "--today", "2026-11-22", "--body");
  const sum = (rows: readonly { readonly minutes: number | null }[]) =>
    rows.reduce((all, { minutes }) => all + (minutes ?? 0), 0);
  expect(sum(found.time)).toBeCloseTo(sum(found.days), 3);
  expect(sum(found.days)).toBeGreaterThan(1000);
  for (const list of [found.moved, found.unchanged, found.early, found.pieces, found.body, found.aims])
    expect(list.length).toBeGreaterThan(0);
});
