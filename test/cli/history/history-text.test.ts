import fc from "fast-check";
import stringWidth from "string-width";
import { describe, expect, test } from "vitest";
import { hoverAt } from "../../../server/features/hover/hover.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { FEW } from "../../support/random-runs.ts";
import { type Around, daystave } from "../command-line.ts";

/** What is printed for a journal of one file, in lines: the table, and the sentences below it. */
async function told(text: string, around: Around = {}, argv: readonly string[] = []) {
  const { stdout, status } = await daystave(["history", ...argv], { files: { "a.practice": text }, ...around });
  const [table, below] = stdout.split("\n\n");
  return { status, stdout, table: (table ?? "").split("\n"), below: (below ?? "").replaceAll("\n", " ") };
}

const THIRDS = `2026-02-02
  D minor, thirds, 8ths at 60 clean, 63 slips
2026-02-09
  D minor, thirds, 8ths at 66 clean, 69 slips
2026-02-23
  D minor, thirds, 8ths at 72 clean, 76 slips
2026-03-02
  D minor, thirds, 8ths at 80 clean, 84 slips
`;
/** A name of many columns, some of its characters wide. */
const LONG = '  "春の海 variations for a long evening by the open window", bars 11-128, slow\n';

test("an exercise in a line: its weeks, their scale, the latest, the trend", async () => {
  const { table } = await told(THIRDS);
  // Four weeks that count can be no more than that.
  expect(table).toEqual([
    "Exercise                                        2 Feb–2 Mar  Tempo       Latest  Trend in four weeks  Last practised",
    "D natural minor, thirds (octave, single, even)  ▁▃·▅█        8ths 60–80      80  no clear change      2026-03-02",
  ]);
});

test("--rates: notes a minute, which can be compared", async () => {
  const { table, below } = await told(THIRDS, {}, ["--rates"]);
  expect(table).toEqual([
    "Exercise                                        2 Feb–2 Mar  Tempo    Latest  Trend in four weeks  Last practised",
    "D natural minor, thirds (octave, single, even)  ▁▃·▅█        120–160     160  no clear change      2026-03-02",
  ]);
  expect(below).toContain("Numbers: notes a minute, for pieces and studies beats a minute.");
  // 80 to 88.5 in 8ths by half a beat a week: one note a minute and week.
  expect((await told(RISING, {}, ["--rates", ...IN_MAY])).table[1]).toContain("  160–177     177  up 4 ");
});

/** The same exercise in the eighteen weeks up to the one of 4 May 2026, from 80 on by half a beat a week, 8ths. */
const RISING = Array.from({ length: 18 }, (_, week) => {
  const date = new Date(Date.UTC(2026, 0, 5 + 7 * week)).toISOString().slice(0, 10);
  return `${date}\n  D minor, thirds, 8ths at ${80 + week / 2} clean\n`;
}).join("");

const IN_MAY = ["--today", "2026-05-06"];

test("the trend is that of a hover, over the same weeks, which are named", async () => {
  const { table, below } = await told(RISING, {}, IN_MAY);
  expect(table[1]).toContain("  up half a notch ");
  expect(below).toMatch(/^Weeks: from the week of 5 January to the week of 4 May\. /);
  const journal = new Journal("file:///j", new Map([["file:///j/a.practice", createDocument(RISING)]]));
  const today = parseIsoDate("2026-05-06")!;
  const { markdown } = hoverAt(journal, "file:///j/a.practice", { line: 35, character: 4 }, { today })!;
  expect(markdown).toContain("\n\nUp about half a notch in four weeks.\n\n");
});

test("what was left off half a year ago is not drawn, and has the trend of the half year up to then", async () => {
  const text = `${RISING}2026-11-30\n  C major, slow\n`;
  const { table, below } = await told(text, {}, ["--today", "2026-12-01"]);
  expect(table).toEqual([
    "Exercise                                        8 Jun               30 Nov  Tempo         Latest  Trend in four weeks  Last practised",
    "C major (octave, single, even)                  ·························–  –                  –  no clean tempo       2026-11-30",
    "Not practised in these weeks; tempos and trend of the half year before they ended:",
    "D natural minor, thirds (octave, single, even)                              8ths 80–88.5    88.5  up half a notch      2026-05-04",
  ]);
  expect(below).toMatch(/^Weeks: from the week of 8 June to the week of 30 November\. /);
});

describe("a week is told by the shape of its sign", () => {
  const check = async (weeks: readonly string[], signs: string, scale: string) => {
    // 2026-01-05 is the Monday of W02.
    const days = weeks.map((said, week) => {
      const date = new Date(Date.UTC(2026, 0, 5 + 7 * week)).toISOString().slice(0, 10);
      return said === "" ? "" : `${date}\n  D minor, at ${said}\n`;
    });
    const { table } = await told(days.join(""), {}, ["--today", "2026-12-01"]);
    expect(/even\) {2}(\S+) +(\S+) /.exec(table[1]!)?.slice(1)).toEqual([signs, scale]);
  };
  test("tested: blocks from the lowest figure to the highest", () =>
    check(["60 clean", "63 clean", "65 clean", "67 clean"], "▁▄▆█", "60–67"));
  test("all alike: a middling block", () => check(["60 clean", "60 clean"], "▄▄", "60"));
  // Under 0.85 of 60 (format reference, Arithmetic).
  test("worked below best: dots from the lowest figure to the highest", () =>
    check(["60 clean", "46 clean", "49 clean", "50 clean"], "█⡀⡄⡄", "46–60"));
  test("without a clean tempo", () => check(["60 clean", "60 slips", "60 clean tense", "60 clean"], "▄––▄", "60"));
  test("without practice", () => check(["60 clean", "", "", "60 clean"], "▄··▄", "60"));
  test("no more than half a year, with the scale of those", () =>
    check(
      Array.from({ length: 30 }, (_, week) => (week % 2 === 0 ? `${60 + week} clean` : "")),
      "·▁·▂·▂·▃·▃·▄·▅·▅·▆·▆·▇·▇·█",
      "64–88",
    ));
});

describe("which strand is shown", () => {
  test("the only one is named", async () => {
    const { table, below } = await told(THIRDS);
    expect(table[1]).toMatch(/^D natural minor, thirds \(octave, single, even\) {2}/);
    expect(below).not.toContain("strands");
  });

  test("of several the one with most weeks, and it is said that there are others", async () => {
    const { table, below } = await told(
      `${THIRDS}2026-03-03\n  D minor, thirds, slurred, at 60 clean\n  D minor, thirds, 2 octaves, at 60 clean\n`,
    );
    expect(table[1]).toMatch(/^D natural minor, thirds \(octave, single, even; 1 of 3 strands\) {2}/);
    expect(below).toContain("the one with most of these weeks is shown; --subject shows all.");
  });

  test("of a piece, its place", async () => {
    const { table } = await told('2026-03-02\n  "Lanterns", bars 1-8, at 50 clean\n  "Lanterns", at 40 clean\n');
    expect(table[1]).toMatch(/^Lanterns \((bars 1-8|whole piece); 1 of 2 strands\) {2}/);
  });
});

describe("nothing was reached", () => {
  const FAILED = "2026-02-16\n  D minor, at 60 slips\n2026-03-02\n  D minor, at 60 uneven\n";

  test("in any week: a sentence in place of what bars would mean", async () => {
    const { table, below } = await told(FAILED);
    expect(table[1]).toMatch(/\(octave, single, even\) {2}–·– +– +– +no clean tempo {2,}2026-03-02$/);
    expect(below).toMatch(/^No tempo reached yet, so there are no bars: a tempo counts once it is marked clean or/);
  });

  test("in one exercise of several: its line says so", async () => {
    const { table, below } = await told(`${FAILED}  G minor, at 60 clean\n`);
    expect(table[1]).toContain("no clean tempo");
    expect(below).toMatch(/^Weeks: from the week of 16 February to the week of 2 March\. /);
  });

  test("without a metronome", async () => {
    const { table } = await told("2026-03-02, 20 min\n  long tones on D4, slow\n");
    expect(table[1]).toContain("no clean tempo");
  });
});

describe("columns", () => {
  /** The columns at which the cells of a kind begin, in the rows that have one. */
  function starts(lines: readonly string[], cell: RegExp): Set<number> {
    return new Set(
      lines.flatMap((line) => {
        const at = line.search(cell);
        return at < 0 ? [] : [stringWidth(line.slice(0, at))];
      }),
    );
  }

  test("stand below each other by display width", async () => {
    const { table } = await told(`${THIRDS}  "春の海", bars 1-8, at 60 clean\n  "Café🎵", at 40 clean\n${LONG}`);
    expect(table).toHaveLength(5);
    expect(starts(table.slice(1), /\d{4}-\d\d-\d\d$/).size).toBe(1);
    expect(starts(table.slice(1), /[▁-█–·]+ {2}/).size).toBe(1);
  });

  test("for any titles", async () => {
    const title = fc
      .string({ unit: "grapheme", minLength: 1, maxLength: 40 })
      .filter((text) => !/["\r\n]/.test(text) && text.trim() !== "");
    await fc.assert(
      fc.asyncProperty(fc.uniqueArray(title, { minLength: 2, maxLength: 5 }), async (titles) => {
        const entries = titles.map((each) => `  "${each}", bars 1-8, at 60 clean\n`).join("");
        const { table } = await told(`2026-03-02\n${entries}`);
        expect(starts(table.slice(1), / {2}▄ {2}/).size).toBe(1);
      }),
      { seed: 4, numRuns: FEW },
    );
  });

  test("on a terminal with room: one line for each", async () => {
    const { table } = await told(THIRDS, { isTerminal: true, columns: 120, env: { NO_COLOR: "1" } });
    expect(table).toHaveLength(2);
  });

  test("on a narrow one, or one that does not say: the name above its figures, and no line too long", async () => {
    for (const columns of [80, undefined]) {
      const { table, stdout } = await told(`${THIRDS}${LONG}`, { isTerminal: true, columns, env: { NO_COLOR: "1" } });
      expect(table).toEqual([
        "Last on     Exercise",
        "  2 Feb–2 Mar  Tempo       Latest  Trend in four weeks",
        "2026-03-02  D natural minor, thirds (octave, single, even)",
        "  ▁▃·▅█        8ths 60–80      80  no clear change",
        "2026-03-02  春の海 variations for a long evening by the open window (bars",
        "            11-128)",
        "  ····–        –                –  no clean tempo",
      ]);
      expect(stdout.split("\n").filter((line) => stringWidth(line) > 80)).toEqual([]);
    }
  });

  test("half a year of weeks and a falling trend fit into 80", async () => {
    const days = Array.from({ length: 30 }, (_, week) => {
      const date = new Date(Date.UTC(2025, 5, 2 + 7 * week)).toISOString().slice(0, 10);
      return `${date}\n  D minor, 16ths at ${299 - 2 * week - (week % 3)} clean, 300 slips\n`;
    });
    const { stdout } = await told(days.join(""), { isTerminal: true, columns: 80, env: { NO_COLOR: "1" } });
    expect(stdout).toContain("  down a notch");
    expect(stdout.split("\n").filter((line) => stringWidth(line) > 80)).toEqual([]);
  });
});

describe("colour", () => {
  const isColoured = async (around: Around) => (await told(THIRDS, around)).stdout.includes("\u001B[");
  test("for the heading alone, on a terminal", async () => {
    const { table } = await told(THIRDS, { isTerminal: true, columns: 120 });
    expect(table.map((line) => line.includes("\u001B["))).toEqual([true, false]);
  });
  test("not with NO_COLOR", async () =>
    expect(await isColoured({ isTerminal: true, env: { NO_COLOR: "1" } })).toBe(false));
  test("not into a pipe", async () => expect(await isColoured({})).toBe(false));
});

test("several journals have their names above", async () => {
  const files = {
    "anna/journal.practice": "",
    "anna/a.practice": "2026-03-02\n  D minor, at 60 clean\n",
    "ben/journal.practice": "",
    "ben/b.practice": "2026-03-02\n  D minor, at 90 clean\n",
  };
  const { stdout } = await daystave(["history"], { files });
  expect(stdout).toMatch(/^anna\nExercise[\s\S]+\n\nben\nExercise/);
});

test("tempos at the limits", async () => {
  const { table } = await told(
    "2026-03-02\n  C major, 8ths at 20 clean\n  D major, 32nds at 400 clean\n  E major, 32nds at 999999.999 clean\n  F major, at 0 clean\n",
  );
  expect(table.slice(1).map((line) => /▄ +(\S+ \S+) +(\S+)/.exec(line)?.slice(1) ?? "none")).toEqual([
    ["8ths 20", "20"],
    ["32nds 400", "400"],
    ["32nds 1000000", "1000000"],
    "none",
  ]);
});

test("two thousand exercises: a line for each", async () => {
  const entries = Array.from({ length: 2000 }, (_, i) => `  "Study ${i + 1}", at 60 clean\n`).join("");
  const { status, table } = await told(`2026-03-02\n${entries}`);
  expect(status).toBe(0);
  expect(table).toHaveLength(2001);
});
