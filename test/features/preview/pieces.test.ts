import { describe, expect, test } from "vitest";
import { lineAtPlace, previewOf } from "./preview-asked.ts";

const GROUND = 'piece "Ground in G minor" as Ground: G minor, 96 bars, goal quarter=84, due 2026-05-09\n';

/** Each piece as it is shown on 2026-03-09. */
function pieces(text: string): string[] {
  return previewOf(text).pieces.inHand.map(({ name, sentences }) => `${name}: ${sentences.join(" ")}`);
}

/** The table of the first piece's strip. */
function strip(text: string): string[] {
  const { chart } = previewOf(text).pieces.inHand[0]!;
  return chart.ok ? chart.table.rows.map((cells) => cells.join(" ")) : [chart.reason];
}

describe("a piece", () => {
  test("the latest tempo reached against the goal, and the days to its day", () => {
    const days = "2026-03-02\n  Ground, bars 17-32, at 70 clean, 76 slips\n";
    expect(pieces(GROUND + days)).toEqual([
      "Ground in G minor: Latest reached quarter=70 (bars 17-32), 2026-03-02; the goal is quarter=84. For 2026-05-09, in 61 days.",
    ]);
    expect(pieces(GROUND)).toEqual([
      "Ground in G minor: No tempo was reached so far; the goal is quarter=84. For 2026-05-09, in 61 days.",
    ]);
  });

  test("a concert that plays it is a day too; the nearest ahead counts", () => {
    const concert = 'concert "Spring evening" on 2026-03-20: "Ground in G minor"\n';
    expect(pieces(GROUND + concert)[0]).toContain("For 2026-03-20, in 11 days.");
  });

  test("where it was worked and how lately: the latest time counts", () => {
    const days = `2025-10-01
  Ground, at 50 clean
2026-02-20
  Ground, bars 17-48, at 60 clean
2026-03-08
  Ground, bars 17-24, 40-41, at 70 clean
`;
    expect(strip(GROUND + days)).toEqual([
      "1–16 longer ago",
      "17–24 within 7 days",
      "25–39 within 4 weeks",
      "40–41 within 7 days",
      "42–48 within 4 weeks",
      "49–96 longer ago",
    ]);
  });

  test("that does not say its bars has a sentence instead of a strip", () => {
    expect(strip('study "Stairs": D minor\n2026-03-02\n  "Stairs", page 4, slow\n')[0]).toMatch(/^No bars are written/);
  });

  test("leads to where it was last worked, else to where it is declared", () => {
    const text = `${GROUND}2026-03-02\n  Ground, bars 17-32, at 70 clean\n`;
    expect(lineAtPlace(text, previewOf(text).pieces.inHand[0]!.place)).toBe("Ground, bars 17-32, at 70 clean");
    expect(lineAtPlace(GROUND, previewOf(GROUND).pieces.inHand[0]!.place)).toBe(GROUND.trim());
  });
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
  const { inHand, latest } = previewOf(text).pieces;
  expect(inHand.map(({ name }) => name)).toEqual(["Near", "Lately", "New"]);
  expect(latest).toBeNull();
});

test("where none is in hand, the one that was worked last is named and leads to its line", () => {
  const text = `piece "Long ago": C major
piece "Longer ago": C major
2025-11-30
  "Longer ago", slow
2025-12-01
  "Long ago", slow
`;
  const { inHand, latest } = previewOf(text).pieces;
  expect(inHand).toEqual([]);
  expect(latest).toMatchObject({ text: "Long ago", note: "2025-12-01" });
  expect(lineAtPlace(text, latest!.place)).toBe('"Long ago", slow');
});

test("movements that were worked stand by themselves, with their own goal", () => {
  const text = `piece "Gates": G minor, goal quarter=60
movement "Gates" 1 "Iron": G minor, 32 bars, goal quarter=56
movement "Gates" 2 "Willow": Bb major, 40 bars
2026-03-02
  "Gates", mvt 1, bars 1-16, at 50 clean
`;
  expect(pieces(text)).toEqual([
    "Gates, movement 1: Iron: Latest reached quarter=50 (bars 1-16), 2026-03-02; the goal is quarter=56.",
  ]);
  expect(strip(text)).toEqual(["1–16 within 4 weeks"]);
  expect(pieces(`${text}2026-03-03\n  "Gates", at 40 clean\n`)).toHaveLength(2);
});

test("a hostile title stays text", () => {
  const text =
    'piece "<script>alert(1)</script>\u202E": C major, 8 bars\n2026-03-02\n  "<script>alert(1)</script>\u202E", slow\n';
  const [piece] = previewOf(text).pieces.inHand;
  expect(piece!.name).toBe("<script>alert(1)</script>");
  expect(piece!.chart.ok && piece!.chart.svg).not.toContain("<script");
});
