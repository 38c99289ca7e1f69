import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { AttemptRecord } from "../../server/history/record.ts";
import { weeksFrom } from "../../server/history/week-span.ts";
import { bestWeek, everyWeek, type Week, weeksOf } from "../../server/history/weeks.ts";
import { parseIsoDate, weekIndex, weekLabel } from "../../server/journal/calendar.ts";
import { attempt, practised } from "./attempt.ts";

/** These lines of practice give these weeks: label, best reached, `tested` or `below`. */
function check(lines: string, expected: string): void {
  checkWeeks(weeksOf(practised(lines)), expected);
}

function checkWeeks(weeks: readonly Week[], expected: string): void {
  const told = weeks.map(({ week, bestClean, tested }) => `${week} ${bestClean ?? "-"} ${tested ? "tested" : "below"}`);
  expect(told).toEqual(
    expected
      .trim()
      .split("\n")
      .map((line) => line.trim()),
  );
}

describe("the weekly best", () => {
  test("is the highest rate that was reached, from Monday to Sunday", () => {
    check(
      `2026-03-02  60 66 72x
       2026-03-08  63
       2026-03-09  69`,
      `2026-W10 66 tested
       2026-W11 69 tested`,
    );
  });

  test("a week without practice is left out, and the numbers of the others say how far apart they are", () => {
    const lines = `2026-03-02  60
                   2026-03-23  66`;
    check(
      lines,
      `2026-W10 60 tested
       2026-W13 66 tested`,
    );
    const [a, b] = weeksOf(practised(lines));
    expect(b!.index - a!.index).toBe(3);
  });

  test("weeks run on over New Year, through week 53", () => {
    const lines = `2026-12-21  60
                   2027-01-04  63`;
    check(
      lines,
      `2026-W52 60 tested
       2027-W01 63 tested`,
    );
    const [a, b] = weeksOf(practised(lines));
    expect(b!.index - a!.index).toBe(2);
  });

  test("an attempt without a metronome is practice and no figure", () => {
    check("2026-03-02  -", "2026-W10 - below");
  });

  test("nothing gives nothing", () => expect(weeksOf([])).toEqual([]));
});

describe("tested, or worked below best", () => {
  test("0.85 of the best of the weeks before is a test, less is not", () => {
    check(
      `2026-03-02  100
       2026-03-09  85
       2026-03-16  84`,
      `2026-W10 100 tested
       2026-W11 85 tested
       2026-W12 84 below`,
    );
  });

  test("a slow week is a test when a faster tempo failed; the same one that failed does not make it one", () => {
    check(
      `2026-03-02  100
       2026-03-09  60 60x
       2026-03-16  60 72x
       2026-03-23  60 58x`,
      `2026-W10 100 tested
       2026-W11 60 below
       2026-W12 60 tested
       2026-W13 60 below`,
    );
  });

  test("a tempo of which nothing is said neither was reached nor failed", () => {
    const played = practised("2026-03-02  100\n2026-03-09  60");
    const [, slow] = weeksOf([...played, attempt({ day: played[1]!.day, order: 1, rate: 72, reached: null })]);
    expect(slow).toMatchObject({ bestClean: 60, tested: false, attempts: 2, tries: 1, reached: 1 });
  });

  test("eight weeks are looked back on, not nine; empty ones are passed over", () => {
    const eight =
      "2026-01-05 76\n2026-01-12 76\n2026-01-19 76\n2026-01-26 76\n2026-02-09 76\n2026-02-16 76\n2026-02-23 76";
    const last = (lines: string) => weeksOf(practised(lines)).at(-1);
    expect(last(`2025-12-29 100\n${eight}\n2026-03-02 76`)).toMatchObject({ week: "2026-W10", tested: false });
    expect(last(`2025-12-22 100\n2025-12-29 76\n${eight}\n2026-03-02 76`)).toMatchObject({ tested: true });
  });

  test("what is more than half a year away says nothing", () => {
    check(
      `2026-01-05  100
       2026-07-06  60`,
      `2026-W02 100 tested
       2026-W28 60 below`,
    );
    check(
      `2026-01-05  100
       2026-07-13  60`,
      `2026-W02 100 tested
       2026-W29 60 tested`,
    );
  });

  test("the first weeks are judged by those that follow, until four are at hand", () => {
    check(
      `2026-03-02  60
       2026-03-09  72
       2026-03-16  76
       2026-03-23  76
       2026-03-30  100`,
      `2026-W10 60 below
       2026-W11 72 tested
       2026-W12 76 tested
       2026-W13 76 tested
       2026-W14 100 tested`,
    );
  });

  test("a week that only failed has no figure to test, and is no best for those after it", () => {
    check(
      `2026-03-02  72x
       2026-03-09  60`,
      `2026-W10 - below
       2026-W11 60 tested`,
    );
  });
});

describe("the usual tempo of a week", () => {
  const usual = (lines: string) => weeksOf(practised(lines)).map((week) => week.usual);

  test("of one day is its best", () => expect(usual("2026-03-02  60 66 72x")).toEqual([66]));

  test("of several days is the middle one of their bests; of an even number the mean of the middle two", () => {
    expect(usual("2026-03-02  72\n2026-03-03  76\n2026-03-05  66 69")).toEqual([72]);
    expect(usual("2026-03-02  72\n2026-03-03  76")).toEqual([74]);
  });

  test("a day far below the week's best on which nothing faster failed was a slow one, and is left out", () => {
    expect(usual("2026-03-02  100\n2026-03-03  85\n2026-03-04  84")).toEqual([92.5]);
    expect(usual("2026-03-02  100\n2026-03-03  85\n2026-03-04  84 88x")).toEqual([85]);
  });

  test("a day that reached nothing has no figure", () => {
    expect(usual("2026-03-02  72\n2026-03-03  76x\n2026-03-04 -")).toEqual([72]);
    expect(usual("2026-03-02  72x")).toEqual([null]);
  });
});

test("tries, and how many of them were reached", () => {
  const records = [
    attempt({ count: 5, got: 4 }),
    attempt({ count: 3, got: 3, order: 1 }),
    attempt({ count: 1, reached: false, order: 2 }),
    attempt({ count: 1, reached: null, got: 0, order: 3 }),
  ];
  expect(weeksOf(records)).toMatchObject([{ attempts: 10, tries: 9, reached: 7 }]);
});

describe("attempts and minutes", () => {
  const monday = parseIsoDate("2026-03-02")!;

  test("are summed over the week", () => {
    const records = [attempt({ count: 5, minutes: 10 }), attempt({ day: monday + 6, minutes: 2.5 })];
    expect(weeksOf(records)).toEqual([
      {
        week: "2026-W10",
        index: weekIndex(monday),
        bestClean: 120,
        usual: 120,
        tested: true,
        attempts: 6,
        tries: 6,
        reached: 6,
        minutes: 12.5,
        about: false,
      },
    ]);
  });

  test("shares of a whole add up to the whole", () => {
    const records = [0, 1, 2].map((order) => attempt({ order, minutes: 20 / 3, about: true }));
    expect(weeksOf(records)[0]).toMatchObject({ minutes: 20, about: true });
  });
});

test("since a day shows its whole week and those after; what went before still judges", () => {
  const records = practised(
    `2026-03-02  100
     2026-03-09  60
     2026-03-11  58
     2026-03-16  95`,
  );
  const since = weeksOf(records, parseIsoDate("2026-03-11")!);
  expect(since).toEqual(weeksOf(records).slice(1));
  expect(since[0]).toMatchObject({ week: "2026-W11", bestClean: 60, tested: false });
  expect(weeksOf(records, parseIsoDate("2026-04-01")!)).toEqual([]);
  expect(weeksOf(practised("2026-03-02 60\n2026-03-23 66"), parseIsoDate("2026-03-09")!).map((w) => w.week)).toEqual([
    "2026-W13",
  ]);
});

describe("every week of a span", () => {
  const span = (first: string, last: string) => weeksFrom(parseIsoDate(first)!, parseIsoDate(last)!);

  test("an empty week stands in its place, with no figure", () => {
    const weeks = weeksOf(practised("2026-03-02  60\n2026-03-23  66"));
    checkWeeks(
      everyWeek(weeks, span("2026-03-02", "2026-03-29")),
      `2026-W10 60 tested
       2026-W11 - below
       2026-W12 - below
       2026-W13 66 tested`,
    );
    expect(everyWeek(weeks, span("2026-03-09", "2026-03-09"))).toEqual([
      {
        week: "2026-W11",
        index: weeks[0]!.index + 1,
        bestClean: null,
        usual: null,
        tested: false,
        attempts: 0,
        tries: 0,
        reached: 0,
        minutes: 0,
        about: false,
      },
    ]);
  });

  test("over New Year, through week 53", () =>
    checkWeeks(
      everyWeek(weeksOf(practised("2026-12-21  60\n2027-01-04  63")), span("2026-12-14", "2027-01-11")),
      `2026-W51 - below
       2026-W52 60 tested
       2026-W53 - below
       2027-W01 63 tested
       2027-W02 - below`,
    ));
});

test("the best week is the first with the highest best", () => {
  const bestOf = (lines: string) => bestWeek(weeksOf(practised(lines)))?.week;
  expect(bestOf("2026-03-02  60\n2026-03-09  66 72x\n2026-03-16  66\n2026-03-23  63")).toBe("2026-W11");
  expect(bestOf("2026-03-02  60x\n2026-03-09  -")).toBeUndefined();
});

describe("what must always hold", () => {
  const record = fc
    .record({
      day: fc.integer({ min: 20_500, max: 20_700 }),
      order: fc.nat(5),
      rate: fc.option(fc.integer({ min: 40, max: 240 })),
      reached: fc.boolean(),
      count: fc.integer({ min: 0, max: 5 }),
      minutes: fc.integer({ min: 0, max: 60 }).map((sixths) => sixths / 6),
    })
    .map(attempt);
  const records = fc.array(record, { minLength: 1, maxLength: 40 });
  const bestOf = (some: readonly AttemptRecord[]) =>
    some.reduce<number | null>(
      (best, { rate, reached }) => (reached && rate !== null && rate > (best ?? 0) ? rate : best),
      null,
    );

  test("each week is what its own attempts say, recomputed one by one", () => {
    fc.assert(
      fc.property(records, (all) => {
        const weeks = weeksOf(all);
        // 1970-01-01 was a Thursday.
        const mondays = [...new Set(all.map(({ day }) => day - ((day + 3) % 7)))].sort((a, b) => a - b);
        expect(weeks).toHaveLength(mondays.length);
        weeks.forEach((week, i) => {
          const monday = mondays[i]!;
          const within = (from: number, to: number) => all.filter(({ day }) => day >= from && day < to);
          const own = within(monday, monday + 7);
          const best = bestOf(own);
          const bestsOf = (those: readonly number[]) => those.flatMap((each) => bestOf(within(each, each + 7)) ?? []);
          const before = bestsOf(mondays.filter((each) => each < monday && each >= monday - 26 * 7)).slice(-8);
          const after = bestsOf(mondays.filter((each) => each >= monday && each <= monday + 26 * 7));
          const beside = Math.max(...before, ...after.slice(0, Math.max(0, 4 - before.length)));
          const failedThere = own.some(
            ({ rate, reached }) => !reached && rate !== null && best !== null && rate > best,
          );
          const days = [...new Set(own.map(({ day }) => day))].map((each) => own.filter(({ day }) => day === each));
          const counted = days.flatMap((day) => {
            const reached = bestOf(day);
            const failed = day.some((each) => !each.reached && each.rate !== null && each.rate > reached!);
            return reached !== null && (reached / best! >= 0.85 || failed) ? [reached] : [];
          });
          counted.sort((a, b) => a - b);
          const [low, high] = [counted[(counted.length - 1) >> 1], counted[counted.length >> 1]];
          expect(week.usual).toBe(best === null ? null : (low! + high!) / 2);
          expect(week.week).toBe(weekLabel(monday));
          expect(week.index - weeks[0]!.index).toBe((monday - mondays[0]!) / 7);
          expect(week.bestClean).toBe(best);
          expect(week.attempts).toBe(own.reduce((sum, { count }) => sum + count, 0));
          expect(week.minutes).toBeCloseTo(
            own.reduce((sum, { minutes }) => sum + minutes, 0),
            5,
          );
          expect(week.tested).toBe(best !== null && (failedThere || best / beside >= 0.85));
        });
      }),
      { seed: 10 },
    );
  });

  test("the order of the attempts does not matter", () => {
    fc.assert(
      fc.property(
        records.chain((all) => fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length }))),
        ([all, shuffled]) => {
          expect(weeksOf(shuffled)).toEqual(weeksOf(all));
        },
      ),
      { seed: 11 },
    );
  });
});
