import { expect, test } from "vitest";
import { Journal } from "../../server/journal/journal.ts";
import { createDocument } from "../../server/syntax/document/document.ts";
import { blockText } from "./print.ts";

// What the lines of a day say together: sittings, phases, plans, rest, minutes, remarks.

const HEAD = 'player Noor\npiece "Ground in G minor" as Ground: G minor\nphase "market band"\n';

/** What a day means, in the order of its lines. */
function check(day: string, expected: readonly string[]): void {
  const uri = "file:///j/journal.practice";
  const journal = new Journal("file:///j", new Map([[uri, createDocument(HEAD + day)]]));
  expect(blockText(journal.model(journal.files.get(uri)!.blocks[1]!))).toEqual(expected);
}

test("a day, its phases and its entries, whatever the indentation", () => {
  const expected = [
    "2026-03-02",
    "sitting 1, 50 min",
    "warm-up, 5 min",
    "  long tones on F4 C5",
    "groundwork, 15 min, 8 stated below",
    "  D natural minor | 5 min | slow",
    "  G harmonic minor | 3 min",
  ];
  const lines = [
    "2026-03-02 Mon, 50 min",
    "warm-up, 5 min",
    "long tones on F4 C5",
    "groundwork: 15 min",
    "D minor, slow, 5 min",
    "G harmonic minor, 3 min",
  ];
  check(lines.join("\n"), expected);
  check(lines.map((line, i) => "  ".repeat(i % 3) + line).join("\r\n"), expected);
});

test("sessions are sittings of the same day; a break belongs to the sitting it stands in", () => {
  check("2026-03-02, 70 min\nD minor\nsession 19:30, 40 min\npieces\nGround, slow\nbreak, 5 min\nGround, slow", [
    "2026-03-02",
    "sitting 1, 70 min",
    "  D natural minor",
    "sitting 2, 40 min, 1 break",
    "pieces",
    "  Ground in G minor | slow",
    "  Ground in G minor | slow",
  ]);
});

test("below a plan everything is planned, until an entry says how it went, or that it was done", () => {
  check("2026-03-02 plan\nD minor, at 60\nG minor, at 60 clean\nF major, done\nC major", [
    "2026-03-02, plan",
    "sitting 1",
    "  D natural minor | planned | 60",
    "  G natural minor | 60 clean reached",
    "  F major | done",
    "  C major | planned",
  ]);
  check("2026-03-02\nC major\nplan\nD minor\npieces\nGround", [
    "2026-03-02",
    "sitting 1",
    "  C major",
    "  D natural minor | planned",
    "pieces",
    "  Ground in G minor | planned",
  ]);
  check("2026-03-02\npieces, plan\nGround, 10 min\nfluency\nD minor", [
    "2026-03-02",
    "sitting 1",
    "pieces",
    "  Ground in G minor | 10 min | planned",
    "fluency",
    "  D natural minor",
  ]);
});

test("a day of rest, said on its line or below it; it may hold time away from the instrument", () => {
  const rest = ["2026-03-02, rest", "sitting 1", "away, 10 min", "  Ground in G minor | mental"];
  check("2026-03-02, rest, sore thumb\naway, 10 min\nGround, mental", rest);
  check("2026-03-02\nrest\naway, 10 min\nGround, mental", rest);
});

test("a remark right under an entry belongs to it, and so does one at its end", () => {
  check("2026-03-02\nD minor -- stiff\n-- left thumb\n-- and elbow\n\n-- of no entry\nG minor\nprose\n-- of no entry", [
    "2026-03-02",
    "sitting 1",
    "  D natural minor | -- stiff | -- left thumb | -- and elbow",
    "  G natural minor",
  ]);
});

test("a date that does not exist opens a day without one", () => {
  for (const date of ["2026-02-30", "2026-13-01", "0000-01-01", "02.03.2026"])
    check(`${date}\nD minor`, ["no date", "sitting 1", "  D natural minor"]);
});

test("minutes that cannot be are not counted", () => {
  check("2026-03-02, 0 min\npieces, 1441 min\nGround, 1 h 75", [
    "2026-03-02",
    "sitting 1",
    "pieces",
    "  Ground in G minor",
  ]);
});

test("declared phases, and where a piece was played", () => {
  check("2026-03-02\nMarket-Band, 20 min\nGround, mvt 2, Bars 5-8, 17-20, on tenor recorder, sore left  thumb", [
    "2026-03-02",
    "sitting 1",
    "market band, 20 min",
    "  Ground in G minor | mvt 2, bars 5-8, 17-20 | on tenor recorder | sore left  thumb",
  ]);
});

test("what hurt is kept with the day, from lines of the body and from entries", () => {
  const uri = "file:///j/journal.practice";
  const day = "2026-03-02\nD minor, slow, sore left thumb\nwrist aches\nthumb ok so far\nlip tired\n";
  const journal = new Journal("file:///j", new Map([[uri, createDocument(day)]]));
  expect(journal.model(journal.files.get(uri)!.blocks[0]!).sore).toEqual([
    { place: { line: 1, start: 15, end: 30 }, words: "left thumb" },
    { place: { line: 2, start: 0, end: 11 }, words: "wrist aches" },
  ]);
});
