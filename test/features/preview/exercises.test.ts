import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { placesIn } from "../../../client/preview/messages.ts";
import { axisOf } from "../../../server/features/preview/span.ts";
import { NOTHING_TO_HEAR } from "../../../server/features/sound/to-hear.ts";
import { attemptsOfJournal } from "../../../server/history/attempts.ts";
import { type HistoryOfExercise, historyOf } from "../../../server/history/history.ts";
import { isoDate, mondayOf, parseIsoDate, weekIndex } from "../../../server/journal/calendar.ts";
import { applyChanges } from "../../../server/syntax/document/document.ts";
import type { PreviewExerciseContent } from "../../../shared/preview.ts";
import { daystave } from "../../cli/command-line.ts";
import { anyText, journalOf, URI } from "../journal-text.ts";
import { exercisesOf, filesOfYear, journalOfFiles, lineAtPlace, previewOf, seen } from "./preview-asked.ts";

/** So many weeks of one exercise, a line a week from 2026-01-05 on, at these tempos; a tempo of 0 is a week without. */
function weekly(line: (tempo: number) => string, tempos: readonly number[]): string {
  const monday = parseIsoDate("2026-01-05")!;
  return tempos.map((tempo, at) => (tempo === 0 ? "" : `${isoDate(monday + 7 * at)}\n  ${line(tempo)}\n`)).join("");
}

const RISING = weekly((tempo) => `D minor, thirds, slurred, 8ths at ${tempo} clean`, [60, 62, 64, 66, 68, 70, 72, 74]);
const LEVEL = weekly((tempo) => `G major, 8ths at ${tempo} clean`, [60, 61, 60, 61, 60, 61, 60, 61]);
const YOUNG = weekly((tempo) => `F major, 8ths at ${tempo} clean`, [0, 0, 0, 0, 0, 60, 63]);

/** `D natural minor, thirds`, of the last four weeks; behind a line those before. */
function names(text: string, asked?: Parameters<typeof previewOf>[1]): string[][] {
  const { exercises } = previewOf(text, asked);
  return [exercises?.recent ?? [], exercises?.earlier ?? []].map((those) => those.map(({ shows }) => shows!.name));
}

function first(text: string, asked?: Parameters<typeof previewOf>[1]): PreviewExerciseContent {
  return exercisesOf(previewOf(text, asked))[0]!.shows!;
}

/** What the exercise of a text unfolds. */
function opened(text: string) {
  const [row] = exercisesOf(previewOf(text));
  return previewOf(text, { open: row!.key }).exercises!.opened!.chart;
}

describe("the rows", () => {
  test("those of the last four weeks first, the latest first; then those before", () => {
    const old = "2025-12-01\n  E major, 8ths at 60 clean\n";
    expect(names(old + YOUNG + LEVEL + RISING)).toEqual([
      ["D natural minor, thirds", "G major", "F major"],
      ["E major"],
    ]);
    expect(previewOf(RISING).exercises!.note).toBe("played in the last four weeks, latest first");
    expect(previewOf(old).exercises!.note).toBe("");
  });

  test("the way of playing, the trend in notches, the latest tempo and the fastest, the day", () => {
    const { way, trend, latest, fastest, day } = first(RISING);
    expect([way, latest, fastest, day]).toEqual(["slurred, one octave, 8ths", "74", "74", "23 Feb"]);
    expect(trend).toMatch(/^up .* in four weeks$/);
    expect(first(LEVEL).trend).toBe("no clear change");
    expect(first(YOUNG).trend).toBe("too early to say");
    expect(first(RISING.replace("at 74 clean", "at 70 clean"))).toMatchObject({ latest: "70", fastest: "72" });
  });

  test("in the words of the latest line, but for scales, which go by their names", () => {
    const german = "names german\n2026-03-02\n";
    expect(names("2026-03-01\n  flutter tonguing 60 clean\n2026-03-02\n  flutter  tongue 66 clean\n")[0]).toEqual([
      "flutter tongue",
    ]);
    expect(names("2026-03-02\n  dbl tonguing on G 60 clean\n  same 66 clean\n  ditto 72 clean\n")[0]).toEqual([
      "dbl tonguing on G",
    ]);
    expect(names("2026-03-02\n  D minor in 3rds 60 clean\n  same 66 clean\n")[0]).toEqual(["D natural minor, 3rds"]);
    expect(names("2026-03-02\n  Dmin in 3rds, 72 clean\n  Cmaj7 arp 60 clean\n")[0]!.toSorted()).toEqual([
      "Cmaj7 arp",
      "D natural minor, 3rds",
    ]);
    expect(
      names(`${german}  d-Moll melodisch, Terzen, 72 sauber\n  C-Dur Dreiklang 80 sauber\n`)[0]!.toSorted(),
    ).toEqual(["C-Dur Dreiklang", "d-Moll melodisch, Terzen"]);
    expect(previewOf(`${german}  lange Töne auf D, 5 min\n`).exercises!.plain.map(seen)).toEqual([
      "lange Töne | 1 day | 5 minutes | 2 Mar",
    ]);
  });

  test("where no tempo was reached there is no number", () => {
    expect(first("2026-03-02\n  D minor, 8ths at 60 slips\n")).toMatchObject({ latest: "", fastest: "" });
  });

  test("an instrument is named where it is not the usual one, and may be chosen alone", () => {
    const text = `instrument alto recorder\ninstrument tenor recorder\n2026-03-02\n  D minor, at 60 clean\n  D minor, on tenor recorder, at 52 clean\n`;
    expect(names(text)[0]).toEqual(["D natural minor", "D natural minor, on tenor recorder"]);
    const choice = { span: 26, instrument: "tenor recorder" } as const;
    expect(names(text, { choice })[0]).toEqual(["D natural minor, on tenor recorder"]);
    expect(previewOf(text, { choice: { span: 26, instrument: "lute" } }).choice.instrument).toBeNull();
  });

  test("lead to the line where the strand that is shown was last written", () => {
    const [row] = exercisesOf(previewOf(RISING));
    expect(lineAtPlace(RISING, row!.place)).toBe("D minor, thirds, slurred, 8ths at 74 clean");
  });

  test("pieces and other titles are no exercises", () => {
    expect(names('piece "Ground": G minor\n2026-03-02\n  "Ground", at 60 clean\n  "Jig", at 60 clean\n')).toEqual([
      [],
      [],
    ]);
  });

  test("days ahead, and plans, count for nothing yet", () => {
    expect(names("2026-03-10\n  D minor, at 60 clean\n")).toEqual([[], []]);
    expect(names("2026-03-09 plan\n  D minor, at 60\n")).toEqual([[], []]);
    expect(names("2026-03-10\n  D minor, at 60 clean\n", { today: "2026-03-10" })[0]).toHaveLength(1);
  });

  test("at most so many come at once, and how many more there are is told", () => {
    const shown = previewOf(YOUNG + LEVEL + RISING, { most: 2 });
    expect([exercisesOf(shown).length, shown.exercises!.left]).toEqual([2, 1]);
  });

  test("while files are still being read no trend is told, and none is drawn", () => {
    const shown = previewOf(RISING, { reading: true });
    expect(shown.reading).toBe(true);
    expect(exercisesOf(shown)[0]!.shows!).toMatchObject({ trend: "", latest: "74" });
    expect(exercisesOf(shown)[0]!.shows!.chart).not.toContain("chart-band");
    expect(first(RISING).chart).toContain("chart-band");
    const { key } = exercisesOf(shown)[0]!;
    const { svg, table } = previewOf(RISING, { reading: true, open: key }).exercises!.opened!.chart;
    expect(svg).not.toMatch(/chart-band|Trend/);
    expect(table.foot).toBe("");
  });
});

describe("what has no tempo", () => {
  test("is a line with its days and minutes; long tones are one whatever their notes", () => {
    const text = `2026-03-02, 20 min
  long tones on F4 C5, 5 min
  D minor, five notes, slurred, slow, 5 min
2026-03-05
  long tones on G4 D5, 10 min
2026-01-05
  trill A5 with Bb5, 5 min
`;
    const { plain, earlierPlain } = previewOf(text).exercises!;
    expect(plain.map(seen)).toEqual([
      "long tones | 2 days | 15 minutes | Thu 5 Mar",
      "D natural minor, slurred, five notes | 1 day | 5 minutes | 2 Mar",
    ]);
    expect(earlierPlain).toHaveLength(1);
  });

  test("minutes that were shared out are told to the nearest five from ten on", () => {
    const shared = "2026-03-02\ngroundwork, 45 min\n  long tones on F4\n  trill A5 with Bb5\n";
    expect(previewOf(shared).exercises!.plain.map(({ facts }) => facts[1])).toEqual([
      "about 25 minutes",
      "about 25 minutes",
    ]);
  });

  test("a way without a tempo stands there beside the row of one with", () => {
    const shown = previewOf("2026-03-02\n  D minor, 8ths at 60 clean\n2026-03-05\n  D minor, five notes, slow\n");
    expect(exercisesOf(shown).map(({ shows }) => shows!.day)).toEqual(["2 Mar"]);
    expect(shown.exercises!.plain.map(({ text }) => text)).toEqual(["D natural minor"]);
  });
});

describe("the span", () => {
  const choice = (span: 4 | 12 | "all") => ({ choice: { span, instrument: null } }) as const;

  test("leaves out what was not practised in it", () => {
    const long = `2025-01-06\n  E major, at 60 clean\n${RISING}`;
    expect(names(long)).toEqual([["D natural minor, thirds"], []]);
    expect(names(long, choice("all"))).toEqual([["D natural minor, thirds"], ["E major"]]);
  });

  test("in which nothing was played says so", () => {
    const { note, recent, earlier } = previewOf("2025-01-06\n  E major, at 60 clean\n", choice(4)).exercises!;
    expect([note, recent, earlier]).toEqual(["nothing was played in these 4 weeks", [], []]);
  });

  test("where nobody chose, is half a year, or everything where nothing was practised in that", () => {
    expect(previewOf(RISING).choice.span).toBe(26);
    expect(previewOf("2025-01-06\n  E major, at 60 clean\n").choice.span).toBe("all");
    expect(previewOf("").choice.span).toBe(26);
    expect(previewOf("2025-01-06\n  E major, at 60 clean\n", choice(4)).choice.span).toBe(4);
  });

  test("however short, has the trend of the weeks that are drawn, in words and as a band", () => {
    const tempos = [60, 64, 68, 72, 76, 80, 84, 84, 84, 84, 84, 84];
    const steady = weekly((tempo) => `D minor, thirds, slurred, 8ths at ${tempo} clean`, tempos);
    const [half, six] = [{ today: "2026-03-29" }, { today: "2026-05-10", ...choice(12) }];
    expect(first(steady, half).trend).toMatch(/^up /);
    expect(first(steady, half).chart).toContain("chart-band");
    expect(first(steady, six).trend).toBe("no clear change");
    expect(first(steady, six).chart).not.toContain("chart-band");
  });

  test("with too few weeks for a trend says so; of what was not played before it is too early to say", () => {
    expect(first(RISING, choice(4)).trend).toBe("too few weeks to say");
    expect(first(RISING, { ...choice(4), today: "2026-03-01" }).trend).toBe("too few weeks to say");
    expect(first("2026-03-02\n  F major, 8ths at 60 clean\n", choice(4)).trend).toBe("too early to say");
    expect(first(YOUNG).trend).toBe("too early to say");
  });

  test("the axis of a young journal begins with its first week", () => {
    const months = (text: string) =>
      [...previewOf(text).exercises!.axis.matchAll(/>([A-Z][a-z]{2})</g)].map(([, name]) => name);
    expect(months(RISING)[0]).toBe("Jan");
    expect(months(`2025-11-03\n  E major, at 60 clean\n${RISING}`)[0]).toBe("Nov");
    // What was played before the weeks that are shown leaves no room empty.
    expect(months(`2025-01-06\n  E major, at 60 clean\n${RISING}`)[0]).toBe("Jan");
  });

  test("and ends today; in its first two months, of which it shows all, after them", () => {
    const monday = parseIsoDate("2026-01-05")!;
    const weeksOf = (since: number, today: number) => {
      const { first, last } = axisOf({ since, today }, new Set([weekIndex(monday), weekIndex(today)]));
      return [first - weekIndex(monday), last - weekIndex(monday)];
    };
    const halfYear = (today: number) => mondayOf(weekIndex(today) - 25);
    expect(weeksOf(halfYear(monday), monday)).toEqual([0, 7]);
    expect(weeksOf(halfYear(monday + 70), monday + 70)).toEqual([0, 10]);
    expect(weeksOf(halfYear(monday + 280), monday + 280)).toEqual([40, 47]); // after a pause as at the beginning
    expect(weeksOf(mondayOf(weekIndex(monday) - 3), monday)).toEqual([0, 3]);
  });
});

describe("what a row unfolds", () => {
  test("its weeks as a table, the latest first; a week of slow work says so; each leads to its last line", () => {
    const text = weekly((tempo) => `D minor, slurred, 8ths at ${tempo} clean`, [80, 0, 60, 82]);
    const { table } = opened(text);
    expect(table.headings).toEqual(["week of", "best", "usual", "reached", "minutes"]);
    expect(table.rows.map(({ cells }) => cells.join(" | "))).toEqual([
      "26 Jan | 82 | 82 | 1 of 1 | –",
      "19 Jan | 60 | slow work | 1 of 1 | –",
      "5 Jan | 80 | 80 | 1 of 1 | –",
    ]);
    expect(lineAtPlace(text, table.rows[1]!.place!)).toBe("D minor, slurred, 8ths at 60 clean");
  });

  test("below it the slope in the player's note value, and the other ways of playing", () => {
    const other = "2026-01-06\n  D minor, thirds, tongued, 8ths at 50 clean\n";
    // Two beats a minute more each week, without a swing.
    expect(opened(RISING + other).table.foot).toBe(
      "Slope 2.00 a week (2.00 to 2.00), 8 tested weeks. Also tongued, one octave, 8ths: 50, last on 6 Jan.",
    );
    expect(opened(YOUNG).table.foot).toBe("");
  });

  test("and what is known beside the trend: here how often the fastest tempos were reached", () => {
    const text = weekly((tempo) => `D minor, slurred, 8ths at ${tempo} clean 4 of 5`, [60, 60, 0, 63, 63]);
    expect(opened(text).table.foot).toBe(
      "Slope 0.88 a week (0 to 1.50), 4 tested weeks. 60: 8 of 10 tries reached, on 2 days; 63: 8 of 10, on 2 days.",
    );
  });

  test("after a break that cost something the trend, and its band, go by what came after", () => {
    const line = (tempo: number) => `D minor, slurred, 8ths at ${tempo} clean, ${tempo + 4} slips`;
    const text = weekly(line, [80, 80, 80, 80, 0, 0, 0, 0, 60, 63, 66, 69, 72]);
    const asked = { today: "2026-04-06" };
    const row = exercisesOf(previewOf(text, asked))[0]!;
    expect(row.shows!.trend).toBe("up 4 notches in four weeks since 2 Mar");
    const { svg } = previewOf(text, { ...asked, open: row.key }).exercises!.opened!.chart;
    expect(svg).toContain("since the return on 2 March");
  });

  test("another exercise on the days between makes it no break, at once", () => {
    const line = (tempo: number) => `D minor, slurred, 8ths at ${tempo} clean, ${tempo + 4} slips`;
    const text = weekly(line, [80, 80, 80, 80, 0, 0, 0, 0, 60, 63, 66, 69, 72]);
    const other = weekly((tempo) => `G major, slurred, at ${tempo} clean`, [0, 0, 0, 0, 60, 60, 60, 60]);
    const asked = { today: "2026-04-06" };
    const trends = exercisesOf(previewOf(text + other, asked)).map(({ shows }) => shows!.trend);
    expect(trends).not.toContainEqual(expect.stringContaining("since"));
  });

  test("the chart has the title of its axis, and an aim", () => {
    const { svg } = opened(`aim D minor, thirds, slurred, 8ths at 80 by 2026-03-20\n${RISING}`);
    expect(svg).toContain(">tempo, 8ths<");
    expect(svg).toContain("Aim: 80 by 20 Mar.");
  });

  test("nothing comes unasked, or for one that is not there", () => {
    expect(previewOf(RISING).exercises!.opened).toBeNull();
    expect(previewOf(RISING, { open: "nothing" }).exercises!.opened).toBeNull();
  });
});

test("text of the journal stays text", () => {
  const text =
    'pattern "<img src=x onerror=alert(1)>": 1 2 3\n2026-03-02\n  C major, "<img src=x onerror=alert(1)>", at 60 clean\n';
  expect(first(text).name).toBe("C major, <img src=x onerror=alert(1)>");
  expect(opened(text).svg).not.toContain("<img");
  expect(opened(text).svg).toContain("&lt;img");
});

/** How the words of each verdict begin. */
const WORDS = { rising: "up", falling: "down", level: "no clear change", "too early": "too early to say" } as const;

test("over all weeks the numbers of each exercise are those of `daystave history --json`", async () => {
  const files = filesOfYear();
  const { stdout } = await daystave(["history", "--json"], { files });
  const told = (JSON.parse(stdout).exercises as HistoryOfExercise[]).filter(({ pattern }) => pattern !== null);
  const asked = { today: "2026-11-22", choice: { span: "all", instrument: null } } as const;
  const journal = journalOfFiles(files);
  const rows = exercisesOf(previewOf(journal, asked));
  let compared = 0;
  for (const { subject, pattern, instrument, trend, weeks } of told) {
    if (weeks.every(({ bestClean }) => bestClean === null)) continue; // another way of playing may be the one with a tempo
    const row = rows.find(({ key }) => {
      const [, on, what, how] = key.split("\n");
      return on === instrument && how === (pattern ?? "") && what!.endsWith(`: ${subject.toLowerCase()}`);
    })!;
    expect(row.shows!.trend).toMatch(new RegExp(`^${WORDS[trend.verdict]}`));
    const { table } = previewOf(journal, { ...asked, open: row.key }).exercises!.opened!.chart;
    const practised = weeks.filter(({ attempts }) => attempts > 0);
    expect(table.rows, row.shows!.name).toHaveLength(practised.length);
    const perBeat = row.shows!.way.includes("16ths") ? 4 : row.shows!.way.includes("8ths") ? 2 : 1;
    expect(table.rows.map(({ cells }) => cells[1]).reverse()).toEqual(
      practised.map(({ bestClean }) =>
        bestClean === null ? "–" : String(Math.round((bestClean / perBeat) * 10) / 10),
      ),
    );
    compared++;
  }
  expect(compared).toBeGreaterThan(20);
});

test("over a span the trend is that of the history since then", () => {
  const journal = journalOfFiles(filesOfYear());
  const today = parseIsoDate("2026-11-22")!;
  const since = mondayOf(weekIndex(today) - 25);
  const told = historyOf(attemptsOfJournal(journal), { since }).exercises;
  const rows = exercisesOf(previewOf(journal, { today: "2026-11-22" }));
  const expected = new Map(
    told.map(({ subject, pattern, instrument, trend }) => [
      `notes\n${instrument}\n${subject.toLowerCase()}\n${pattern ?? ""}`,
      WORDS[trend.verdict],
    ]),
  );
  for (const { key, shows } of rows) {
    const words = expected.get(key.replace(/\n[a-z]+: /, "\n"));
    expect(shows!.trend, key).toMatch(new RegExp(`^${words}`));
  }
  expect(rows.map(({ shows }) => shows!.trend.split(" ")[0])).toEqual(
    expect.arrayContaining(["up", "down", "no", "too"]),
  );
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
    expect(after.filter(({ shows }) => shows).map(({ shows }) => shows!.latest)).toEqual(["76"]);
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

test("whatever the text, there is an answer, and all that it leads to is there", () => {
  fc.assert(
    fc.property(anyText, anyText, (head, body) => {
      const text = `${head}\n2026-03-02\n${body}\n${body.replaceAll("\n", " ")}\n`;
      const [row] = exercisesOf(previewOf(text));
      const shown = previewOf(text, row ? { open: row.key } : {});
      const lines = journalOf(text).files.get(URI)!.lineCount;
      const places = placesIn({
        journal: URI,
        version: 1,
        underCursor: null,
        shownBy: null,
        fingers: null,
        hear: NOTHING_TO_HEAR,
        ...shown,
      });
      for (const { line } of places) expect(line).toBeLessThan(lines);
    }),
    { seed: 41 },
  );
});
