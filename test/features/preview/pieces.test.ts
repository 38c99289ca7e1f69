import { describe, expect, test } from "vitest";
import type { PreviewLine } from "../../../shared/preview.ts";
import { lineAtPlace, previewOf, seen } from "./preview-asked.ts";

const GROUND = 'piece "Ground in G minor" as Ground: G minor, 96 bars, goal quarter=84, due 2026-05-09\n';

/** Each piece as it is seen on 2026-03-09: `Ground in G minor | G minor, 96 bars | 70 of 84 | for Sat 9 May | 2 Mar`. */
function pieces(text: string): string[] {
  return previewOf(text).pieces!.inHand.map(({ name, facts, latest, wanted, due, day }) =>
    [name, facts, `${latest} of ${wanted}`, due, day].filter((part) => part !== "").join(" | "),
  );
}

const lines = (those: readonly PreviewLine[]) => those.map(seen);

describe("a piece with bars", () => {
  test("its key and bars, the latest tempo reached and the one that is wanted, the days to its day", () => {
    const days = "2026-03-02\n  Ground, bars 17-32, at 70 clean, 76 slips\n";
    expect(pieces(GROUND + days)).toEqual([
      "Ground in G minor | G minor, 96 bars | 70 of 84 | for Sat 9 May (in 61 days) | 2 Mar",
    ]);
    expect(pieces(GROUND)).toEqual([
      "Ground in G minor | G minor, 96 bars |  of 84 | for Sat 9 May (in 61 days) | not yet",
    ]);
  });

  test("its short name, where its title does not have that: other parts of the page call it so", () => {
    expect(pieces('piece "Twelve Stairs" as Attic: E major, 20 bars\n')[0]).toMatch(/^Twelve Stairs \(Attic\) \|/);
    expect(pieces('piece "Twelve Stairs" as stairs: E major, 20 bars\n')[0]).toMatch(/^Twelve Stairs \|/);
  });

  test("a concert that plays it is a day too; the nearest ahead counts", () => {
    const concert = 'concert "Spring evening" on 2026-03-20: "Ground in G minor"\n';
    expect(pieces(GROUND + concert)[0]).toContain("for Fri 20 Mar (in 11 days)");
  });

  test("a day that is past is told for four weeks, and then no more", () => {
    const days = "2026-03-02\n  Ground, at 70 clean\n";
    const due = (date: string) => pieces(GROUND.replace("2026-05-09", date) + days)[0];
    expect(due("2026-03-01")).toContain("was for 1 Mar");
    expect(due("2026-02-01")).not.toContain("for");
  });

  test("its strip has the latest tempo of each bar", () => {
    const days = "2026-02-20\n  Ground, at 60 clean\n2026-03-08\n  Ground, bars 17-24, at 70 clean\n";
    const { chart } = previewOf(GROUND + days).pieces!.inHand[0]!;
    expect(chart.svg).toContain(
      "Bars 1–16: 60, worked within 4 weeks; bars 17–24: 70, worked within 7 days; bars 25–96: 60, worked within 4 weeks.",
    );
  });

  test("its table has the places that were worked, the latest first, each with its way back", () => {
    const days = `2026-02-20
  Ground, bars 17-48, at 60 clean, 66 clean
2026-03-01
  Ground, bars 17-48, at 60 clean
2026-03-08
  Ground, at 50 slips
`;
    const { table } = previewOf(GROUND + days).pieces!.inHand[0]!.chart;
    expect(table.headings).toEqual(["place", "latest", "fastest", "worked"]);
    expect(table.rows.map(({ cells, place }) => [...cells, lineAtPlace(GROUND + days, place!)])).toEqual([
      ["whole piece", "", "", "yesterday", "Ground, at 50 slips"],
      ["bars 17-48", "60", "66", "1 Mar", "Ground, bars 17-48, at 60 clean"],
    ]);
  });

  test("leads to where it was last worked, else to where it is declared", () => {
    const text = `${GROUND}2026-03-02\n  Ground, bars 17-32, at 70 clean\n`;
    expect(lineAtPlace(text, previewOf(text).pieces!.inHand[0]!.place)).toBe("Ground, bars 17-32, at 70 clean");
    expect(lineAtPlace(GROUND, previewOf(GROUND).pieces!.inHand[0]!.place)).toBe(GROUND.trim());
  });
});

test("what has no bars is one line: its place, the latest tempo there, the day", () => {
  const text = 'study "Stairs": D minor\n2026-03-02\n  "Stairs", page 4, at 60 clean\n';
  expect(lines(previewOf(text).pieces!.plain)).toEqual(["Stairs, page 4: 60 | 2 Mar"]);
});

test("a title that nobody declared is a line as well", () => {
  const text = '2025-06-02\n  "Reel", at 60 clean\n2026-03-02\n  "Jig", bars 1-8, at 60 clean\n';
  const { plain, earlier } = previewOf(text).pieces!;
  expect([lines(plain), lines(earlier)]).toEqual([["Jig, bars 1-8: 60 | 2 Mar"], ["Reel: 60 | 2 Jun 2025"]]);
});

test("in hand is what has a day ahead, is new or was worked in the last twelve weeks, and was begun", () => {
  const text = `piece "Old": due 2025-01-01
piece "Ahead": from 2026-04-01, due 2026-06-01
piece "Long ago": C major
piece "Lately": C major
piece "New": C major
piece "Near": due 2026-04-01
2025-12-01
  "Long ago", slow
2026-01-10
  "Lately", slow
`;
  const { plain, earlier } = previewOf(text).pieces!;
  expect(plain.map((line) => line.text)).toEqual(["Near", "Lately", "New"]);
  expect(earlier.map((line) => line.text)).toEqual(["Long ago"]);
  expect(lineAtPlace(text, earlier[0]!.place)).toBe('"Long ago", slow');
});

test("movements that were worked stand by themselves, with their own goal", () => {
  const text = `piece "Gates": G minor, goal quarter=60
movement "Gates" 1 "Iron": G minor, 32 bars, goal quarter=56
movement "Gates" 2 "Willow": Bb major, 40 bars
2026-03-02
  "Gates", mvt 1, bars 1-16, at 50 clean
`;
  expect(pieces(text)).toEqual(["Gates, movement 1: Iron | G minor, 32 bars | 50 of 56 | 2 Mar"]);
  expect(previewOf(`${text}2026-03-03\n  "Gates", at 40 clean\n`).pieces!.plain.map(seen)).toEqual([
    "Gates: 40 | Tue 3 Mar",
  ]);
});

test("a hostile title stays text", () => {
  const text =
    'piece "<script>alert(1)</script>\u202E": C major, 8 bars\n2026-03-02\n  "<script>alert(1)</script>\u202E", slow\n';
  const [piece] = previewOf(text).pieces!.inHand;
  expect(piece!.name).toBe("<script>alert(1)</script>");
  expect(piece!.chart.svg).not.toContain("<script");
});

test("without a piece there is no such part", () => expect(previewOf("").pieces).toBeNull());
