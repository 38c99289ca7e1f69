import { parse } from "csv-parse/sync";
import { describe, expect, test } from "vitest";
import { ALL_COLUMNS, EXPORT_COLUMN_NAMES, EXPORT_COLUMNS } from "../../../server/cli/export/export-columns.ts";
import { attemptsOfJournal } from "../../../server/history/attempts.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import type { Files } from "../../support/temporary-folder.ts";
import { daystave } from "../command-line.ts";

type Row = Record<string, string>;

/** The rows that are printed for files, as csv-parse reads them. */
async function exported(files: Files, argv: readonly string[] = []): Promise<Row[]> {
  const { status, stdout, stderr } = await daystave(["export", "--csv", ...argv], { files });
  expect([status, stderr]).toEqual([0, ""]);
  return parse(stdout, { record_delimiter: "\r\n", columns: true });
}

/** What stands in some columns for an entry of 2026-03-02. */
async function check(entry: string, columns: string, ...expected: string[][]) {
  const files = { "journal.practice": JOURNAL, "a.practice": `2026-03-02 Mon\n  ${entry}\n` };
  const rows = await exported(files);
  expect(rows.map((row) => columns.split(" ").map((column) => row[column]))).toEqual(expected);
}

const JOURNAL = `instrument alto recorder
piece "Lanterns on the canal" as Lanterns: D minor, goal half=60
`;

const YEAR = `2026-03-02 Mon, 30 min
groundwork, 20 min
  D minor, thirds, slurred, 8ths at 60 clean, 66 clean 4 of 5, 72 uneven
  C major, slow
pieces
  Lanterns, bars 1-8, at 50 clean
2026-03-04
  sight-reading, 10 min
  F major, 16ths at 60, 5 min
`;

test("a row for each attempt, the oldest first; activities are none", async () => {
  const rows = await exported({ "journal.practice": JOURNAL, "year.practice": YEAR });
  const told = rows.map((row) => [row["date"], row["order"], row["line"], row["subject"], row["tempo"]]);
  expect(told).toEqual([
    ["2026-03-02", "1", "3", "D natural minor", "60"],
    ["2026-03-02", "2", "3", "D natural minor", "66"],
    ["2026-03-02", "3", "3", "D natural minor", "72"],
    ["2026-03-02", "4", "4", "C major", ""],
    ["2026-03-02", "5", "6", "Lanterns on the canal", "50"],
    ["2026-03-04", "1", "9", "F major", "60"],
  ]);
});

test("every column of a row", async () => {
  const [first] = await exported({ "journal.practice": JOURNAL, "year.practice": YEAR });
  expect(first).toEqual({
    date: "2026-03-02",
    week: "2026-W10", // ISO 8601
    order: "1",
    file: "year.practice",
    line: "3",
    phase: "groundwork",
    instrument: "alto recorder",
    subject: "D natural minor",
    pattern: "thirds",
    movement: "",
    place: "",
    reach: "octave",
    tonguing: "slurred",
    evenness: "even",
    manner: "",
    note_value: "8ths",
    beat: "quarter",
    tempo: "60",
    tempo_low: "",
    rate: "120", // two 8ths to a quarter
    unit: "notes",
    outcome: "clean",
    reached: "yes",
    tries: "1",
    tries_with_outcome: "1",
    minutes: "3.333333", // 20 for two entries, and 10 for three attempts
    about: "yes",
    journal: ".",
    player: "",
  });
});

// Scripts read them by their places, too: new ones come after them.
test("the columns keep their order", () =>
  expect(EXPORT_COLUMN_NAMES.join(" ")).toBe(
    "date week order file line phase instrument subject pattern movement place reach tonguing evenness manner note_value beat tempo tempo_low rate unit outcome reached tries tries_with_outcome minutes about journal player",
  ));

test("whose a row is: its journal's folder, and who plays where that is declared", async () => {
  const day = "2026-03-02\n  D minor, at 60\n";
  const rows = await exported({
    "anna/journal.practice": "player Anna\n",
    "anna/a.practice": day,
    "ben/journal.practice": "",
    "ben/2026/b.practice": day,
    "loose.practice": day,
  });
  expect(rows.map(({ journal, player, file }) => [journal, player, file])).toEqual([
    ["anna", "Anna", "anna/a.practice"],
    ["ben", "", "ben/2026/b.practice"],
    [".", "", "loose.practice"],
  ]);
  const { stdout } = await daystave(["export", "--csv", "-"], { files: {}, stdin: day });
  expect(parse(stdout, { columns: true })).toMatchObject([{ file: "-", journal: "-" }]);
});

test("the rows are the attempts that the history is made of", async () => {
  const rows = await exported({ "journal.practice": JOURNAL, "year.practice": YEAR });
  const journal = new Journal(
    "file:///j",
    new Map([
      ["file:///j/journal.practice", createDocument(JOURNAL)],
      ["file:///j/year.practice", createDocument(YEAR)],
    ]),
  );
  const told = attemptsOfJournal(journal).map(({ subject, rate, reached, count }) => [
    subject,
    rate === null ? "" : String(rate),
    reached === null ? "" : reached ? "yes" : "no",
    String(count),
  ]);
  expect(rows.map((row) => [row["subject"], row["rate"], row["reached"], row["tries"]])).toEqual(told);
});

describe("tempos", () => {
  const TEMPO = "note_value beat tempo tempo_low rate unit";
  test("in a note value", () =>
    check("D minor, triplets at 60 clean", TEMPO, ["triplets", "quarter", "60", "", "180", "notes"]));
  test("in another beat", () =>
    check("D minor, 16ths at half=60 clean", TEMPO, ["16ths", "half", "60", "", "480", "notes"]));
  test("in a dotted beat", () =>
    check("D minor, 8ths at dotted quarter=46 clean", TEMPO, ["8ths", "dotted quarter", "46", "", "138", "notes"]));
  test("a dotted beat as a fraction, which a spreadsheet would take for a day", () =>
    check("D minor, 8ths at 3/8=46 clean", "beat", ["dotted quarter"]));
  test("a range", () => check("D minor, 8ths at 60-72 clean", TEMPO, ["8ths", "quarter", "72", "60", "144", "notes"]));
  test("without a note value: one note a beat", () =>
    check("D minor, at 60 clean", TEMPO, ["", "quarter", "60", "", "60", "notes"]));
  test("a title's, in the beat of its goal", () =>
    check(
      "Lanterns, at quarter=96 clean, half=50",
      TEMPO,
      ["", "quarter", "96", "", "48", "beats"],
      ["", "half", "50", "", "50", "beats"],
    ));
  test("none", () => check("D minor, slow clean", TEMPO, ["", "", "", "", "", "notes"]));
  test("in silence there is a tempo and no rate", () =>
    check("D minor, silent, 8ths at 60 clean", "manner tempo rate", ["silent", "60", ""]));
});

describe("outcomes", () => {
  const OUTCOME = "outcome reached tries tries_with_outcome";
  test("one", () => check("D minor, at 60 easy", OUTCOME, ["easy", "yes", "1", "1"]));
  test("two", () => check("D minor, at 60 clean tense", OUTCOME, ["clean tense", "no", "1", "1"]));
  test("tries", () =>
    check(
      "D minor, at 60 clean 2 of 5, 54 clean 3 of 5",
      OUTCOME,
      ["clean", "no", "5", "2"],
      ["clean", "yes", "5", "3"],
    ));
  test("none", () => check("D minor, at 60", OUTCOME, ["", "", "1", ""]));
});

test("minutes: as written, and none where none were", async () => {
  await check("D minor, at 60 clean, 12 min", "minutes about", ["12", "no"]);
  await check("D minor, at 60 clean", "minutes about", ["", "no"]);
});

test("a title's movement and place", () =>
  check('"Sonata", mvt 2, bars 1-8, at 60', "subject pattern movement place reach", [
    "Sonata",
    "",
    "mvt 2",
    "bars 1-8",
    "",
  ]));

describe("which attempts", () => {
  const files = { "journal.practice": JOURNAL, "year.practice": YEAR };
  const tempos = async (argv: string[]) => (await exported(files, argv)).map((row) => row["tempo"]);
  test("--subject, in any words", async () => {
    expect(await tempos(["--subject", "D minor"])).toEqual(["60", "66", "72"]);
    expect(await tempos(["--subject", "lanterns"])).toEqual(["50"]);
  });
  test("--since, from the very day on", async () => {
    expect(await tempos(["--since", "2026-03-03"])).toEqual(["60"]);
    expect(await tempos(["--since", "2026-03-04"])).toEqual(["60"]);
  });
  test("--until, up to the very day", async () => {
    expect(await tempos(["--until", "2026-03-03"])).toEqual(["60", "66", "72", "", "50"]);
    expect(await tempos(["--since", "2026-03-03", "--until", "2026-03-04"])).toEqual(["60"]);
  });
  test("files that are named, with what their journal declares", async () => {
    const more = { ...files, "b/b.practice": "2026-03-03\n  Lanterns, at 44\n" };
    const rows = await exported(more, ["b"]);
    expect(rows.map((row) => [row["file"], row["subject"], row["instrument"]])).toEqual([
      ["b/b.practice", "Lanterns on the canal", "alto recorder"],
    ]);
  });
  test("planned lines are none", async () => {
    const rows = await exported({ "a.practice": "2026-03-02 plan\n  D minor, at 60\n  C major, at 60 clean\n" });
    expect(rows.map((row) => row["subject"])).toEqual(["C major"]);
  });
  test("of several subjects each has its rows, with its share of the minutes", async () => {
    await check(
      "F maj, C maj at 60 ok, 66 no, 10 min",
      "order subject tempo reached minutes",
      ["1", "F major", "60", "yes", "2.5"],
      ["2", "F major", "66", "no", "2.5"],
      ["3", "C major", "60", "yes", "2.5"],
      ["4", "C major", "66", "no", "2.5"],
    );
    await check("C108 F104", "subject tempo rate", ["C major", "108", "108"], ["F major", "104", "104"]);
    await check("all major scales, at 60", "subject tempo", ["all major scales", "60"]);
    const files = { "a.practice": "2026-03-02\n  C108 F104\n  G major, F major, slow\n  E major, slow\n" };
    const rows = await exported(files, ["--subject", "F major, G major", "--names", "german"]);
    expect(rows.map(({ subject, tempo }) => [subject, tempo])).toEqual([
      ["F-Dur", "104"],
      ["G-Dur", ""],
      ["F-Dur", ""],
    ]);
  });

  test("days of several files in the order of time", async () => {
    const rows = await exported({
      "a.practice": "2026-03-02\n  D minor, at 61\n2026-03-04\n  D minor, at 63\n",
      "b.practice": "2026-03-03\n  D minor, at 62\n",
    });
    expect(rows.map((row) => row["tempo"])).toEqual(["61", "62", "63"]);
  });
  test("one journal after the other", async () => {
    const rows = await exported({
      "anna/journal.practice": "",
      "anna/a.practice": "2026-03-04\n  D minor, at 60\n",
      "ben/journal.practice": "",
      "ben/b.practice": "2026-03-02\n  D minor, at 90\n",
    });
    expect(rows.map((row) => row["file"])).toEqual(["anna/a.practice", "ben/b.practice"]);
  });
});

// A line holds no line break; for the rest see csv.test.ts.
test("hostile titles come back, and do not run", async () => {
  const titles = ["=1+1", "-Lanterns", "@A1", "=cmd|' /C calc'!A0", "a, b; c", "春の海", "🎵 Café", "'quoted'"];
  const text = `2026-03-02\n${titles.map((title) => `  "${title}", at 60\n`).join("")}  "Lan\u202Eterns\u001B[31m", at 60\n`;
  const rows = await exported({ "a.practice": text });
  const isFormula = (title: string) => /^[=+\-@]/.test(title);
  expect(rows.map((row) => row["subject"])).toEqual([
    ...titles.map((title) => (isFormula(title) ? `'${title}` : title)),
    "Lan\\u202Eterns\\u001B[31m",
  ]);
});

describe("nothing to write: the header alone", () => {
  const header = `${EXPORT_COLUMN_NAMES.join(",")}\r\n`;
  const empty = async (files: Files, argv: string[], says: string) => {
    const { status, stdout, stderr } = await daystave(["export", "--csv", ...argv], { files });
    expect({ status, stdout, stderr }).toEqual({ status: 0, stdout: header, stderr: `daystave: ${says}\n` });
  };
  test("no files", () => empty({}, [], "There is no .practice file here."));
  test("no exercise", () =>
    empty(
      { "a.practice": "2026-03-02 rest\n" },
      [],
      "No exercise practised yet: a line such as “D minor, 8ths at 60 clean” begins its history.",
    ));
  test("none since", () =>
    empty({ "a.practice": YEAR }, ["--since", "2026-03-09"], "No exercise practised since that day."));
});

test("--json: the same rows, figures as figures", async () => {
  const files = { "journal.practice": JOURNAL, "year.practice": YEAR, "b.practice": new Uint8Array([0]) };
  const { stdout } = await daystave(["export", "--json"], { files });
  const { attempts, skipped } = JSON.parse(stdout);
  expect(Object.keys(attempts[0])).toEqual(EXPORT_COLUMN_NAMES);
  expect(attempts).toHaveLength(6);
  expect(attempts[1]).toMatchObject({ rate: 132, movement: null, reached: true, tries: 5, tries_with_outcome: 4 });
  expect(skipped.map(({ path }: { path: string }) => path)).toEqual(["b.practice"]);
});

describe("what it cannot write", () => {
  const refused = async (argv: string[], says: string) => {
    const { status, stdout, stderr } = await daystave(["export", ...argv], { files: { "a.practice": YEAR } });
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(says);
  };
  test("nothing named: what it can", () =>
    refused([], "the attempts as a table (--csv) or as JSON (--json), an exercise"));
  test("two at once", () => refused(["--csv", "--json"], "Choose one of “--csv” and “--json”."));
  test("an option of another form", () =>
    refused(["--csv", "--tempo", "60"], "“--tempo” goes with “--midi” or “--musicxml”, not with “--csv”."));
  test("a day that does not exist", () => refused(["--csv", "--since", "2026-02-29"], "“--since” takes a date"));
  test("a place that is not there", () => refused(["--csv", "gone"], "gone: "));
});

test("the help tells of every column", async () => {
  const { stdout } = await daystave(["export", "--help"]);
  const words = stdout.replace(/\s+/g, " ");
  for (const [column, holds] of Object.entries({ ...EXPORT_COLUMNS, ...ALL_COLUMNS }))
    expect(words).toContain(` ${column} ${holds} `);
});

describe("--names", () => {
  // The names themselves are held against sources in test/music/notes.
  const WEEK = `2026-03-02
  b-Moll, at 60
  H-Dur arpeggio, at 60
  "Fis und B", at 60
`;

  async function subjectsIn(names: readonly string[], week = WEEK, declared = "names german\n") {
    const rows = await exported({ "journal.practice": declared, "a.practice": week }, names);
    return rows.map((row) => row["subject"]);
  }

  test("subjects as the journal has them where none are asked for", async () =>
    expect((await subjectsIn([]))[0]).toBe("b-Moll natürlich"));

  test("in English, where the journal is German; titles stay as they are", async () => {
    const [scale, chord, title] = await subjectsIn(["--names", "english"]);
    expect([scale, chord, title]).toEqual(["Bb natural minor", "B major arpeggio", "Fis und B"]);
  });

  test.each([
    ["german", "b-Moll natürlich"],
    ["french", "si bémol mineur naturel"],
  ])("in %s, where the journal is English", async (names, subject) =>
    expect(await subjectsIn(["--names", names], "2026-03-02\n  Bb minor, at 60\n", "")).toEqual([subject]),
  );

  test("the journal is read in its own names all the same", async () => {
    const files = { "a.practice": "2026-03-02\n  B minor, at 60\n" };
    expect((await exported(files, ["--names", "german"])).map((row) => row["subject"])).toEqual(["h-Moll natürlich"]);
  });

  test("a language that has none", async () => {
    const { status, stderr } = await daystave(["export", "--csv", "--names", "germn"], { files: {} });
    expect(status).toBe(2);
    expect(stderr).toMatch(/^daystave: “--names germn”: choose one of english, .*“german”/);
  });
});
