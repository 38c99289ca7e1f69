import { describe, expect, test } from "vitest";
import { completionsAt } from "../../../server/features/completion/completion.ts";
import { journalHistory } from "../../../server/history/journal-history.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";

// Invented journals.

const TODAY = parseIsoDate("2026-03-09")!;
const URI = "file:///journal/book.practice";

const WEEK = `2026-03-02 Mon
F major, slurred, 8ths at 72 clean
Bourrée in G minor, bars 1-8, at 60 ok

2026-03-06 Fri
F maj slurred quavers 76 clean 80 slips
long tones 5 min

`;

/** What is offered at the mark, in its order; the history is that of the text `before`, or of the text itself. */
function offered(marked: string, before = marked.replace("‸", "")): readonly string[] {
  const read = new Journal("file:///journal", new Map([[URI, createDocument(before)]]));
  journalHistory(read);
  const journal = read.with(URI, createDocument(marked.replace("‸", "")));
  const lines = marked.split("‸")[0]!.split("\n");
  const at = { line: lines.length - 1, character: lines.at(-1)!.length };
  return completionsAt(journal, URI, at, TODAY).map(({ label }) => label);
}

describe("offers are the same at column 1 and indented", () => {
  test.each([
    ["in a new day", `${WEEK}2026-03-09 Mon\n`],
    ["in a day that has entries", `${WEEK}2026-03-09 Mon\nF maj slurred 76\n`],
    ["below a phase", `${WEEK}2026-03-09 Mon\nwarm-up\n  F maj slurred 76\n`],
    ["where a new day may begin", WEEK],
    ["in an older day", `${WEEK}2026-03-07\n`],
  ])("%s", (_, before) => {
    for (const typed of ["", "F", "bo", "wa", "lo", "202"])
      expect(offered(`${before}  ${typed}‸`)).toEqual(offered(`${before}${typed}‸`));
  });
});

test("a new day opens with the exercises in use, with where to start", () => {
  expect(offered(`${WEEK}2026-03-09 Mon\n‸`).slice(0, 3)).toEqual([
    "F maj slurred quavers at 72",
    "long tones",
    "Bourrée in G minor, bars 1-8, at 58",
  ]);
});

test("before them comes work that was set: with where to start where it was practised, else without a tempo", () => {
  const set = "set: D minor, thirds, 8ths at 60\nset: Bourrée in G minor, bars 1-8, at 72\n\n";
  expect(offered(`${WEEK}2026-03-08\n${set}2026-03-09 Mon\n‸`).slice(0, 3)).toEqual([
    "D minor, thirds, 8ths",
    "Bourrée in G minor, bars 1-8, at 58",
    "F maj slurred quavers at 72",
  ]);
  expect(offered(`set Bb major, slurred, at 80 by 2026-03-12\n\n${WEEK}2026-03-09\n‸`)[0]).toBe("Bb major, slurred");
});

test("set work that is over, or done on this day, comes first no more", () => {
  expect(offered(`set Bb major, at 80 by 2026-03-08\n\n${WEEK}2026-03-09\n‸`)[0]).toBe("F maj slurred quavers at 72");
  expect(offered(`2026-02-20\nset: Bb major, at 80\n\n${WEEK}2026-03-09\n‸`)).not.toContain("Bb major");
  const done = offered(`${WEEK}2026-03-08\nset: D minor, thirds\n\n2026-03-09\nD minor thirds 60\n‸`);
  expect(done[0]).toBe("F maj slurred quavers at 72");
});

describe("nothing is offered that was only typed and is deleted again", () => {
  const day = `${WEEK}2026-03-09 Mon\n`;

  test("a whole line", () => {
    expect(offered(`${day}‸`, `${day}Eb major, fourths, 8ths at 66 clean\n`).join("\n")).not.toContain("Eb major");
    expect(offered(`${day}Eb‸`, `${day}Eb major, fourths, 8ths at 66 clean\n`).join("\n")).not.toContain("fourths");
  });

  test("nor a tempo that nothing stands for any more", () => {
    expect(offered(`${day}‸`, `${day}F major, slurred, 8ths at 96 clean\n`)[0]).toBe("F maj slurred quavers at 72");
    expect(offered(`${day}F m‸`, `${day}F major, slurred, 8ths at 96 clean\n`)[0]).toBe("F maj slurred quavers at 72");
  });

  test("while what stands on another line of the same day is offered, whatever was edited since", () => {
    const other = "Eb major, fourths, 8ths at 66 clean\n";
    expect(offered(`${day}${other}F maj\nE‸`, `${day}${other}`)).toContain("Eb major, fourths, 8ths");
  });
});

test("words that stand for the line above are no exercise", () =>
  expect(offered(`${WEEK}2026-03-09\nF maj slurred 72 ok\nsame tongued 72 ok\n‸`)).not.toContain("same"));

describe("what stands in full is not offered, so that the list closes when a word is complete", () => {
  const lines = [
    "F maj 2 oct slurred 8ths at 72 clean",
    "F major, slurred, 8ths at 76 clean 5 in a row",
    "d minor in thirds",
    "G minor arpeggio, slurred at 60 easy",
    "F major, slurred, 8ths at 76",
    "long tones 5 min",
    "2026-03-08 Sun, rest",
    "F major, top down",
  ];

  test.each(lines)("%s", (line) => expect(offered(`${WEEK}2026-03-09 Mon\n${line}‸`)).toEqual([]));

  test("what goes on from there still is", () => {
    expect(offered(`${WEEK}2026-03-09 Mon\nF maj‸`)).toContain("F major");
    expect(offered(`${WEEK}2026-03-09 Mon\nF maj‸`)).not.toContain("F maj");
    expect(offered(`${WEEK}2026-03-09 Mon\nF major‸`)).toContain("F major arpeggio");
    expect(offered(`${WEEK}2026-03-09 Mon\nF MAJOR‸`)).not.toContain("F major");
  });
});
