import { describe, expect, test } from "vitest";
import { attemptsOfJournal } from "../../../server/history/attempts.ts";
import { historyOf } from "../../../server/history/history.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import type { Files } from "../../support/temporary-folder.ts";
import { daystave } from "../command-line.ts";

const YEAR = `2026-02-02
  D minor, thirds, 8ths at 60 clean
2026-02-09
  D minor, thirds, 8ths at 66 clean
  "Lanterns", bars 1-8, at 50 clean
2026-02-23
  D minor, thirds, 8ths at 72 clean
2026-03-02
  D minor, thirds, 8ths at 80 clean
  D minor, 8ths at 80 slips
  F major, slurred, slow
`;
const FILES = { "year.practice": YEAR };

interface Told {
  subject: string;
  pattern: string | null;
  journal?: string;
  weeks: { week: string; bestClean: number | null }[];
  trend: { verdict: string; weeks: number };
}

async function json(argv: string[], files: Files = FILES) {
  const { status, stdout, stderr } = await daystave(["history", "--json", ...argv], { files });
  const exercises = JSON.parse(stdout).exercises as Told[];
  const names = exercises.map(({ subject, pattern }) => (pattern === null ? subject : `${subject}, ${pattern}`));
  return { status, stderr, exercises, names };
}

describe("as JSON", () => {
  test("what the core makes of the journal's attempts, and nothing else", async () => {
    const { exercises } = await json([]);
    const journal = new Journal("file:///j", new Map([["file:///j/year.practice", createDocument(YEAR)]]));
    expect(exercises).toEqual(
      JSON.parse(JSON.stringify(historyOf(attemptsOfJournal(journal), { today: parseIsoDate("2026-03-10")! })))
        .exercises,
    );
  });

  test("an exercise: the weeks with practice", async () => {
    const { exercises } = await json([]);
    const thirds = exercises.find(({ pattern }) => pattern === "thirds")!;
    expect(Object.keys(thirds)).toEqual([
      "subject",
      "pattern",
      "instrument",
      "weeks",
      "trend",
      "lastPractised",
      "strand",
      "strands",
    ]);
    expect(thirds).toMatchObject({
      subject: "D natural minor",
      lastPractised: "2026-03-02",
      strand: "octave, single, even",
    });
    expect(thirds.weeks.map(({ week, bestClean }) => [week, bestClean])).toEqual([
      ["2026-W06", 120],
      ["2026-W07", 132],
      ["2026-W09", 144],
      ["2026-W10", 160],
    ]);
    expect(thirds.trend).toMatchObject({ verdict: "too early", weeks: 2 });
  });

  test("--since keeps the weeks from that day's on", async () => {
    const { exercises } = await json(["--since", "2026-02-25", "--subject", "D minor, thirds"]);
    expect(exercises.map(({ weeks }) => weeks.map(({ week }) => week))).toEqual([["2026-W09", "2026-W10"]]);
  });

  test("a file that is named is told of alone", async () => {
    const files = { "journal.practice": "", "a.practice": YEAR, "b.practice": "2026-03-09\n  G major, at 60 clean\n" };
    expect((await json(["b.practice"], files)).names).toEqual(["G major, straight"]);
  });

  test("players in one folder are never put together, and each exercise says whose it is", async () => {
    const files = {
      "anna/journal.practice": "player Anna\n",
      "anna/a.practice": "2026-03-02\n  D minor, at 60 clean\n",
      "ben/journal.practice": "player Ben\n",
      "ben/b.practice": "2026-03-02\n  D minor, at 90 clean\n",
    };
    const { exercises } = await json([], files);
    expect(exercises.map(({ journal, weeks }) => [journal, weeks[0]!.bestClean])).toEqual([
      ["anna", 60],
      ["ben", 90],
    ]);
  });
});

describe("--subject", () => {
  const check = async (subject: string, found: string[]) => {
    const { status, names } = await json(["--subject", subject]);
    expect([status, names], subject).toEqual([0, found]);
  };

  test("a scale in any words, in all its patterns", async () => {
    for (const subject of ["D minor", "d natural minor", "D minor natural scale"])
      await check(subject, ["D natural minor, straight", "D natural minor, thirds"]);
  });
  test("with a pattern", () => check("D minor, thirds", ["D natural minor, thirds"]));
  test("a title, with quotes and without", async () => {
    await check("Lanterns", ["Lanterns"]);
    await check('"lanterns"', ["Lanterns"]);
  });

  test("by a title's short name", async () => {
    const files = {
      "journal.practice": 'piece "Lanterns on the canal" as Lanterns: D minor\n',
      "a.practice": "2026-03-02\n  Lanterns, bars 1-8, at 60 clean\n",
    };
    for (const subject of ["Lanterns", "lanterns on the canal"])
      expect((await json(["--subject", subject], files)).names).toEqual(["Lanterns on the canal"]);
  });

  describe("one that was not practised is an error, with the nearest that was", () => {
    const unknown = async (subject: string, says: string) => {
      for (const argv of [["history"], ["history", "--json"], ["export", "--csv"]]) {
        const { status, stdout, stderr } = await daystave([...argv, "--subject", subject], { files: FILES });
        expect({ status, stdout, stderr }).toEqual({
          status: 2,
          stdout: "",
          stderr: `daystave: “${subject}” was not practised.${says}\n`,
        });
      }
    };
    test("by its spelling", () => unknown("Lantern", " Did you mean “Lanterns”?"));
    test("by its spelling, without the words in its middle", () =>
      unknown("D mino", " Did you mean “D natural minor”?"));
    test("in another kind", () => unknown("D melodic minor", " Did you mean “D natural minor”?"));
    test("by a word in its name", () => unknown("tern", " Did you mean “Lanterns”?"));
    test("without its pattern", () => unknown("F major, fourths", " Did you mean “F major”?"));
    test("none", () => unknown("xyzzy", " Without --subject, daystave history lists what was."));
  });

  test("one that was practised on other days is none", async () => {
    const { status, stderr } = await json(["--subject", "F major", "--until", "2026-02-20"]);
    expect([status, stderr]).toEqual([0, "daystave: “F major” was not practised up to that day.\n"]);
  });
});

describe("nothing to tell", () => {
  const check = async (files: Files, argv: string[], says: string) => {
    const { status, stdout, stderr } = await daystave(["history", ...argv], { files });
    expect({ status, stdout, stderr }).toEqual({ status: 0, stdout: "", stderr: `daystave: ${says}\n` });
  };
  test("no files", () => check({}, [], "There is no .practice file here."));
  test("no exercise", () =>
    check(
      { "a.practice": "2026-03-02\n" },
      [],
      "No exercise practised yet: a line such as “D minor, 8ths at 60 clean” begins its history.",
    ));
  test("rest days alone", () =>
    check(
      { "a.practice": "2026-03-02\n  rest\n2026-03-03 rest, a cold\n" },
      [],
      "No exercise practised yet: a line such as “D minor, 8ths at 60 clean” begins its history.",
    ));
  test("none since", () => check(FILES, ["--since", "2026-03-09"], "No exercise practised since that day."));
});

describe("days that lie ahead count, and are told of", () => {
  // Today is 2026-03-10.
  const check = async (days: string[], says: string) => {
    const text = days.map((day) => `${day}\n  D minor, at 60 clean\n`).join("");
    for (const argv of [["history"], ["history", "--json"], ["export", "--csv"]]) {
      const { status, stdout, stderr } = await daystave(argv, { files: { "a.practice": text } });
      expect([status, stderr]).toEqual([0, says]);
      expect(stdout).toContain(days.at(-1));
    }
  };
  const MEND = "If that is wrong, daystave check says what to do.\n";
  test("none", () => check(["2026-03-09", "2026-03-10"], ""));
  test("one", () =>
    check(
      ["2026-03-10", "2026-03-11"],
      `daystave: 2026-03-11 is after today, 2026-03-10, and is counted as practised. ${MEND}`,
    ));
  test("several", () =>
    check(
      ["2026-03-10", "2026-04-11", "2062-03-02"],
      `daystave: 2 days from 2026-04-11 to 2062-03-02 are after today, 2026-03-10, and are counted as practised. ${MEND}`,
    ));
});

test("a day that does not exist", async () => {
  const { status, stderr } = await daystave(["history", "--since", "2026-02-29"]);
  expect(status).toBe(2);
  expect(stderr).toContain("“--since” takes a date");
});
