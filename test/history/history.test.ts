import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type HistoryChoice, historyOf } from "../../server/history/history.ts";
import type { AttemptRecord } from "../../server/history/record.ts";
import { parseIsoDate, parseWeekLabel } from "../../server/journal/calendar.ts";
import { attempt, pieceAttempt, practised } from "./attempt.ts";

/** The history printed as JSON, as scripts read it, is this. */
function check(records: AttemptRecord[], expected: unknown, choice: HistoryChoice = {}): void {
  expect(JSON.parse(JSON.stringify(historyOf(records, choice)))).toEqual(expected);
}

test("an exercise with its weeks, its trend and its strands", () => {
  const weeks = [
    { week: "2026-W10", bestClean: 132, usual: 132, tested: true, attempts: 3, minutes: 15, about: false },
    { week: "2026-W12", bestClean: 138, usual: 138, tested: true, attempts: 1, minutes: 5, about: false },
  ];
  const trend = {
    slope: 3,
    low: 3,
    high: 3,
    level: 0.95,
    verdict: "too early",
    weeks: 2,
    from: "2026-W10",
    to: "2026-W12",
  };
  check(
    practised(
      `2026-03-02  120 132 144x
       2026-03-18  138`,
    ),
    {
      exercises: [
        {
          subject: "D minor melodic",
          pattern: "thirds",
          instrument: "alto recorder",
          weeks,
          trend,
          lastPractised: "2026-03-18",
          strand: "octave, single, even",
          strands: [
            {
              name: "octave, single, even",
              reach: "octave",
              tonguing: "single",
              evenness: "even",
              weeks,
              trend,
              lastPractised: "2026-03-18",
            },
          ],
        },
      ],
    },
  );
});

test("with blank weeks: every week from the first to the last, and the same trend", () => {
  const records = practised(
    `2026-02-02  120
     2026-02-23  126
     2026-03-02  126
     2026-03-09  132`,
  );
  const [plain] = historyOf(records).exercises;
  const [blank] = historyOf(records, { blankWeeks: true }).exercises;
  expect(blank!.weeks.map(({ week, bestClean }) => [week, bestClean])).toEqual([
    ["2026-W06", 120],
    ["2026-W07", null],
    ["2026-W08", null],
    ["2026-W09", 126],
    ["2026-W10", 126],
    ["2026-W11", 132],
  ]);
  expect(blank!.weeks.filter(({ attempts }) => attempts > 0)).toEqual(plain!.weeks);
  expect(blank!.trend).toEqual(plain!.trend);
  // Weeks 0, 3, 4, 5: slopes 0, 2, 2, 2.4, 3, 6.
  expect(plain!.trend).toMatchObject({ slope: 2.2, weeks: 4 });
});

test("a title has a movement and a place, and no pattern", () => {
  const weeks = [{ week: "2026-W10", bestClean: 70, usual: 70, tested: true, attempts: 1, minutes: 15, about: false }];
  const trend = {
    slope: null,
    low: null,
    high: null,
    level: 0.95,
    verdict: "too early",
    weeks: 1,
    from: "2026-W10",
    to: "2026-W10",
  };
  const none = { reach: null, tonguing: null, evenness: null };
  check([pieceAttempt({ minutes: 15 })], {
    exercises: [
      {
        subject: "Ground in G minor",
        pattern: null,
        instrument: "alto recorder",
        weeks,
        trend,
        lastPractised: "2026-03-02",
        strand: "bars 17-32",
        strands: [
          {
            name: "bars 17-32",
            ...none,
            movement: null,
            place: "bars 17-32",
            weeks,
            trend,
            lastPractised: "2026-03-02",
          },
        ],
      },
    ],
  });
});

test("no records, no exercises", () => check([], { exercises: [] }));

test("until a day: as if nothing had been written after it", () => {
  const records = [
    ...practised("2026-01-05 60\n2026-01-12 63x\n2026-01-19 66\n2026-01-26 69\n2026-03-02 120"),
    ...practised("2026-02-16 60\n2026-02-23 63", { tonguing: "slurred" }),
    pieceAttempt({}),
  ];
  for (const date of ["2026-01-04", "2026-01-05", "2026-01-25", "2026-02-22", "2026-03-02", "2026-12-31"]) {
    const until = parseIsoDate(date)!;
    const before = records.filter(({ day }) => day <= until);
    expect(historyOf(records, { until }), date).toEqual(historyOf(before));
    // What is steady is judged by the days before the one that is asked about.
    const today = parseIsoDate("2027-01-01")!;
    expect(historyOf(records, { until, today }), date).toEqual(historyOf(before, { today: until + 1 }));
  }
});

describe("since a day", () => {
  const records = [
    ...practised("2026-01-05 60\n2026-01-12 63\n2026-01-19 66\n2026-01-26 69\n2026-03-02 120"),
    ...practised("2026-02-16 60\n2026-02-23 63", { tonguing: "slurred" }),
  ];

  test("the weeks from its own on are listed and fitted", () => {
    const { exercises } = historyOf(records, { since: parseIsoDate("2026-02-18")! });
    expect(exercises).toHaveLength(1);
    expect(exercises[0]!.strands.map(({ weeks }) => weeks.map(({ week }) => week))).toEqual([
      ["2026-W08", "2026-W09"],
      ["2026-W10"],
    ]);
  });

  test("the strand with most of those weeks is shown", () => {
    expect(historyOf(records).exercises[0]!.strand).toBe("octave, single, even");
    expect(historyOf(records, { since: parseIsoDate("2026-02-18")! }).exercises[0]!.strand).toBe(
      "octave, slurred, even",
    );
  });
});

describe("what must always hold", () => {
  const conditions = {
    day: fc.integer({ min: 20_500, max: 20_600 }),
    order: fc.nat(2),
    line: fc.nat(2),
    instrument: fc.constantFrom("alto recorder", null),
    rate: fc.option(fc.constantFrom(60, 63, 66, 69, 72)),
    reached: fc.boolean(),
    count: fc.integer({ min: 1, max: 5 }),
    minutes: fc.integer({ min: 1, max: 50 }).map((sevenths) => sevenths / 7),
    about: fc.boolean(),
  };
  const scale = fc
    .record({
      ...conditions,
      subject: fc.constantFrom("D minor melodic", "d minor melodic"),
      pattern: fc.constantFrom("thirds", "straight"),
      reach: fc.constantFrom("octave" as const, "wide" as const, null),
      tonguing: fc.constantFrom("single" as const, "slurred" as const),
    })
    .map(attempt);
  const piece = fc
    .record({
      ...conditions,
      movement: fc.constantFrom("mvt 2", null),
      where: fc.constantFrom("bars 1-8", "Bars 1-8", null),
    })
    .map(pieceAttempt);
  const records = fc.array(fc.oneof(scale, piece), { maxLength: 60 });
  const since = fc.option(fc.integer({ min: 20_490, max: 20_610 }), { nil: undefined });

  test("the history is the same in whatever order the records come", () => {
    fc.assert(
      fc.property(
        records.chain((all) => fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length }))),
        since,
        ([all, shuffled], since) => {
          expect(historyOf(shuffled, { since })).toEqual(historyOf(all, { since }));
        },
      ),
      { seed: 20 },
    );
  });

  test("every attempt is counted in one week of one strand, and the records are left as they were", () => {
    fc.assert(
      fc.property(records, (all) => {
        const before = structuredClone(all);
        const { exercises } = historyOf(all);
        const counted = exercises.flatMap(({ strands }) => strands).flatMap(({ weeks }) => weeks);
        expect(counted.reduce((sum, { attempts }) => sum + attempts, 0)).toBe(
          all.reduce((sum, { count }) => sum + count, 0),
        );
        expect(all).toEqual(before);
      }),
      { seed: 21 },
    );
  });

  test("the name of the strand that is shown leads to it and to no other", () => {
    fc.assert(
      fc.property(records, (all) => {
        for (const { strand, strands, weeks } of historyOf(all).exercises)
          expect(strands.filter(({ name }) => name === strand).map((each) => each.weeks)).toEqual([weeks]);
      }),
      { seed: 23 },
    );
  });

  test("blank weeks add weeks and change none", () => {
    fc.assert(
      fc.property(records, since, (all, since) => {
        const weeksOf = (blankWeeks: boolean) =>
          historyOf(all, { since, blankWeeks }).exercises.flatMap(({ strands }) => strands.map(({ weeks }) => weeks));
        const plain = weeksOf(false);
        weeksOf(true).forEach((every, i) => {
          expect(every.filter(({ attempts }) => attempts > 0)).toEqual(plain[i]);
          const days = every.map(({ week }) => parseWeekLabel(week)!);
          expect(days.slice(1).map((day, at) => day - days[at]!)).toEqual(days.slice(1).map(() => 7));
        });
      }),
      { seed: 24 },
    );
  });

  test("an exercise shows the first of its strands, and the latest practised comes first", () => {
    fc.assert(
      fc.property(records, since, (all, since) => {
        const { exercises } = historyOf(all, { since });
        for (const { weeks, trend, strands } of exercises)
          expect({ weeks, trend }).toEqual({ weeks: strands[0]!.weeks, trend: strands[0]!.trend });
        const days = exercises.map(({ lastPractised }) => lastPractised);
        expect(days).toEqual([...days].sort().reverse());
      }),
      { seed: 22 },
    );
  });
});
