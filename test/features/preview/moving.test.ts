import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { attemptsOfJournal } from "../../../server/history/attempts.ts";
import type { HistoryOfExercise } from "../../../server/history/history.ts";
import { historyOf } from "../../../server/history/history.ts";
import { isoDate, mondayOf, parseIsoDate, weekIndex } from "../../../server/journal/calendar.ts";
import { applyChanges } from "../../../server/syntax/document/document.ts";
import type { PreviewExerciseContent } from "../../../shared/preview.ts";
import { daystave } from "../../cli/command-line.ts";
import { anyText, journalOf, URI } from "../journal-text.ts";
import { exercisesOf, filesOfYear, journalOfFiles, lineAtPlace, previewOf } from "./preview-asked.ts";

/** So many weeks of one exercise, a line a week from 2026-01-05 on, at these tempos; a tempo of 0 is a week without. */
function weekly(line: (tempo: number) => string, tempos: readonly number[]): string {
  const monday = parseIsoDate("2026-01-05")!;
  return tempos.map((tempo, at) => (tempo === 0 ? "" : `${isoDate(monday + 7 * at)}\n  ${line(tempo)}\n`)).join("");
}

const RISING = weekly((tempo) => `D minor, thirds, slurred, 8ths at ${tempo} clean`, [60, 62, 64, 66, 68, 70, 72, 74]);
const LEVEL = weekly((tempo) => `G major, 8ths at ${tempo} clean`, [60, 61, 60, 61, 60, 61, 60, 61]);
const YOUNG = weekly((tempo) => `F major, 8ths at ${tempo} clean`, [0, 0, 0, 0, 0, 60, 63]);

/** `Moving: D natural minor, thirds`. */
function groups(text: string, asked?: Parameters<typeof previewOf>[1]): string[] {
  return previewOf(text, asked).moving.groups.map(
    ({ title, exercises }) => `${title}: ${exercises.map(({ shows }) => shows!.name).join("; ")}`,
  );
}

function first(text: string, asked?: Parameters<typeof previewOf>[1]): PreviewExerciseContent {
  return exercisesOf(previewOf(text, asked))[0]!.shows!;
}

describe("the rows", () => {
  test("stand by what moved, what rests, and what is too young to say", () => {
    expect(groups(YOUNG + LEVEL + RISING)).toEqual([
      "Moving: D natural minor, thirds",
      "Level: G major",
      "Too early to say: F major",
    ]);
  });

  test("the best is told in the player's note value, the trend in words", () => {
    const { strand, best, trend } = first(RISING);
    expect(strand).toBe("Octave, slurred, even; last on 2026-02-23");
    expect(best).toBe("Best 8ths at 74, in 2026-W09.");
    expect(trend).toMatch(/^Rising by about .* metronome marks? a week|^Rising by about/);
  });

  test("an instrument is named where it is not the usual one, and may be chosen alone", () => {
    const text = `instrument alto recorder\ninstrument tenor recorder\n2026-03-02\n  D minor, at 60 clean\n  D minor, on tenor recorder, at 52 clean\n`;
    expect(groups(text)[0]).toBe("Too early to say: D natural minor; D natural minor, on tenor recorder");
    const choice = { span: 26, instrument: "tenor recorder" } as const;
    expect(groups(text, { choice })).toEqual(["Too early to say: D natural minor, on tenor recorder"]);
    expect(previewOf(text, { choice: { span: 26, instrument: "lute" } }).choice.instrument).toBeNull();
  });

  test("lead to the line where the exercise was last written", () => {
    const [row] = exercisesOf(previewOf(RISING));
    expect(lineAtPlace(RISING, row!.place)).toBe("D minor, thirds, slurred, 8ths at 74 clean");
  });

  test("days ahead, and plans, count for nothing yet", () => {
    expect(groups("2026-03-10\n  D minor, at 60 clean\n")).toEqual([]);
    expect(groups("2026-03-09 plan\n  D minor, at 60\n")).toEqual([]);
    expect(groups("2026-03-10\n  D minor, at 60 clean\n", { today: "2026-03-10" })).toHaveLength(1);
  });

  test("at most so many come at once, and how many more there are is told", () => {
    const { moving } = previewOf(YOUNG + LEVEL + RISING, { most: 2 });
    expect([exercisesOf({ moving }).length, moving.left]).toEqual([2, 1]);
  });
});

describe("the span", () => {
  const choice = (span: 4 | "all") => ({ choice: { span, instrument: null } }) as const;

  test("leaves out what was not practised in it", () => {
    const long = `2025-01-06\n  E major, at 60 clean\n${RISING}`;
    expect(groups(long)).toEqual(["Moving: D natural minor, thirds"]);
    expect(groups(long, choice("all"))[1]).toBe("Too early to say: E major");
  });

  test("where nobody chose, is half a year, or everything where nothing was practised in that", () => {
    expect(previewOf(RISING).choice.span).toBe(26);
    expect(previewOf("2025-01-06\n  E major, at 60 clean\n").choice.span).toBe("all");
    expect(previewOf("").choice.span).toBe(26);
    expect(previewOf("2025-01-06\n  E major, at 60 clean\n", choice(4)).choice.span).toBe(4);
  });

  test("is what the trend is fitted on", () => {
    // The last four weeks, of which the present one and the one before are empty.
    expect(first(RISING, choice(4)).trend).toBe("Too early to say: two tested weeks, it takes four.");
    const { chart } = first(RISING, choice(4));
    expect(chart.ok && chart.table.rows.map(([week]) => week)).toEqual(["2026-W08", "2026-W09"]);
  });

  test("an empty one is answered by a sentence that says what to write", () => {
    expect(previewOf("").moving.sentence).toBe(
      "No exercise is written yet. Write a line such as `D minor melodic, thirds, 8ths at 60 clean` below a day, and its weeks appear here.",
    );
    expect(previewOf("2025-01-06\n  E major, at 60 clean\n", choice(4)).moving.sentence).toContain(
      "No exercise was practised in these 4 weeks, 2026-W08 to 2026-W11.",
    );
  });
});

describe("the chart and its table", () => {
  test("have the same weeks in the same order; what was worked below best says so", () => {
    const { chart } = first(weekly((tempo) => `D minor, slurred, 8ths at ${tempo} clean`, [80, 0, 60, 82]));
    expect(chart.ok && chart.table).toEqual({
      caption: "By week; weeks without practice are left out.",
      headings: ["Week", "Best, 8ths at", "Attempts", "Minutes"],
      rows: [
        ["2026-W02", "80", "1", "0"],
        ["2026-W04", "60 (worked below best)", "1", "0"],
        ["2026-W05", "82", "1", "0"],
      ],
    });
  });

  test("an aim by a day stands in both", () => {
    const { chart } = first(`aim D minor, thirds, slurred, 8ths at 80 by 2026-03-20\n${RISING}`);
    expect(chart.ok && chart.table.caption).toContain("Aim: 80 by 2026-03-20.");
    expect(chart.ok && chart.svg).toContain("chart-aim");
  });

  test("what was never at a tempo has a sentence in its place", () => {
    expect(first("2026-03-02\n  D minor, slow, clean\n").chart).toEqual({
      ok: false,
      reason: expect.stringMatching(/^No tempo is written in these 26 weeks\./),
    });
  });

  test("text of the journal stays text", () => {
    const { name, chart } = first('2026-03-02\n  "<img src=x onerror=alert(1)>\u202E", at 60 clean\n');
    expect(name).toBe("<img src=x onerror=alert(1)>");
    expect(chart.ok && chart.svg).not.toContain("<img");
    expect(chart.ok && chart.svg).toContain("&lt;img");
  });
});

/** What the command line tells of one exercise, as the table shows it: 8ths are two notes a beat. */
const NOTES_A_BEAT: Readonly<Record<string, number>> = { "": 1, at: 1, "8ths at": 2, "16ths at": 4, "triplets at": 3 };

function asTable({ weeks }: HistoryOfExercise, heading: string): string[][] {
  const axis = heading.replace(/^Best,? ?/, "");
  const perBeat = axis.endsWith("=") ? 1 : NOTES_A_BEAT[axis]!;
  return weeks
    .filter(({ attempts }) => attempts > 0)
    .map(({ week, bestClean, tested, attempts, minutes, about }) => [
      week,
      bestClean === null
        ? "–"
        : `${Math.round((bestClean / perBeat) * 10) / 10}${tested ? "" : " (worked below best)"}`,
      String(attempts),
      `${about ? "about " : ""}${Math.round(minutes)}`,
    ]);
}

test("over all weeks the figures of each exercise are those of `daystave history --json`", async () => {
  const files = filesOfYear();
  const { stdout } = await daystave(["history", "--json"], { files });
  const told = JSON.parse(stdout).exercises as HistoryOfExercise[];
  const rows = exercisesOf(
    previewOf(journalOfFiles(files), { today: "2026-11-22", choice: { span: "all", instrument: null } }),
  );
  expect(rows.length).toBe(told.length);
  let compared = 0;
  for (const exercise of told) {
    const { subject, pattern, instrument, trend, lastPractised } = exercise;
    const row = rows.find(
      ({ key }) =>
        key.split("\n")[1] === instrument &&
        key.split("\n")[3] === (pattern ?? "") &&
        key.includes(`: ${subject.toLowerCase()}`),
    )!;
    expect(row.shows!.strand).toContain(`last on ${lastPractised}`);
    expect(row.shows!.trend.toLowerCase()).toContain(trend.verdict);
    const { chart } = row.shows!;
    if (!chart.ok) expect(exercise.weeks.filter(({ bestClean }) => bestClean !== null)).toEqual([]);
    if (!chart.ok) continue;
    compared++;
    expect(chart.table.rows, row.shows!.name).toEqual(asTable(exercise, chart.table.headings[1]!));
  }
  expect(compared).toBeGreaterThan(30);
});

test("over a span the strand, its weeks and its trend are those of the history since then", () => {
  const journal = journalOfFiles(filesOfYear());
  const today = parseIsoDate("2026-11-22")!;
  const since = mondayOf(weekIndex(today) - 11);
  const told = historyOf(attemptsOfJournal(journal), { since }).exercises;
  const rows = exercisesOf(previewOf(journal, { today: "2026-11-22", choice: { span: 12, instrument: null } }));
  const shown = rows.map(({ shows }) => {
    const [strand, last] = shows!.strand.toLowerCase().split("; last on ");
    return [
      strand!.split(", one of")[0],
      last,
      /^(?:rising|falling|level|too early)/i.exec(shows!.trend)![0].toLowerCase(),
    ];
  });
  const expected = told.map(({ strand, lastPractised, trend }) => [strand.toLowerCase(), lastPractised, trend.verdict]);
  expect(shown.map(String).sort()).toEqual(expected.map(String).sort());
});

describe("an update", () => {
  const text = YOUNG + LEVEL + RISING;

  test("draws the exercise that was touched, and no other", () => {
    const journal = journalOf(text);
    const before = exercisesOf(previewOf(journal));
    const line = text.split("\n").findIndex((each) => each.includes("8ths at 74"));
    const at = { line, character: text.split("\n")[line]!.indexOf("74") };
    const change = { range: { start: at, end: { line, character: at.character + 2 } }, text: "76" };
    const next = journal.with(URI, applyChanges(journal.files.get(URI)!, [change]));
    const after = exercisesOf(previewOf(next, { known: before.map(({ hash }) => hash) }));
    expect(after.filter(({ shows }) => shows).map(({ shows }) => shows!.best)).toEqual([
      "Best 8ths at 76, in 2026-W09.",
    ]);
    expect(after.map(({ key }) => key).sort()).toEqual(before.map(({ key }) => key).sort());
  });

  test("a line put in above moves the places and draws nothing", () => {
    const journal = journalOf(text);
    const before = exercisesOf(previewOf(journal));
    const start = { line: 0, character: 0 };
    const next = journal.with(
      URI,
      applyChanges(journal.files.get(URI)!, [{ range: { start, end: start }, text: "\n" }]),
    );
    const after = exercisesOf(previewOf(next, { known: before.map(({ hash }) => hash) }));
    expect(after.flatMap(({ shows }) => shows ?? [])).toEqual([]);
    expect(after.map(({ place }) => place.line)).toEqual(before.map(({ place }) => place.line + 1));
  });
});

test("whatever the text, there is an answer, and every row leads to a line that is there", () => {
  fc.assert(
    fc.property(anyText, anyText, (head, body) => {
      const text = `${head}\n2026-03-02\n${body}\n${body.replaceAll("\n", " ")}\n`;
      const shown = previewOf(text);
      const lines = journalOf(text).files.get(URI)!.lineCount;
      for (const { place } of exercisesOf(shown)) expect(place.line).toBeLessThan(lines);
    }),
    { seed: 41 },
  );
});
