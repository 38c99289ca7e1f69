import { describe, expect, test } from "vitest";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import { lineRows } from "../../server/features/explain/line-rows.ts";
import { journalHistory } from "../../server/history/journal-history.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import { createDocument } from "../../server/syntax/document/document.ts";

// A title that was once written with a tempo or a numbered place is known from then on: the lines are invented.

const ROOT = "file:///j";

function journalOf(...texts: readonly string[]): Journal {
  return new Journal(ROOT, new Map(texts.map((text, i) => [`${ROOT}/${i}.practice`, createDocument(text)])));
}

/** How each line of the second day is read: its piece, or what else it is. */
function secondDay(first: string, second: string): readonly string[] {
  const rows = lineRows(journalOf(`2026-03-02\n${first}\n2026-03-03\n${second}`), `${ROOT}/0.practice`);
  const below = rows.slice(rows.findLastIndex(({ kind }) => kind === "date") + 1);
  return below.map(({ kind, subject }) => (kind === "remark" ? "remark" : `${kind}: ${subject}`));
}

const FROG = "The Sleepy Frog, line 1 at 60";

describe("behind a line that teaches it a title is the subject", () => {
  const check = (line: string, piece: string, first = FROG) => {
    expect(secondDay("", line)).not.toEqual([`piece: ${piece}`]);
    expect(secondDay(first, line)).toEqual([`piece: ${piece}`]);
  };
  test("with what it was played to", () => check("The Sleepy Frog with the CD, too fast for me", "The Sleepy Frog"));
  test("with words before a comma", () => check("The Sleepy Frog all, 1 mistake", "The Sleepy Frog"));
  test("behind an amount", () => check("10 min: the sleepy frog, with Anna", "the sleepy frog"));
  test("behind other words, where a tempo follows", () =>
    check("that silly old Sleepy Frog at 72", "Sleepy Frog", "Sleepy Frog, line 1 at 60"));
  test("in small letters", () => check("the sleepy frog, both hands", "the sleepy frog"));
  test("one word of it, with what came of it", () => check("Frog 2 times good 1 time bad", "Frog"));
  test("an amount alone", () => check("Twinkle 10 min", "Twinkle", "Twinkle, bars 1-8"));
});

describe("what stands behind a title is no part of it", () => {
  const check = (first: string, line: string, piece: string) =>
    expect(secondDay(first, line)).toEqual([`piece: ${piece}`]);
  test("a section", () => check("Heron's Dance, bars 1-8", "Heron's Dance B: 72 / 63", "Heron's Dance"));
  test("the section from which it was learnt", () =>
    check("Heron's Dance A, bars 1-8", "Heron's Dance by the window, ok", "Heron's Dance"));
  test("the key of a tune", () =>
    check("Late Bus Home in Ab, bridge, 120", "LATE BUS HOME in C head only 140 easy", "LATE BUS HOME"));
  test("words of one's own", () =>
    check("Rusty Elevator, bars 1-8", "Rusty Elevator fill b4 last ch., 5x5 clean", "Rusty Elevator"));
});

test("behind a dash there may be more of a known title's entry", () => {
  const journal = journalOf(
    `2026-03-02\n${FROG}\n2026-03-03\nThe Sleepy Frog – line 2 @ 72\nThe Sleepy Frog – he likes it`,
  );
  const rows = lineRows(journal, `${ROOT}/0.practice`).slice(3);
  expect(rows.map(({ subject, tempos }) => [subject, tempos])).toEqual([
    ["The Sleepy Frog", ["72"]],
    ["The Sleepy Frog", []],
  ]);
});

describe("a line that speaks of a piece is a remark", () => {
  const check = (line: string, first = FROG) => expect(secondDay(first, line)).toEqual(["remark"]);
  test("with a verb", () => check("the Sleepy Frog was fun today"));
  test("with a pronoun before it", () => check("i like The Sleepy Frog, 10 min"));
  test("with what is intended", () => check("The Sleepy Frog tomorrow"));
  test("with no word of how it went", () => check("The Sleepy Frog by the Corner Trio on the radio"));
  test("one word of it alone", () => check("Frog in the throat"));
  test("a small word of it", () => check("a frog, green, 10 cm"));
  test("a word that begins other lines", () => check("The new reed, good", "The Reed Dance, bars 1-8"));
});

describe("another title stays another one", () => {
  const check = (first: string, line: string, piece: string) =>
    expect(secondDay(first, line)).toEqual([`piece: ${piece}`]);
  test("with a further name", () => check(FROG, "The Sleepy Frog Returns, bars 1-4", "The Sleepy Frog Returns"));
  test("joined to a second", () => check("Gavotte, bars 1-8", "Gavotte and Musette, bars 1-8", "Gavotte and Musette"));
  test("within a longer one", () =>
    check("Sleepy Frog, bars 1-8", "Return of the Sleepy Frog, bars 1-8", "Return of the Sleepy Frog"));
  test("with a number", () => check("Study 14, bars 1-8", "Study 15, bars 1-8", "Study 15"));
  test("a kind of piece in a key", () => check("Minuet, bars 1-8", "Minuet in G, bars 1-8", "Minuet in G"));
});

describe("what teaches a title", () => {
  const learns = (first: string) => secondDay(first, "Winter Morning with the CD, too fast for me")[0] !== "remark";
  test("a tempo", () => expect(learns("Winter Morning at 60")).toBe(true));
  test("a numbered place", () => expect(learns("Winter Morning, page 4")).toBe(true));
  test("a title in quotes with one", () => expect(learns('"Winter Morning", bars 1-8')).toBe(true));
  test("no place in words alone", () => expect(learns("Winter Morning, from the top")).toBe(false));
  test("no outcome alone", () => expect(learns("Winter Morning, good")).toBe(false));
  test("a declaration, wherever it stands", () => {
    const journal = journalOf("2026-03-02\nWinter Morning with the CD, too fast for me", 'piece "Winter Morning"');
    expect(lineRows(journal, `${ROOT}/0.practice`)[1]).toMatchObject({ kind: "piece", subject: "Winter Morning" });
  });
});

describe("a title is known from its line on", () => {
  const kinds = (journal: Journal) => lineRows(journal, `${ROOT}/0.practice`).map(({ kind }) => kind);
  const LATER = "The Sleepy Frog with the CD, too fast for me";
  test("below it on its day, not above", () =>
    expect(kinds(journalOf(`2026-03-02\n${LATER}\n${FROG}\n${LATER}`))).toEqual(["date", "remark", "piece", "piece"]));
  test("by date, whichever file it stands in", () => {
    expect(kinds(journalOf(`2026-03-03\n${LATER}`, `2026-03-02\n${FROG}`))).toEqual(["date", "piece"]);
    expect(kinds(journalOf(`2026-03-03\n${LATER}`, `2026-03-04\n${FROG}`))).toEqual(["date", "remark"]);
  });
  test("days of a file the latest first", () =>
    expect(kinds(journalOf(`2026-03-03\n${LATER}\n2026-03-02\n${FROG}`))).toEqual(["date", "piece", "date", "piece"]));
  test("until the line that taught it goes", () => {
    const journal = journalOf(`2026-03-03\n${LATER}`, `2026-03-02\n${FROG}`);
    expect(kinds(journal)).toEqual(["date", "piece"]);
    expect(kinds(journal.with(`${ROOT}/1.practice`, undefined))).toEqual(["date", "remark"]);
  });
});

test("the history knows a short form by the title that it is short for", () => {
  const journal = journalOf(`2026-03-02\n${FROG}\n2026-03-03\nFrog 2 times good\n2026-03-04\nSLEEPY FROG at 66 clean`);
  const exercises = [...journalHistory(journal).exercises.values()];
  expect(exercises.map(({ subject, strands }) => [subject, strands.flatMap(({ records }) => records).length])).toEqual([
    ["The Sleepy Frog", 3],
  ]);
});

test("no hint says that a line with a known title reads as a sentence", () => {
  const hints = (first: string) =>
    diagnosticsOf(
      journalOf(`2026-03-02\n${first}\n2026-03-03\nThe Sleepy Frog with the CD, too fast for me`),
      `${ROOT}/0.practice`,
      parseIsoDate("2026-06-01")!,
    ).flatMap(({ code, range }) => (range.start.line === 3 ? [code] : []));
  expect(hints("")).toEqual(["prose"]);
  expect(hints(FROG)).not.toContain("prose");
});

test("a day in which nothing names a known title is the same object whatever other days teach", () => {
  const before = journalOf(`2026-03-03\nD minor, at 60\nLovely tone.`, `2026-03-02\n${FROG}`);
  const [block] = before.files.get(`${ROOT}/0.practice`)!.blocks.slice(-1);
  const model = before.model(block!);
  const after = before.with(`${ROOT}/1.practice`, createDocument("2026-03-02\nWinter Morning at 72"));
  expect(after.model(block!)).toBe(model);
});
