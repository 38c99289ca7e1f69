import { describe, expect, test } from "vitest";
import { isoDate, parseIsoDate } from "../../../server/journal/calendar.ts";
import { type Around, daystave } from "../command-line.ts";

// Today is Tuesday 2026-03-10. The journals are invented; trends, shares and forecasts are held to outside truth in
// test/history and test/plan, and here only said.

/** One part of the report of a week, without its heading; undefined where it is left out. */
async function part(heading: string, text: string, ...argv: readonly string[]): Promise<string | undefined> {
  const parts = await partsOf({ "a.practice": text }, argv);
  return parts.get(heading);
}

async function partsOf(files: Around["files"], argv: readonly string[]): Promise<ReadonlyMap<string, string>> {
  const { status, stdout, stderr } = await daystave(["report", ...argv], { files });
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  return new Map(
    stdout
      .split(/^## /m)
      .slice(1)
      .map((each) => [each.slice(0, each.indexOf("\n")), each.slice(each.indexOf("\n")).trim()] as const),
  );
}

const MARCH = ["--since", "2026-03-02"];

/** One day a week up to Monday 2026-03-09, each with a tempo that was reached. */
function weekly(what: string, ...tempos: readonly number[]): string {
  const last = parseIsoDate("2026-03-09")!;
  return tempos
    .map((bpm, i) => `${isoDate(last - 7 * (tempos.length - 1 - i))}\n  ${what} at ${bpm} clean\n`)
    .join("\n");
}

test("questions, then the teacher's words, each with its date", async () => {
  const text = [
    "2026-03-01\n  ask: before these days?\n",
    "2026-03-02\n  ask: breathe before or after the tie in 24? -- it is long\n",
    "2026-03-05\nlesson, 45 min\nsaid: roll the thumb\n  said: and sing\n",
    "2026-03-09\n  ask: slower?\n",
  ].join("\n");
  expect(await part("For the lesson", text, ...MARCH)).toBe(
    [
      "Questions:\n",
      "- Mon 2 Mar: breathe before or after the tie in 24?",
      "- Mon 9 Mar: slower?",
      "\nThe teacher’s words:\n",
      "- Thu 5 Mar: roll the thumb",
      "- Thu 5 Mar: and sing",
    ].join("\n"),
  );
});

// The journal of the design page: "played Mon 2, Sun 8, Mon 9; set for four days".
test("set work with the days on which it was played", async () => {
  const played = ["2026-03-02", "2026-03-08", "2026-03-09"].map(
    (date) => `${date}\n  F major, thirds, slurred, slow\n`,
  );
  const text = [
    '2026-01-20\nset C major\nset "clap line 4" by 2026-03-12\n',
    "2026-03-01\nset F major, thirds, slurred, 4 days by 2026-03-09\n",
    ...played,
  ].join("\n");
  expect(await part("Set work", text, ...MARCH)).toBe(
    [
      "- for Thu 12 Mar: clap line 4",
      "- for Mon 9 Mar: F major, thirds, slurred",
      "  - played Mon 2, Sun 8, Mon 9; set for four days",
    ].join("\n"),
  );
  const before = await part("Set work", text, ...MARCH, "--until", "2026-03-08");
  expect(before).toContain("- for Mon 9 Mar: F major, thirds, slurred\n  - played Mon 2, Sun 8; set for four days");
});

test("set work without a day is set until the next lesson, else for four weeks", async () => {
  const text = [
    "2026-02-05\nlesson, 45 min\n  C major\nset F major, slow\n",
    "2026-02-07\n  F major, slow\n",
    "2026-02-19\nlesson, 45 min\n  C major\n  F major, slow\nset G major, slow\n",
    "2026-03-03\n  F major, slow\n  G major, slow\n",
    "2026-03-10\n  G major, slow\n",
  ].join("\n");
  expect(await part("Set work", text, ...MARCH)).toBe("- Thu 19 Feb: G major, slow\n  - played Tue 3, Tue 10");
  expect(await part("Set work", text, "--since", "2026-02-15", "--until", "2026-02-28")).toBe(
    "- Thu 5 Feb: F major, slow\n  - played Sat 7\n- Thu 19 Feb: G major, slow",
  );
  const [before] = text.split("\n2026-02-19");
  const silent = `${before}\n2026-03-04\n  F major, slow\n2026-03-06\n  F major, slow\n`;
  expect(await part("Set work", silent, ...MARCH)).toBe("- Thu 5 Feb: F major, slow\n  - played Sat 7, Wed 4");
  expect(await part("Set work", silent, "--week", "2026-W11")).toBeUndefined();
});

test("and what is set in words", async () => {
  const homework = (words: string) =>
    `names german\n\n2026-03-02\nlesson\n${words}\n2026-03-05\nG major, thirds, slow\n2026-03-09\nlesson\n`;
  const week = ["--week", "2026-W10"];
  for (const word of ["homework", "HOMEWORK", "Hausaufgabe"])
    expect(await part("Set work", homework(`${word}: G major, thirds, slow`), ...week)).toBe(
      "- Mon 2 Mar: G major, thirds, slow\n  - played Thu 5",
    );
  const before = `2026-02-25\nlesson\nhomework: G major, thirds, slow\n2026-03-03\nG major, thirds, slow\n`;
  expect(await part("Set work", before, ...week)).toBe("- Wed 25 Feb: G major, thirds, slow\n  - played Tue 3");
});

describe("time", () => {
  const DAYS = [
    "2026-03-02, 45 min\nwarm-up, 5 min\n  breathing\ngroundwork, 40 min\n  D minor\n",
    "2026-03-03, rest\n",
    "2026-03-04, 30 min\nwarm-up\n  F major\ngroundwork\n  D minor\n  G major\n",
    "2026-03-06\n  D minor\n",
    "2026-03-07, 20 min\n  D minor\n",
    "2026-03-08, 20 min, plan\n  D minor\n",
  ].join("\n");

  test("by phase and day with sums, and about where a day's time was shared out among its phases", async () => {
    expect(await part("Time", DAYS, ...MARCH)).toBe(
      [
        "95 minutes on three days; on another none are noted.",
        "",
        "| phase | Mon 2 | Wed 4 | Sat 7 | all |",
        "| --- | --: | --: | --: | --: |",
        "| warm-up | 5 | about 10 |  | about 15 |",
        "| groundwork | 40 | about 20 |  | about 60 |",
        "| not divided |  |  | 20 | 20 |",
        "| all | 45 | 30 | 20 | 95 |",
      ].join("\n"),
    );
  });

  test("without phases only the sums, and without minutes nothing", async () => {
    expect(await part("Time", "2026-03-02, 45 min\n  D minor\n", ...MARCH)).toBe(
      ["45 minutes on one day.", "", "| phase | Mon 2 | all |", "| --- | --: | --: |", "| all | 45 | 45 |"].join("\n"),
    );
    expect(await part("Time", "2026-03-02\n  D minor\n", ...MARCH)).toBeUndefined();
  });

  /** The headings of the table, where each of so many days before today had 10 minutes. */
  async function headings(days: number): Promise<string[]> {
    const today = parseIsoDate("2026-03-10")!;
    const dates = Array.from({ length: days }, (_, i) => isoDate(today - i));
    const text = dates.reverse().map((date) => `${date}, 10 min\n  D minor\n`);
    const shown = (await part("Time", text.join("\n"), "--since", dates[0]!))!;
    return shown.split("\n")[2]!.slice(2, -2).split(" | ");
  }

  test("more than seven days by the week, then by the month, then by the year", async () => {
    expect(await headings(7)).toEqual(["phase", ..."Wed 4,Thu 5,Fri 6,Sat 7,Sun 8,Mon 9,Tue 10".split(","), "all"]);
    expect(await headings(8)).toEqual(["phase, by the week of", "2 Mar", "9 Mar", "all"]);
    expect(await headings(80)).toEqual(["phase", "Dec 2025", "Jan", "Feb", "Mar", "all"]);
    expect(await headings(500)).toEqual(["phase", "2024", "2025", "2026", "all"]);
  });
});

describe("exercises", () => {
  const RISING = [60, 63, 66, 69, 72, 76, 80];

  test("one that moves: how it is played, its best in these days, its trend, and what else is known", async () => {
    const text = weekly("D minor, thirds, slurred, quavers", ...RISING);
    const parts = await partsOf({ "a.practice": text }, MARCH);
    expect(parts.get("Moved")).toMatch(
      /^- D natural minor, thirds, slurred, one octave, quavers\n {2}- Best: 80\. Up about .* notches in four weeks\b.*\.$/,
    );
    expect([...parts.keys()]).toEqual(["Moved", "The days"]);
  });

  test("as it was on the last day of the report, not as it is now", async () => {
    const text = weekly("D minor, slurred, 8ths", ...RISING);
    const then = ["--since", "2026-02-09", "--until", "2026-02-22"];
    const parts = await partsOf({ "a.practice": text }, then);
    expect(parts.get("Moved")).toBeUndefined();
    expect(parts.get("No clear change")).toBe("- D natural minor, slurred, one octave, 8ths\n  - Best: 69.");
    const week = await partsOf({ "a.practice": text }, ["--week", "2026-W06"]);
    expect(week.get("Too early to say")).toBe("- D natural minor, slurred, one octave, 8ths\n  - Best: 63.");
  });

  // The example of the design page, 2.2: best 76 ≤ 76, medians 76 and 74: settled.
  test("one that has settled", async () => {
    const tempos = [76, 72, 76, 76, 72, 76, 72, 76, 72, 76, 76, 72];
    const text = weekly("D minor, slurred, 8ths", ...tempos).replaceAll("clean", "clean 2 of 2");
    expect(await part("Settled", text, ...MARCH)).toMatch(
      / Settled at 76 since the week of 22 December 2025 \(24 tries\)\./,
    );
  });

  test("what was not played in these days, had no tempo, or is a piece, is none of them", async () => {
    const text = [
      weekly("F major, 8ths", ...RISING).replace(/2026-03-02.*/s, ""),
      '2026-03-09\n  C major, slow\n  "Air", bars 1-8, at 60 clean\n',
    ].join("\n");
    expect([...(await partsOf({ "a.practice": text }, MARCH)).keys()]).toEqual(["Pieces", "The days"]);
  });

  test("each way of playing by itself, and the instrument where it is another one", async () => {
    const text = [
      "instrument alto recorder\n\n2026-03-09",
      "  C major, slurred, 8ths at 60 clean",
      "  C major, tongued, 8ths at 50 nearly",
      "  C major, slurred, crotchet=40 clean, on tenor recorder\n",
    ].join("\n");
    const early = (await part("Too early to say", text))!;
    expect(early.split("\n").filter((line) => line.startsWith("- "))).toHaveLength(3);
    expect(early).toContain("- C major, tongued, one octave, 8ths\n  - No tempo reached.");
    expect(early).toMatch(/- C major, on tenor recorder, slurred, one octave.*\n {2}- Best: /);
  });
});

test("aims with their date, where they are, and their forecast", async () => {
  const aim = "aim D minor, thirds, slurred, 8ths at 84 by 2026-07-01\n";
  const text = aim + weekly("D minor, thirds, slurred, 8ths", 60, 60, 63, 63, 66, 66, 69, 69, 72, 72);
  expect(await part("Aims", text)).toBe(
    [
      "- D minor, thirds, slurred, 8ths at 84",
      "  - For 1 July. Best yet: 8ths at 72, in the week of 2 March. If it goes on as in the last 10 tested weeks, in 7 to 12 weeks; it need not.",
    ].join("\n"),
  );
});

test("days are named by their dates, as a report is read later", async () => {
  const text = [
    "aim C major, by heart by 2026-03-10\naim F major, by heart\nset G major by 2026-03-10\n",
    "2026-03-10\n  C major, by heart\n  F major, by heart\n  G major, at 60 clean\n",
  ].join("\n");
  const { stdout } = await daystave(["report"], { files: { "a.practice": text } });
  expect(stdout).toContain("For 10 March. Last done on 10 March.");
  expect(stdout).toContain("for Tue 10 Mar: G major");
  expect(stdout).not.toMatch(/today|yesterday|days? ago/i);
});

test("pieces by the places that were worked, with the latest tempo and the goal", async () => {
  const text = [
    'piece "Ground in G minor" as Ground: G minor, 32 bars, goal quarter=84\n',
    "2026-02-20\n  Ground, bars 1-8, at 54 clean\n  Ground, bars 9-16, at 60 clean\n",
    "2026-03-02\n  Ground, bars 1-8, at 60 nearly\n",
    '2026-03-07\n  Ground, bars 1-8, at 60 nearly\n  "Air", from the top, at 50 clean\n  Ground, at 40\n',
  ].join("\n");
  expect(await part("Pieces", text, ...MARCH)).toBe(
    [
      "| piece | place | worked | latest clean | goal |",
      "| --- | --- | --- | --: | --: |",
      "| Ground | whole piece | Sat 7 | – | 84 |",
      "| Ground | bars 1-8 | Mon 2, Sat 7 | 54 | 84 |",
      "| Air | from the top | Sat 7 | 50 |  |",
    ].join("\n"),
  );
});

describe("the days", () => {
  test("their own lines, in order, from several files", async () => {
    const files = {
      "b.practice": "player Noor\r\n\r\n2026-03-09 Mon, 20 min\r\n\tD minor,  at 60   clean\r\n\r\n\r\n",
      "a.practice": "2026-03-10\n  C major -- at last\n\n2026-03-08\n  F major\n",
    };
    expect((await partsOf(files, [])).get("The days")).toBe(
      [
        "What was understood to be about the body is left out of these lines.",
        "```\n2026-03-09 Mon, 20 min\n\tD minor,  at 60   clean\n```",
        "```\n2026-03-10\n  C major -- at last\n```",
      ].join("\n\n"),
    );
  });

  test("the sentence about the body is there with and without any", async () => {
    const sentence = "What was understood to be about the body is left out of these lines.";
    expect(await part("The days", "2026-03-09\n  D minor\n")).toContain(sentence);
    expect(await part("The days", "2026-03-09\n  D minor\n  sore left thumb\n")).toContain(sentence);
    expect(await part("The days", "2026-03-09\n  D minor\n", "--body")).toBe("```\n2026-03-09\n  D minor\n```");
  });
});

describe("what a plan left in the days", () => {
  const DAY = [
    "2026-03-09 Mon, 30 min, plan",
    "-- care: Rest is a full answer.",
    "-- plan: A short day.",
    "warm-up, 5 min",
    "  long tones, 5 min",
    "    -- plan: Easy to begin with.",
    "groundwork, 10 min",
    "\tD minor , slurred,8ths  at 60 clean -- at last",
    "    -- plan: Last played on 5 March.",
    "  F major, slow, 5 min",
    "break, 5 min",
    "pieces, 10 min",
    "  Ground, bars 1-8, at 50, 10 min",
    "ask: louder?",
    "",
  ];

  test("what was played and said stays as it was written; the plan's remarks and what it only proposed go", async () => {
    for (const end of ["\n", "\r\n"])
      expect(await part("The days", DAY.join(end), "--body")).toBe(
        [
          "```",
          "2026-03-09 Mon, 30 min, plan",
          "groundwork, 10 min",
          "\tD minor , slurred,8ths  at 60 clean -- at last",
          "ask: louder?",
          "```",
        ].join("\n"),
      );
  });

  test("of a plan that was all played, the remarks alone", async () => {
    const text = "2026-03-09, plan\n-- plan: A short day.\n  D minor, done\n  -- plan: Why.\n  -- my own\n";
    expect(await part("The days", text, "--body")).toBe("```\n2026-03-09, plan\n  D minor, done\n  -- my own\n```");
  });

  test("a day of which nothing is left but its line is left out, unless it tells of time or of rest", async () => {
    const played = "2026-03-10\n  D minor\n";
    for (const only of [
      "2026-03-09, 20 min, plan\n-- care: Rest.\nwarm-up\n  long tones\n\n",
      "2026-03-09\nplan\n  C major\n",
      "2026-03-09, plan\n",
    ])
      expect(await part("The days", only + played, "--body")).toBe("```\n2026-03-10\n  D minor\n```");
    for (const line of ["2026-03-09, 20 min", "2026-03-09 rest, tired"])
      expect(await part("The days", `${line}\n-- plan: Nothing today.\n`, "--body")).toBe(`\`\`\`\n${line}\n\`\`\``);
  });
});

describe("the body", () => {
  const TEXT = [
    "aim D minor, slurred, 8ths at 84\n",
    weekly("D minor, slurred, 8ths", 60, 60, 63, 63, 66, 66, 69, 69, 72),
    "  F major, at 60 clean, sore left thumb -- my wrist aches, too\n",
    "2026-03-10 Tue, 20 min, plan\n-- care: 9 March has “sore left thumb”. Rest is a full answer.\n  C major, slow\n",
  ].join("");

  test("is no part of a report, nor is anything guessed from it", async () => {
    for (const form of ["--md", "--html", "--json"]) {
      const { stdout } = await daystave(["report", form], { files: { "a.practice": TEXT } });
      expect(stdout).toContain("D minor, slurred, 8ths at 84");
      expect(stdout).not.toMatch(/\b(?:sore|thumb|wrist|aches?|hurts?|care)\b/i);
    }
  });

  test("with --body it is told, as it was written", async () => {
    const parts = await partsOf({ "a.practice": TEXT }, ["--body"]);
    expect(parts.get("Body")).toBe("- Mon 9 Mar: sore left thumb\n- Mon 9 Mar: my wrist aches, too");
    expect(parts.get("The days")).toContain("  F major, at 60 clean, sore left thumb -- my wrist aches, too\n");
    expect(parts.get("Aims")).toContain("No forecast for now: something hurt on 9 March.");
  });
});

describe("several journals", () => {
  const FILES = {
    "noor/journal.practice": "player Noor\n",
    "noor/a.practice": "2026-03-09\n  D minor, at 60 clean\n  ask: louder?\n",
    "ann/journal.practice": "player Ann\n",
    "ann/a.practice": "2026-03-10\n  F major, at 60 clean\n",
  };

  test("follow one another, with nothing of the one in the other", async () => {
    const { stdout } = await daystave(["report"], { files: FILES });
    const [ann, noor] = stdout.split("\n# ");
    expect(ann).toMatch(/^# Ann, 2026-W11/);
    expect(noor).toMatch(/^Noor, 2026-W11/);
    expect(ann).not.toMatch(/D natural minor|louder|Noor|2026-03-09/);
    expect(noor).not.toMatch(/F major|Ann|2026-03-10/);
  });

  test("a page is of one", async () => {
    const refused = await daystave(["report", "--html"], { files: FILES });
    expect({ ...refused, file: null }).toEqual({
      status: 2,
      stdout: "",
      stderr: "daystave: Name one journal: a report may be handed on.\n",
      file: null,
    });
    const { status, stdout } = await daystave(["report", "--html", "noor"], { files: FILES });
    expect(status).toBe(0);
    expect(stdout).toContain("<title>Noor, 2026-W11 (9 to 15 March)</title>");
  });
});
