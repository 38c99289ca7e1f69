import { describe, expect, test } from "vitest";
import { ceilingOn } from "../../server/history/ceiling.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import { createDocument } from "../../server/syntax/document/document.ts";

// Invented days. What the kinds of days mean, and how long they last, are our own choices (server/history/thresholds.ts).

function ceiling(text: string, day: string, instrument?: string) {
  const journal = new Journal("file:///j", new Map([["file:///j/a.practice", createDocument(text)]]));
  return ceilingOn(journal, parseIsoDate(day)!, instrument);
}

function check(text: string, day: string, kind: string, words?: string): void {
  const found = ceiling(text, day);
  expect([found.kind, found.said?.words]).toEqual([kind, words]);
}

const PLAYED = "  D minor, at 60 clean\n";

describe("without the instrument: that day and the next", () => {
  const says = (line: string) => `2026-03-15\n${PLAYED}2026-03-16\n${line}\n`;

  test.each([
    ["an entry", `  D minor, at 60 clean, sore left thumb`, "sore left thumb"],
    ["a line of its own", "  left thumb hurts", "left thumb hurts"],
    ["a remark", `  D minor, at 60 clean -- the wrist aches`, "the wrist aches"],
    ["a remark below", `${PLAYED}    -- some pain in the neck`, "some pain in the neck"],
    ["a sentence", "  My shoulder was so sore that I stopped.", "My shoulder was so sore that I stopped."],
    ["words behind a tempo", "  D minor, at 60 thumb numb", "thumb numb"],
  ])("by %s", (_, line, words) => {
    check(says(line), "2026-03-16", "without instrument", words);
    check(says(line), "2026-03-17", "without instrument", words);
    check(says(line), "2026-03-18", "sparing", words);
    check(says(line), "2026-03-15", "usual");
  });

  test("by a day of rest", () => {
    check("2026-03-16 Mon, rest, sore left thumb\n", "2026-03-17", "without instrument", "sore left thumb");
    check("2026-03-16 Mon\n  rest, my back hurts\n", "2026-03-17", "without instrument", "my back hurts");
  });

  test.each([
    "no pain today",
    "thumb not sore",
    "left hand without any pain",
    "wrist pain better",
    "tired, cold hands",
    "a burning tempo",
    "weak beats too loud",
    "the last phrase went stiff",
    "tense shoulders",
  ])("and not by: %s", (words) => check(says(`  D minor, at 60 clean -- ${words}`), "2026-03-16", "usual"));

  test("what the teacher says, what is set and what is asked is nothing that was felt", () => {
    check(says("said: stop before the wrist hurts"), "2026-03-16", "usual");
    check(says("ask why my thumb hurts"), "2026-03-16", "usual");
  });
});

test.each([
  ["german", "Daumen tut weh", "keine Schmerzen"],
  ["french", "douleur au poignet", "sans douleur"],
  ["italian", "dolore al polso", "senza dolore"],
  ["spanish", "me duele la muñeca", "sin dolor"],
  ["dutch", "pijn in de pols", "geen pijn"],
])("in %s words, and in English beside them", (names, hurts, eased) => {
  const day = (remark: string) => `names ${names}\n\n2026-03-16\n  C, 60 -- ${remark}\n`;
  check(day(hurts), "2026-03-17", "without instrument", hurts);
  check(day(eased), "2026-03-17", "usual");
  check(day("wrist hurts"), "2026-03-17", "without instrument", "wrist hurts");
});

describe("after that", () => {
  const pain = "2026-03-02\n  D minor, at 60 clean, sore thumb\n";
  const days = (...dates: string[]) => dates.map((date) => `2026-03-${date}\n${PLAYED}`).join("");

  test("sparing until three practised days without a word of it, then two more at what is steady", () => {
    const text = pain + days("04", "05", "06", "07", "08", "09");
    check(text, "2026-03-04", "sparing", "sore thumb");
    check(text, "2026-03-06", "sparing", "sore thumb");
    check(text, "2026-03-07", "easing", "sore thumb");
    check(text, "2026-03-08", "easing", "sore thumb");
    check(text, "2026-03-09", "usual");
  });

  test("or until it is said to be better, and two practised days more", () => {
    const text = `${pain}${days("04")}    -- thumb better\n${days("05", "06", "07")}`;
    check(text, "2026-03-04", "easing", "sore thumb");
    check(text, "2026-03-06", "easing", "sore thumb");
    check(text, "2026-03-07", "usual");
  });

  test("for four weeks at most", () => {
    expect(ceiling(`${pain}2026-03-20\n${PLAYED}`, "2026-03-30").kind).toBe("sparing");
    expect(ceiling(`${pain}2026-03-20\n${PLAYED}`, "2026-03-31").kind).toBe("usual");
  });

  test("with its share of the steady tempo", () => {
    const shareOn = (day: string) => ceiling(pain + days("04", "05", "06", "07"), day).share;
    expect([shareOn("2026-03-03"), shareOn("2026-03-05"), shareOn("2026-03-07")]).toEqual([0, 0.8, 1]);
  });
});

describe("a return", () => {
  const text = `2026-03-02\n${PLAYED}2026-03-24\n${PLAYED}2026-03-25\n${PLAYED}2026-03-26\n${PLAYED}`;

  test("is the first three practised days after three weeks without", () => {
    check(text, "2026-03-23", "usual");
    check(text, "2026-03-24", "return");
    check(text, "2026-03-26", "return");
    check(text, "2026-03-27", "usual");
  });

  test("on the instrument that was left alone", () => {
    const two = `2026-03-01\n  D minor, on alto recorder, at 60 clean\n2026-03-23\n  D minor, on tenor recorder, at 60 clean\n`;
    expect(ceiling(two, "2026-03-24", "alto recorder").kind).toBe("return");
    expect(ceiling(`${two}2026-03-24\n${PLAYED}`, "2026-03-25", "tenor recorder").kind).toBe("usual");
  });

  test("is also the first practice after being ill, and not after a journey", () => {
    check(`2026-03-02\n${PLAYED}2026-03-03, rest, flu\n2026-03-05\n${PLAYED}`, "2026-03-05", "return");
    check(`2026-03-02\n${PLAYED}2026-03-03, rest, flu\n2026-03-05\n${PLAYED}`, "2026-03-06", "usual");
    check(`2026-03-02\n${PLAYED}2026-03-03, rest, travelling\n2026-03-05\n${PLAYED}`, "2026-03-05", "usual");
  });

  test("is none where nothing was practised before", () => {
    check("2026-03-02\n  nothing yet\n", "2026-03-24", "usual");
    check("", "2026-03-24", "usual");
  });
});
