import { describe, expect, test } from "vitest";
import { isoDate } from "../../server/journal/calendar.ts";
import { declaredLines, ofType } from "../../server/journal/declared-lines.ts";
import { beforeLastLesson, periodNow, setNow, sinceLastLesson } from "../../server/plan/lesson.ts";
import { setWorkInWords, textOfSet } from "../../server/plan/set-work-words.ts";
import { DUTCH_SIGNS } from "../../server/syntax/lexicon/signs/dutch.ts";
import { ENGLISH_SIGNS } from "../../server/syntax/lexicon/signs/english.ts";
import { FRENCH_SIGNS } from "../../server/syntax/lexicon/signs/french.ts";
import { GERMAN_SIGNS } from "../../server/syntax/lexicon/signs/german.ts";
import { ITALIAN_SIGNS } from "../../server/syntax/lexicon/signs/italian.ts";
import { SPANISH_SIGNS } from "../../server/syntax/lexicon/signs/spanish.ts";
import { day, journalOf } from "./written.ts";

const TODAY = day("2026-03-09");

/** What is set on a Monday, 2026-03-09: the text, and after a bar what is said of it. */
function set(text: string): string[] {
  const journal = journalOf(text);
  return setNow(journal, ofType(declaredLines(journal), "set"), TODAY).map((each) =>
    [textOfSet(each.work), setWorkInWords(each, TODAY)].filter((words) => words !== "").join(" | "),
  );
}

describe("work that is set", () => {
  test("is ticked by an entry that has all of it, with its day", () => {
    expect(
      set(`2026-03-02
set G major, thirds, slurred, 4 days
2026-03-03
  G major, thirds, slurred, slow
2026-03-04
  G major, thirds, tongued, slow
2026-03-08
  G major, thirds, slurred, at 60 clean
`),
    ).toEqual(["G major, thirds, slurred | played Tue 3, Sun 8; set for four days"]);
  });

  test("above the first day it is set for as long as it is there, and ticked by the last week", () => {
    expect(set("set F major, slow\n2026-03-01\n  F major, slow\n2026-03-04\n  F major, slow\n")).toEqual([
      "F major, slow | played Wed 4",
    ]);
  });

  test("may be a piece that was never declared, with its place", () => {
    const text = (lines: string) => `2026-03-02
set "Three Geese", lines 1-2, 3 days
2026-03-03
  "Three Geese", ${lines}, slow
`;
    expect(set(text("lines 1-2"))).toEqual(['"Three Geese", lines 1-2 | done Tue 3; set for three days']);
    expect(set(text("lines 5-6"))).toEqual(['"Three Geese", lines 1-2 | set for three days']);
  });

  test("names a declared title as a line below a day does, without quotes", () => {
    const text = (work: string) => `piece "Greensleeves"
2026-03-02
${work}
2026-03-03
  Greensleeves first line, slow
2026-03-04
  Greensleeves second line, slow
`;
    for (const work of ["Greensleeves first line", "Greensleeves, first line"]) {
      expect(set(text(`for next week:\n  ${work}`))).toEqual([`${work} | played Tue 3`]);
      expect(set(text(`homework: ${work}`))).toEqual([`${work} | played Tue 3`]);
    }
    expect(set(text("set Greensleeves, first line, 3 days"))).toEqual([
      "Greensleeves, first line | played Tue 3; set for three days",
    ]);
    expect(set(`set Greensleeves first line\n${text("")}`)).toEqual(["Greensleeves first line | played Tue 3"]);
    expect(set(text("for next week:\n  sing Greensleeves to the cat"))).toEqual(["sing Greensleeves to the cat"]);
  });

  test("may be words, which are shown without their quotes and ticked by what is said to be done", () => {
    expect(set('2026-03-02\nset “sing it first”\n2026-03-03\n  done "sing it first"\n')).toEqual([
      "sing it first | done Tue 3",
    ]);
  });

  test("needs no word `set`: homework, and the lines below it", () => {
    expect(
      set(`2026-03-02
lesson
homework: D major, slurred, 4 days
for next week:
  G major, thirds, 60
  the Gavotte to the double bar

2026-03-03
  G major, thirds, 60 clean
  D major, slurred, slow
`),
    ).toEqual([
      "D major, slurred | played Tue 3; set for four days",
      "G major, thirds, 60 | played Tue 3",
      "the Gavotte to the double bar",
    ]);
  });

  test("in the language of the journal", () => {
    expect(
      set(`names german
2026-03-02
Unterricht
Hausaufgabe: G-Dur, Terzen, gebunden
2026-03-03
  G-Dur, Terzen, gebunden, sauber
`),
    ).toEqual(["G-Dur, Terzen, gebunden | played Tue 3"]);
  });

  test("homework belongs to the lesson it was given in", () => {
    const text = "2026-03-02\nlesson\nhomework: G major\n2026-03-08\nlesson\nhomework: F major\n";
    expect(set(text)).toEqual(["F major"]);
    const journal = journalOf(text);
    expect(beforeLastLesson(journal, [], TODAY)!.set.map(({ work }) => work.text)).toEqual(["G major"]);
  });
});

describe("a lesson", () => {
  const LANGUAGES = {
    english: ENGLISH_SIGNS,
    german: GERMAN_SIGNS,
    french: FRENCH_SIGNS,
    dutch: DUTCH_SIGNS,
    italian: ITALIAN_SIGNS,
    spanish: SPANISH_SIGNS,
  };
  const words = Object.entries(LANGUAGES).flatMap(([names, { heading }]) =>
    heading!["lesson"]!.split(" | ").map((word) => [names, word] as const),
  );

  test.each(words)("in %s may be called “%s”", (names, word) => {
    const journal = journalOf(`names ${names}\n2026-03-02\n${word}, 30 min\n`);
    expect(isoDate(periodNow(journal, TODAY).from)).toBe("2026-03-02");
  });

  test("that is planned, or ahead, is none yet", () => {
    const journal = journalOf("2026-03-02\nlesson\n2026-03-05\nlesson, plan\n2026-03-12\nlesson\n");
    expect(isoDate(periodNow(journal, TODAY).from)).toBe("2026-03-02");
  });

  test("ends what was asked before it, and begins what is asked after it", () => {
    const journal = journalOf("2026-03-02\nask: before?\nlesson\nask: after?\n2026-03-03\nask: later? -- wrist sore\n");
    expect(sinceLastLesson(journal, [], TODAY).asked.map(({ text }) => text)).toEqual(["after?", "later?"]);
  });
});

test("a day line may say that it was a lesson, in the words of the journal", () => {
  const from = (line: string, head = "") =>
    isoDate(periodNow(journalOf(`${head}2026-03-06 ${line}\nF major, slow\n`), day("2026-03-09")).from);
  for (const line of ["lesson", "Fri, lesson, 30 min", "FRI LESSON 30m"]) expect(from(line)).toBe("2026-03-06");
  for (const line of ["FR UNTERRICHT", "Freitag Unterricht 30 Min", "Fr., Flötenstunde"])
    expect(from(line, "names german\n\n")).toBe("2026-03-06");
  for (const line of ["rest, lesson", "plan, lesson", "no lesson"]) expect(from(line)).toBe("2026-02-09");
});
