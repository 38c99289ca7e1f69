import stringWidth from "string-width";
import { describe, expect, test } from "vitest";
import type { Files } from "../../support/temporary-folder.ts";
import { type Around, daystave } from "../command-line.ts";

/** Three strands and a piece; in the weeks of 5 January to 2 March 2026, today is 10 March. */
const WINTER = `2026-01-05
  D minor, quavers at 60 clean
2026-01-12
  D minor, quavers at 63 clean
  D minor, slurred, 16ths at half=30 clean
2026-01-19
  D minor, quavers at 66 clean
  "Lanterns", bars 1-8, at half=40 clean
2026-02-02
  D minor, slurred, 16ths at half=34 clean
2026-02-16
  D minor, slurred, 16ths at half=36 clean
  D minor, thirds, at 50 clean
2026-03-02
  "Lanterns", bars 1-8, at half=44 clean
`;
const FILES = { "journal.practice": 'piece "Lanterns": D minor, goal half=60\n', "a.practice": WINTER };

/** The table of a journal, without the sentences below it. */
async function table(argv: readonly string[], around: Around = { files: FILES }): Promise<string[]> {
  const { status, stdout, stderr } = await daystave(["history", ...argv], around);
  expect([status, stderr]).toEqual([0, ""]);
  return stdout.split("\n\n")[0]!.split("\n");
}

test("one axis for all rows, with the Mondays of its first and last week", async () => {
  expect(await table([])).toEqual([
    "Exercise                                                 5 Jan–2 Mar  Tempo             Latest  Trend in four weeks  Last practised",
    "Lanterns (bars 1-8)                                      ··▁·····█    half=40–44            44  too early to say     2026-03-02",
    "D natural minor (octave, slurred, even; 1 of 2 strands)  ·⡀··▆·█··    16ths half=30–36      36  too early to say     2026-02-16",
    "D natural minor, thirds (octave, single, even)           ······▄··    50                    50  too early to say     2026-02-16",
  ]);
});

test("where weeks lie in two years, the year that is not today's is named", async () => {
  const text = "2025-12-01\n  D minor, at 60 clean\n2026-03-02\n  D minor, at 60 clean\n";
  const [heading] = await table([], { files: { "a.practice": text } });
  expect(heading).toContain("  1 Dec 2025–2 Mar  ");
});

test("--subject: every strand has its row, its own last day and its own trend", async () => {
  expect(await table(["--subject", "D minor"])).toEqual([
    "Exercise                                        5 Jan–16 Feb  Tempo             Latest  Trend in four weeks  Last practised",
    "D natural minor (octave, slurred, even)         ·⡀··▆·█       16ths half=30–36      36  too early to say     2026-02-16",
    "D natural minor (octave, single, even)          ▁▅█····       quavers 60–66         66  too early to say     2026-01-19",
    "D natural minor, thirds (octave, single, even)  ······▄       50                    50  too early to say     2026-02-16",
  ]);
});

describe("tempos are as the player writes them", () => {
  const tempos = async (entry: string) => {
    const files = { "journal.practice": 'piece "Lanterns": goal half=60\n', "a.practice": `2026-03-02\n  ${entry}\n` };
    return (await table([], { files }))[1]!.split(/ {2,}/)[2];
  };
  const check = async (entry: string, expected: string) => expect(await tempos(entry), entry).toBe(expected);
  test("note values", async () => {
    await check("D minor, quavers at 60 clean, 63 clean", "quavers 63");
    await check("D minor, 8ths at 60 clean", "8ths 60");
    await check("D minor, at 60 clean", "60");
  });
  test("beats", async () => {
    await check("D minor, at crotchet=60 clean", "crotchet=60");
    await check("D minor, semiquavers at minim = 40 clean", "semiquavers minim=40");
    await check("D minor, ♩=66 clean", "♩=66");
  });
  test("those of a piece in the beat of its goal", async () => {
    await check("Lanterns, at minim=50 clean", "minim=50");
    await check("Lanterns, at quarter=96 clean", "half=48");
    await check("Lanterns, at 50 clean", "half=50");
  });
});

describe("which weeks", () => {
  const bars = async (argv: readonly string[], files: Files = FILES) => {
    const [heading, ...rows] = await table(argv, { files });
    return [heading!.split(/ {2,}/)[1], ...rows.map((row) => row.split(/ {2,}/)[1])];
  };

  test("--weeks: the last ones", async () =>
    expect(await bars(["--weeks", "3"])).toEqual(["16 Feb–2 Mar", "··▄", "▄··", "▄··"]));
  test("--since: from that day's on", async () =>
    expect(await bars(["--since", "2026-02-13"])).toEqual(["9 Feb–2 Mar", "···▄", "·▄··", "·▄··"]));
  test("--until: up to that day's, and practice of later weeks does not count", async () =>
    expect(await bars(["--until", "2026-01-21"])).toEqual(["5 Jan–19 Jan", "▁▅█", "··▄"]));
  test("--until goes on after the last practice, but not after today", async () => {
    expect(await bars(["--until", "2026-03-10"])).toContain("··▁·····█·");
    expect(await bars(["--until", "2027-01-01"])).toContain("··▁·····█·");
  });
  test("--weeks up to --until", async () =>
    expect(await bars(["--weeks", "2", "--until", "2026-01-18"])).toEqual(["5 Jan–12 Jan", "▁█"]));
  test("one week", async () => expect(await bars(["--weeks", "1"])).toEqual(["2 Mar", "▄"]));
  test("more than there are: from the first", async () =>
    expect((await bars(["--weeks", "500"]))[0]).toEqual("5 Jan–2 Mar"));

  test("a day that lies ahead makes no axis of years", async () => {
    const files = { "a.practice": `${WINTER}2062-03-02\n  D minor, at 60 clean\n` };
    const { stdout } = await daystave(["history"], { files });
    expect(stdout).toMatch(/^Exercise +5 Jan–2 Mar /);
  });

  test("the trend is over those that are drawn", async () => {
    const days = [60, 62, 64, 66, 68, 70, 72, 72, 72, 72].map((tempo, week) => {
      const date = new Date(Date.UTC(2025, 11, 29 + 7 * week)).toISOString().slice(0, 10);
      return `${date}\n  D minor, at ${tempo} clean\n`;
    });
    const around = { files: { "a.practice": days.join("") } };
    const trend = async (...argv: string[]) => (await table(argv, around))[1]!.split(/ {2,}/)[4];
    // The slope is 5/3: four weeks ago it was 65.3, and from 66 on the metronome goes over 69 to 72.
    expect([await trend(), await trend("--weeks", "4"), await trend("--weeks", "3")]).toEqual([
      "up 2 notches",
      "no clear change",
      "too early to say",
    ]);
  });

  test("--json has the same weeks, and the whole strand where none are asked for", async () => {
    const weeks = async (...argv: string[]) => {
      const { stdout } = await daystave(["history", "--json", ...argv], { files: FILES });
      const strands = JSON.parse(stdout).exercises.map(({ strands }: { strands: { weeks: { week: string }[] }[] }) =>
        strands.map((strand) => strand.weeks.map(({ week }) => week.slice(6)).join(" ")),
      );
      return strands;
    };
    expect(await weeks()).toEqual([["04 10"], ["03 06 08", "02 03 04"], ["08"]]);
    expect(await weeks("--weeks", "3")).toEqual([["10"], ["08"], ["08"]]);
    expect(await weeks("--until", "2026-01-21")).toEqual([["02 03 04", "03"], ["04"]]);
    expect(await weeks("--weeks", "2", "--until", "2026-01-21")).toEqual([["03 04", "03"], ["04"]]);
  });
});

describe("wrong values", () => {
  const refused = async (argv: readonly string[], says: string) => {
    const { status, stdout, stderr } = await daystave(["history", ...argv], { files: FILES });
    expect({ status, stdout, stderr }).toEqual({ status: 2, stdout: "", stderr: `daystave: ${says}\n` });
  };
  test.each(["0", "-3", "ten", "2.5", "10000"])("--weeks=%s", (weeks) =>
    refused([`--weeks=${weeks}`], `“--weeks” takes a whole number from 1 to 9999, such as 26, not “${weeks}”.`),
  );
  test("--until", () =>
    refused(["--until", "1 March"], "“--until” takes a date, year-month-day, such as 2026-03-02, not “1 March”."));
  test("--until before --since", () =>
    refused(
      ["--since", "2026-03-02", "--until", "2026-03-01"],
      "“--until 2026-03-01” is before “--since 2026-03-02”: put the earlier day after --since.",
    ));
  test("two beginnings", () =>
    refused(
      ["--weeks", "3", "--since", "2026-03-02"],
      "Choose one of “--weeks” and “--since”: both say which week is the first.",
    ));
  test("--rates, which --json has anyway", () =>
    refused(["--rates", "--json"], "“--rates” goes with the table; --json has nothing but rates."));
});

describe("on a terminal", () => {
  /** Two years of a few exercises, one of them with a long name of wide characters. */
  const YEARS = Array.from({ length: 104 }, (_, week) => {
    const date = new Date(Date.UTC(2024, 2, 11 + 7 * week)).toISOString().slice(0, 10);
    return `${date}\n  D melodic minor, thirds, slurred, 2 octaves, 16ths at ${60 + (week >> 3)} clean\n  "春の海 variations", bars 1-8, at 50 clean\n`;
  }).join("");
  const on = async (columns: number, ...argv: string[]) => {
    const around = { files: { "a.practice": YEARS }, isTerminal: true, columns, env: { NO_COLOR: "1" } };
    const { stdout } = await daystave(["history", ...argv], around);
    expect(stdout.split("\n").filter((line) => stringWidth(line) > columns)).toEqual([]);
    return stdout.split("\n\n")[0]!.split("\n");
  };

  test("of 40 columns: the bars below the name, and the figures in words below these", async () =>
    expect(await on(40)).toEqual([
      "Last on     Exercise",
      "  8 Sep 2025           2 Mar",
      "2026-03-02  D melodic minor, thirds",
      "            (wide, slurred, even)",
      "  ▁▁▃▃▃▃▃▃▃▃▆▆▆▆▆▆▆▆████████",
      "  16ths 69–72, latest 72, no clear",
      "  change",
      "2026-03-02  春の海 variations (bars 1-8)",
      "  ▄▄▄▄▄▄▄▄▄▄▄▄▄▄▄▄▄▄▄▄▄▄▄▄▄▄",
      "  quarter=50, no clear change",
    ]));

  test("a title without spaces is cut where it must be", async () => {
    const title = "春の海による長い変奏曲、夕べの窓辺にて";
    const { stdout } = await daystave(["history"], {
      files: { "a.practice": `2026-03-02\n  "${title}", at 50 clean\n` },
      isTerminal: true,
      columns: 40,
    });
    expect(stdout).toContain("2026-03-02  春の海による長い変奏曲、夕べ\n            の窓辺にて\n");
  });

  test("of 80 columns: two lines for each", async () => expect(await on(80)).toHaveLength(6));
  test("of 160 columns: one line for each", async () => expect(await on(160)).toHaveLength(3));

  test("one sign stands for as many weeks as it must", async () => {
    const rows = await on(40, "--weeks", "104");
    expect(rows[1]).toBe("  11 Mar 2024          2 Mar");
    expect(rows[4]).toMatch(/^ {2}[▁-█]{26}$/);
    const { stdout } = await daystave(["history", "--weeks", "104"], {
      files: { "a.practice": YEARS },
      isTerminal: true,
      columns: 40,
    });
    expect(stdout.replaceAll("\n", " ")).toContain("Each sign is for 4 weeks, by the best of them.");
  });

  test("the best of them is that of one week: 60 and 61 in eight weeks each", async () => {
    const rows = await on(40, "--until", "2024-06-30", "--weeks", "16");
    expect(rows[4]).toBe("  ▁▁▁▁▁▁▁▁████████");
  });
});
