import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { moveYear, yearsToMove } from "../../../server/features/commands/move-year.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { times } from "../../support/random-runs.ts";
import { edited, journalText } from "../journal-text.ts";
import { playedIn } from "../played.ts";

const TODAY = parseIsoDate("2026-03-09")!;
const FOLDER = "file:///journal";

type Files = Readonly<Record<string, string>>;

function journalOf(files: Files, root = FOLDER): Journal {
  const documents = Object.entries(files).map(([name, text]) => [`${FOLDER}/${name}`, createDocument(text)] as const);
  return new Journal(root, new Map(documents));
}

/** The files after a year was moved out of the first of them; or why it was not. */
function moved(files: Files, year: number | undefined): Files | string {
  const uri = `${FOLDER}/${Object.keys(files)[0]!}`;
  const answer = moveYear(journalOf(files), uri, { today: TODAY, year });
  if (!answer.ok) return answer.reason;
  const after: Record<string, string> = { ...files };
  const nameOf = (address: string): string => address.slice(FOLDER.length + 1);
  for (const { uri: of, edits } of [answer, ...(answer.also ?? [])])
    if (after[nameOf(of)] !== undefined) after[nameOf(of)] = edited(after[nameOf(of)]!, edits);
  if (answer.created !== undefined) {
    expect(after[nameOf(answer.uri)]).toBeUndefined();
    after[nameOf(answer.uri)] = answer.created;
  }
  return after;
}

const DIARY = `player Noor

2024-12-30 Mon
F major, slow

2025-01-02 Thu
C major, at 60 clean

2025-11-03 Mon
D minor, at 54

2026-03-02 Mon
G major, slow
`;

describe("the days of a year go into a file of that year", () => {
  test("beside this one, in their order; what is declared above the days stays", () => {
    expect(moved({ "diary.practice": DIARY }, 2025)).toEqual({
      "diary.practice": "player Noor\n\n2024-12-30 Mon\nF major, slow\n\n2026-03-02 Mon\nG major, slow\n",
      "2025.practice": "2025-01-02 Thu\nC major, at 60 clean\n\n2025-11-03 Mon\nD minor, at 54\n",
    });
  });

  test("also out of journal.practice, the newest first, with its line ends", () => {
    expect(
      moved(
        { "journal.practice": "2026-03-02\r\nG major\r\n\r\n2025-01-03\r\nD minor\r\n\r\n2025-01-02\r\nC major" },
        2025,
      ),
    ).toEqual({
      "journal.practice": "2026-03-02\r\nG major\r\n",
      "2025.practice": "2025-01-03\r\nD minor\r\n\r\n2025-01-02\r\nC major\r\n",
    });
  });

  test("with a note value that holds for this file alone", () => {
    expect(moved({ "diary.practice": "note value 8ths\n\n2025-01-02\nC major, at 60\n" }, 2025)).toEqual({
      "diary.practice": "note value 8ths\n",
      "2025.practice": "note value 8ths\n\n2025-01-02\nC major, at 60\n",
    });
  });

  test("a day whose date cannot be read goes with the one above it", () => {
    expect(moved({ "a.practice": "2025-01-02\nC major\n2025-02-31\nF major\n2026-03-02\n" }, 2025)).toMatchObject({
      "2025.practice": "2025-01-02\nC major\n2025-02-31\nF major\n",
    });
  });

  test("among the days that the file of that year has, by their dates", () => {
    const there = "2025-01-01\nF major\n\n2025-06-01\nF major\n";
    expect(moved({ "diary.practice": DIARY, "2025.practice": there }, 2025)).toMatchObject({
      "2025.practice":
        "2025-01-01\nF major\n\n2025-01-02 Thu\nC major, at 60 clean\n\n2025-06-01\nF major\n\n2025-11-03 Mon\nD minor, at 54\n",
    });
  });
});

describe("nothing is moved, and a sentence says why", () => {
  test("where the file of the year has a day of the same date", () =>
    expect(moved({ "diary.practice": DIARY, "2025.practice": "2025-11-03\n" }, 2025)).toBe(
      "2025.practice already has 2025-11-03. Move that day by hand first.",
    ));
  test("of a year that is not over, or not there", () => {
    expect(moved({ "diary.practice": DIARY }, 2026)).toMatch(/^This file has no days of 2026, or/);
    expect(moved({ "diary.practice": DIARY }, 2023)).toMatch(/^This file has no days of 2023/);
    expect(moved({ "2025.practice": "2025-11-03\n" }, 2025)).toMatch(/^This file has no days of an earlier year/);
    expect(moved({ "diary.practice": DIARY }, undefined)).toBe("Say which year is to move.");
  });
  test("out of a file that is a journal by itself", () => {
    const uri = `${FOLDER}/diary.practice`;
    const answer = moveYear(journalOf({ "diary.practice": DIARY }, uri), uri, { today: TODAY, year: 2025 });
    expect(answer).toMatchObject({ ok: false, reason: expect.stringMatching(/^This file is a journal by itself/) });
  });
  test("with a conflict in the file, or a note value of one file alone", () => {
    expect(moved({ "a.practice": `${DIARY}<<<<<<< a\n` }, 2025)).toMatch(/^A merge has left its markers/);
    expect(moved({ "a.practice": `note value 8ths\n${DIARY}`, "2025.practice": "2025-01-01\n" }, 2025)).toMatch(
      /^One of the two files has a note value/,
    );
  });
  test("where a day declares what is declared elsewhere as well", () => {
    const day = 'pattern "zigzag": 1 3 2 4\n';
    expect(moved({ "a.practice": `pattern "zigzag": 1 2 4 3\n2025-01-02\n${day}2026-01-01\n` }, 2025)).toBe(
      "pattern zigzag is declared in a day of 2025 and elsewhere, too. Delete one of the two first.",
    );
  });
});

test("years that are over are offered, with how many days they have", () => {
  const journal = journalOf({ "diary.practice": DIARY });
  expect(yearsToMove(journal, `${FOLDER}/diary.practice`, TODAY)).toEqual([
    { year: 2024, days: 1 },
    { year: 2025, days: 2 },
  ]);
});

/** Lines that hold anything, in order. */
function linesIn(files: Files): readonly string[] {
  const all = Object.values(files).flatMap((text) => text.split(/\r\n|\r|\n/));
  return all.map((line) => line.replace(/^\uFEFF/, "").trimEnd()).filter((line) => line !== "");
}

test("no line is lost or changed, and what was played is the same", () => {
  let count = 0;
  const years = fc.constantFrom("2024-03-02", "2025-05-06 Tue", "2025-07-08", "2024-01-01");
  const text = fc
    .array(fc.tuple(years, journalText), { minLength: 1, maxLength: 3 })
    .map((days) => days.map(([day, lines]) => `${day}\n${lines.replaceAll(/^[<=].*$/gm, "")}\n`).join(""));
  fc.assert(
    fc.property(
      fc.constantFrom("diary.practice", "journal.practice"),
      journalText,
      text,
      text,
      (name, head, own, other) => {
        const files = { [name]: `${head.replaceAll(/^[<=].*$/gm, "")}\n${own}`, "other.practice": other };
        const after = moved(files, 2025);
        if (typeof after === "string") return;
        count++;
        const value = linesIn({ [name]: files[name]! }).filter((line) => /^\s*note value/.test(line));
        const again = linesIn(after);
        if (name === "diary.practice" && again.length > linesIn(files).length) expect(value.length).toBeGreaterThan(0);
        else expect([...again].sort()).toEqual([...linesIn(files)].sort());
        expect(playedIn(journalOf(after))).toEqual(playedIn(journalOf(files)));
      },
    ),
    { seed: 20260309, numRuns: times(50) },
  );
  expect(count).toBeGreaterThan(times(12));
});
