import { describe, expect, test } from "vitest";
import type { HistoryOfStrand } from "../../../server/history/history.ts";
import { isoDate, parseIsoDate } from "../../../server/journal/calendar.ts";
import { daystave } from "../command-line.ts";

const MONDAY = parseIsoDate("2026-01-05")!;
const dateOf = (week: number) => isoDate(MONDAY + 7 * week);

/** A line a week from 2026-01-05 on, at these tempos; a tempo of 0 is a week without. */
function weekly(line: (tempo: number) => string, tempos: readonly number[]): string {
  return tempos.map((tempo, week) => (tempo === 0 ? "" : `${dateOf(week)}\n  ${line(tempo)}\n`)).join("");
}

const slurred = (tempo: number) => `F major, slurred, 8ths at ${tempo} clean`;
const tongued = (tempo: number) => `F major, tongued, 8ths at ${tempo} clean`;
const PAIR = weekly(slurred, [72, 72, 76, 76, 80, 80, 84, 84]) + weekly(tongued, [66, 69, 69, 72, 72, 76, 76, 80]);
const LOWER = weekly(
  (tempo) => `${slurred(tempo)}, ${tempo + 4} slips`,
  [80, 80, 80, 80, 0, 0, 0, 0, 69, 69, 72, 72, 76],
);

async function printed(files: Record<string, string>, ...argv: string[]): Promise<string> {
  const { stdout, status } = await daystave(["history", ...argv, "--today", "2026-05-01"], { files });
  expect(status).toBe(0);
  return stdout;
}

/** The first strand of the first exercise. */
async function strand(files: Record<string, string>, ...argv: string[]): Promise<HistoryOfStrand> {
  return JSON.parse(await printed(files, "--json", ...argv)).exercises[0].strands[0];
}

describe("--json", () => {
  test("settled: its week, its rate, how many tested weeks and tries since", async () => {
    const steady = (tempo: number) => `${slurred(tempo)} 2 of 2`;
    const days = weekly(steady, [76, 72, 76, 76, 72, 76, 72, 76, 76, 72, 76, 72]);
    const { settled } = await strand({ "a.practice": days });
    expect(settled).toEqual({ since: "2026-W02", best: 152, testedWeeks: 12, tries: 24 });
    expect((await strand({ "a.practice": days }, "--until", "2026-03-01")).settled).toBeNull(); // eight weeks
  });

  // 69 69 72 72 against 80: 70.5 is under 76. The slopes of the pairs of 138 138 144 144 152 are 0, 0, 2, 3, 3, 3.5, 4, 4.67, 6, 8.
  test("return: when, after how long, how much lower, and the trend since; the strand's own is of all weeks", async () => {
    const { return: back, trend } = await strand({ "a.practice": LOWER });
    expect(back).toEqual({
      since: "2026-03-02",
      days: 34,
      before: 160,
      after: 141,
      fresh: true,
      trend: expect.objectContaining({ weeks: 5, from: "2026-W10", to: "2026-W14", slope: 3.25 }),
    });
    expect(trend).toMatchObject({ weeks: 9, from: "2026-W02", to: "2026-W14" });
  });

  test("return: null without a break; practice of anything on the instrument, in whichever file, is none", async () => {
    expect((await strand({ "a.practice": PAIR })).return).toBeNull();
    const others = weekly((tempo) => `G major, 8ths at ${tempo} clean`, [0, 0, 0, 0, 60, 60, 60, 60]);
    const journal = { "journal.practice": "", "a.practice": LOWER, "b.practice": others };
    expect((await strand(journal, "a.practice")).return).toBeNull();
    expect((await strand(journal, "--subject", "F major")).return).toBeNull();
    const tenor = `instrument tenor recorder\n${others}`;
    const played = {
      "a.practice": LOWER.replaceAll("slurred", "slurred, on alto recorder"),
      "journal.practice": tenor,
    };
    expect((await strand(played, "--subject", "F major")).return).toMatchObject({ since: "2026-03-02", fresh: true });
  });

  test("comparisons: which is lower, in how many weeks, by how much; of either strand", async () => {
    const { exercises } = JSON.parse(await printed({ "a.practice": PAIR }, "--json"));
    const told = { of: "tongued", with: "slurred", weeks: 8, lower: 8, higher: 0, ratio: (66 / 72 + 72 / 76) / 2 };
    expect(exercises[0].strands.map(({ comparisons }: HistoryOfStrand) => comparisons)).toEqual([[told], [told]]);
  });

  test("nothing of this looks at days after today", async () => {
    const ahead = `${PAIR}2027-03-01\n  ${slurred(60)}\n`;
    expect((await strand({ "a.practice": ahead })).return).toBeNull();
  });
});

describe("the table", () => {
  test("--subject has a line each below a row, how two ways compare once", async () => {
    const [, ...rows] = (await printed({ "a.practice": PAIR }, "--subject", "F major")).split("\n\n")[0]!.split("\n");
    expect(rows.map((row) => row.replace(/ {3}.*/, ""))).toEqual([
      expect.stringMatching(/^F major \(octave, slurred, even\)/),
      expect.stringMatching(/^F major \(octave, single, even\)/),
      "  Tongued was below slurred in 8 of 8 weeks, by about 7 %.",
    ]);
    expect(await printed({ "a.practice": PAIR })).not.toContain("Tongued was");
  });

  test("the trend says since when it is looked at, and why", async () => {
    const shown = await printed({ "a.practice": LOWER });
    expect(shown).toMatch(/no clear change since 2 Mar {2}2026-03-30/);
    expect(shown.replaceAll("\n", " ")).toContain(
      "A trend since a day goes by what came after a break, as you came back lower.",
    );
    expect(await printed({ "a.practice": LOWER }, "--rates")).toContain("no clear change since 2 Mar");
    expect(await printed({ "a.practice": PAIR })).not.toContain("came back lower");
  });

  test("before four weeks have come it says how many there are", async () => {
    const shown = await printed({ "a.practice": LOWER }, "--subject", "F major", "--until", "2026-03-15");
    expect(shown).toContain("\n  Back since 2 March after 34 days; 2 of 4 tested weeks.\n");
  });
});
