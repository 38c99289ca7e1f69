import { describe, expect, test } from "vitest";
import type { HistoryReport } from "../../../server/cli/history/history-json.ts";
import { daystave } from "../command-line.ts";

/** What `history --json` prints of a journal of one file. */
async function report(text: string, ...options: string[]): Promise<HistoryReport> {
  const { status, stdout } = await daystave(["history", "--json", ...options], { files: { "a.practice": text } });
  expect(status).toBe(0);
  return JSON.parse(stdout);
}

/** A week in the order of its fields: ISO week, best, tested, attempts, minutes; its usual tempo is the best unless said. */
function week(
  label: string,
  bestClean: number | null,
  tested: boolean,
  attempts: number,
  minutes: number,
  usual = bestClean,
) {
  return { week: label, bestClean, usual, tested, attempts, minutes, about: false };
}

/** Practice in the weeks 6, 9, 10 and 11 of 2026, in 8ths: two notes to a beat. */
const THIRDS = `2026-02-02 Mon
  D minor melodic, thirds, slurred, 8ths at 60 clean, 10 min
2026-02-25 Wed
  D minor melodic, thirds, slurred, 8ths at 63 clean, 66 slips, 12 min
2026-03-02 Mon
  D minor melodic, thirds, slurred, 8ths at 63 clean, 5 min
2026-03-04 Wed
  D minor melodic, thirds, slurred, 8ths at 50 clean, 5 min
2026-03-09 Mon
  D minor melodic, thirds, slurred, 8ths at 66 clean, 8 min
`;

const WEEKS = [
  week("2026-W06", 120, true, 1, 10),
  week("2026-W09", 126, true, 2, 12),
  week("2026-W10", 126, true, 2, 10),
  week("2026-W11", 132, true, 1, 8),
];

// Weeks 0, 3, 4, 5 with 120, 126, 126, 132: the slopes of the pairs are 0, 1.5, 2, 2.4, 3, 6, their median 2.2.
const TREND = {
  slope: 2.2,
  low: 0,
  high: 6,
  level: 0.95,
  verdict: "level",
  weeks: 4,
  from: "2026-W06",
  to: "2026-W11",
};

test("what is steady today, and how often each tempo was reached", async () => {
  const days = "2026-03-02\n  D minor, 8ths at 60 clean 4 of 5, 66 slips\n2026-03-04\n  D minor, 8ths at 60 clean\n";
  const { exercises } = await report(days);
  expect(exercises[0]!.strands[0]).toMatchObject({
    steady: 120,
    shares: [{ rate: 120, reached: 5, tries: 6, days: 2, low: expect.any(Number), high: expect.any(Number) }],
  });
});

describe("the document", () => {
  test("an exercise of one strand: the weeks with practice, and the trend over the weeks as they lie apart", async () => {
    const even = { reach: "octave", tonguing: "slurred", evenness: "even" };
    expect(await report(THIRDS)).toEqual({
      exercises: [
        {
          subject: "D melodic minor",
          pattern: "thirds",
          instrument: null,
          weeks: WEEKS,
          trend: TREND,
          lastPractised: "2026-03-09",
          strand: "octave, slurred, even",
          strands: [
            {
              name: "octave, slurred, even",
              ...even,
              weeks: WEEKS,
              trend: TREND,
              lastPractised: "2026-03-09",
              settled: null,
              return: { since: "2026-02-25", days: 22, before: null, after: null, fresh: false, trend: null },
              steady: null,
              shares: [],
              comparisons: [],
            },
          ],
        },
      ],
      skipped: [],
    });
  });

  test("a piece: its movements and places are strands", async () => {
    const { exercises } = await report(
      `2026-03-02
  "Lanterns", mvt 2, bars 1-8, at 50 clean
  "Lanterns", at 60 clean
2026-03-09
  "Lanterns", at 63 clean
`,
    );
    expect(exercises).toMatchObject([
      {
        subject: "Lanterns",
        pattern: null,
        strand: "whole piece",
        weeks: [week("2026-W10", 60, true, 1, 0), week("2026-W11", 63, true, 1, 0)],
        strands: [
          { name: "whole piece", reach: null, tonguing: null, evenness: null, movement: null, place: null },
          { name: "mvt 2, bars 1-8", movement: "mvt 2", place: "bars 1-8", weeks: [week("2026-W10", 50, true, 1, 0)] },
        ],
      },
    ]);
  });

  test("no exercise", async () => expect(await report("2026-03-02\n  rest\n")).toEqual({ exercises: [], skipped: [] }));

  test("it is one line, and what could steer a terminal is escaped", async () => {
    const text = '2026-03-02\n  "a\u202Eb \\ 日本 🎵", bars 1-8, at 60 clean\n';
    const { stdout } = await daystave(["history", "--json"], { files: { "a.practice": text } });
    expect(stdout).toMatch(/^\{.*\}\n$/);
    expect(stdout).toContain("\\u202E");
    expect(JSON.parse(stdout).exercises[0].subject).toBe("a\u202Eb \\ 日本 🎵");
  });
});

describe("a week is listed", () => {
  const check = async (text: string, weeks: readonly unknown[]) =>
    expect((await report(text)).exercises[0]!.weeks).toEqual(weeks);

  test("where an attempt fell in it, without a tempo and without minutes as well", () =>
    check("2026-03-02\n  D minor, slow\n2026-03-23\n  D minor, at 60 slips\n", [
      week("2026-W10", null, false, 1, 0),
      week("2026-W13", null, false, 1, 0),
    ]));

  test("where minutes did", () =>
    check("2026-03-02\n  D minor, 20 min\n2026-03-23\n  D minor, 5 min\n", [
      week("2026-W10", null, false, 1, 20),
      week("2026-W13", null, false, 1, 5),
    ]));

  test("for the strand that was practised in it, and for no other of the exercise", async () => {
    const { exercises } = await report(`${THIRDS}2026-03-10\n  D minor melodic, thirds, tongued, 8ths at 40 clean\n`);
    expect(exercises[0]!.strands.map(({ name, weeks }) => [name, weeks.map((each) => each.week)])).toEqual([
      ["octave, slurred, even", ["2026-W06", "2026-W09", "2026-W10", "2026-W11"]],
      ["octave, single, even", ["2026-W11"]],
    ]);
  });
});

describe("strands", () => {
  const SEVERAL = `${THIRDS}2026-03-10
  D minor melodic, thirds, tongued, 8ths at 40 clean
  D minor melodic, thirds, slurred, 2 octaves, 8ths at 44 clean
`;

  test("all are listed with their weeks, and the one shown is found by its name", async () => {
    const { exercises } = await report(SEVERAL);
    const { strand, strands, weeks, trend } = exercises[0]!;
    expect(strands.map(({ name }) => name)).toEqual([
      "octave, slurred, even",
      "wide, slurred, even",
      "octave, single, even",
    ]);
    const shown = strands.filter(({ name }) => name === strand);
    expect(shown).toMatchObject([{ weeks, trend }]);
    expect(weeks).toEqual(WEEKS);
  });

  test("--since shows the strand with most weeks from that day's on", async () => {
    const { exercises } = await report(SEVERAL, "--since", "2026-03-10");
    const { strand, strands } = exercises[0]!;
    expect(strand).toBe("wide, slurred, even");
    expect(strands.map(({ name, weeks }) => [name, weeks.map((each) => each.week)])).toEqual([
      ["wide, slurred, even", ["2026-W11"]],
      ["octave, single, even", ["2026-W11"]],
    ]);
  });
});

describe("--blank-weeks", () => {
  const EVERY = [WEEKS[0], week("2026-W07", null, false, 0, 0), week("2026-W08", null, false, 0, 0), ...WEEKS.slice(1)];

  test("lists every week from a strand's first to its last, and changes no figure", async () => {
    const { exercises } = await report(THIRDS, "--blank-weeks");
    expect(exercises).toMatchObject([{ weeks: EVERY, trend: TREND, strands: [{ weeks: EVERY, trend: TREND }] }]);
  });

  test("with --since from the first week with practice on", async () => {
    const { exercises } = await report(THIRDS, "--blank-weeks", "--since", "2026-02-09");
    expect(exercises[0]!.weeks).toEqual(WEEKS.slice(1));
  });

  const refused = async (text: string, ...argv: string[]) => {
    const { status, stdout, stderr } = await daystave(["history", ...argv], { files: { "a.practice": text } });
    expect([status, stdout]).toEqual([2, ""]);
    return stderr;
  };

  test("goes with --json alone", async () =>
    expect(await refused(THIRDS, "--blank-weeks")).toBe(
      "daystave: “--blank-weeks” goes with --json; the table shows them anyway.\n",
    ));

  test("is refused where the weeks fill no document, as over a mistyped year", async () => {
    const studies = Array.from({ length: 12 }, (_, i) => `  "Study ${i + 1}", at 60 clean\n`).join("");
    const text = `0202-03-02\n${studies}2026-03-02\n${studies}`;
    // 0202-03-02 is a Tuesday, 666,203 days before (Python's datetime): 95,172 weeks apart, so 95,173 of each study.
    expect(await refused(text, "--json", "--blank-weeks")).toBe(
      "daystave: “--blank-weeks” would list 1142076 weeks, more than fit into one document: the attempts go from 0202-03-02 to 2026-03-02. Check the years, or ask for fewer with --since or --subject.\n",
    );
    expect((await report(text)).exercises).toHaveLength(12);
    expect((await report(text, "--blank-weeks", "--since", "2026-01-01")).exercises).toHaveLength(12);
  });
});
